import type { JsonPointer } from '../../base/index.js'
import { measureOf, type PrintedAgreement, printedFiguresAgree } from '../../quantity/index.js'
import {
  type Condition,
  type FoundLeaf,
  type FoundValue,
  findLeaves,
  findStatedValues,
  type IntervalStated,
  type OilChoice,
  type OwnOilSpace,
  type PrintedValue,
  type Seal,
  type Service,
  type SpecSheet,
  type SpecValue,
  type StatedValue,
  type Tightening,
} from '../../spec/index.js'
import { firstPrinted } from './firstPrinted.js'
import { hasFigure } from './hasFigure.js'
import { lookUp } from './lookUp.js'
import { makeLazy } from './makeLazy.js'
import { type PartAt, sheetParts } from './sheetParts.js'
import { type ReferenceAt, sheetReferences } from './sheetReferences.js'

/**
 * The lists of a sheet that rules judge, in the order of the document, overrides last. `path` is the place in the
 * document.
 */
export interface SheetIndex {
  readonly document: SpecSheet
  readonly leaves: readonly FoundLeaf[]
  /** Every stated value, including those inside leaves. */
  readonly values: readonly FoundValue[]
  /** Every printed value: the stated values and the entries of their `printed`. */
  readonly figures: readonly At<{ figure: PrintedValue }>[]
  /** Printed values that disagree with the first figure of the same value. */
  readonly disagreements: readonly DisagreementAt[]
  /** Openings, covers, filters and shields. */
  readonly parts: readonly PartAt[]
  readonly tightenings: readonly At<{ tightening: Tightening; on: PartAt }>[]
  readonly seals: readonly At<{ seal: Seal; on: PartAt }>[]
  readonly oils: readonly At<{ choices: readonly OilChoice[]; oilSpace: OwnOilSpace }>[]
  /** Every stated interval; `place` is its place, or the one that its override replaces. */
  readonly intervals: readonly At<{ place: JsonPointer; interval: IntervalStated }>[]
  /** The intervals of each service, without overrides. */
  readonly schedules: readonly At<Pick<Service, 'intervals'>>[]
  readonly conditions: readonly At<{ condition: Condition }>[]
  /** Every place that names another part of the sheet by its id. */
  readonly references: readonly ReferenceAt[]
  /** Pairs of two values: on the base sheet, and after each override. */
  readonly pairs: (one: JsonPointer, other: JsonPointer) => readonly ValuePair[]
}

/** A part of a sheet with its place. */
type At<Extra> = { readonly path: JsonPointer } & Readonly<Extra>

export function indexSheet(sheet: SpecSheet): SheetIndex {
  /** A leaf with the part that it is on, if there is one. */
  const onPart = <Extra>({ path, replaces: place = path }: FoundLeaf, extra: Extra) => {
    const holder = place.split('/', place.startsWith('/shields/') ? 3 : 5).join('/')
    const on = holder === place ? undefined : index.parts.find((part) => part.path === holder)
    return on === undefined ? [] : [{ path, ...extra, on }]
  }
  const index: SheetIndex = makeLazy<SheetIndex>({
    document: () => sheet,
    leaves: () => findLeaves(sheet),
    values: () => findStatedValues(sheet),
    figures: () =>
      index.values.flatMap(({ path, value }) => [
        { path, figure: value },
        ...(value.printed ?? []).map((figure, place) => ({ path: `${path}/printed/${place}`, figure })),
      ]),
    disagreements: () => index.values.flatMap(({ path, value }) => disagreementsOf(path, value)),
    parts: () => sheetParts(sheet),
    tightenings: () =>
      index.leaves.flatMap((found) =>
        found.kind === 'tightening' ? onPart(found, { tightening: found.leaf }) : [],
      ),
    seals: () =>
      index.leaves.flatMap((found) => (found.kind === 'seal' ? onPart(found, { seal: found.leaf }) : [])),
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
    conditions: () => sheetConditions(sheet),
    references: () => sheetReferences(sheet),
    pairs: () => (one, other) => pairValues(index.leaves, one, other),
  })
  return index
}

/** A printed value that disagrees with the first. */
type DisagreementAt = At<{ first: PrintedValue; second: PrintedValue; agreement: PrintedAgreement }>

