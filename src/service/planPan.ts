import type { Finding } from '../base/index.js'
import { judgePan } from '../fill/index.js'
import { exactOf, nearestQuantity, plus } from '../quantity/index.js'
import type { Id, SpecSheet, Toolbox } from '../spec/index.js'
import { type ServiceCodes, serviceFinding, serviceReason } from './codes.js'
import { namePart } from './names.js'
import type { RefillAmount } from './refills.js'
import type { PlannedPan, PlannedUsedOil } from './visitPlan.js'

/** The drain pan and the used oil of one visit. */
export interface PanPlan {
  /** Absent where nothing is drained. */
  readonly pan?: PlannedPan
  readonly usedOil: PlannedUsedOil
  readonly findings: readonly Finding<ServiceCodes>[]
}

/**
 * Adds up what runs out over the whole visit and looks for a pan that holds it; the same oil has to be taken away
 * afterwards. What is drained is taken to be what the manual refills, the most that can be known beforehand.
 */
export function planPan(
  sheet: SpecSheet,
  changed: readonly { readonly gearcase: Id; readonly instances: readonly unknown[] }[],
  volumes: ReadonlyMap<Id, RefillAmount>,
  toolbox: Toolbox | undefined,
): PanPlan {
  if (changed.length === 0) return { usedOil: { reasons: [] }, findings: [] }
  const open = changed
    .filter(({ gearcase }) => !volumes.has(gearcase))
    .map(({ gearcase }) =>
      serviceReason('service/used-oil-open', { part: namePart(sheet, `/gearcases/${gearcase}`) }),
    )
  const drained = changed.flatMap(({ gearcase, instances }) => {
    const refill = volumes.get(gearcase)
    return refill === undefined ? [] : instances.map(() => refill.exactEach)
  })
  const volume = nearestQuantity(drained.reduce(plus, exactOf(0)), 'mL', 'mL')
  const usedOil: PlannedUsedOil =
    drained.length === 0
      ? { reasons: open }
      : { volume, reasons: [serviceReason('service/used-oil', { volume }), ...open] }
  if (drained.length === 0) return { pan: { verdict: 'cannot tell', reasons: open }, usedOil, findings: [] }
  if (toolbox === undefined)
    return {
      pan: { volume, verdict: 'cannot tell', reasons: [serviceReason('service/no-toolbox', {})] },
      usedOil,
      findings: [],
    }
  const verdict = judgePan(toolbox.pans, drained)
  const found = verdict.pan === undefined ? undefined : toolbox.pans[verdict.pan]
  const have =
    verdict.pan === undefined || found === undefined
      ? {}
      : { have: { id: verdict.pan, name: found.name, size: found.size } }
  const findings: Finding<ServiceCodes>[] = []
  const entries = Object.entries(toolbox.pans)
  if (verdict.verdict !== 'large enough') {
    const document = { kind: 'toolbox', id: toolbox.id } as const
    const [id, pan] = entries.find(([one]) => one === verdict.pan) ?? entries[0] ?? []
    findings.push(
      id === undefined || pan === undefined
        ? serviceFinding('service/no-pan', 'warning', document, '/pans', { volume })
        : serviceFinding('service/pan-too-small', 'warning', document, `/pans/${id}`, {
            pan: pan.name,
            size: pan.size,
            volume,
          }),
    )
  }
  return {
    pan: {
      volume,
      ...have,
      verdict:
        entries.length === 0 ? 'missing' : verdict.verdict === 'large enough' ? 'fits' : 'does not fit',
      reasons: [...verdict.reasons, ...open],
    },
    usedOil,
    findings,
  }
}
