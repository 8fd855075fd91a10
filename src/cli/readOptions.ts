import { parseArgs } from 'node:util'
import { dropUndefined, type Severity, suggestName } from '../base/index.js'
import { type DateText, isDate } from '../calendar/index.js'
import type { DueOptions } from '../interval/index.js'
import { convert, parseQuantity, type Quantity, type TemperatureUnit } from '../quantity/index.js'
import { type CliIo, UsageError } from './cliIo.js'
import type { FindingFormat } from './renderFindings.js'

/** The options of the command line, checked. */
export interface Options {
  readonly paths: readonly string[]
  readonly help: boolean
  readonly level: Severity
  readonly format: FindingFormat | 'vtt'
  readonly today: DateText
  readonly ambient?: Quantity<TemperatureUnit>
  readonly machine?: string
  readonly services: readonly string[] | 'due'
  readonly due: Omit<DueOptions, 'severity'>
  /** Absent: the log's `use` decides. */
  readonly severity?: DueOptions['severity']
  readonly iso6789: '2017' | '2003'
  readonly tolerancePercent?: number
  readonly out?: string
  readonly to?: string
  readonly assume?: string
  /** Sheets for logs as JSON Lines. */
  readonly sheets: readonly string[]
  /** The id, serial number or PIN of a machine in a telematics answer. */
  readonly equipment?: string
  readonly telematics: '2016' | '2020'
  /** Whether the exit code reports due services. */
  readonly exitCode?: boolean
}

const TEXT = { type: 'string' } as const
const TEXTS = { type: 'string', multiple: true } as const

const FLAGS = {
  help: { type: 'boolean', short: 'h' },
  level: TEXT,
  format: TEXT,
  today: TEXT,
  ambient: TEXT,
  machine: TEXT,
  service: TEXTS,
  severity: TEXT,
  'soon-hours': TEXT,
  'soon-km': TEXT,
  'soon-days': TEXT,
  'stale-days': TEXT,
  edition: TEXT,
  tolerance: TEXT,
  out: TEXT,
  to: TEXT,
  assume: TEXT,
  sheet: TEXTS,
  equipment: TEXT,
  telematics: TEXT,
  'exit-code': { type: 'boolean' },
} as const

/** Options of some commands; every command has `--help`. */
export type OptionName = Exclude<keyof typeof FLAGS, 'help'>

const TEMPERATURES: readonly TemperatureUnit[] = ['degC', 'degF', 'K']

/**
 * Reads the words after the command's name. The defaults are those of the help text; an option of another command is
 * refused.
 */
export function readOptions(words: readonly string[], takes: readonly OptionName[], io: CliIo): Options {
  const { values, positionals } = parse(words, takes)
  const { machine, severity, out, to, assume, equipment, today = io.today() } = values
  if (!isDate(today)) throw new UsageError(`--today ${today}: expected a date such as 2023-10-06`)
  const count = (name: 'soon-hours' | 'soon-km' | 'soon-days' | 'stale-days', otherwise: string): number =>
    readCount(`--${name}`, values[name] ?? otherwise)
  return dropUndefined({
    paths: positionals.map((word) => (MINUS.test(word) ? `-${word.slice(1)}` : word)),
    help: values.help === true,
    level: oneOf('--level', values.level ?? 'warning', ['error', 'warning', 'info']),
    format: oneOf('--format', values.format ?? 'text', ['text', 'json', 'sarif', 'vtt']),
    today,
    ambient: values.ambient === undefined ? undefined : readTemperature(values.ambient),
    machine,
    services: values.service ?? 'due',
    due: {
      soon: {
        hours: count('soon-hours', '10'),
        distance: { value: count('soon-km', '100'), unit: 'km' },
        days: count('soon-days', '14'),
      },
      staleAfter: { days: count('stale-days', '30') },
    },
    severity: severity === undefined ? undefined : oneOf('--severity', severity, ['normal', 'severe']),
    iso6789: oneOf('--edition', values.edition ?? '2017', ['2017', '2003']),
    tolerancePercent: values.tolerance === undefined ? undefined : readPercent(values.tolerance),
    out,
    to,
    assume,
    sheets: values.sheet ?? [],
    equipment,
    exitCode: values['exit-code'],
    telematics: oneOf('--telematics', values.telematics ?? '2020', ['2016', '2020']),
  })
}

