import type { JsonPointer, Reason } from '../base/index.js'
import {
  isSameJson,
  joinPointer,
  quoteValue,
  readPointer,
  requireObject,
  splitPointer,
} from '../base/index.js'
import { type Measure, measureOf } from '../quantity/index.js'
import { specReason } from './codes.js'
import { readOverrides } from './findLeaves.js'
import { IDENTITY_FACTS, judgeFacts } from './judgeFacts.js'
import type { Identity, Leaf, LeafKind, Leaves } from './leaf.js'
import { findLeafRow, listLeafTypes } from './leafTable.js'
import type { Resolved, Trace } from './resolved.js'
import { resolveVariant } from './resolveVariant.js'
import type { SpecSheet } from './specSheet.js'
import type { Id, NotStated, SourceRef } from './specValue.js'

/**
 * Finds the figure of one machine at a pointer into its sheet: the base leaf, or the override that applies. It
 * does not check `appliesTo`, that is, whether the machine has the part.
 *
 * Method: for every possible variant of the machine, an override of this leaf replaces the base if its
 * condition is met. If all results are equal, that is the answer; else `cannot tell` with the candidates. If
 * two overrides apply at once, both are candidates, with the reason.
 * @param sheet The sheet.
 * @param identity The known facts of the machine.
 * @param kind The kind of leaf at `path`.
 * @param path Pointer to the leaf in the base sheet, such as `/gearcases/front/openings/drain/tightening`.
 * @returns `stated` with value and trace, `not stated` (also if the sheet has no leaf there), or `cannot tell` with the
 * missing facts and the candidates.
 * @throws RangeError if no leaf of that kind can be at `path`, or its part is not in the sheet; TypeError for a wrong kind
 * or argument.
 *
 * Source: house rule: an override replaces a whole leaf, with its printed figure and source.
 * @example
 * ```ts
 * import { resolveLeaf, type SpecSheet } from 'drivetrain-service/v1/spec'
 * const sheet: SpecSheet = {
 *   kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1',
 *   machine: {
 *     make: 'Invented', model: 'Example', type: 'carrier', axles: {}, supports: {},
 *     variants: { standard: { name: 'Standard', when: {} }, wide: { name: 'Wide track', when: {} } },
 *     mass: { kind: 'nominal', value: '640', unit: 'kg' },
 *   },
 *   sources: { manual: { title: 'Manual', document: 'owner manual' } }, gearcases: {}, services: {},
 *   overrides: [{
 *     when: { variants: ['wide'] },
 *     set: [{ kind: 'value', path: '/machine/mass', to: { kind: 'nominal', value: '655', unit: 'kg' } }],
 *     source: { ref: 'manual', confidence: 'read' },
 *   }],
 * }
 * // What does the wide variant weigh?
 * const mass = resolveLeaf(sheet, { variant: 'wide' }, 'value', '/machine/mass')
 * console.log(mass.kind === 'stated' && mass.value) // => { kind: 'nominal', value: '655', unit: 'kg' }
 * ```
 */
export function resolveLeaf<Kind extends LeafKind>(
  sheet: SpecSheet,
  identity: Identity,
  kind: Kind,
  path: JsonPointer,
): Resolved<Leaves[Kind]> {
  const base = readBaseLeaf(sheet, kind, path)
  const machine = resolveVariant(sheet, identity)
  const variants: readonly (Id | undefined)[] =
    machine.verdict === 'selected'
      ? [machine.variant]
      : machine.verdict === 'cannot tell' && machine.candidates.length > 0
        ? machine.candidates
        : [undefined]
  const matchingOverrides = findOverrides(sheet, path)
  const outcomes = variants.map((variant) =>
    chooseForVariant(variant, base, matchingOverrides, identity, kind, path),
  )
  const missing = new Set(outcomes.flatMap((outcome) => outcome.missing))
  const candidates = new Map<JsonPointer, Candidate>()
  for (const candidate of outcomes.flatMap((outcome) => outcome.candidates))
    if (!candidates.has(candidate.trace.path)) candidates.set(candidate.trace.path, candidate)
  const [first, ...others] = candidates.values()
  if (first === undefined) throw new RangeError(`path must point to a leaf, got ${JSON.stringify(path)}`)
  const value = withoutSource(first.value)
  const areEqual = others.every((other) => isSameJson(value, withoutSource(other.value)))
  if (areEqual && !outcomes.some((outcome) => outcome.clash)) {
    const params = { path, candidates: [...candidates.keys()] }
    const reasons = [
      ...(machine.verdict === 'selected' ? machine.reasons : []),
      ...first.trace.reasons,
      ...(others.length === 0 ? [] : [specReason('spec/candidates-agree', params)]),
    ]
    return makeResolved(first.value, { ...first.trace, reasons }) as Resolved<Leaves[Kind]>
  }
  if (variants.length > 1 && machine.verdict === 'cannot tell')
    for (const fact of machine.missing) missing.add(fact)
  return {
    kind: 'cannot tell',
    missing: IDENTITY_FACTS.filter((fact) => missing.has(fact)),
    candidates: [first, ...others] as readonly { readonly value: Leaves[Kind]; readonly trace: Trace }[],
  }
}

