import type { JsonPointer } from '../../base/index.js'
import {
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
  type Tightening,
} from '../../spec/index.js'
import { type DisagreementAt, disagreementsOf } from './disagreementsOf.js'
import { lazily } from './lazily.js'
import { lookUp } from './lookUp.js'
import { pairValues, type ValuePair } from './pairValues.js'
import { type ConditionAt, sheetConditions } from './sheetConditions.js'
import { type PartAt, sheetParts } from './sheetParts.js'
import { type ReferenceAt, sheetReferences } from './sheetReferences.js'

/**
 * What rules ask of a sheet, each list made once a sheet. All follow the document, its overrides last; `path` is
 * the place as written, and what an override replaces is found beside what it replaces.
 */
export interface SheetIndex {
  readonly document: SpecSheet
  /** Every leaf, with its kind. */
  readonly leaves: readonly FoundLeaf[]
  /** Every stated value, also those inside leaves. */
  readonly values: readonly FoundValue[]
  /** Every printed value: the stated ones and those printed beside them. */
  readonly figures: readonly FigureAt[]
  /** Printed values that disagree with the one they are printed beside. */
  readonly disagreements: readonly DisagreementAt[]
  /** What is opened and tightened: openings, covers and shields. */
  readonly parts: readonly PartAt[]
  readonly tightenings: readonly TighteningAt[]
  readonly seals: readonly SealAt[]
  readonly oils: readonly OilsAt[]
  /** Every stated interval. */
  readonly intervals: readonly IntervalAt[]
  /** The intervals of each service, side by side, without overrides. */
  readonly schedules: readonly ScheduleAt[]
  readonly conditions: readonly ConditionAt[]
  /** Every place that names another part of the sheet by its id. */
  readonly references: readonly ReferenceAt[]
  /** Two values side by side: as the sheet has them, and as each override leaves them. */
  readonly pairs: (one: JsonPointer, other: JsonPointer) => readonly ValuePair[]
}

interface FigureAt {
  readonly path: JsonPointer
  readonly figure: PrintedValue
}

interface TighteningAt {
  readonly path: JsonPointer
  readonly tightening: Tightening
  readonly on: PartAt
}

interface SealAt {
  readonly path: JsonPointer
  readonly seal: Seal
  readonly on: PartAt
}

export interface OilsAt {
  readonly path: JsonPointer
  readonly choices: readonly OilChoice[]
  readonly oilSpace: OwnOilSpace
}

interface IntervalAt {
  readonly path: JsonPointer
  /** The place that it is for: its own, or the one that an override replaces. */
  readonly place: JsonPointer
  readonly interval: IntervalStated
}

interface ScheduleAt {
  readonly path: JsonPointer
  readonly intervals: Service['intervals']
}

export function indexSheet(sheet: SpecSheet): SheetIndex {
  const partOf = (leaf: FoundLeaf): PartAt | undefined => {
    const place = leaf.replaces ?? leaf.path
    const holder = place.split('/', place.startsWith('/shields/') ? 3 : 5).join('/')
    return holder === place ? undefined : index.parts.find(({ path }) => path === holder)
  }
  const index: SheetIndex = lazily<SheetIndex>({
    document: () => sheet,
    leaves: () => findLeaves(sheet),
    values: () => findStatedValues(sheet),
    figures: () =>
      index.values.flatMap(({ path, value }): FigureAt[] => [
        { path, figure: value },
        ...(value.printed ?? []).map((figure, place) => ({ path: `${path}/printed/${place}`, figure })),
      ]),
    disagreements: () => index.values.flatMap(({ path, value }) => disagreementsOf(path, value)),
    parts: () => sheetParts(sheet),
    tightenings: () =>
      index.leaves.flatMap((found) => {
        if (found.kind !== 'tightening') return []
        const on = partOf(found)
        return on === undefined ? [] : [{ path: found.path, tightening: found.leaf, on }]
      }),
    seals: () =>
      index.leaves.flatMap((found) => {
        if (found.kind !== 'seal') return []
        const on = partOf(found)
        return on === undefined ? [] : [{ path: found.path, seal: found.leaf, on }]
      }),
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
