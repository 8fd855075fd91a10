import type { Measure, UnitOf } from '../quantity/index.js'
import type { Leaf, LeafKind, Leaves, NotStated } from './leaf.js'
import type { SpecSheet } from './specSheet.js'

/** What a leaf is for, for readers of plans and cards. */
export type LeafRole =
  | 'refill'
  | 'dry fill'
  | 'oils'
  | 'tightening'
  | 'seal'
  | 'place'
  | 'interval'
  | 'drain temperature'
  | 'level'
  | 'mass'

/** Every field of the interfaces that holds a whole leaf, as its place with `*` for any key or list place. */
type Fields<T, Place extends string> = {
  [Key in keyof T & string]-?: Visit<NonNullable<T[Key]>, `${Place}/${string extends Key ? '*' : Key}`>
}[keyof T & string]
type Visit<T, Place extends string> = [T] extends [Leaf]
  ? { readonly place: Place; readonly leaf: T }
  : T extends readonly (infer Entry)[]
    ? Visit<Entry, `${Place}/*`>
    : T extends object
      ? Fields<T, Place>
      : never
/** Overrides hold leaves of any place; these are the places that they may name. */
type LeafFields<Sheet> = Fields<Omit<Sheet, 'overrides'>, ''>
export type LeafPlace = keyof LeafTableOf<SpecSheet>
/** The rest of the places that begin so, for showing the leaves of a part. */
export type LeafBelow<Part extends string> = LeafPlace extends infer Place
  ? Place extends `${Part}${infer Rest}`
    ? Rest
    : never
  : never

type KindOf<L> = { [Kind in LeafKind]: [L] extends [Leaves[Kind]] ? Kind : never }[LeafKind]
type MeasureOf<L> = {
  [M in Measure]: Exclude<L, NotStated> extends { readonly unit: UnitOf<M> } ? M : never
}[Measure]

interface LeafRow<Kind extends LeafKind = LeafKind, Its extends Measure = Measure> {
  readonly kind: Kind
  readonly role: LeafRole
  /** What a single value measures; absent for leaves that hold more than one value, or none. */
  readonly measure?: Its
  /**
   * When a visit reads the leaf: with the machine, with each `gearcase` of the work, with the `part` that a step is
   * about, only where a `step` names it, or for the `due` point.
   */
  readonly read: 'machine' | 'gearcase' | 'part' | 'step' | 'due'
  /** For `part`: the rest of the place, below the part. */
  readonly below?: string
}

type RowOf<L> = LeafRow<KindOf<L>, MeasureOf<L>> &
  (KindOf<L> extends 'value' ? { readonly measure: MeasureOf<L> } : unknown)

/** One row for every leaf of a sheet's interface, of its kind and measure. */
export type LeafTableOf<Sheet> = TableOf<LeafFields<Sheet>>
type TableOf<Found> = {
  readonly [Field in Found as Field extends { readonly place: infer Place extends string }
    ? Place
    : never]: Field extends { readonly leaf: infer L } ? RowOf<L> : never
}

/**
 * Every leaf of a sheet, once. A field of the interfaces without a row, a row without a field, and a row of another
 * kind or measure do not compile; the shapes are proved equal to the interfaces. What is inside a leaf, such as the
 * torque of a tightening, is replaced with its leaf and is no leaf of its own.
 */
export const LEAF_TABLE: LeafTableOf<SpecSheet> = {
  '/gearcases/*/oilSpace/oils': { kind: 'oils', role: 'oils', read: 'gearcase' },
  '/gearcases/*/oilSpace/fill/drainAndRefill': {
    kind: 'value',
    role: 'refill',
    measure: 'volume',
    read: 'gearcase',
  },
  '/gearcases/*/drainTemperature': {
    kind: 'value',
    role: 'drain temperature',
    measure: 'temperature',
    read: 'gearcase',
  },
  '/gearcases/*/oilSpace/fill/method/below': {
    kind: 'value',
    role: 'level',
    measure: 'length',
    read: 'gearcase',
  },
  '/gearcases/*/oilSpace/fill/level/temperature': {
    kind: 'value',
    role: 'level',
    measure: 'temperature',
    read: 'gearcase',
  },
  '/gearcases/*/oilSpace/fill/level/minutesAfterStop': {
    kind: 'value',
    role: 'level',
    measure: 'duration',
    read: 'gearcase',
  },
  '/gearcases/*/oilSpace/fill/dryFill': { kind: 'value', role: 'dry fill', measure: 'volume', read: 'step' },
  '/gearcases/*/oilSpace/portion': { kind: 'value', role: 'refill', measure: 'volume', read: 'step' },
  '/gearcases/*/openings/*/place': { kind: 'place', role: 'place', read: 'part', below: '/place' },
  '/gearcases/*/covers/*/place': { kind: 'place', role: 'place', read: 'part', below: '/place' },
  '/gearcases/*/breather/place': { kind: 'place', role: 'place', read: 'part', below: '/place' },
  '/shields/*/place': { kind: 'place', role: 'place', read: 'part', below: '/place' },
  '/gearcases/*/openings/*/tightening': {
    kind: 'tightening',
    role: 'tightening',
    read: 'part',
    below: '/tightening',
  },
  '/gearcases/*/covers/*/bolts/tightening': {
    kind: 'tightening',
    role: 'tightening',
    read: 'part',
    below: '/bolts/tightening',
  },
  '/shields/*/fasteners/tightening': {
    kind: 'tightening',
    role: 'tightening',
    read: 'part',
    below: '/fasteners/tightening',
  },
  '/gearcases/*/covers/*/seal': { kind: 'seal', role: 'seal', read: 'part', below: '/seal' },
  '/gearcases/*/openings/*/seals/*': { kind: 'seal', role: 'seal', read: 'part', below: '/seals/*' },
  '/services/*/intervals/first': { kind: 'interval', role: 'interval', read: 'due' },
  '/services/*/intervals/repeat': { kind: 'interval', role: 'interval', read: 'due' },
  '/services/*/intervals/window': { kind: 'interval', role: 'interval', read: 'due' },
  '/services/*/intervals/severe/interval': { kind: 'interval', role: 'interval', read: 'due' },
  '/machine/mass': { kind: 'value', role: 'mass', measure: 'mass', read: 'machine' },
}

export interface PlacedRow extends LeafRow {
  /** The place in parts; `*` is any key or list place. */
  readonly place: readonly string[]
}

let rows: readonly PlacedRow[] | undefined

/** The table as a list, made at first use. */
export function listLeafRows(): readonly PlacedRow[] {
  rows ??= Object.entries(LEAF_TABLE).map(([place, row]) => ({ ...row, place: place.slice(1).split('/') }))
  return rows
}

/** The row of the leaf that a sheet has at a place; undefined where it has none. */
export function findLeafRow(tokens: readonly string[]): PlacedRow | undefined {
  return listLeafRows().find(
    ({ place }) =>
      place.length === tokens.length && place.every((part, at) => part === '*' || part === tokens[at]),
  )
}
