import { dropUndefined, type Severity } from '../base/index.js'
import { type DateText, isDate } from '../calendar/index.js'
import type { DueOptions } from '../interval/index.js'
import { convert, parseQuantity, type Quantity, type TemperatureUnit } from '../quantity/index.js'
import type { Money } from '../service/index.js'
import { type CliIo, UsageError } from './cliIo.js'
import type { ParsedWords } from './parseWords.js'
import type { Format } from './renderFindings.js'

const PAPERS = ['visit', 'wall', 'label', 'chart', 'picks', 'differences', 'record'] as const

/** The checked options of the command line. */
export interface Options {
  readonly paths: readonly string[]
  readonly level: Severity
  readonly format: Format
  readonly today: DateText
  /** The period to report, both ends included. */
  readonly period: { readonly from?: DateText; readonly to?: DateText }
  readonly ambient?: Quantity<TemperatureUnit>
  readonly machine?: string
  readonly services: readonly string[] | 'due'
  /** Gearcases to sample, even if the sheet does not require it. */
  readonly samples: readonly string[]
  readonly due: Omit<DueOptions, 'severity'>
  /** If absent, the log's `use` decides. */
  readonly severity?: DueOptions['severity']
  readonly iso6789: '2017' | '2003'
  readonly tolerancePercent?: number
  readonly raiseOn?: 'stands' | 'ramps'
  readonly out?: string
  /** The paper that `card` writes. */
  readonly paper: (typeof PAPERS)[number]
  /** The starts of the scenes of a film, in seconds. */
  readonly starts?: readonly number[]
  /** The cost of an hour of work. */
  readonly labourRate?: Money
  /** Logs of other machines whose records show how long work takes. */
  readonly timesFrom: readonly string[]
  /** A writer's procedure instead of the built steps. */
  readonly procedure?: string
  /** An older procedure to update to the revision of the sheet. */
  readonly from?: string
  readonly to?: string
  readonly assume?: string
  /** Sheets for logs as JSON Lines. */
  readonly sheets: readonly string[]
  /** The id, serial number or PIN of a machine in a telematics answer. */
  readonly equipment?: string
  readonly telematics: '2016' | '2020'
  /** The decimal mark of a table. */
  readonly decimal: 'point' | 'comma'
  /** Whether `record` writes the record of a planned visit. */
  readonly fromPlan?: boolean
  /** The record for the slip; the last visit if absent. */
  readonly record?: string
  /** Whether the exit code reports due services. */
  readonly exitCode?: boolean
  /** Whether `check` corrects files, and whether it only prints the changes. */
  readonly fix?: boolean
  readonly dryRun?: boolean
  /** The file of accepted findings, to read and to write. */
  readonly baseline?: string
  readonly writeBaseline?: string
  /** Print only findings at or above the level. */
  readonly quiet?: boolean
  /** Print everything, not only the answer. */
  readonly full?: boolean
  /** Print one line of JSON per service. */
  readonly brief?: boolean
}

const TEMPERATURE_UNITS: readonly TemperatureUnit[] = ['degC', 'degF', 'K']

