import { UNIT_FACTORS, UNITS_BY_MEASURE } from '../../../src/quantity/unit.js'
import { UNIT_CODES } from '../../../src/quantity/unitCodes/index.js'
import { TEMPERATURE_SHIFTS } from '../../../src/quantity/unitFactors.js'
import { unitSymbol } from '../../../src/quantity/unitSymbol.js'
import { parseQuantity, type Unit } from '../../../src/v1/quantity.js'
import { otherReadings } from './otherReadings.js'
import { otherTables } from './otherTables.js'
import { readingText } from './readingText.js'
import { UNIT_TEXTS } from './unitTexts.js'

const MADE =
  'Written by `node test/support/run.mjs test/quantity/support/writeQuantityDocs.ts`; a test compares it.'

const line = (cells: readonly (string | number)[]): string => `| ${cells.join(' | ')} |`
const table = (head: readonly string[], rows: readonly (readonly (string | number)[])[]): string =>
  [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n')
const code = (text: string | undefined): string =>
  text === undefined ? '–' : `\`${text.replaceAll('|', '\\|')}\``

/** `docs/units.md`: the whole unit table, and the differences of other tables. */
export function unitsPage(): string {
  const measures = Object.entries(UNITS_BY_MEASURE).map(([measure, units]) => {
    const anchor = units.find((unit) => UNIT_FACTORS[unit] === '1' && !TEMPERATURE_SHIFTS[unit]) ?? units[0]
    const rows = units.map((unit) => unitRow(unit))
    return [
      `## ${words(measure)}`,
      '',
      `Exact factors for conversion to ${anchor === undefined ? '' : unitSymbol(anchor)}.`,
      '',
      table(['unit', 'symbol', 'name', 'factor', 'UCUM', 'Rec 20', 'QUDT', 'defined by'], rows),
      ...notes(units),
      '',
    ].join('\n')
  })
  const errors = otherTables().map(({ unit, per, exact, convertUnits, mathjs, jsQuantities }) => [
    code(unit),
    `${exact.slice(0, 20)}${exact.length > 20 ? '…' : ''} ${unitSymbol(per)}`,
    error(convertUnits),
    error(mathjs),
    error(jsQuantities),
  ])
  return [
    '# Units',
    '',
    MADE,
    '',
    'Documents and functions use the unit ids. People write units in many other ways: see [reading](reading.md).',
    '',
    '```console',
    '$ drivetrain-service convert "8.9 lbf·ft" --to N.m',
    '8.9 lbf·ft = 12.066779740149464 N·m; print 12.1 N·m',
    '```',
    '',
    ...measures,
    '## Other tables',
    '',
    'The relative error of the factors in general-purpose libraries. `exact` means that only the sixteenth digit may differ, by a few units.',
    '',
    table(['unit', 'exact size', 'convert-units 3', 'mathjs 15', 'js-quantities 1'], errors),
    '',
  ].join('\n')
}

function unitRow(unit: Unit): string[] {
  const factor = UNIT_FACTORS[unit]
  const shift = TEMPERATURE_SHIFTS[unit]
  const { name, source, ucum, rec20, qudt } = UNIT_CODES[unit]
  const size = shift === undefined ? factor : `(value + ${shift}) × ${factor}`
  return [code(unit), unitSymbol(unit), name, size, code(ucum), code(rec20), code(qudt), source]
}

function notes(units: readonly Unit[]): string[] {
  const noted = units.flatMap((unit) => {
    const { note } = UNIT_CODES[unit]
    return note === undefined ? [] : [`- ${code(unit)}: ${note}.`]
  })
  return noted.length === 0 ? [] : ['', ...noted]
}

function words(measure: string): string {
  const spacedName = measure.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
  return spacedName.charAt(0).toUpperCase() + spacedName.slice(1)
}

function error(value: number | null): string {
  if (value === null) return '–'
  return value < 2e-15 ? 'exact' : value.toExponential(1)
}

/** `docs/reading.md`: every text of the table, with our reading and those of other libraries. */
export function readingPage(): string {
  const rows = UNIT_TEXTS.map(({ text, options }) => {
    const other = otherReadings(text)
    const asked =
      options === undefined
        ? ''
        : Object.entries(options)
            .map(([key, value]) => `${key}: ${value}`)
            .join(', ')
    return [
      showSpaces(text),
      asked,
      readingText(parseQuantity(text, options)),
      other.mathjs,
      other.jsQuantities,
      other.unitmath,
    ]
  })
  return [
    '# Reading quantities',
    '',
    MADE,
    '',
    `This table shows how \`parseQuantity\` reads ${UNIT_TEXTS.length} texts, and how three general-purpose unit libraries read the same texts`,
    '(mathjs 15.2.0, js-quantities 1.8.0 and unitmath 0.8.8, each in its own base units, six digits).',
    '',
    'A reading is a figure and a unit id. `a..b` are limits, `20 -2 +2` is a nominal value with its tolerance, and `(7 1/2)` is the',
    'fraction as printed. `!` is a warning. After `refused` are the codes of the findings and, in brackets, the candidates.',
    '',
    '```console',
    '$ drivetrain-service convert "7 1/2 lb-ft" --to N.m',
    '7.5 lbf·ft = 10.168634612485503 N·m; print 10.2 N·m',
    '```',
    '',
    table(['text', 'options', 'reading', 'mathjs', 'js-quantities', 'unitmath'], rows),
    '',
  ].join('\n')
}

/** A text in which every kind of space is visible. */
function showSpaces(text: string): string {
  const named = text.replace(
    /[\t\u00a0\u2009\u202f\u3000]/g,
    (space) => `[U+${space.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}]`,
  )
  return named.trim() === '' ? `${named.length} spaces` : code(named)
}
