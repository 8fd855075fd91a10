import { dropUndefined, type Finding, type Reason } from '../base/index.js'
import { judgePan } from '../fill/index.js'
import { add, type Exact, exactOf, findNearestQuantity, type VolumeUnit } from '../quantity/index.js'
import type { Gearcase, Id, SpecValue } from '../spec/index.js'
import { type ServiceCodes, serviceFinding, serviceReason } from './codes.js'
import { listInstances } from './gearcases.js'
import { describePart } from './names.js'
import type { OilPlan } from './planOil.js'
import { type RefillAmount, readRefill } from './refills.js'
import type { GearcaseInVisit, VisitContext } from './visitContext.js'
import type { PlannedPan, PlannedUsedOil } from './visitPlan.js'

/** The drain pan and the used oil of one visit. */
interface PanPlan {
  /** Absent if nothing is drained. */
  readonly pan?: PlannedPan
  readonly usedOil: PlannedUsedOil
  readonly findings: readonly Finding<ServiceCodes>[]
}

/**
 * Adds up the oil that is drained during the visit, which is also the used oil, and chooses a pan for it. The
 * drained volume is assumed to be the stated refill; if only a dry fill is stated, that is the maximum.
 */
export function planPan(
  visit: VisitContext,
  changes: readonly GearcaseInVisit[],
  { volumes }: OilPlan,
): PanPlan {
  const { sheet, toolbox } = visit
  if (changes.length === 0) return { usedOil: { reasons: [] }, findings: [] }
  const drained: Exact[] = []
  const openReasons: Reason<keyof ServiceCodes>[] = []
  for (const { gearcase, instances } of changes) {
    const part = describePart(sheet, `/gearcases/${gearcase}`)
    const refill = volumes.get(gearcase)
    const amount = refill ?? readDryFill(visit, gearcase, instances.length)
    for (const _each of instances) if (amount !== undefined) drained.push(amount.exactEach)
    if (amount === undefined) openReasons.push(serviceReason('service/used-oil-not-known', { part }))
    else if (refill === undefined)
      openReasons.push(serviceReason('service/drain-limit-from-dry-fill', { part, volume: amount.all }))
  }
  if (drained.length === 0)
    return {
      pan: { verdict: 'cannot tell', reasons: openReasons },
      usedOil: { reasons: openReasons },
      findings: [],
    }
  const volume = findNearestQuantity(drained.reduce(add, exactOf(0)), 'mL', 'mL')
  const usedOil = { volume, reasons: [serviceReason('service/used-oil', { volume }), ...openReasons] }
  if (toolbox === undefined) {
    const reasons = [serviceReason('service/no-toolbox', {})]
    return { pan: { volume, verdict: 'cannot tell', reasons }, usedOil, findings: [] }
  }
  const { verdict, pan: best = '', reasons } = judgePan(toolbox.pans, drained)
  const bestPan = toolbox.pans[best]
  const have = bestPan && { id: best, name: bestPan.name, size: bestPan.size }
  const common = dropUndefined({ volume, have, reasons: [...reasons, ...openReasons] })
  if (verdict === 'large enough') return { pan: { ...common, verdict: 'fits' }, usedOil, findings: [] }
  const document = { kind: 'toolbox', id: toolbox.id } as const
  const entries = Object.entries(toolbox.pans)
  const [id, pan] = entries.find(([one]) => one === best) ?? entries[0] ?? []
  const finding =
    pan === undefined
      ? serviceFinding('service/no-pan', 'warning', document, '/pans', { volume })
      : serviceFinding('service/pan-too-small', 'warning', document, `/pans/${id}`, {
          pan: pan.name,
          size: pan.size,
          volume,
        })
  const panVerdict = pan === undefined ? 'missing' : 'does not fit'
  return { pan: { ...common, verdict: panVerdict }, usedOil, findings: [finding] }
}

function readDryFill(
  { sheet, figures }: VisitContext,
  gearcase: Id,
  worked: number,
): RefillAmount | undefined {
  const { oilSpace } = sheet.gearcases[gearcase] as Gearcase
  if (oilSpace.kind !== 'own') return undefined
  const stated = figures.stated<SpecValue<VolumeUnit>>(`/gearcases/${gearcase}/oilSpace/fill/dryFill`)
  return readRefill(stated, oilSpace.fill.per, { worked, all: listInstances(sheet, gearcase).length })
}
