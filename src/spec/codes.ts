import { makeReason, type ReasonMaker } from '../base/index.js'
import type { Measure, QuantityCodes, Unit } from '../quantity/index.js'

/** The token expected at an error in a JSON text. */
export type ExpectedJson =
  | 'value'
  | 'key'
  | 'colon'
  | 'comma-or-brace'
  | 'comma-or-bracket'
  | 'end'
  | 'closing-quote'
  | 'escape'
  | 'no-control-character'

/** Values that are not JSON. */
export type NotPlainData =
  | 'undefined'
  | 'function'
  | 'symbol'
  | 'bigint'
  | 'not-finite'
  | 'cycle'
  | 'sparse-list'
  | 'list-with-keys'
  | 'accessor'
  | 'hidden-property'
  | 'symbol-key'
  | 'class-instance'
  | 'unreadable'

/** The parts of a string in short notation; an error names the expected ones. */
export type NotationPart =
  | Measure
  | 'access'
  | 'accuracy'
  | 'additive'
  | 'attitude'
  | 'condition'
  | 'count'
  | 'date'
  | 'drive'
  | 'emptying'
  | 'event'
  | 'face'
  | 'factor'
  | 'fasteners'
  | 'filter'
  | 'filter done'
  | 'hours'
  | 'id'
  | 'label'
  | 'known source'
  | 'limited-slip'
  | 'market'
  | 'method'
  | 'name'
  | 'oil'
  | 'oil space'
  | 'pattern of bolts'
  | 'period'
  | 'place'
  | 'price'
  | 'replacement'
  | 'scale'
  | 'seal'
  | 'seal done'
  | 'service'
  | 'sheet'
  | 'shorter text'
  | 'size'
  | 'source'
  | 'square drive'
  | 'support'
  | 'thread condition'
  | 'tightening'
  | 'title'
  | 'turns'
  | 'type of wrench'
  | 'use'
  | 'vessel'
  | 'wheel mark'
  | 'wheels'

/** The type of a value. */
export type TypeName = 'object' | 'list' | 'text' | 'number' | 'whole-number' | 'true-or-false' | 'null'

/**
 * Rules that the shapes check: the document is refused, even with a waiver. The comments are published in
 * `rules.json`.
 */
interface ShapeRuleCodes {
  /**
   * An interval without hours, distance and period: the service would never be due. If the manual gives no
   * interval, write `not stated`.
   * About: spec-sheet
   * Judges: Every stated interval, including overrides. Finds an interval without all three.
   * Place: the interval
   * Harm: job
   * House rule.
   */
  'spec/interval-empty': Record<never, never>
  /**
   * Limits without minimum and maximum: every value is within them. If the manual gives no figure, write `not
   * stated`.
   * About: spec-sheet, stock
   * Judges: Every printed value of kind `limits`, including those in `printed` and in overrides. Finds limits
   * without `min` and `max`.
   * Place: the value
   * Params: unit: as written
   * Harm: job
   * House rule.
   */
  'spec/limits-empty': { unit: Unit }
  /**
   * A seal with a size of 0 mm: an unknown figure was entered as zero. Omit the size instead.
   * About: spec-sheet, stock
   * Judges: Every seal with a `size` in a sheet, including overrides, or in a stock. Finds each zero figure.
   * Place: `<seal>/size/<figure>`
   * Params: part: the name of the part (see terms), or of the seal in stock; size: key of the figure
   * Harm: job
   * House rule.
   */
  'seal/zero-size': { part: string; size: string }
  /**
   * An interval of zero hours, distance or time: the service would be due again at once.
   * About: spec-sheet
   * Judges: Every stated interval, including overrides, except a `window` (in an override: a `path` that ends
   * in `/window`), which may be zero. Finds each zero among hours, distance and period.
   * Place: `<interval>/<limit>`
   * Params: by: `hours`, `distance` or `period`
   * Harm: job
   * House rule.
   */
  'interval/limit-not-above-zero': { by: string }
}