/** Reads the options of a command. Defaults are as in the help text. */
export function readOptions({ values, positionals }: ParsedWords, io: CliIo): Options {
  const { machine, severity, out, procedure, from, to, assume, equipment, today = io.today() } = values
  if (!isDate(today)) throw new UsageError('notADate', { given: `--today ${today}` })
  const readNumberOption = (
    name: 'soon-hours' | 'soon-km' | 'soon-days' | 'stale-days',
    fallback: string,
  ): number => readNumber(`--${name}`, values[name] ?? fallback)
  return dropUndefined({
    paths: positionals,
    level: requireWord('--level', values.level ?? 'warning', ['error', 'warning', 'info']),
    format: requireWord('--format', values.format ?? 'text', [
      'text',
      'json',
      'sarif',
      'vtt',
      'csv',
      'summary',
      'markdown',
      'html',
    ]),
    today,
    period: readPeriod(values.since, values.until),
    ambient: values.ambient === undefined ? undefined : readTemperature(values.ambient),
    machine,
    services: values.service ?? 'due',
    samples: values.sample ?? [],
    due: {
      soon: {
        hours: readNumberOption('soon-hours', '10'),
        distance: { value: readNumberOption('soon-km', '100'), unit: 'km' },
        days: readNumberOption('soon-days', '14'),
      },
      staleAfter: { days: readNumberOption('stale-days', '30') },
    },
    severity: severity === undefined ? undefined : requireWord('--severity', severity, ['normal', 'severe']),
    iso6789: requireWord('--edition', values.edition ?? '2017', ['2017', '2003']),
    tolerancePercent: values.tolerance === undefined ? undefined : readPercent(values.tolerance),
    raiseOn:
      values['raise-on'] === undefined
        ? undefined
        : requireWord('--raise-on', values['raise-on'], ['stands', 'ramps']),
    labourRate: values['labour-rate'] === undefined ? undefined : readLabourRate(values['labour-rate']),
    timesFrom: values['times-from'] ?? [],
    out,
    paper: requireWord('--paper', values.paper ?? 'visit', PAPERS),
    starts: values.starts === undefined ? undefined : readStarts(values.starts),
    procedure,
    from,
    to,
    assume,
    sheets: values.sheet ?? [],
    equipment,
    record: values.record,
    fromPlan: values['from-plan'],
    exitCode: values['exit-code'],
    fix: values.fix,
    dryRun: values['dry-run'],
    baseline: values.baseline,
    writeBaseline: values['write-baseline'],
    quiet: values.quiet,
    full: values.full,
    brief: values.brief,
    decimal: requireWord('--decimal', values.decimal ?? 'point', ['point', 'comma']),
    telematics: requireWord('--telematics', values.telematics ?? '2020', ['2016', '2020']),
  })
}

function readPeriod(since: string | undefined, until: string | undefined): Options['period'] {
  if (since !== undefined && !isDate(since)) throw new UsageError('notADate', { given: `--since ${since}` })
  if (until !== undefined && !isDate(until)) throw new UsageError('notADate', { given: `--until ${until}` })
  if (since !== undefined && until !== undefined && until < since)
    throw new UsageError('untilBeforeSince', { given: `--until ${until}`, since })
  return dropUndefined({ from: since, to: until })
}

function requireWord<const Word extends string>(flag: string, word: string, words: readonly Word[]): Word {
  const knownWord = words.find((known) => known === word)
  if (knownWord === undefined)
    throw new UsageError('notOneOf', { given: `${flag} ${word}`, expected: words.join(', ') })
  return knownWord
}

function readNumber(flag: string, text: string): number {
  if (!/^[0-9]{1,7}(\.[0-9]{1,3})?$/.test(text))
    throw new UsageError('notANumber', { given: `${flag} ${text}` })
  return Number(text)
}

/** Times such as `0:14` or `1:02:03.5`, with commas between them. */
function readStarts(text: string): readonly number[] {
  return text.split(',').map((part) => {
    const time = /^(?:([0-9]{1,3}):)?([0-9]{1,2}):([0-9]{2}(?:\.[0-9]{1,3})?)$/.exec(part.trim())
    if (time === null) throw new UsageError('badTime', { given: `--starts ${part.trim()}` })
    const [, hours = '0', minutes, seconds] = time
    return Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds)
  })
}

function readPercent(text: string): number {
  const percent = readNumber('--tolerance', text.replace(/ ?%$/, ''))
  if (!(percent > 0 && percent < 100)) throw new UsageError('badPercentage', { given: `--tolerance ${text}` })
  return percent
}

function readLabourRate(text: string): Money {
  const [, amount, currency] = /^([0-9]{1,6}(?:\.[0-9]{1,3})?) ([A-Z]{3})$/.exec(text) ?? []
  if (amount === undefined || currency === undefined)
    throw new UsageError('badRate', { given: `--labour-rate ${text}` })
  return { amount: Number(amount), currency }
}

function readTemperature(text: string): Quantity<TemperatureUnit> {
  const spacedText = text.replace(/^(-?[0-9.]+)(degC|degF|K)$/, '$1 $2')
  const parsed = parseQuantity(spacedText, { measure: 'temperature' })
  const quantity = parsed.ok && parsed.value.kind === 'nominal' ? parsed.value : undefined
  const unit = TEMPERATURE_UNITS.find((temperatureUnit) => temperatureUnit === quantity?.unit)
  if (quantity === undefined || unit === undefined)
    throw new UsageError('badTemperature', { given: `--ambient ${text}` })
  const ambient = { value: Number(quantity.value), unit }
  const celsius = convert(ambient, 'degC').value
  if (!(celsius >= -100 && celsius <= 100))
    throw new UsageError('temperatureOutOfRange', { given: `--ambient ${text}` })
  return ambient
}
