import type { Measure, UnitOf } from '../quantity/index.js'
import type { Leaf, LeafKind, Leaves } from './leaf.js'
import type { SpecSheet } from './specSheet.js'
import type { NotStated } from './specValue.js'

/** The meaning of a leaf on plans and cards. */
export type LeafRole =
  | 'refill'
  | 'dry fill'
  | 'oils'
  | 'tightening'
  | 'seal'
  | 'place'
  | 'position'
  | 'drive'
  | 'interval'
  | 'drain temperature'
  | 'working temperature'
  | 'level'
  | 'mass'

/** Every field that contains a whole leaf, as its pointer with `*` for any key or list index. */
type LeavesOf<T, Place extends string> = {
  [Key in keyof T & string]-?: LeavesIn<NonNullable<T[Key]>, `${Place}/${string extends Key ? '*' : Key}`>
}[keyof T & string]
type LeavesIn<T, Place extends string> = [T] extends [Leaf]
  ? { readonly place: Place; readonly leaf: T }
  : T extends readonly (infer Entry)[]
    ? LeavesIn<Entry, `${Place}/*`>
    : T extends object
      ? LeavesOf<T, Place>
      : never
/** The pointers that overrides may set. */
type LeafFields<Sheet> = LeavesOf<Omit<Sheet, 'overrides'>, ''>
export type LeafPlace = keyof LeafTableOf<SpecSheet>
/** The ends of the pointers that begin with `Part`, for showing the leaves of a part. */
export type LeafBelow<Part extends string> = LeafPlace extends infer Place
  ? Place extends `${Part}${infer Rest}`
    ? Rest
    : never
  : never

type KindOf<L> = { [Kind in LeafKind]: [L] extends [Leaves[Kind]] ? Kind : never }[LeafKind]
type MeasureOf<L> = {
  [M in Measure]: Exclude<L, NotStated> extends { readonly unit: UnitOf<M> } ? M : never
}[Measure]

interface LeafRow<Kind extends LeafKind = LeafKind, LeafMeasure extends Measure = Measure> {
  readonly kind: Kind
  readonly role: LeafRole
  /** The measure of a single value. Absent for leaves with several values or none. */
  readonly measure?: LeafMeasure
  /**
   * When the leaf is read for a visit: once for the `machine`, for each `gearcase`, for the `part` of a step,
   * only if a `step` names it, for the `due` point, or for the `tools`.
   */
  readonly read: 'machine' | 'gearcase' | 'part' | 'step' | 'due' | 'tools'
}

type RowOf<L> = LeafRow<KindOf<L>, MeasureOf<L>> &
  (KindOf<L> extends 'value' ? { readonly measure: MeasureOf<L> } : unknown)

/** One row for every leaf of a sheet's interface, with its kind and measure. */
export type LeafTableOf<Sheet> = TableOf<LeafFields<Sheet>>
type TableOf<FoundFields> = {
  readonly [Field in FoundFields as Field extends { readonly place: infer Place extends string }
    ? Place
    : never]: Field extends { readonly leaf: infer L } ? RowOf<L> : never
}

/* @__NO_SIDE_EFFECTS__ */
const makeValueRow = <LeafMeasure extends Measure>(
  role: LeafRole,
  measure: LeafMeasure,
  read: 'machine' | 'gearcase' | 'step',
) => ({ kind: 'value', role, measure, read }) as const
const OILS = { kind: 'oils', role: 'oils', read: 'gearcase' } as const
const PLACE = { kind: 'place', role: 'place', read: 'part' } as const
const POSITION = { kind: 'position', role: 'position', read: 'part' } as const
const TIGHTENING = { kind: 'tightening', role: 'tightening', read: 'part' } as const
const SEAL = { kind: 'seal', role: 'seal', read: 'part' } as const
const DRIVE = { kind: 'drive', role: 'drive', read: 'tools' } as const
const INTERVAL = { kind: 'interval', role: 'interval', read: 'due' } as const

/**
 * Every leaf of a sheet, once. The compiler rejects a missing row, a row without a field, and a row with a
 * wrong kind or measure. Values inside a leaf, such as the torque of a tightening, are not leaves: an
 * override replaces the whole leaf.
 */
