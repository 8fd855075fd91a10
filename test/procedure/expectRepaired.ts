import { expect } from 'vitest'
import { applyPatch } from '../../src/base/applyPatch.js'
import { repairProcedure } from '../../src/v1/procedure.js'
import type { Broken } from './brokenProcedures.js'

/** The repair leaves no finding, reports exactly its changes, and a second repair changes nothing. */
export function expectRepaired({ sheet, bad }: Broken): void {
  const repair = repairProcedure(bad, sheet)
  expect(repair.left).toEqual([])
  expect(['done', 'rebuilt']).toContain(repair.stopped)
  expect(applyPatch(bad, repair.applied)).toEqual(repair.procedure)
  const secondRepair = repairProcedure(repair.procedure, sheet)
  expect([secondRepair.applied, secondRepair.fixed, secondRepair.procedure]).toEqual([
    [],
    [],
    repair.procedure,
  ])
}
