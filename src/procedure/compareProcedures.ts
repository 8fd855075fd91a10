import { asText, type Finding, type JsonPointer } from '../base/index.js'
import { type Id, type ProcedureDocument, requireDocument, type SpecSheet, type Step } from '../spec/index.js'
import { simulateProcedure } from './simulateProcedure.js'

export interface StateDifference {
  /** Pointer into the end state. */
  readonly path: JsonPointer
  readonly first: string
  readonly second: string
}

export interface Comparison {
  /** Both leave the machine in the same state, do the same things with the same figures, and are as safe. */
  readonly sameEffect: boolean
  readonly state: readonly StateDifference[]
  /** Ids of steps of the first that the second has no match for, and the other way round. */
  readonly onlyFirst: readonly Id[]
  readonly onlySecond: readonly Id[]
  /** Findings that only one of the two has, by code. */
  readonly findings: { readonly onlyFirst: readonly string[]; readonly onlySecond: readonly string[] }
}

/**
 * Compares two orders of work by what they do, for a writer who has changed one and wants to know what that changes.
 * Not for a text comparison: names, notes, ids and an order that makes no difference do not count.
 *
 * Equation: end state against end state, the bag of (action, part, instance, wheel mark, figures) against the other
 * bag, and the codes of the findings against the others. Order counts only through what it does to the state and the
 * findings.
 * @param first One procedure.
 * @param second The other.
 * @param sheet The sheet that both point into.
 * @returns What differs; nothing at all differs when `sameEffect` is true.
 * @throws TypeError where the arguments are no parsed procedures and sheet.
 *
 * Source: house rule: two orders that leave the same machine and break the same rules are the same work.
 * @example
 * import { compareProcedures } from 'drivetrain-service/v1/procedure'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: {}, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} }
 * const [manual, stop] = [{ id: 'a', do: 'read the manual' }, { id: 'b', do: 'stop the engine' }]
 * const write = (steps) => ({ kind: 'procedure', version: '1.0', id: 'p', name: 'P', sheet: { id: 'example', revision: '1' }, identity: {}, services: [], steps })
 * // Does it matter whether the manual is read before or after the engine is stopped?
 * compareProcedures(write([manual, stop]), write([stop, manual]), sheet).sameEffect // => true
 */
export function compareProcedures(
  first: ProcedureDocument,
  second: ProcedureDocument,
  sheet: SpecSheet,
): Comparison {
  requireDocument('first', first, 'procedure')
  requireDocument('second', second, 'procedure')
  requireDocument('sheet', sheet, 'spec-sheet')
  const [one, other] = [simulateProcedure(first, sheet), simulateProcedure(second, sheet)]
  const state = listDifferences(sortLists(one.end), sortLists(other.end), '')
  const steps = subtract(first.steps, second.steps, describe)
  const back = subtract(second.steps, first.steps, describe)
  const findings = subtract(one.findings, other.findings, tellFinding)
  const findingsBack = subtract(other.findings, one.findings, tellFinding)
  return {
    sameEffect: [state, steps, back, findings, findingsBack].every((list) => list.length === 0),
    state,
    onlyFirst: steps.map((step) => step.id),
    onlySecond: back.map((step) => step.id),
    findings: {
      onlyFirst: findings.map((finding) => finding.code),
      onlySecond: findingsBack.map((finding) => finding.code),
    },
  }
}

function describe(step: Step): string {
  const values = Object.entries(step.values ?? {}).sort(([one], [other]) => (one < other ? -1 : 1))
  const said: readonly unknown[] = [step.do, step.on, step.at?.instance, step.at?.wheelMark, ...values.flat()]
  return JSON.stringify(said.map(asText))
}

/** A finding without the id and place of its step. */
function tellFinding(finding: Finding): string {
  const { step: _step, ...params } = finding.params
  return JSON.stringify([finding.code, finding.related?.map((place) => place.path), params])
}

/** Items of the first list that the second has no match for, each match used once. */
function subtract<T>(
  from: readonly T[],
  taken: readonly T[],
  describeItem: (item: T) => string,
): readonly T[] {
  const left = new Map<string, number>()
  for (const item of taken) left.set(describeItem(item), (left.get(describeItem(item)) ?? 0) + 1)
  return from.filter((item) => {
    const count = left.get(describeItem(item)) ?? 0
    left.set(describeItem(item), count - 1)
    return count <= 0
  })
}

/** Lists in a state are sets. */
function sortLists(value: unknown): unknown {
  if (Array.isArray(value)) return [...value].sort()
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, sortLists(one)]))
}

function listDifferences(first: unknown, second: unknown, path: JsonPointer): readonly StateDifference[] {
  if (isRecord(first) && isRecord(second)) {
    const keys = [...new Set([...Object.keys(first), ...Object.keys(second)])]
    return keys.flatMap((key) =>
      listDifferences(first[key], second[key], `${path}/${key.replaceAll('~', '~0').replaceAll('/', '~1')}`),
    )
  }
  const [one, other] = [say(first), say(second)]
  return one === other ? [] : [{ path, first: one, second: other }]
}

function say(value: unknown): string {
  return typeof value === 'string' ? value : (JSON.stringify(value) ?? 'not there')
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
