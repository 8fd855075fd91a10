import type { Param, Params } from '../base/index.js'
import type { Messages, Say } from './catalogue.js'
import { cleanText } from './cleanText.js'
import { showNumber, showQuantity } from './showQuantity.js'

/** Any param as plain text, if there is no better form. */
export function showPlainly(value: Param | undefined): string {
  if (value === undefined || value === null) return '–'
  if (typeof value === 'string') return cleanText(value)
  if (typeof value === 'object') return cleanText(JSON.stringify(value))
  return String(value)
}

const isObject = (value: Param | undefined): value is { readonly [key: string]: Param | undefined } =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** Builds the functions that catalogue texts use for numbers and quantities. */
export function makeSay(catalogue: Messages, renderReason: (code: string, params: Params) => string): Say {
  const { marks } = catalogue
  const say: Say = {
    number: (value, digits = 3) => showNumber(value, marks, digits) ?? showPlainly(value),
    quantity(value) {
      if (!isObject(value)) return typeof value === 'number' ? say.number(value) : showPlainly(value)
      return showQuantity(value, marks) ?? showPlainly(value)
    },
    date: (value) => showPlainly(value),
    list: (items) => catalogue.list(items),
    count(value, singular, pluralForm) {
      return `${say.number(value)}\u00a0${catalogue.plural(value) === 'one' ? singular : pluralForm}`
    },
    reason(value) {
      if (!isObject(value) || typeof value['code'] !== 'string') return showPlainly(value)
      const params = isObject(value['params']) ? value['params'] : {}
      return renderReason(value['code'], params)
    },
  }
  return say
}
