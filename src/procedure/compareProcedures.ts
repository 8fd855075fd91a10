import { asText, type Finding, type JsonPointer, joinPointer } from '../base/index.js'
import { type Id, type ProcedureDocument, requireDocument, type SpecSheet, type Step } from '../spec/index.js'
import type { ProcedureCodes } from './codes.js'
import { findTroubles } from './findTroubles.js'
import { readContext } from './readContext.js'
import type { ProcedureState } from './state.js'

export interface StateDifference {
  /** Pointer into the end state. */
  readonly path: JsonPointer
  readonly first: string
  readonly second: string
}

export interface Comparison {
  /** `same`: both have the same actions with the same figures, the same end state and the same findings. */
  readonly verdict: 'same' | 'different'
  readonly state: readonly StateDifference[]
  /** Ids of steps of the first procedure without a match in the second, and vice versa. */
  readonly onlyFirst: readonly Id[]
  readonly onlySecond: readonly Id[]
  /** Codes of the findings that only one of the two has. */
  readonly findings: { readonly onlyFirst: readonly string[]; readonly onlySecond: readonly string[] }
}

/**
 * Compares what two procedures do, for a writer who has changed one of them. Names, notes, ids, and changes
 * of order without effect are ignored.
 *
 * Method: compares the end states, the multisets of (action, part, instance, wheel mark, figures), and the
 * codes of the findings. The order of steps matters only if it changes the state or the findings.
 * @param first The first procedure.
 * @param second The second procedure.
 * @param sheet The sheet of both procedures.
 * @returns The differences; every list is empty if the verdict is `same`.
 * @throws TypeError if an argument is not a parsed procedure or sheet.
 *
 * Source: house rule: two procedures with the same end state and the same findings are the same work.
 * @example
 * import { compareProcedures } from 'drivetrain-service/v1/procedure'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: {}, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const first = { kind: 'procedure', version: '1.0', id: 'p', name: 'P', sheet: { id: 'example', revision: '1' }, identity: {}, services: [], steps: [{ id: 'a', do: 'read the manual' }, { id: 'b', do: 'stop the engine' }] } as const
 * const second = { ...first, steps: first.steps.toReversed() }
 * // Does it matter whether the manual is read before or after the engine is stopped?
 * compareProcedures(first, second, sheet).verdict // => 'same'
 */
export function compareProcedures(
  first: ProcedureDocument,
  second: ProcedureDocument,
  sheet: SpecSheet,
): Comparison {
  requireDocument('first', first, 'procedure')
  requireDocument('second', second, 'procedure')
  requireDocument('sheet', sheet, 'spec-sheet')
  const [one, other] = [runProcedure(first, sheet), runProcedure(second, sheet)]
  const state = listDifferences(sortLists(one.end), sortLists(other.end), '')
  const onlyFirst = subtract(first.steps, second.steps, describeStep).map(({ id }) => id)
  const onlySecond = subtract(second.steps, first.steps, describeStep).map(({ id }) => id)
  const findings = {
    onlyFirst: subtract(one.findings, other.findings, describeFinding).map(({ code }) => code),
    onlySecond: subtract(other.findings, one.findings, describeFinding).map(({ code }) => code),
  }
  const lists = [state, onlyFirst, onlySecond, findings.onlyFirst, findings.onlySecond]
  const verdict = lists.every((list) => list.length === 0) ? 'same' : 'different'
  return { verdict, state, onlyFirst, onlySecond, findings }
}

/** The state after the last step, and the findings without fixes. */
function runProcedure(
  procedure: ProcedureDocument,
  sheet: SpecSheet,
): { readonly end: ProcedureState; readonly findings: readonly Finding<ProcedureCodes>[] } {
  const { context, findings } = readContext(procedure, sheet)
  const { troubles, end } = findTroubles(sheet, context, procedure)
  return { end, findings: [...findings, ...troubles.map(({ finding }) => finding)] }
}

function describeStep(step: Step): string {
  const values = Object.entries(step.values ?? {}).sort(([one], [other]) => (one < other ? -1 : 1))
  const facts: readonly unknown[] = [
    step.do,
    step.on,
    step.at?.instance,
    step.at?.wheelMark,
    ...values.flat(),
  ]
  return JSON.stringify(facts.map((fact) => (typeof fact === 'bigint' ? String(fact) : asText(fact))))
}

/** A finding without the id and place of its step. */
function describeFinding(finding: Finding): string {
  const { step: _step, ...params } = finding.params
  return JSON.stringify([finding.code, finding.related?.map((place) => place.path), params])
}

/** Items of the first list without a match in the second; each match is used once. */
function subtract<T>(
  items: readonly T[],
  others: readonly T[],
  describeItem: (item: T) => string,
): readonly T[] {
  const counts = new Map<string, number>()
  for (const item of others) counts.set(describeItem(item), (counts.get(describeItem(item)) ?? 0) + 1)
  return items.filter((item) => {
    const count = counts.get(describeItem(item)) ?? 0
    counts.set(describeItem(item), count - 1)
    return count <= 0
  })
}

/** Sorts the lists in a state, since their order has no meaning. */
function sortLists(value: unknown): unknown {
  if (Array.isArray(value)) return [...value].sort()
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, sortLists(one)]))
}

function listDifferences(first: unknown, second: unknown, path: JsonPointer): readonly StateDifference[] {
  if (isRecord(first) && isRecord(second)) {
    const keys = [...new Set([...Object.keys(first), ...Object.keys(second)])]
    return keys.flatMap((key) => listDifferences(first[key], second[key], `${path}${joinPointer([key])}`))
  }
  const [one, other] = [formatValue(first), formatValue(second)]
  return one === other ? [] : [{ path, first: one, second: other }]
}

function formatValue(value: unknown): string {
  return typeof value === 'string' ? value : (JSON.stringify(value) ?? 'not there')
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
