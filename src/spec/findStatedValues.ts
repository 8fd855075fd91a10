import { type JsonPointer, joinPointer, requireTree, splitPointer } from '../base/index.js'
import { findLeaves } from './findLeaves.js'
import type { SpecSheet } from './specSheet.js'
import type { StatedValue } from './specValue.js'

/** A stated value with its unit and other printed figures. */
export interface FoundValue {
  readonly path: JsonPointer
  readonly value: StatedValue
}

/**
 * Every stated value of a sheet, including those inside leaves: torques, stages, bead widths, cure times.
 * `printed` entries stay with their value. Throws TypeError if a leaf is nested deeper than 32 levels.
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

function collectValues(holder: object, tokens: readonly (string | number)[], found: FoundValue[]): void {
  if ('kind' in holder && STATED_KINDS.includes(holder.kind)) {
    found.push({ path: joinPointer(tokens), value: holder as StatedValue })
    return
  }
  for (const [key, value] of Object.entries(holder))
    if (typeof value === 'object' && value !== null) collectValues(value, [...tokens, key], found)
}
