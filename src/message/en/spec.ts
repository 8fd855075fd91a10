import type { JsonNeed, NotPlain, SpecCodes, TypeName } from '../../spec/index.js'
import type { Texts } from '../catalogue.js'

const TYPES: Readonly<Record<TypeName, string>> = {
  object: 'an object with keys',
  list: 'a list',
  text: 'a text in quotes',
  number: 'a number',
  'whole-number': 'a whole number',
  'true-or-false': 'true or false',
  null: 'null',
}

const NEEDS: Readonly<Record<JsonNeed, string>> = {
  value: 'a value is wanted here',
  key: 'a key in double quotes is wanted here; no comma may stand before a closing brace',
  colon: 'a colon is wanted here',
  'comma-or-brace': 'a comma or a closing brace is wanted here',
  'comma-or-bracket': 'a comma or a closing bracket is wanted here',
  end: 'the text should have ended here',
  'closing-quote': 'the closing quote is missing',
  escape: 'this backslash starts nothing that JSON knows; write two for one',
  'no-control-character':
    'a line end, tab or other control character must be written as an escape inside quotes',
}

const NOT_PLAIN: Readonly<Record<NotPlain, string>> = {
  undefined: 'a value that is not defined; leave the key out instead',
  function: 'a function',
  symbol: 'a symbol',
  bigint: 'a BigInt; write a number',
  'not-finite': 'a number that is infinite or not a number',
  cycle: 'an object that holds itself',
  'sparse-list': 'a list with holes',
  'list-with-keys': 'a list that also has keys',
  accessor: 'a getter; hand in the value',
  'hidden-property': 'a property that is not enumerable',
  'symbol-key': 'a key that is a symbol',
  'class-instance': 'an object of a class; hand in a plain object',
  unreadable: 'an object that cannot be read',
}

const quote = (text: string): string => `"${text}"`
const hint = (didYouMean: string | undefined): string =>
  didYouMean === undefined ? '' : ` Did you mean ${quote(didYouMean)}?`
const range = (from: number | string | undefined, to: number | string | undefined): string =>
  from === undefined ? `up to ${to}` : to === undefined ? `from ${from} on` : `${from} to ${to}`