/** The codes of documents and their parsing, with their params; the texts are in `message/<language>/spec`. */
export interface SpecCodes extends ShapeRuleCodes {
  // Choosing the variant
  'spec/variant-stated': { variant: string }
  'spec/variant-selected': { variant: string }
  'spec/variant-only': { variant: string }
  'spec/variant-not-known': { candidates: readonly string[] }
  'spec/variant-not-on-sheet': { variant: string; known: readonly string[] }
  'spec/variant-contradicted': { variant: string; candidates: readonly string[] }
  'spec/variant-none-fits': { known: readonly string[] }
  'spec/variant-without-condition': { variant: string }
  // Conditions
  'spec/fact-missing': { fact: string }
  'spec/variant-listed': { variants: readonly string[]; listed: readonly string[] }
  'spec/variant-not-listed': { variants: readonly string[]; listed: readonly string[] }
  'spec/model-year-in-range': { modelYear: number; from?: number; to?: number }
  'spec/model-year-out-of-range': { modelYear: number; from?: number; to?: number }
  'spec/serial-in-range': { serial: string; prefix: string; from?: string; to?: string }
  'spec/serial-out-of-range': { serial: string; prefix: string; from?: string; to?: string }
  'spec/serial-form-differs': { serial: string; prefix: string; width?: number }
  'spec/serial-range-unreadable': { prefix: string; from?: string; to?: string }
  'spec/market-listed': { market: string; listed: readonly string[] }
  'spec/market-not-listed': { market: string; listed: readonly string[] }
  'spec/market-case-differs': { market: string; listed: readonly string[] }
  // Choosing the leaf
  'spec/part-on-every-machine': { path: string }
  'spec/part-on-some-machines': { path: string }
  'spec/leaf-from-sheet': { path: string }
  'spec/leaf-absent': { path: string }
  'spec/override-applies': { path: string }
  'spec/override-may-apply': { path: string }
  'spec/override-does-not-fit': { path: string }
  'spec/overrides-overlap': { path: string; overrides: readonly string[] }
  'spec/candidates-agree': { path: string; candidates: readonly string[] }
  // Reading a document
  'spec/not-yaml': { line: number; column: number; problem: string }
  'spec/yaml-comma-in-braces': { text: string }
  'spec/yaml-comment-in-text': { text: string; comment: string }
  'spec/yaml-key-is-boolean': { key: string }
  /** More texts, signs and line ends than the YAML reader can take. */
  'spec/yaml-too-large': { limit: number }
  'spec/not-json': { line: number; column: number; needs: ExpectedJson; found: string }
  /** A table (CSV) where a document is expected. */
  'spec/table-instead-of-document': { columns: readonly string[] }
  /** A line of a history that cannot be used. */
  'spec/history-line-unreadable': {
    line: number
    problem:
      | 'not-json'
      | 'repeated-key'
      | 'too-deep'
      | 'not-an-addition'
      | 'no-such-place'
      | 'not-at-the-end'
      | 'replaces-a-part'
  }
  /** The last line of a history is incomplete and was not read. */
  'spec/history-cut-off': { line: number }
  'spec/duplicate-key': { key: string }
  'spec/not-plain-data': { found: NotPlainData }
  'spec/forbidden-key': { key: string }
  'spec/too-deep': { limit: number }
  'spec/too-long': { found: string; length: number; limit: number }
  'spec/too-large': { limit: number }
  /** The document has more mistakes than are reported. */
  'spec/more-mistakes': { shown: number }
  'spec/wrong-kind': { found: string; expected: readonly string[]; didYouMean?: string }
  'spec/wrong-version': { found: string; readable: readonly string[]; quotes: boolean }
  'spec/missing-key': { key: string; allowed?: readonly string[] }
  'spec/unknown-key': { key: string; known: readonly string[]; didYouMean?: string }
  'spec/wrong-type': { expected: TypeName; found: TypeName; value?: string }
  'spec/not-in-list': { found: string; allowed: readonly string[]; didYouMean?: string }
  'spec/bad-figure': { found: string }
  'spec/interval-too-long': { found: string }
  'spec/comma-decimal': { found: string; didYouMean?: string }
  'spec/figure-without-quotes': { found: number }
  'spec/bad-id': { found: string; didYouMean?: string }
  'spec/bad-date': { found: string }
  'spec/bad-period': { found: string }
  'spec/bad-pointer': { found: string }
  'spec/bad-currency': { found: string }
  'spec/bad-sha256': { found: string }
  'spec/empty-text': { key: string }
  'spec/empty-list': { key: string }
  'spec/bad-notation': {
    text: string
    range: readonly [from: number, to: number]
    found: string
    expected: readonly NotationPart[]
    reason?: keyof QuantityCodes
  }
  'spec/number-too-small': { found: number; limit: number; inclusive: boolean }
  'spec/number-too-large': { found: number; limit: number }
}

export const specReason: ReasonMaker<SpecCodes> = makeReason
