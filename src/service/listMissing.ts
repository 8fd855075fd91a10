import { dropUndefined, type Reason } from '../base/index.js'
import { serviceReason } from './codes.js'
import type { PartName } from './names.js'
import type { PlannedDue, PlannedFigure, PlannedMachine, PlannedMissing, PlannedWait } from './visitPlan.js'

/**
 * Lists each missing fact once: the variant, figures that are not stated or depend on an unknown fact, stated
 * torques without a setting, services that cannot be judged, and times that cannot be calculated. A fact that
 * is missing for one service on several parts is listed once.
 */
export function listMissing(
  { variant }: PlannedMachine,
  due: readonly PlannedDue[],
  figures: readonly PlannedFigure[],
  missingSettings: readonly PlannedMissing[],
  waits: readonly PlannedWait[],
  missingDocuments: readonly Reason[],
): readonly PlannedMissing[] {
  const missing: PlannedMissing[] = []
  if (variant.verdict === 'cannot tell') {
    const candidates = variant.candidates.map(({ name }) => name)
    const reason = serviceReason('service/variant-not-known', { facts: variant.missing, candidates })
    missing.push({ kind: 'cannot tell', path: '/machine/variants', reason })
  }
  for (const { role, part, path, resolved } of figures) {
    if (resolved.kind === 'stated') continue
    // It depends on the same facts as the place, which is listed.
    if (role === 'position' && resolved.kind === 'cannot tell') continue
    const reason =
      resolved.kind === 'not stated'
        ? serviceReason('service/figure-not-stated', { part, role })
        : serviceReason('service/figure-not-known', { part, role, facts: resolved.missing })
    missing.push({ kind: resolved.kind, part, path, reason })
  }
  missing.push(...missingSettings, ...listUnknownServices(due))
  for (const { kind, part, seconds, reasons } of waits) {
    const [reason] = reasons
    if (kind === 'pour' && seconds === undefined && reason !== undefined)
      missing.push({ kind: 'cannot tell', part, reason })
  }
  return [...missing, ...missingDocuments.map((reason): PlannedMissing => ({ kind: 'not kept', reason }))]
}

function listUnknownServices(due: readonly PlannedDue[]): readonly PlannedMissing[] {
  const unknownServices = new Map<string, { parts: PartName[]; service: string; reason: Reason }>()
  for (const { part, serviceName, verdict, missing } of due) {
    if (verdict !== 'cannot tell') continue
    for (const reason of missing) {
      const key = JSON.stringify([serviceName, reason])
      const known = unknownServices.get(key)
      if (known === undefined) unknownServices.set(key, { parts: [part], service: serviceName, reason })
      else known.parts.push(part)
    }
  }
  return [...unknownServices.values()].map(({ parts, service, reason: why }) => {
    const part = parts.length > 1 ? undefined : parts[0]
    const reason = serviceReason('service/due-not-known', { parts, service, reason: { ...why } })
    return dropUndefined({ kind: 'cannot tell', part, reason })
  })
}
