import type { ExpectedJson, NotPlainData, SpecCodes, TypeName } from '../../spec/index.js'
import type { Texts } from '../catalogue.js'
import { capitalize, join, writeUnitName } from '../phrases.js'
import { describeNotation } from './notation.js'
import { writeFactName } from './words.js'

const TYPE_NAMES: Readonly<Record<TypeName, string>> = {
  object: 'an object',
  list: 'a list',
  text: 'text',
  number: 'a number',
  'whole-number': 'a whole number',
  'true-or-false': 'true or false',
  null: 'null',
}

/** Reasons why a line of a history cannot be used. */
const HISTORY_PROBLEMS: Readonly<Record<SpecCodes['spec/history-line-unreadable']['problem'], string>> = {
  'not-json': 'it is not valid JSON',
  'repeated-key': 'a key appears twice',
  'too-deep': 'it is nested too deep',
  'not-an-addition': 'expected {"op":"add","path":…,"value":…}',
  'no-such-place': 'the log has no such path, or it must not change',
  'not-at-the-end': 'items are added only at the end of a list: the path must end in /-',
  'replaces-a-part': 'it would replace existing data; each line adds one item to a list',
}

const JSON_NEEDS: Readonly<Record<ExpectedJson, string>> = {
  value: 'expected a value',
  key: 'expected a key in double quotes (no comma before a closing brace)',
  colon: 'expected a colon',
  'comma-or-brace': 'expected a comma or a closing brace',
  'comma-or-bracket': 'expected a comma or a closing bracket',
  end: 'expected the end of the text',
  'closing-quote': 'the closing quote is missing',
  escape: 'unknown escape; double the backslash',
  'no-control-character':
    'a line end, tab or other control character inside quotes must be written as an escape',
}

const NOT_PLAIN_NAMES: Readonly<Record<NotPlainData, string>> = {
  undefined: 'a value that is not defined; omit the key instead',
  function: 'a function',
  symbol: 'a symbol',
  bigint: 'a BigInt; write a number',
  'not-finite': 'a number that is not finite',
  cycle: 'an object that contains itself',
  'sparse-list': 'a list with holes',
  'list-with-keys': 'a list with keys',
  accessor: 'a getter; give the value',
  'hidden-property': 'a non-enumerable property',
  'symbol-key': 'a symbol as a key',
  'class-instance': 'an instance of a class; give a plain object',
  unreadable: 'an object that cannot be read',
}

const quote = (text: string): string => `"${text}"`
const joinWithOr = (items: readonly string[]): string => join(items, 'or')
const writeSuggestion = (didYouMean: string | undefined): string =>
  didYouMean === undefined ? '' : ` Did you mean ${quote(didYouMean)}?`
const writeRange = (from: number | string | undefined, to: number | string | undefined): string =>
  from === undefined ? `up to ${to}` : to === undefined ? `from ${from}` : `${from} to ${to}`

