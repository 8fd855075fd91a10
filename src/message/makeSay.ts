import type { Param, Params } from '../base/index.js'
import type { Messages, Say } from './catalogue.js'
import { cleanText } from './cleanText.js'
import { showNumber, showQuantity } from './showQuantity.js'

/** Any param as text, if no better form is known. */
export function sayPlainly(value: Param | undefined): string {
  if (value === undefined || value === null) return '–'
  if (typeof value === 'string') return cleanText(value)
  if (typeof value === 'object') return cleanText(JSON.stringify(value))
  return String(value)
}

const isRecord = (value: Param | undefined): value is { readonly [key: string]: Param | undefined } =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** The functions with which the texts of a catalogue write numbers and quantities. */
export function makeSay(catalogue: Messages, renderReason: (code: string, params: Params) => string): Say {
  const { marks } = catalogue
  const say: Say = {
    number: (value, digits = 3) => showNumber(value, marks, digits) ?? sayPlainly(value),
    quantity(value) {
      if (!isRecord(value)) return typeof value === 'number' ? say.number(value) : sayPlainly(value)
      return showQuantity(value, marks) ?? sayPlainly(value)
    },
    date: (value) => sayPlainly(value),
    list: (items) => catalogue.list(items),
    count(value, one, other) {
      return `${say.number(value)}\u00a0${catalogue.plural(value) === 'one' ? one : other}`
    },
    reason(value) {
      if (!isRecord(value) || typeof value['code'] !== 'string') return sayPlainly(value)
      const params = isRecord(value['params']) ? value['params'] : {}
      return renderReason(value['code'], params)
    },
  }
  return say
}
