import { type JsonPointer, readPointer } from '../base/index.js'
import type { FastenerSet, Id } from '../spec/index.js'
import { serviceReason } from './codes.js'
import { listDrives } from './drives.js'
import { findOilOwner } from './gearcases.js'
import { describePart } from './names.js'
import type { VisitContext } from './visitContext.js'
import type { FigureRole, PlannedMissing } from './visitPlan.js'

/**
 * Lists facts other than figures that the manual does not state: the access to a gearcase, its fill method,
 * the drive of a part, and the number of its fasteners.
 */
export function listUnstated(
  { sheet, identity, procedure, partsWithoutSteps }: VisitContext,
  gearcases: readonly Id[],
): readonly PlannedMissing[] {
  const missing = new Map<JsonPointer, PlannedMissing>()
  const add = (path: JsonPointer, role: FigureRole): void => {
    const part = describePart(sheet, path)
    const reason =
      role === 'access'
        ? serviceReason('service/access-not-stated', { part })
        : serviceReason('service/figure-not-stated', { part, role })
    missing.set(path, { kind: 'not stated', part, path, reason })
  }
  for (const id of gearcases) {
    if (sheet.gearcases[id]?.access.kind === 'not stated') add(`/gearcases/${id}/access`, 'access')
    const owner = findOilOwner(sheet, id)
    const space = sheet.gearcases[owner]?.oilSpace
    if (space?.kind === 'own' && space.fill.method.kind === 'not stated')
      add(`/gearcases/${owner}/oilSpace/fill/method`, 'fill method')
  }
  for (const on of new Set([...procedure.steps.flatMap((step) => step.on ?? []), ...partsWithoutSteps])) {
    if (listDrives(sheet, identity, on)?.length === 0) add(`${on}/drive`, 'drive')
    const fasteners = ['/bolts', '/fasteners']
      .map((tail) => readPointer(sheet, `${on}${tail}`) as FastenerSet | undefined)
      .find((candidate) => candidate !== undefined)
    if (fasteners?.count === 'not stated') add(`${on}/count`, 'fasteners')
  }
  return [...missing.values()]
}
