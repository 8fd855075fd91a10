import { expect } from 'vitest'
import { applyPatch } from '../../src/base/applyPatch.js'
import { repairProcedure } from '../../src/v1/procedure.js'
import type { Broken } from './brokenProcedures.js'

/** The repair leaves no finding, reports exactly its changes, and a second repair changes nothing. */
export function expectRepaired({ sheet, bad }: Broken): void {
  const repaired = repairProcedure(bad, sheet)
  expect(repaired.left).toEqual([])
  expect(['done', 'rebuilt']).toContain(repaired.stopped)
  expect(applyPatch(bad, repaired.applied)).toEqual(repaired.procedure)
  const secondRepair = repairProcedure(repaired.procedure, sheet)
  expect([secondRepair.applied, secondRepair.fixed, secondRepair.procedure]).toEqual([
    [],
    [],
    repaired.procedure,
  ])
}
