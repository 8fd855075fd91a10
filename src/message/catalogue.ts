import type { Param } from '../finding.js'

/**
 * What a text may ask for while it is written: numbers and quantities in the catalogue's language. Texts never
 * format a number by themselves.
 */
export interface Say {
  /** A bare number with the language's marks, at most `digits` decimals (default 3), no trailing zeros. */
  number(value: number, digits?: number): string
  /** A quantity param `{ value: number | Figure, unit }`; a Figure keeps its printed digits. */
  quantity(value: Param | undefined): string
  /** A calendar date as `YYYY-MM-DD`, which every reader of a workshop card can sort. */
  date(value: string): string
  /** `one, two and three`. */
  list(items: readonly string[]): string
  /** A plural: `count(3, 'washer', 'washers')` gives `3 washers`. */
  count(value: number, one: string, other: string): string
  /** Another code's text, for params that carry a reason `{ code, params }`. */
  reason(value: Param | undefined): string
}

/** The texts of one room in one language: every code of the room, no more. */
export type Texts<Codes> = { readonly [Code in keyof Codes]: (params: Codes[Code], say: Say) => string }
