import { judgeRefill } from '../../fill/index.js'
import type { VolumeUnit } from '../../quantity/index.js'
import { resolveLeaf, type StatedValue } from '../../spec/index.js'
import { pickFirstPrinted } from '../lookup/printedValues.js'
import { readStatedVolume } from '../lookup/statedValues.js'
import { entryRule } from '../ruleMakers.js'

/**
 * A refill outside the band that the sheet states for this machine, or more than a tenth off if a level
 * decides. The machine was not level, old oil stayed in, or another machine's figure was used. Remove the
 * surplus or top up, then check the level.
 * Judges: Every judged change with `refilled`, on a gearcase with its own oil and a stated refill; if the
 * gearcase has several instances, only with `per: instance` and a named instance. A band includes its ends;
 * the band of a nominal without tolerance is its rounding. With the fill method `by quantity`, finds a volume
 * outside stated limits or tolerance. With any method, finds a volume outside by more than a tenth of the
 * nominal or of the nearest limit; this is an error, other findings are warnings.
 * Place: `/entries/<place>/refilled`
 * Params: gearcase: its name; refilled: as written; printedRefill: the refill as first printed; byLevel:
 * whether a level decides; reason: code and params of the judgement
 * Harm: machine
 * Source: the judgement of `judgeRefill`, a house rule.
 */
export const rule = entryRule(
  'record/refill-outside-tolerance',
  'error',
  ({ path, entry, sheet, gearcase, identity, isChange }) => {
    const { refilled } = entry
    const { oilSpace, instances = {} } = gearcase
    if (refilled === undefined || !isChange || oilSpace.kind === 'shared') return []
    const isPerInstance = oilSpace.fill.per === 'instance' && entry.instance !== undefined
    if (Object.keys(instances).length > 1 && !isPerInstance) return []
    const refillPath = `/gearcases/${entry.gearcase}/oilSpace/fill/drainAndRefill`
    const stated = resolveLeaf(sheet.document, identity, 'value', refillPath)
    if (stated.kind !== 'stated' || readStatedVolume(stated.value) === undefined) return []
    const { method } = oilSpace.fill
    const value = stated.value as StatedValue<VolumeUnit>
    const { verdict, reasons } = judgeRefill(value, refilled, method)
    const [reason] = reasons
    if ((verdict !== 'outside' && verdict !== 'stop') || reason === undefined) return []
    const params = {
      gearcase: gearcase.name,
      refilled: { ...refilled },
      printedRefill: pickFirstPrinted(value),
      byLevel: method.kind !== 'by quantity' && method.kind !== 'not stated',
      reason: { ...reason },
    }
    return [{ path: `${path}/refilled`, params, severity: verdict === 'stop' ? 'error' : 'warning' }]
  },
)
