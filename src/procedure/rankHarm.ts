import type { ProcedureCodes } from './codes.js'

type ProcedureCode = keyof ProcedureCodes

/** Mistakes that can hurt a person: the machine moves, falls, runs or turns. */
const INJURY_CODES: readonly ProcedureCode[] = [
  'procedure/engine-running',
  'procedure/wheels-not-chocked',
  'procedure/chocks-on-lifted-wheels',
  'procedure/axle-not-chocked',
  'procedure/jack-as-support',
  'procedure/ramps-and-jack',
  'procedure/ramps-not-permitted',
  'procedure/machine-not-secured',
  'procedure/machine-not-secured-for-run',
  'procedure/guard-not-refitted',
  'procedure/run-on-stands',
  'procedure/machine-not-on-level-ground',
  'procedure/wheel-not-clear',
  'procedure/machine-not-raised',
  'procedure/drain-not-raised',
  'procedure/machine-not-lowered',
  'procedure/protection-not-worn',
  'procedure/manual-not-read',
]

/** Mistakes that strand or ruin the machine, or let oil onto the ground. */
const DAMAGE_CODES: readonly ProcedureCode[] = [
  'procedure/no-pan',
  'procedure/lowered-with-drain-open',
  'procedure/fill-not-cracked',
  'procedure/fill-not-vented',
  'procedure/breather-not-cleared',
  'procedure/hose-not-empty',
  'procedure/leaks-not-checked',
  'procedure/leaks-not-checked-after-run',
  'procedure/part-not-tightened',
  'procedure/driven-with-plug-loose',
  'procedure/drain-not-tightened',
  'procedure/run-without-oil',
  'procedure/oil-not-refilled',
  'procedure/oil-poured-twice',
  'procedure/machine-must-not-run',
  'procedure/wheel-turned-with-plug-out',
  'procedure/chocks-or-pan-in-place',
  'procedure/used-oil-left',
  'procedure/shield-left-off',
]

/** Mistakes in how a step is written; if only one answer is possible, it is filled in. */
export const REFERENCE_CODES: readonly ProcedureCode[] = [
  'procedure/duplicate-step-id',
  'procedure/instance-missing',
  'procedure/unknown-instance',
  'procedure/figure-missing',
  'procedure/wrong-figure',
  'procedure/dangling-pointer',
]

/**
 * The harm of a mistake: 0 to a person; 1 to the machine or the ground; 2 to the quality of the work; 3 to
 * the record; 4 only in how a step is written.
 */
export function rankHarm(code: ProcedureCode): number {
  if (INJURY_CODES.includes(code)) return 0
  if (DAMAGE_CODES.includes(code)) return 1
  if (REFERENCE_CODES.includes(code)) return 4
  return code === 'procedure/work-not-recorded' ? 3 : 2
}