/**
 * The printed values that disagree with the first. If all others agree with one another, the first is the wrong one, and
 * the only one listed.
 */
function disagreementsOf(path: JsonPointer, value: StatedValue): readonly DisagreementAt[] {
  const seconds = (value.printed ?? [])
    .map((second, place) => ({ second, path: `${path}/printed/${place}` }))
    .filter(({ second }) => measureOf(second.unit) === measureOf(value.unit))
    .filter(({ second }) => hasFigure(second) && hasFigure(value))
  const first = firstPrinted(value)
  const found = seconds
    .map((one) => ({ ...one, first, agreement: printedFiguresAgree(first, one.second) }))
    .filter(({ agreement }) => agreement.verdict !== 'agree')
  const [firstFound, ...others] = found
  const isFirstWrong =
    firstFound !== undefined &&
    others.length > 0 &&
    found.length === seconds.length &&
    others.every(({ second }) => printedFiguresAgree(firstFound.second, second).verdict === 'agree')
  return isFirstWrong ? [{ ...firstFound, path }] : found
}

/** Two stated values for the same machines, and the place of the one that this block sets. */
export type ValuePair = At<{ one: StatedValue; other: StatedValue }>

/**
 * Pairs of two values of a sheet: one of the base sheet, and one for each override that sets either of them, with the
 * base value for what it does not set.
 */
function pairValues(all: readonly FoundLeaf[], one: JsonPointer, other: JsonPointer): readonly ValuePair[] {
  const leaves = new Map<string, { readonly path: JsonPointer; readonly leaf: SpecValue }>()
  const blocks = new Set<string>()
  for (const found of all) {
    const place = found.replaces ?? found.path
    if (found.kind !== 'value' || (place !== one && place !== other)) continue
    const block = blockOf(found.path)
    blocks.add(block)
    if (!leaves.has(block + place)) leaves.set(block + place, found)
  }
  const leafAt = (place: JsonPointer, block: string) => leaves.get(block + place)
  return [...blocks].flatMap((block) => {
    const setLeaf = leafAt(one, block) ?? leafAt(other, block)
    const first = leafAt(one, block) ?? leafAt(one, '')
    const second = leafAt(other, block) ?? leafAt(other, '')
    if (setLeaf === undefined || first === undefined || second === undefined) return []
    if (first.leaf.kind === 'not stated' || second.leaf.kind === 'not stated') return []
    return [{ path: setLeaf.path, one: first.leaf, other: second.leaf }]
  })
}

/** The override that a leaf is in; `''` for the base sheet. */
function blockOf(path: JsonPointer): string {
  return /^\/overrides\/[0-9]+/.exec(path)?.[0] ?? ''
}

/** Every condition of a sheet, in the order of the document. */
function sheetConditions(sheet: SpecSheet): SheetIndex['conditions'] {
  return [
    ...conditionsOf('/machine/variants', sheet.machine.variants, 'when'),
    ...Object.entries(sheet.gearcases).flatMap(([id, gearcase]) => [
      ...conditionsOf('/gearcases', { [id]: gearcase }, 'appliesTo'),
      ...conditionsOf(`/gearcases/${id}/openings`, gearcase.openings, 'appliesTo'),
      ...conditionsOf(`/gearcases/${id}/covers`, gearcase.covers, 'appliesTo'),
      ...conditionsOf(`/gearcases/${id}/filters`, gearcase.filters, 'appliesTo'),
    ]),
    ...conditionsOf('/shields', sheet.shields, 'appliesTo'),
    ...conditionsOf('/services', sheet.services, 'appliesTo'),
    ...(sheet.overrides ?? []).map(({ when }, place) => ({
      path: `/overrides/${place}/when`,
      condition: when,
    })),
  ]
}

function conditionsOf<Key extends 'when' | 'appliesTo'>(
  path: JsonPointer,
  record: Readonly<Record<string, { readonly [K in Key]?: Condition }>> | undefined,
  key: Key,
): SheetIndex['conditions'] {
  return Object.entries(record ?? {}).flatMap(([id, part]) => {
    const condition = part[key]
    return condition === undefined ? [] : [{ path: `${path}/${id}/${key}`, condition }]
  })
}