interface Candidate {
  readonly value: Leaf
  readonly trace: Trace
}

function readBaseLeaf(sheet: SpecSheet, kind: LeafKind, path: JsonPointer): Leaf | undefined {
  requireObject('sheet', sheet)
  if (!listLeafTypes().some((row) => row.kind === kind))
    throw new TypeError(
      `kind must be one of value, tightening, oils, seal, interval, place, position, drive, got ${quoteValue(kind)}`,
    )
  const tokens = splitPointer(path)
  if (tokens === undefined || findLeafRow(tokens)?.kind !== kind)
    throw new RangeError(`path must point to a leaf of kind ${kind}, got ${JSON.stringify(path)}`)
  if (readPointer(sheet, path.slice(0, path.lastIndexOf('/'))) === undefined)
    throw new RangeError(`path must point into a part of the sheet, got ${JSON.stringify(path)}`)
  return readPointer(sheet, path) as Leaf | undefined
}

function findOverrides(sheet: SpecSheet, path: JsonPointer) {
  return readOverrides(sheet).flatMap((override, overrideIndex) =>
    override.set.flatMap((entry, place) =>
      entry.path === path || entry.path.startsWith(`${path}/`)
        ? [{ path: joinPointer(['overrides', overrideIndex, 'set', place, 'to']), override, entry }]
        : [],
    ),
  )
}

/**
 * The candidates for a machine of one variant. There is a clash if two overrides apply at once, or one does
 * not fit.
 */
function chooseForVariant(
  variant: Id | undefined,
  base: Leaf | undefined,
  matchingOverrides: ReturnType<typeof findOverrides>,
  identity: Identity,
  kind: LeafKind,
  path: JsonPointer,
) {
  const measure = findLeafRow(splitPointer(path) ?? [])?.measure
  const judged = matchingOverrides
    .map((judgedOverride) => ({
      ...judgedOverride,
      fits:
        judgedOverride.entry.path === path &&
        judgedOverride.entry.kind === kind &&
        hasMeasure(judgedOverride.entry.to, measure),
      judgement: judgeFacts(
        judgedOverride.override.when,
        identity,
        variant === undefined ? undefined : [variant],
      ),
    }))
    .filter((judgedOverride) => judgedOverride.judgement.verdict !== 'no')
  const unsuitableOverrides = judged.filter((judgedOverride) => !judgedOverride.fits)
  const applicableOverrides = judged.filter(
    (judgedOverride) => judgedOverride.fits && judgedOverride.judgement.verdict === 'yes',
  )
  const possibleOverrides = judged.filter(
    (judgedOverride) => judgedOverride.fits && judgedOverride.judgement.verdict === 'cannot tell',
  )
  const overrides = applicableOverrides.map((judgedOverride) => judgedOverride.path)
  const warnings: readonly Reason[] = [
    ...(overrides.length > 1 ? [specReason('spec/overrides-overlap', { path, overrides })] : []),
    ...unsuitableOverrides.map((judgedOverride) =>
      specReason('spec/override-does-not-fit', { path: judgedOverride.path }),
    ),
  ]
  const candidate = (
    value: Leaf,
    at: JsonPointer,
    reasons: readonly Reason[],
    overrideSource?: SourceRef,
  ): Candidate => {
    const source = findSource(value) ?? overrideSource
    return { value, trace: { path: at, ...(source && { source }), reasons: [...reasons, ...warnings] } }
  }
  const code = base === undefined ? 'spec/leaf-absent' : 'spec/leaf-from-sheet'
  return {
    candidates: [
      ...(applicableOverrides.length > 0
        ? []
        : [candidate(base ?? NOT_STATED, path, [specReason(code, { path })])]),
      ...[...applicableOverrides, ...possibleOverrides].map(
        ({ path: at, override, entry, judgement: { verdict, reasons } }) => {
          const reasonCode = verdict === 'yes' ? 'spec/override-applies' : 'spec/override-may-apply'
          return candidate(entry.to, at, [specReason(reasonCode, { path: at }), ...reasons], override.source)
        },
      ),
    ],
    missing: judged.flatMap((judgedOverride) =>
      judgedOverride.judgement.verdict === 'cannot tell' ? judgedOverride.judgement.missing : [],
    ),
    clash: warnings.length > 0,
  }
}

/** Shapes accept any unit in the value of an override, because they do not know its leaf. */
function hasMeasure(leaf: Leaf, measure: Measure | undefined): boolean {
  return measure === undefined || !('unit' in leaf) || measureOf(leaf.unit) === measure
}

const NOT_STATED: NotStated = { kind: 'not stated' }

function findSource(leaf: Leaf): SourceRef | undefined {
  return leaf.source ?? (leaf.kind === 'torque' ? leaf.torque.source : undefined)
}

function withoutSource(leaf: Leaf): unknown {
  const { source: _source, ...figure } = leaf
  return figure
}

function makeResolved(value: Leaf, trace: Trace): Resolved<Leaf> {
  return value.kind === 'not stated' ? { kind: 'not stated', trace } : { kind: 'stated', value, trace }
}
