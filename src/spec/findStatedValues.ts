import { type JsonPointer, joinPointer, requireTree, splitPointer } from '../base/index.js'
import { findLeaves } from './findLeaves.js'
import type { StatedValue } from './leaf.js'
import type { SpecSheet } from './specSheet.js'

/** A stated value with its unit and the other figures printed with it. */
export interface FoundValue {
  readonly path: JsonPointer
  readonly value: StatedValue
}

/**
 * Lists every stated value of a sheet, also those inside leaves, such as torques, stages, bead widths and cure
 * times. For checks of printed figures. Whole leaves are listed by {@link findLeaves}.
 *
 * Equation: every object inside a leaf whose kind is `nominal`, `nominal with tolerance` or `limits`; the entries of
 * `printed` stay with their value.
 * @param sheet A sheet of the right shape.
 * @returns Values in the order of {@link findLeaves}, each with its pointer.
 * @throws TypeError when `sheet` is no object, or one of its leaves is nested deeper than 32 levels.
 *
 * Source: house rule: a figure hidden inside a leaf is checked like any other.
 * @example
 * ```ts
 * import { findStatedValues } from 'drivetrain-service/v1/spec'
 * const machine = { mass: { kind: 'nominal', value: '640', unit: 'kg' }, variants: {}, axles: {}, supports: {} }
 * // What units does the sheet use?
 * console.log(findStatedValues({ machine }).map((found) => found.value.unit)) // => ['kg']
 * ```
 */
export function findStatedValues(sheet: SpecSheet): readonly FoundValue[] {
  const found: FoundValue[] = []
  for (const { leaf, path } of findLeaves(sheet)) {
    requireTree(path, leaf)
    collectValues(leaf, splitPointer(path) ?? [], found)
  }
  return found
}

const STATED_KINDS: readonly unknown[] = ['nominal', 'nominal with tolerance', 'limits']

function collectValues(here: object, tokens: readonly (string | number)[], found: FoundValue[]): void {
  if ('kind' in here && STATED_KINDS.includes(here.kind)) {
    found.push({ path: joinPointer(tokens), value: here as StatedValue })
    return
  }
  for (const [key, value] of Object.entries(here))
    if (typeof value === 'object' && value !== null) collectValues(value, [...tokens, key], found)
}
