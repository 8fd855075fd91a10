import type { JsonPointer } from '../../base/index.js'
import { comparePrintedFigures, measureOf, type PrintedComparison } from '../../quantity/index.js'
import type {
  Condition,
  FoundLeaf,
  FoundValue,
  IntervalStated,
  OilChoice,
  OwnOilSpace,
  PrintedValue,
  Seal,
  Service,
  SpecSheet,
  SpecValue,
  StatedValue,
  Tightening,
} from '../../spec/index.js'
import { findLeaves, findStatedValues } from '../../spec/index.js'
import { listSheetParts, type SheetPart } from './listSheetParts.js'
import { type IdReference, listSheetReferences } from './listSheetReferences.js'
import { lookUp } from './lookUp.js'
import { makeLazy } from './makeLazy.js'
import { hasFigure, pickFirstPrinted } from './printedValues.js'

/**
 * The lists of a sheet that rules check, in the order of the document, overrides last. `path` is the pointer
 * in the document.
 */
export interface SheetIndex {
  readonly document: SpecSheet
  readonly leaves: readonly FoundLeaf[]
  /** Every stated value, including those inside leaves. */
  readonly values: readonly FoundValue[]
  /** Every printed value: the stated values and their `printed` entries. */
  readonly figures: readonly WithPath<{ figure: PrintedValue }>[]
  /** Printed conversions that differ from the first printed figure. */
  readonly disagreements: readonly Disagreement[]
  /** Openings, covers, filters and shields. */
  readonly parts: readonly SheetPart[]
  readonly tightenings: readonly WithPath<{ tightening: Tightening; on: SheetPart }>[]
  readonly seals: readonly WithPath<{ seal: Seal; on: SheetPart }>[]
  readonly oils: readonly WithPath<{ choices: readonly OilChoice[]; oilSpace: OwnOilSpace }>[]
  /** Every stated interval; `place` is its pointer, or the pointer that its override replaces. */
  readonly intervals: readonly WithPath<{ place: JsonPointer; interval: IntervalStated }>[]
  /** The intervals of each service, without overrides. */
  readonly schedules: readonly WithPath<Pick<Service, 'intervals'>>[]
  readonly conditions: readonly WithPath<{ condition: Condition }>[]
  /** Every reference to another part of the sheet by its id. */
  readonly references: readonly IdReference[]
  /** Pairs of values: on the base sheet, and with each override applied. */
  readonly pairs: (one: JsonPointer, other: JsonPointer) => readonly ValuePair[]
}

/** A part of a sheet with its pointer. */
type WithPath<Fields> = { readonly path: JsonPointer } & Readonly<Fields>

export function indexSheet(sheet: SpecSheet): SheetIndex {
  /** A leaf with its part, if it has one. */
  const withPart = <Fields>({ path, replaces: place = path }: FoundLeaf, fields: Fields) => {
    const holder = place.split('/', place.startsWith('/shields/') ? 3 : 5).join('/')
    const on = holder === place ? undefined : index.parts.find((part) => part.path === holder)
    return on === undefined ? [] : [{ path, ...fields, on }]
  }
  const index: SheetIndex = makeLazy<SheetIndex>({
    document: () => sheet,
    leaves: () => findLeaves(sheet),
    values: () => findStatedValues(sheet, index.leaves),
    figures: () =>
      index.values.flatMap(({ path, value }) => [
        { path, figure: value },
        ...(value.printed ?? []).map((figure, place) => ({ path: `${path}/printed/${place}`, figure })),
      ]),
    disagreements: () => index.values.flatMap(({ path, value }) => findDisagreements(path, value)),
    parts: () => listSheetParts(sheet),
    tightenings: () =>
      index.leaves.flatMap((found) =>
        found.kind === 'tightening' ? withPart(found, { tightening: found.leaf }) : [],
      ),
    seals: () =>
      index.leaves.flatMap((found) => (found.kind === 'seal' ? withPart(found, { seal: found.leaf }) : [])),
    oils: () =>
      index.leaves.flatMap(({ leaf, path, replaces }) => {
        if (leaf.kind !== 'oils') return []
        const oilSpace = lookUp(sheet.gearcases, (replaces ?? path).split('/')[2] ?? '')?.oilSpace
        return oilSpace?.kind === 'own' ? [{ path, choices: leaf.choices, oilSpace }] : []
      }),
    intervals: () =>
      index.leaves.flatMap(({ leaf, path, replaces }) =>
        leaf.kind === 'interval' ? [{ path, place: replaces ?? path, interval: leaf }] : [],
      ),
    schedules: () =>
      Object.entries(sheet.services).map(([id, { intervals }]) => ({
        path: `/services/${id}/intervals`,
        intervals,
      })),
    conditions: () => listConditions(sheet),
    references: () => listSheetReferences(sheet),
    pairs: () => (candidate, other) => pairValues(index.leaves, candidate, other),
  })
  return index
}

