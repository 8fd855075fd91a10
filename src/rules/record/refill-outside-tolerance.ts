import { judgeRefill } from '../../fill/index.js'
import type { VolumeUnit } from '../../quantity/index.js'
import { resolveLeaf, type StatedValue } from '../../spec/index.js'
import { pickFirstPrinted } from '../lookup/pickFirstPrinted.js'
import { readStatedVolume } from '../lookup/readStatedVolume.js'
import { entryRule } from '../ruleMakers.js'

/**
 * A refill outside the band that the sheet states for this machine, or more than a tenth off if a level decides: the
 * machine was not level, old oil stayed in, or the figure of another machine was used. Take the surplus out or add what
 * lacks, then check the level.
 * Judges: Every judged change with `refilled`, on a gearcase with its own oil and a stated refill; if
 * the gearcase has several instances, only with `per` of `instance` and an instance named. Ends belong to a band; the
 * band of a nominal without tolerance is its rounding. Finds, with the fill method `by quantity`, a volume outside
 * stated limits or tolerance; with any method, a volume outside by more than a tenth of the nominal, or of the
 * nearest limit. The severity follows the harm: an error if it is more than this tenth, else a warning.
 * Place: `/entries/<place>/refilled`
 * Params: gearcase: its name; refilled: as written; printedRefill: the refill as printed first; byLevel:
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
    const refillAt = `/gearcases/${entry.gearcase}/oilSpace/fill/drainAndRefill`
    const stated = resolveLeaf(sheet.document, identity, 'value', refillAt)
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