function parse(words: readonly string[], takes: readonly OptionName[]) {
  const args = keepNegatives(words)
  const { tokens } = parseArgs({ args, options: FLAGS, allowPositionals: true, strict: false, tokens: true })
  for (const token of tokens)
    if (token.kind === 'option') refuseOtherOptions(token.name, token.rawName, takes)
  try {
    return parseArgs({ args, options: FLAGS, allowPositionals: true, strict: true })
  } catch (error) {
    throw new UsageError(error instanceof Error ? (error.message.split('\n', 1)[0] ?? '') : String(error))
  }
}

function refuseOtherOptions(name: string, rawName: string, takes: readonly OptionName[]): void {
  const taken: readonly string[] = ['help', ...takes]
  if (taken.includes(name)) return
  const nearName = suggestName(name, taken)
  const problem = isOption(name) ? 'is not an option of this command' : 'is unknown'
  const hint = nearName === undefined ? '' : `; did you mean --${nearName}?`
  throw new UsageError(`${rawName} ${problem}${hint} (options: ${takes.map((one) => `--${one}`).join(', ')})`)
}

function isOption(name: string): name is keyof typeof FLAGS {
  return Object.hasOwn(FLAGS, name)
}

const MINUS = /^\u2212(?=[0-9.])/

/** A word such as `-10degC` is a value, not an option. */
function keepNegatives(words: readonly string[]): string[] {
  const kept: string[] = []
  for (const word of words) {
    const before = kept.at(-1)
    if (!/^-[0-9.]/.test(word)) kept.push(word)
    else if (before !== undefined && takesValue(before)) kept[kept.length - 1] = `${before}=${word}`
    else kept.push(`\u2212${word.slice(1)}`)
  }
  return kept
}

function takesValue(word: string): boolean {
  const name = word.slice(2)
  return word.startsWith('--') && isOption(name) && FLAGS[name].type === 'string'
}

function oneOf<const Word extends string>(flag: string, word: string, words: readonly Word[]): Word {
  const found = words.find((one) => one === word)
  if (found === undefined) throw new UsageError(`${flag} ${word}: expected one of ${words.join(', ')}`)
  return found
}

function readCount(flag: string, text: string): number {
  if (!/^[0-9]{1,7}(\.[0-9]{1,3})?$/.test(text)) throw new UsageError(`${flag} ${text}: expected a number`)
  return Number(text)
}

function readPercent(text: string): number {
  const percent = readCount('--tolerance', text.replace(/ ?%$/, ''))
  if (!(percent > 0 && percent < 100))
    throw new UsageError(`--tolerance ${text}: expected per cent above 0 and below 100`)
  return percent
}

function readTemperature(text: string): Quantity<TemperatureUnit> {
  const spaced = text.replace(/^(-?[0-9.]+)(degC|degF|K)$/, '$1 $2')
  const read = parseQuantity(spaced, { measure: 'temperature' })
  const quantity = read.ok && read.value.kind === 'nominal' ? read.value : undefined
  const unit = TEMPERATURES.find((one) => one === quantity?.unit)
  if (quantity === undefined || unit === undefined)
    throw new UsageError(`--ambient ${text}: expected a temperature such as 6degC or 43degF`)
  const ambient = { value: Number(quantity.value), unit }
  const celsius = convert(ambient, 'degC').value
  if (!(celsius >= -100 && celsius <= 100))
    throw new UsageError(`--ambient ${text}: expected -100 degC to 100 degC`)
  return ambient
}
