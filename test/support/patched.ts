import { applyPatch, type PatchOperation } from '../../src/base/applyPatch.js'
import type { SpecSheet } from '../../src/v1/spec.js'

/** A change of an example's sheet, such as `patched(replace('/machine/mass/value', '900'))`. */
export const patched =
  (...operations: readonly PatchOperation[]) =>
  (sheet: SpecSheet): SpecSheet =>
    applyPatch(sheet, operations) as SpecSheet

export const replace = (path: string, value: unknown): PatchOperation => ({ op: 'replace', path, value })

export const add = (path: string, value: unknown): PatchOperation => ({ op: 'add', path, value })