/** A printed conversion that differs from the first figure. */
type Disagreement = WithPath<{ first: PrintedValue; second: PrintedValue; agreement: PrintedComparison }>

/**
 * The printed conversions that differ from the first figure. If all the others agree with one another, the first is
 * wrong, and only the first is listed.
 */
function findDisagreements(path: JsonPointer, value: StatedValue): readonly Disagreement[] {
  const conversions = (value.printed ?? [])
    .map((second, place) => ({ second, path: `${path}/printed/${place}` }))
    .filter(({ second }) => measureOf(second.unit) === measureOf(value.unit))
    .filter(({ second }) => hasFigure(second) && hasFigure(value))
  const first = pickFirstPrinted(value)
  const found = conversions
    .map((conversion) => ({
      ...conversion,
      first,
      agreement: comparePrintedFigures(first, conversion.second),
    }))
    .filter(({ agreement }) => agreement.verdict !== 'agree')
  const [firstFound, ...others] = found
  const isFirstWrong =
    firstFound !== undefined &&
    others.length > 0 &&
    found.length === conversions.length &&
    others.every(({ second }) => comparePrintedFigures(firstFound.second, second).verdict === 'agree')
  return isFirstWrong ? [{ ...firstFound, path }] : found
}

/** Two stated values for the same machines, and the pointer of the one that the override sets. */
export type ValuePair = WithPath<{ one: StatedValue; other: StatedValue }>

/**
 * Pairs of two values of a sheet: one pair from the base sheet, and one for each override that sets either
 * value; the base sheet gives the other value.
 */
function pairValues(
  allLeaves: readonly FoundLeaf[],
  one: JsonPointer,
  other: JsonPointer,
): readonly ValuePair[] {
  const leaves = new Map<string, { readonly path: JsonPointer; readonly leaf: SpecValue }>()
  const overridePaths = new Set<string>()
  for (const found of allLeaves) {
    const place = found.replaces ?? found.path
    if (found.kind !== 'value' || (place !== one && place !== other)) continue
    const overridePath = findOverridePath(found.path)
    overridePaths.add(overridePath)
    if (!leaves.has(overridePath + place)) leaves.set(overridePath + place, found)
  }
  const findLeaf = (place: JsonPointer, overridePath: string) => leaves.get(overridePath + place)
  return [...overridePaths].flatMap((overridePath) => {
    const overridingLeaf = findLeaf(one, overridePath) ?? findLeaf(other, overridePath)
    const first = findLeaf(one, overridePath) ?? findLeaf(one, '')
    const second = findLeaf(other, overridePath) ?? findLeaf(other, '')
    if (overridingLeaf === undefined || first === undefined || second === undefined) return []
    if (first.leaf.kind === 'not stated' || second.leaf.kind === 'not stated') return []
    return [{ path: overridingLeaf.path, one: first.leaf, other: second.leaf }]
  })
}

/** The pointer of the override that contains a leaf; `''` for the base sheet. */
function findOverridePath(path: JsonPointer): string {
  return /^\/overrides\/[0-9]+/.exec(path)?.[0] ?? ''
}

/** Every condition of a sheet, in the order of the document. */
function listConditions(sheet: SpecSheet): SheetIndex['conditions'] {
  return [
    ...listConditionsIn('/machine/variants', sheet.machine.variants, 'when'),
    ...Object.entries(sheet.gearcases).flatMap(([id, gearcase]) => [
      ...listConditionsIn('/gearcases', { [id]: gearcase }, 'appliesTo'),
      ...listConditionsIn(`/gearcases/${id}/openings`, gearcase.openings, 'appliesTo'),
      ...listConditionsIn(`/gearcases/${id}/covers`, gearcase.covers, 'appliesTo'),
      ...listConditionsIn(`/gearcases/${id}/filters`, gearcase.filters, 'appliesTo'),
    ]),
    ...listConditionsIn('/shields', sheet.shields, 'appliesTo'),
    ...listConditionsIn('/services', sheet.services, 'appliesTo'),
    ...(sheet.overrides ?? []).map(({ when }, place) => ({
      path: `/overrides/${place}/when`,
      condition: when,
    })),
  ]
}

function listConditionsIn<Key extends 'when' | 'appliesTo'>(
  path: JsonPointer,
  record: Readonly<Record<string, { readonly [K in Key]?: Condition }>> | undefined,
  key: Key,
): SheetIndex['conditions'] {
  return Object.entries(record ?? {}).flatMap(([id, part]) => {
    const condition = part[key]
    return condition === undefined ? [] : [{ path: `${path}/${id}/${key}`, condition }]
  })
}
