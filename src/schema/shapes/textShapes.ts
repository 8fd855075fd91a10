import type * as z from 'zod/v4/core'
import { MAX_STRING_LENGTH } from '../../base/index.js'
import type { Field, Fields } from './makeShape.js'
import {
  buildOnce,
  hasMinLength,
  kind,
  matchesPattern,
  meetsCheck,
  object,
  record,
  stringShape,
  taggedUnion,
} from './makeShape.js'

/** Ids. They are also record keys, so they must not shadow a built-in. */
export const ID_PATTERN = /^[a-z][a-z0-9-]{0,63}$/
/** Keys that no document may use, because they could change the prototype of an object. */
export const FORBIDDEN_KEYS: readonly string[] = ['__proto__', 'constructor', 'prototype']
/** A printed figure: at most nine digits before the decimal point and six after it. */
export const FIGURE_PATTERN = /^(0|[1-9][0-9]{0,8})(\.[0-9]{1,6})?$/
/** Hours or distance of an interval: no service interval reaches a million of either. */
export const INTERVAL_FIGURE_PATTERN = /^(0|[1-9][0-9]{0,5})(\.[0-9]{1,6})?$/
/** A printed figure of a temperature, which may be negative. */
export const SIGNED_FIGURE_PATTERN = /^-?(0|[1-9][0-9]{0,8})(\.[0-9]{1,6})?$/
/**
 * Real days of the years 0001 to 9999 only. The pattern includes month lengths and leap years, so every
 * schema reader checks them.
 */
export const DATE_PATTERN =
  /^(([0-9]{3}[1-9]|[0-9]{2}[1-9]0|[0-9][1-9]00|[1-9]000)-((01|03|05|07|08|10|12)-(0[1-9]|[12][0-9]|3[01])|(04|06|09|11)-(0[1-9]|[12][0-9]|30)|02-(0[1-9]|1[0-9]|2[0-8]))|([0-9]{2}(0[48]|[2468][048]|[13579][26])|(0[48]|[2468][048]|[13579][26])00)-02-29)$/
/** `P`, then whole years, months, weeks and days, in this order, at least one of them. */
export const PERIOD_PATTERN =
  /^P([0-9]{1,7}Y([0-9]{1,7}M)?([0-9]{1,7}W)?([0-9]{1,7}D)?|[0-9]{1,7}M([0-9]{1,7}W)?([0-9]{1,7}D)?|[0-9]{1,7}W([0-9]{1,7}D)?|[0-9]{1,7}D)$/
/** A digit other than zero, in a figure or a period. */
export const ABOVE_ZERO_PATTERN = /[1-9]/
export const POINTER_PATTERN = /^(\/([^/~]|~[01])*)*$/
const CURRENCY_PATTERN = /^[A-Z]{3}$/
const SHA256_PATTERN = /^[0-9a-f]{64}$/

type Shape = z.$ZodType

/**
 * Ids in the published JSON Schemas, and keywords that shapes do not express. The length of a text is checked before its shape. Zod's own registry would be in
 * every bundle.
 */
export const shapeKeywords = /* @__PURE__ */ new WeakMap<Shape, { readonly [keyword: string]: unknown }>()

/** A shape with metadata for JSON Schema. */
export function withKeywords<Definition extends Shape>(
  keywords: { readonly [keyword: string]: unknown },
  shape: Definition,
): Definition {
  shapeKeywords.set(shape, keywords)
  return shape
}

export const withSchemaId = <Definition extends Shape>(id: string, shape: Definition) =>
  withKeywords({ id }, shape)

/** A named object. */
export const namedObject = <const Definition extends Fields>(id: string, fields: Definition) =>
  withSchemaId(id, object(fields))

/** A named union of objects, distinguished by their `kind`. */
export const namedUnion = <const Alternatives extends readonly Shape[]>(
  id: string,
  alternatives: Alternatives,
) => withSchemaId(id, taggedUnion(alternatives))

/**
 * The strings of documents. `error` is the finding's code. In some languages `$` also matches before a final
 * line end, so `not` excludes the forbidden characters.
 */
export const textShapes = /* @__PURE__ */ buildOnce(() => {
  const makePatternShape = (
    id: string,
    pattern: RegExp,
    forbiddenPattern: string,
    error: string,
    zeroError?: string,
  ) => {
    const patternCheck = matchesPattern(pattern, error, true)
    return zeroError === undefined
      ? withKeywords({ id, not: { pattern: forbiddenPattern } }, stringShape([patternCheck], error))
      : withKeywords(
          { id, not: { pattern: `${forbiddenPattern}|^[^1-9]*$` } },
          stringShape(
            [patternCheck, meetsCheck((figure: string) => ABOVE_ZERO_PATTERN.test(figure), zeroError)],
            error,
          ),
        )
  }
  const figure = (id: string, zeroError?: string) =>
    makePatternShape(id, FIGURE_PATTERN, '[^0-9.]', 'spec/bad-figure', zeroError)
  const intervalFigure = (id: string, zeroError?: string) =>
    makePatternShape(id, INTERVAL_FIGURE_PATTERN, '[^0-9.]', 'spec/interval-too-long', zeroError)
  const period = (id: string, zeroError?: string) =>
    makePatternShape(id, PERIOD_PATTERN, '[^0-9PYMWD]', 'spec/bad-period', zeroError)
  const isAllowed = (text: string) => !FORBIDDEN_KEYS.includes(text)
  return {
    text: withKeywords({ id: 'text', maxLength: MAX_STRING_LENGTH }, stringShape([hasMinLength(1)])),
    id: withKeywords(
      { id: 'id', not: { anyOf: [{ pattern: '[^a-z0-9-]' }, { enum: [...FORBIDDEN_KEYS] }] } },
      stringShape([matchesPattern(ID_PATTERN, 'spec/bad-id'), meetsCheck(isAllowed, 'spec/forbidden-key')]),
    ),
    /** Names of a step's values: any words. Forbidden keys are removed before a shape is read. */
    label: withKeywords(
      { id: 'label', maxLength: MAX_STRING_LENGTH, not: { enum: [...FORBIDDEN_KEYS] } },
      stringShape([hasMinLength(1)]),
    ),
    figure: figure('figure'),
    sizeFigure: figure('size-figure', 'seal/zero-size'),
    intervalFigure: intervalFigure('interval-figure'),
    limitFigure: intervalFigure('limit-figure', 'interval/limit-not-above-zero'),
    signedFigure: makePatternShape('signed-figure', SIGNED_FIGURE_PATTERN, '[^0-9.-]', 'spec/bad-figure'),
    date: makePatternShape('date', DATE_PATTERN, '[^0-9-]', 'spec/bad-date'),
    period: period('period'),
    limitPeriod: period('limit-period', 'interval/limit-not-above-zero'),
    pointer: withKeywords(
      { id: 'pointer', maxLength: MAX_STRING_LENGTH },
      stringShape([matchesPattern(POINTER_PATTERN, 'spec/bad-pointer')]),
    ),
    sha256: makePatternShape('sha256', SHA256_PATTERN, '[^0-9a-f]', 'spec/bad-sha256'),
    currency: makePatternShape('currency', CURRENCY_PATTERN, '[^A-Z]', 'spec/bad-currency'),
  }
})

/** A record with ids as keys. */
export const recordById = <const Definition extends Field>(value: Definition) =>
  record(textShapes().id, value)

/** A document: the common keys of all documents, and its own keys. */
export const documentShape = <const Kind extends string, const Definition extends Fields>(
  name: Kind,
  fields: Definition,
) => kind(name, { '$schema?': textShapes().text, version: '1.0', id: textShapes().id, ...fields })
