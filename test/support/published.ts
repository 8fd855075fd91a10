import { spoilRow } from './spoilRow.js'

export type Room =
  | 'units'
  | 'calendar'
  | 'interval'
  | 'torque'
  | 'thread'
  | 'oil'
  | 'fill'
  | 'seal'
  | 'signal words'

/**
 * How values came here. The first three count as outside checks: read in the source, read where somebody quotes it, or
 * given by a program of others that runs in the test. The others do not: calculated here from what the source states,
 * or not read at all.
 */
export type Read = 'in the source' | 'where it is quoted' | 'runs in the test' | 'calculated' | 'from memory'

export const OUTSIDE: readonly Read[] = ['in the source', 'where it is quoted', 'runs in the test']

/** What the values of a table come from, and how they are compared. */
export interface Origin {
  readonly room: Room
  /** The standard, handbook, data set or program. */
  readonly source: string
  /** Edition, year, version or commit. */
  readonly edition: string
  /** Clause, page, table, file or address. */
  readonly place: string
  readonly read: Read
  /** How near the results are, and which rows the source has wrong. */
  readonly agrees: string
  /** For the reader of a row: what it is about, what the source leaves open. */
  readonly note?: string
}

export interface OriginOfRows extends Origin {
  /** Independent statements of the source: a row of a table, a worked example. */
  readonly statements: number
  readonly values: number
}

/** One text for the origin of a table. */
export function identify({ source, edition, place }: Origin): string {
  return `${source}; ${edition}; ${place}`
}

const origins = new WeakMap<object, OriginOfRows>()

type RowOf<Rows> = Rows extends readonly (infer Row)[] ? Row : Rows

/**
 * Declares where a table of `test/published/` comes from; `docs/checks.md` lists it. A table has one statement for each
 * row, anything else is one worked example, unless `statements` says that several rows are of one statement. `values`
 * counts the published values of a row, if it compares more than one.
 *
 * In a run with the environment variable DRIVETRAIN_SPOIL the table that it names is spoiled, so that its test must fail:
 * every row gets another value, or `spoiled` if another value would be as good.
 */
export function published<const Rows extends object>(
  {
    statements,
    values = () => 1,
    spoiled,
    ...origin
  }: Origin & {
    readonly statements?: number
    readonly values?: (row: RowOf<Rows>) => number
    readonly spoiled?: unknown
  },
  given: Rows,
): Rows {
  const isSpoiled = process.env['DRIVETRAIN_SPOIL'] === identify(origin)
  const spoil = (row: unknown): unknown => spoiled ?? spoilRow(row)
  const rows = isSpoiled ? ((Array.isArray(given) ? given.map(spoil) : spoil(given)) as Rows) : given
  const list = (Array.isArray(rows) ? rows : [rows]) as readonly RowOf<Rows>[]
  origins.set(rows, {
    ...origin,
    statements: statements ?? list.length,
    values: list.reduce((sum, row) => sum + values(row), 0),
  })
  return rows
}

export function originOf(rows: object): OriginOfRows | undefined {
  return origins.get(rows)
}