export const specTexts: Texts<SpecCodes> = {
  'spec/variant-stated': ({ variant }) => `The log names the variant ${variant}.`,
  'spec/variant-selected': ({ variant }) =>
    `Variant ${variant}: its condition holds, and no other variant's does.`,
  'spec/variant-only': ({ variant }) => `Variant ${variant} is the only one on the sheet.`,
  'spec/variant-open': ({ candidates }) =>
    candidates.length === 0
      ? 'The sheet has no variants. Name one in the log once the sheet has it.'
      : `The variant is not known; it may be ${candidates.join(' or ')}. Name it in the log.`,
  'spec/variant-not-on-sheet': ({ variant, known }, say) =>
    `The log names the variant ${quote(variant)}, which the sheet does not have${known.length === 0 ? '' : `. It has ${say.list(known)}`}. Check the sheet and the log.`,
  'spec/variant-contradicted': ({ variant, candidates }, say) =>
    `The log names the variant ${variant}, but the other facts of the machine rule it out${candidates.length === 0 ? '' : ` and leave ${say.list(candidates)}`}. Read the machine's plate again.`,
  'spec/variant-none-fits': ({ known }, say) =>
    `No variant of the sheet fits this machine; the sheet has ${say.list(known)}. Check the serial number, or find the sheet that covers it.`,
  'spec/variant-without-condition': ({ variant }) =>
    `The sheet does not say which machines are of variant ${variant}; only the log can.`,
  'spec/fact-missing': ({ fact }) => `Not known: ${FACTS[fact] ?? fact}. Write it in the log.`,
  'spec/variant-listed': ({ variants, listed }, say) =>
    `For ${say.list(listed)} only, and this machine is ${say.list(variants)}.`,
  'spec/variant-not-listed': ({ variants, listed }, say) =>
    listed.length === 0
      ? 'For no variant at all: the list is empty.'
      : `For ${say.list(listed)} only; this machine is ${say.list(variants)}.`,
  'spec/model-year-inside': ({ modelYear, from, to }) => `Model year ${modelYear} fits: ${range(from, to)}.`,
  'spec/model-year-outside': ({ modelYear, from, to }) =>
    `Model year ${modelYear} does not fit: ${range(from, to)}.`,
  'spec/serial-inside': ({ serial, prefix, from, to }) =>
    `Serial number ${serial} fits: ${serials(prefix, from, to)}.`,
  'spec/serial-outside': ({ serial, prefix, from, to }) =>
    `Serial number ${serial} does not fit: ${serials(prefix, from, to)}.`,
  'spec/serial-unlike-range': ({ serial, prefix, width }, say) =>
    `Serial number ${quote(serial)} is not built like the range: ${prefix === '' ? '' : `${quote(prefix)} and then `}${width === undefined ? 'a number' : `a number of ${say.count(width, 'digit', 'digits')}`}. Read the plate again.`,
  'spec/serial-range-unreadable': ({ prefix, from, to }) =>
    `The sheet's range ${serials(prefix, from, to)} cannot be used: both ends must be numbers of the same width.`,
  'spec/market-listed': ({ market, listed }, say) =>
    `For the market ${say.list(listed)} only, and this machine is from ${market}.`,
  'spec/market-not-listed': ({ market, listed }, say) =>
    listed.length === 0
      ? 'For no market at all: the list is empty.'
      : `For the market ${say.list(listed)} only; this machine is from ${market}.`,
  'spec/market-in-other-case': ({ market, listed }, say) =>
    `Market ${quote(market)} differs from ${say.list(listed)} in capitals only. Write it alike in both.`,
  'spec/part-on-every-machine': () => 'Every machine of this sheet has this part.',
  'spec/part-on-some-machines': () => 'Only some machines of this sheet have this part.',
  'spec/leaf-from-sheet': () => 'This is the figure of the sheet itself.',
  'spec/leaf-absent': () => 'The sheet leaves this figure out.',
  'spec/override-applies': () => 'An override of the sheet applies to this machine.',
  'spec/override-may-apply': () => 'An override of the sheet may apply to this machine.',
  'spec/override-does-not-fit': () =>
    'An override of the sheet points here but is of another kind, or at a part of a figure only. Mend the sheet.',
  'spec/overrides-overlap': ({ overrides }, say) =>
    `${say.count(overrides.length, 'override', 'overrides')} of the sheet apply here at once. Mend the sheet so that one does.`,
  'spec/candidates-agree': ({ candidates }, say) =>
    `${say.count(candidates.length, 'figure', 'figures')} may apply, and all say the same.`,
  'spec/not-yaml': ({ line, column, problem }) =>
    `This is not YAML that can be read: line ${line}, column ${column}: ${problem}`,
  'spec/not-json': ({ line, column, needs }) =>
    `This is not JSON: line ${line}, column ${column}: ${NEEDS[needs]}.`,
  'spec/duplicate-key': ({ key }) =>
    `The key ${quote(key)} stands here more than once. A reader would keep only the last: take the wrong one out.`,
  'spec/not-plain-data': ({ found }) => `Only plain data can be read, and here stands ${NOT_PLAIN[found]}.`,
  'spec/forbidden-key': ({ key }) => `The name ${quote(key)} may not be used in a document. Choose another.`,
  'spec/too-deep': ({ limit }, say) =>
    `Lists and objects go deeper here than ${say.count(limit, 'level', 'levels')}; no document does.`,
  'spec/too-long': ({ length, limit }, say) =>
    `This text has ${say.number(length)} characters; at most ${say.number(limit)} are read.`,
  'spec/too-large': ({ limit }, say) => `This document has more than ${say.number(limit)} values. Split it.`,
  'spec/wrong-kind': ({ found, expected, didYouMean }, say) =>
    `This document says that its kind is ${quote(found)}; wanted: ${say.list(expected)}.${hint(didYouMean)}`,
  'spec/wrong-version': ({ found, readable, quotes }, say) =>
    quotes
      ? `The version is a text: write ${quote(readable[0] ?? '')}, in quotes.`
      : `Version ${found} cannot be read here; this program reads ${say.list(readable)}.`,
  'spec/missing-key': ({ key, allowed }) =>
    `The key ${quote(key)} is missing here${allowed === undefined ? '' : `; it may be ${allowed.map(quote).join(' or ')}`}.`,
  'spec/unknown-key': ({ key, known, didYouMean }, say) =>
    `The key ${quote(key)} is not known here.${didYouMean === undefined ? (known.length === 0 ? '' : ` Known: ${say.list(known)}.`) : hint(didYouMean)}`,
  'spec/wrong-type': ({ expected, found, value }) =>
    `Here stands ${TYPES[found]}${value === undefined ? '' : ` (${value})`}; wanted is ${TYPES[expected]}.`,
  'spec/not-in-list': ({ found, allowed, didYouMean }, say) =>
    `${quote(found)} is not one of ${say.list(allowed.map(quote))}.${hint(didYouMean)}`,
  'spec/bad-figure': ({ found }) =>
    `${quote(found)} is not a figure. Write the digits as printed, with a point for the decimal mark, up to nine before it and six behind; a fraction goes in "asPrinted".`,
  'spec/interval-too-long': ({ found }) =>
    `An interval of ${found} is longer than any machine runs: at most six digits stand before the mark.`,
  'spec/comma-decimal': ({ found, didYouMean }) =>
    didYouMean === undefined
      ? `The figure ${quote(found)} has a comma, which can mean decimals or thousands. Write a point for decimals and nothing for thousands.`
      : `The figure ${quote(found)} has a decimal comma. Write ${quote(didYouMean)}.`,
  'spec/figure-without-quotes': ({ found }, say) =>
    `The figure ${say.number(found, 15)} is written as a number, which loses printed zeros. Write it as printed, in quotes.`,
  'spec/bad-id': ({ found, didYouMean }) =>
    `${quote(found)} is no id: small letters, digits and hyphens, a letter first, at most 64.${hint(didYouMean)}`,
  'spec/bad-date': ({ found }) => `${quote(found)} is no date. Write year, month and day: 2031-03-09.`,
  'spec/bad-period': ({ found }) =>
    `${quote(found)} is no period. Write whole years, months, weeks or days: P1Y, P6M, P2W, P10D.`,
  'spec/bad-pointer': ({ found }) =>
    `${quote(found)} is no pointer: it starts with / and names each key after a /, with ~1 for a / and ~0 for a ~ inside a key.`,
  'spec/bad-currency': ({ found }) => `${quote(found)} is no currency code. Write three capitals: EUR.`,
  'spec/empty-text': ({ key }) =>
    `The text of ${quote(key)} is empty. Fill it in, or leave the key out if it may be.`,
  'spec/empty-list': ({ key }) => `The list ${quote(key)} is empty; it needs one entry at least.`,
  'spec/number-too-small': ({ found, limit, inclusive }, say) =>
    `${say.number(found, 15)} is too small: it must be ${inclusive ? `${say.number(limit)} or more` : `more than ${say.number(limit)}`}.`,
  'spec/number-too-large': ({ found, limit }, say) =>
    `${say.number(found, 15)} is too large: the most is ${say.number(limit)}.`,
}

const FACTS: Readonly<Record<string, string>> = {
  variant: 'the variant',
  modelYear: 'the model year',
  serial: 'the serial number',
  market: 'the market',
}

function serials(prefix: string, from: string | undefined, to: string | undefined): string {
  if (from === undefined && to === undefined) return `those that begin with ${prefix}`
  return range(
    from === undefined ? undefined : `${prefix}${from}`,
    to === undefined ? undefined : `${prefix}${to}`,
  )
}
