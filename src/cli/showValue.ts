import type { Messages } from '../message/index.js'
import { type Quantity, unitSymbol } from '../quantity/index.js'

/** A value with all its digits, as in the document, and with the decimal mark of the language: `301,4 h`. */
export const showValue = ({ value, unit }: Quantity, { marks }: Messages): string =>
  `${String(value).replace('.', marks.decimal)} ${unitSymbol(unit)}`