export const specTexts: Texts<SpecCodes> = {
  'spec/variant-stated': ({ variant }) => `The log names the variant ${variant}.`,
  'spec/variant-selected': ({ variant }) => `Variant ${variant} is the only one whose condition is met.`,
  'spec/variant-only': ({ variant }) => `Variant ${variant} is the only one on the sheet.`,
  'spec/variant-not-known': ({ candidates }) =>
    candidates.length === 0
      ? 'The sheet has no variants.'
      : `The variant is not known: ${candidates.join(' or ')}. Enter it in the log.`,
  'spec/variant-not-on-sheet': ({ variant, known }, say) =>
    `The log names variant ${quote(variant)}, which is not on the sheet${known.length === 0 ? '' : ` (${say.list(known)})`}. Check the sheet and the log.`,
  'spec/variant-contradicted': ({ variant, candidates }, say) =>
    `The log names variant ${variant}, but the other facts of the machine exclude it${candidates.length === 0 ? '' : `; they fit ${say.list(candidates)}`}. Check the machine's plate.`,
  'spec/variant-none-fits': ({ known }, say) =>
    `No variant of the sheet fits this machine; the sheet has ${say.list(known)}. Check the serial number, or find the sheet that covers it.`,
  'spec/variant-without-condition': ({ variant }) =>
    `The sheet gives no condition for variant ${variant}; the log must name it.`,
  'spec/fact-missing': ({ fact }) => `The ${writeFactName(fact)} is not known. Enter it in the log.`,
  'spec/variant-listed': ({ variants, listed }, say) =>
    `Applies to ${say.list(listed)}; this machine is ${say.list(variants)}.`,
  'spec/variant-not-listed': ({ variants, listed }, say) =>
    listed.length === 0
      ? 'Applies to no variant: the list is empty.'
      : `Applies only to ${say.list(listed)}; this machine is ${say.list(variants)}.`,
  'spec/model-year-in-range': ({ modelYear, from, to }) =>
    `Model year ${modelYear} is in the range ${writeRange(from, to)}.`,
  'spec/model-year-out-of-range': ({ modelYear, from, to }) =>
    `Model year ${modelYear} is outside the range ${writeRange(from, to)}.`,
  'spec/serial-in-range': ({ serial, prefix, from, to }) =>
    `Serial number ${serial} is in the range ${writeSerialRange(prefix, from, to)}.`,
  'spec/serial-out-of-range': ({ serial, prefix, from, to }) =>
    `Serial number ${serial} is outside the range ${writeSerialRange(prefix, from, to)}.`,
  'spec/serial-form-differs': ({ serial, prefix, width }, say) =>
    `Serial number ${quote(serial)} does not have the form of the range: ${prefix === '' ? '' : `${quote(prefix)}, then `}${width === undefined ? 'a number' : `a number of ${say.count(width, 'digit', 'digits')}`}. Check the plate.`,
  'spec/serial-range-unreadable': ({ prefix, from, to }) =>
    `Serial range ${writeSerialRange(prefix, from, to)} cannot be used: both ends must be numbers with the same number of digits.`,
  'spec/market-listed': ({ market, listed }, say) =>
    `Applies to market ${say.list(listed)}; this machine is for ${market}.`,
  'spec/market-not-listed': ({ market, listed }, say) =>
    listed.length === 0
      ? 'Applies to no market: the list is empty.'
      : `Applies only to market ${say.list(listed)}; this machine is for ${market}.`,
  'spec/market-case-differs': ({ market, listed }, say) =>
    `Market ${quote(market)} differs from ${say.list(listed)} only in upper and lower case. Write both the same way.`,
  'spec/part-on-every-machine': () => 'Every machine of this sheet has this part.',
  'spec/part-on-some-machines': () => 'Only some machines of this sheet have this part.',
  'spec/leaf-from-sheet': () => 'The sheet gives this figure directly.',
  'spec/leaf-absent': () => 'The sheet does not give this figure.',
  'spec/override-applies': () => 'An override of the sheet applies to this machine.',
  'spec/override-may-apply': () => 'An override of the sheet may apply to this machine.',
  'spec/override-does-not-fit': () =>
    'An override of the sheet points here, but its figure has another kind, or it points to part of a figure. Correct the sheet.',
  'spec/overrides-overlap': ({ overrides }, say) =>
    `${say.count(overrides.length, 'override', 'overrides')} of the sheet apply here at once. Correct the sheet so that only one applies.`,
  'spec/candidates-agree': ({ candidates }, say) =>
    `${say.count(candidates.length, 'figure', 'figures')} may apply; all are equal.`,
  'spec/not-yaml': ({ line, column, problem }) =>
    `Not valid YAML: line ${line}, column ${column}: ${problem}`,
  'spec/yaml-comma-in-braces': ({ text }) =>
    `YAML reads ${quote(text)} as a key: in braces, a comma ends a text. Put texts with commas in quotes.`,
  'spec/yaml-comment-in-text': ({ text, comment }) =>
    `YAML reads only ${quote(text)}, and ${quote(`#${comment}`)} as a comment. Put the text in quotes, or put a space after #.`,
  'spec/yaml-key-is-boolean': ({ key }) => `YAML reads this key as ${key}, not as a word. Put it in quotes.`,
  'spec/yaml-too-large': ({ limit }, say) =>
    `This YAML has more than ${say.number(limit)} words, signs and line ends. Write it as JSON, or split it.`,
  'spec/not-json': ({ line, column, needs }) =>
    `Not valid JSON: line ${line}, column ${column}: ${JSON_NEEDS[needs]}.`,
  'spec/table-instead-of-document': ({ columns }, say) =>
    `This is a table (CSV) with the columns ${say.list(columns.map(quote))}, not a document. Write a document as JSON or YAML. For a fleet, give each row as a line of JSON to “due -”.`,
  'spec/history-line-unreadable': ({ line, problem }) =>
    `Line ${line} of the history cannot be used: ${HISTORY_PROBLEMS[problem]}.`,
  'spec/history-cut-off': ({ line }) =>
    `Line ${line}, the last of the history, is cut off and was not read. Delete it, and add it again.`,
  'spec/duplicate-key': ({ key }) =>
    `Duplicate key ${quote(key)}. Only the last would be read: delete the wrong one.`,
  'spec/not-plain-data': ({ found }) => `Not JSON data: found ${NOT_PLAIN_NAMES[found]}.`,
  'spec/forbidden-key': ({ key }) => `Key ${quote(key)} is not allowed in a document. Choose another.`,
  'spec/too-deep': ({ limit }, say) =>
    `Lists and objects are nested deeper than ${say.count(limit, 'level', 'levels')}.`,
  'spec/too-long': ({ length, limit }, say) =>
    `This text has ${say.number(length)} characters; the limit is ${say.number(limit)}.`,
  'spec/too-large': ({ limit }, say) =>
    `There are more than ${say.number(limit)} values or keys. Split the document.`,
  'spec/more-mistakes': ({ shown }, say) =>
    `This document has more than ${say.count(shown, 'mistake', 'mistakes')}; the others are not listed.`,
  'spec/wrong-kind': ({ found, expected, didYouMean }) =>
    `Expected kind ${joinWithOr(expected)}, found ${quote(found)}.${writeSuggestion(didYouMean)}`,
  'spec/wrong-version': ({ found, readable, quotes }) =>
    quotes
      ? `Expected the version as text: write ${quote(readable[0] ?? '')}, in quotes.`
      : `Expected version ${joinWithOr(readable)}, found ${found}.`,
  'spec/missing-key': ({ key, allowed }) =>
    `Missing key ${quote(key)}${allowed === undefined ? '' : ` (${allowed.map(quote).join(' or ')})`}.`,
  'spec/unknown-key': ({ key, known, didYouMean }, say) =>
    `Unknown key ${quote(key)}.${didYouMean === undefined ? (known.length === 0 ? '' : ` Known: ${say.list(known)}.`) : writeSuggestion(didYouMean)}`,
  'spec/wrong-type': ({ expected, found, value }) =>
    `Expected ${TYPE_NAMES[expected]}, found ${TYPE_NAMES[found]}${value === undefined ? '' : ` (${value})`}.`,
  'spec/not-in-list': ({ found, allowed, didYouMean }) =>
    `Expected ${joinWithOr(allowed.map(quote))}, found ${quote(found)}.${writeSuggestion(didYouMean)}`,
  'spec/bad-figure': ({ found }) =>
    `Expected a figure, found ${quote(found)}. Write the digits as printed, with a decimal point: up to nine digits before it and six after. A fraction goes in "asPrinted".`,
  'spec/interval-too-long': ({ found }) =>
    `Interval ${found} is implausibly long: at most six digits before the decimal point.`,
  'spec/comma-decimal': ({ found, didYouMean }) =>
    didYouMean === undefined
      ? `Figure ${quote(found)} has a comma, which can mean decimals or thousands. Write a decimal point, and no thousands separator.`
      : `Figure ${quote(found)} has a decimal comma. Write ${quote(didYouMean)}.`,
  'spec/figure-without-quotes': ({ found }, say) =>
    `Expected a figure in quotes, found the number ${say.number(found, 15)}, which loses printed zeros. Write it as printed.`,
  'spec/bad-id': ({ found, didYouMean }) =>
    `Expected an id (lower-case letters, digits and hyphens, starting with a letter, at most 64 characters), found ${quote(found)}.${writeSuggestion(didYouMean)}`,
  'spec/bad-date': ({ found }) => `Expected a date such as 2031-03-09, found ${quote(found)}.`,
  'spec/bad-period': ({ found }) =>
    `Expected a period of whole years, months, weeks or days, such as P1Y, P6M, P2W or P10D, found ${quote(found)}.`,
  'spec/bad-pointer': ({ found }) =>
    `Expected a JSON pointer, found ${quote(found)}. Begin each key with /; inside a key write ~1 for / and ~0 for ~.`,
  'spec/bad-currency': ({ found }) =>
    `Expected a currency code of three capital letters, such as EUR, found ${quote(found)}.`,
  'spec/bad-sha256': ({ found }) =>
    `Expected a SHA-256 of 64 digits and letters a to f, found ${quote(found)}.`,
  'spec/empty-text': ({ key }) =>
    `Empty text at ${quote(key)}. Fill it in, or omit the key if it is optional.`,
  'spec/empty-list': ({ key }) => `Empty list at ${quote(key)}; it needs at least one entry.`,
  'spec/bad-notation': describeNotation,
  'spec/number-too-small': ({ found, limit, inclusive }, say) =>
    `Expected ${inclusive ? `${say.number(limit)} or more` : `more than ${say.number(limit)}`}, found ${say.number(found, 15)}.`,
  'spec/number-too-large': ({ found, limit }, say) =>
    `Expected ${say.number(limit)} or less, found ${say.number(found, 15)}.`,
  'spec/interval-empty': () =>
    'Empty interval: the service would never be due. Give hours, distance or period, or “not stated”.',
  'spec/limits-empty': ({ unit }, say) =>
    `These limits (${writeUnitName(unit, say)}) have neither minimum nor maximum. Give one, or “not stated”.`,
  'seal/zero-size': ({ part, size }) =>
    `${capitalize(part)}: the ${size} of the seal is 0 mm. Omit a size that is not known.`,
  'interval/limit-not-above-zero': ({ by }) =>
    `The ${by === 'period' ? 'calendar' : by} limit is zero. Correct the sheet.`,
}

function writeSerialRange(prefix: string, from: string | undefined, to: string | undefined): string {
  if (from === undefined && to === undefined) return `${prefix}…`
  return writeRange(
    from === undefined ? undefined : `${prefix}${from}`,
    to === undefined ? undefined : `${prefix}${to}`,
  )
}
