import {
  isSameJson,
  type JsonPointer,
  joinPointer,
  readPointer,
  requireShape,
  requireTree,
  splitPointer,
} from '../base/index.js'
import { type FoundLeaf, findLeaves } from './findLeaves.js'
import type { Leaf, LeafKind } from './leaf.js'
import type { SpecSheet } from './specSheet.js'

/** A leaf of either sheet. */
export interface LeafAt {
  readonly path: JsonPointer
  readonly leaf: Leaf
}

/** A difference of a leaf. `of` is the leaf's pointer in the base sheet, also for a leaf in an override. */
export interface LeafChange {
  readonly change: 'added' | 'removed' | 'changed' | 'source only'
  readonly kind: LeafKind
  readonly of: JsonPointer
  readonly from?: LeafAt
  readonly to?: LeafAt
}

/** A difference that is not in a figure: a name, a thread, a drive size, a part. */
export interface FactChange {
  readonly change: 'added' | 'removed' | 'changed'
  readonly path: JsonPointer
  readonly from?: unknown
  readonly to?: unknown
}

export interface SheetDifference {
  readonly leaves: readonly LeafChange[]
  readonly facts: readonly FactChange[]
}

/**
 * Lists the differences between two sheets, or between two revisions of a sheet. For the figures of one machine, use
 * {@link resolveLeaf} on each sheet.
 *
 * Method: leaves are paired by pointer, those of overrides also by condition, so the order of overrides does
 * not matter. All other values are paired by pointer.
 * @param from The earlier sheet.
 * @param to The later sheet.
 * @returns Added, removed and changed leaves and other facts; `source only` if only the source changed.
 * @throws TypeError if an argument is not an object, or is nested deeper than 32 levels, which no parsed
 * sheet is.
 *
 * Source: house rule: a figure is compared as printed, so `10` and `10.0` differ.
 * @example
 * ```ts
 * import { diffSheets, type SpecSheet } from 'drivetrain-service/v1/spec'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: {}, axles: {}, supports: {} }
 * const sheet: SpecSheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} }
 * const sheetWith = (value: string): SpecSheet => ({ ...sheet, machine: { ...machine, mass: { kind: 'nominal', value, unit: 'kg' } } })
 * // Which figures changed?
 * console.log(diffSheets(sheetWith('640'), sheetWith('655')).leaves.map((leaf) => leaf.of)) // => ['/machine/mass']
 * ```
 */
export function diffSheets(from: SpecSheet, to: SpecSheet): SheetDifference {
  requireShape('from', from, {})
  requireShape('to', to, {})
  requireTree('from', from)
  requireTree('to', to)
  const earlierLeaves = indexLeaves(from)
  const laterLeaves = indexLeaves(to)
  const leaves: LeafChange[] = []
  for (const [key, found] of earlierLeaves) {
    const { kind, path, leaf } = found
    const of = found.replaces ?? path
    const laterLeaf = laterLeaves.get(key)
    if (laterLeaf === undefined) leaves.push({ change: 'removed', kind, of, from: { path, leaf } })
    else if (!isSameJson(leaf, laterLeaf.leaf)) {
      const hasSameFigure = isSameJson(withoutSources(leaf), withoutSources(laterLeaf.leaf))
      const change = hasSameFigure ? 'source only' : 'changed'
      leaves.push({
        change,
        kind,
        of,
        from: { path, leaf },
        to: { path: laterLeaf.path, leaf: laterLeaf.leaf },
      })
    }
  }
  for (const [key, { kind, path, leaf, replaces }] of laterLeaves)
    if (!earlierLeaves.has(key))
      leaves.push({ change: 'added', kind, of: replaces ?? path, to: { path, leaf } })
  return { leaves, facts: diffFacts(listFacts(from), listFacts(to)) }
}

function indexLeaves(sheet: SpecSheet): ReadonlyMap<string, FoundLeaf> {
  const leavesByKey = new Map<string, FoundLeaf>()
  for (const found of findLeaves(sheet)) {
    const when =
      found.replaces === undefined
        ? null
        : readPointer(sheet, joinPointer([...(splitPointer(found.path) ?? []).slice(0, 2), 'when']))
    const baseKey = JSON.stringify([found.kind, found.replaces ?? found.path, sortKeys(when)])
    let key = baseKey
    for (let number = 2; leavesByKey.has(key); number++) key = `${baseKey}#${number}`
    leavesByKey.set(key, found)
  }
  return leavesByKey
}

function sortKeys(value: unknown): unknown {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value
  return Object.entries(value)
    .toSorted(([first], [second]) => (first < second ? -1 : 1))
    .map(([key, inner]) => [key, sortKeys(inner)])
}

function withoutSources(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutSources)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, inner]) => (key === 'source' ? [] : [[key, withoutSources(inner)]])),
  )
}

/** All values outside leaves and overrides, by pointer. */
function listFacts(sheet: SpecSheet): ReadonlyMap<JsonPointer, unknown> {
  const { overrides: _overrides, ...baseSheet } = sheet
  const leaves = new Set(findLeaves(baseSheet).map((found) => found.path))
  const facts = new Map<JsonPointer, unknown>()
  const collectFacts = (value: unknown, path: JsonPointer): void => {
    if (leaves.has(path)) return
    const entries = typeof value === 'object' && value !== null ? Object.entries(value) : []
    if (entries.length === 0) facts.set(path, value)
    for (const [key, inner] of entries) collectFacts(inner, `${path}${joinPointer([key])}`)
  }
  collectFacts(baseSheet, '')
  return facts
}

function diffFacts(
  earlierFacts: ReadonlyMap<JsonPointer, unknown>,
  laterFacts: ReadonlyMap<JsonPointer, unknown>,
): readonly FactChange[] {
  const facts: FactChange[] = []
  for (const [path, from] of earlierFacts) {
    if (!laterFacts.has(path)) facts.push({ change: 'removed', path, from })
    else if (!isSameJson(from, laterFacts.get(path)))
      facts.push({ change: 'changed', path, from, to: laterFacts.get(path) })
  }
  for (const [path, to] of laterFacts) if (!earlierFacts.has(path)) facts.push({ change: 'added', path, to })
  return facts
}
