import type { Reason } from '../base/index.js'
import { serviceReason } from './codes.js'
import type {
  PartName,
  PlannedDue,
  PlannedFigure,
  PlannedMachine,
  PlannedMissing,
  PlannedWait,
} from './visitPlan.js'

/** What {@link listMissing} reads. */
export interface MissingRequest {
  readonly machine: PlannedMachine
  readonly due: readonly PlannedDue[]
  readonly figures: readonly PlannedFigure[]
  readonly waits: readonly PlannedWait[]
  /** What the caller did not hand over, such as a toolbox. */
  readonly notGiven: readonly Reason[]
}

/**
 * Lists every fact that the documents lack and what stays open for it, each once: the variant, figures that the manual
 * does not state or that depend on an unknown fact, services that cannot be judged, times that cannot be worked out. What
 * leaves one service open on several parts is one fact.
 */
export function listMissing({
  machine,
  due,
  figures,
  waits,
  notGiven,
}: MissingRequest): readonly PlannedMissing[] {
  const missing: PlannedMissing[] = []
  const { variant } = machine
  if (variant.verdict === 'cannot tell')
    missing.push({
      kind: 'cannot tell',
      path: '/machine/variants',
      reason: serviceReason('service/variant-open', {
        facts: variant.missing,
        candidates: variant.candidates.map(({ name }) => name),
      }),
    })
  for (const { role, part, path, resolved } of figures) {
    if (resolved.kind === 'not stated')
      missing.push({
        kind: 'not stated',
        part,
        path,
        reason: serviceReason('service/figure-not-stated', { part, role }),
      })
    if (resolved.kind === 'cannot tell')
      missing.push({
        kind: 'cannot tell',
        part,
        path,
        reason: serviceReason('service/figure-open', { part, role, facts: resolved.missing }),
      })
  }
  missing.push(...listOpenServices(due))
  for (const { kind, part, seconds, reasons } of waits) {
    const [reason] = reasons
    if (kind === 'pour' && seconds === undefined && reason !== undefined)
      missing.push({ kind: 'cannot tell', part, reason })
  }
  return [...missing, ...notGiven.map((reason): PlannedMissing => ({ kind: 'not kept', reason }))]
}

function listOpenServices(due: readonly PlannedDue[]): readonly PlannedMissing[] {
  const open = new Map<string, { parts: PartName[]; service: string; reason: Reason }>()
  for (const { part, serviceName, verdict, missing } of due) {
    if (verdict !== 'cannot tell') continue
    for (const reason of missing) {
      const key = JSON.stringify([serviceName, reason])
      const known = open.get(key)
      if (known === undefined) open.set(key, { parts: [part], service: serviceName, reason })
      else known.parts.push(part)
    }
  }
  return [...open.values()].map(({ parts, service, reason }) => {
    const [part] = parts
    return {
      kind: 'cannot tell',
      ...(part === undefined || parts.length > 1 ? {} : { part }),
      reason: serviceReason('service/due-open', { parts, service, reason: { ...reason } }),
    }
  })
}
