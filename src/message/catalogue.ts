import type { Param } from '../base/index.js'
import type { NumberMarks } from '../quantity/index.js'
import type { AllCodes } from './allCodes.js'
import type { CardWords } from './cardWords.js'
import type { SpeechWords } from './speechWords.js'
import type { StepTexts } from './stepTexts.js'

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

/**
 * One language, whole: every sentence, label and spoken word that the library can put before a reader. Written by
 * hand, one module a language; a caller imports the one it wants and no other is bundled.
 */
export interface Catalogue {
  /** BCP 47 tag. */
  readonly language: string
  readonly direction: 'ltr' | 'rtl'
  readonly marks: NumberMarks
  /** Joins a list as the language does. */
  readonly list: (items: readonly string[]) => string
  /** The text of every code of every room. */
  readonly texts: Texts<AllCodes>
  /** What each action of a procedure tells the technician. */
  readonly steps: StepTexts
  /** Headings, labels and the names of kinds and states on cards. */
  readonly card: CardWords
  /** Numbers and units for a voice. */
  readonly speech: SpeechWords
}