export const LEAF_TABLE: LeafTableOf<SpecSheet> = {
  '/gearcases/*/oilSpace/oils': OILS,
  '/gearcases/*/oilSpace/fill/drainAndRefill': makeValueRow('refill', 'volume', 'gearcase'),
  '/gearcases/*/drainTemperature': makeValueRow('drain temperature', 'temperature', 'gearcase'),
  '/gearcases/*/workingTemperature': makeValueRow('working temperature', 'temperature', 'gearcase'),
  '/gearcases/*/oilSpace/fill/method/below': makeValueRow('level', 'length', 'gearcase'),
  '/gearcases/*/oilSpace/fill/level/temperature': makeValueRow('level', 'temperature', 'gearcase'),
  '/gearcases/*/oilSpace/fill/level/minutesAfterStop': makeValueRow('level', 'duration', 'gearcase'),
  '/gearcases/*/oilSpace/fill/dryFill': makeValueRow('dry fill', 'volume', 'step'),
  '/gearcases/*/oilSpace/portion': makeValueRow('refill', 'volume', 'step'),
  '/gearcases/*/openings/*/place': PLACE,
  '/gearcases/*/covers/*/place': PLACE,
  '/gearcases/*/filters/*/place': PLACE,
  '/gearcases/*/breather/place': PLACE,
  '/shields/*/place': PLACE,
  '/gearcases/*/openings/*/position': POSITION,
  '/gearcases/*/breather/position': { ...POSITION, read: 'gearcase' },
  '/gearcases/*/openings/*/tightening': TIGHTENING,
  '/gearcases/*/covers/*/bolts/tightening': TIGHTENING,
  '/gearcases/*/filters/*/held/tightening': TIGHTENING,
  '/shields/*/fasteners/tightening': TIGHTENING,
  '/gearcases/*/openings/*/drive': DRIVE,
  '/gearcases/*/covers/*/bolts/drive': DRIVE,
  '/gearcases/*/filters/*/held/drive': DRIVE,
  '/shields/*/fasteners/drive': DRIVE,
  '/gearcases/*/covers/*/seal': SEAL,
  '/gearcases/*/openings/*/seals/*': SEAL,
  '/gearcases/*/filters/*/seals/*': SEAL,
  '/services/*/intervals/first': INTERVAL,
  '/services/*/intervals/repeat': INTERVAL,
  '/services/*/intervals/window': INTERVAL,
  '/services/*/intervals/severe/interval': INTERVAL,
  '/machine/mass': makeValueRow('mass', 'mass', 'machine'),
}

const PART_PATTERN = /^\/(gearcases\/\*\/(openings\/\*|covers\/\*|filters\/\*|breather)|shields\/\*)/

export interface LocatedLeafRow extends LeafRow {
  /** The tokens of the pointer; `*` is any key or list index. */
  readonly place: readonly string[]
  /** For a leaf that is read with its part: the pointer below the part. */
  readonly below?: string
}

let rows: readonly LocatedLeafRow[] | undefined

/** The table as a list, built at first use. */
export function listLeafTypes(): readonly LocatedLeafRow[] {
  rows ??= Object.entries(LEAF_TABLE).map(([place, row]) => ({
    ...row,
    place: place.slice(1).split('/'),
    ...(row.read === 'part' && { below: place.replace(PART_PATTERN, '') }),
  }))
  return rows
}

/** The table as a tree, by the tokens of its pointers. */
export interface LeafTree extends Map<string, LeafTree | LocatedLeafRow> {}

let tree: LeafTree | undefined

/** The row or the branch at a token; the table itself without a branch. */
export function findBranch(token: string, branch?: LeafTree): LeafTree | LocatedLeafRow | undefined {
  if (tree === undefined) {
    tree = new Map()
    for (const row of listLeafTypes()) {
      let node = tree
      for (const token of row.place.slice(0, -1)) {
        const child = (node.get(token) as LeafTree | undefined) ?? new Map()
        node.set(token, child)
        node = child
      }
      node.set(row.place.at(-1) ?? '', row)
    }
  }
  const from = branch ?? tree
  return from.get(token) ?? from.get('*')
}

/** The row of the leaf at a pointer; undefined if a sheet has no leaf there. */
export function findLeafRow(tokens: readonly string[]): LocatedLeafRow | undefined {
  let found: LeafTree | LocatedLeafRow | undefined
  for (const [at, token] of tokens.entries()) {
    if (at > 0 && !(found instanceof Map)) return undefined
    found = findBranch(token, found as LeafTree | undefined)
  }
  return found instanceof Map ? undefined : found
}
