import { dropUndefined, type Finding, type Result, refuse, requireObject } from '../base/index.js'
import { isDate } from '../calendar/index.js'
import { countsPer, type IntervalCodes, MAX_METER_COUNT, meterCount } from '../interval/index.js'
import type { DistanceUnit } from '../quantity/index.js'
import type { MeterReading } from '../spec/index.js'

/** The meters of one machine, in the form of its log. */
export interface ImportedMachine {
  /** Pointer into the input. */
  readonly path: string
  /** The sender's names for the machine; the caller finds the log. */
  readonly header: {
    readonly make?: string
    readonly model?: string
    readonly equipmentId?: string
    readonly serial?: string
    readonly pin?: string
  }
  readonly hours: readonly MeterReading[]
  readonly distance?: { readonly unit: DistanceUnit; readonly readings: readonly MeterReading[] }
}

/** The codes of findings in a sender's answer. */
export type ImportCodes = Pick<
  IntervalCodes,
  Extract<keyof IntervalCodes, `interval/import-${string}`> | 'interval/reading-out-of-bounds'
>

export interface ImportedReadings {
  readonly standard: 'ISO/TS 15143-3:2016' | 'ISO/TS 15143-3:2020'
  readonly machines: readonly ImportedMachine[]
}

/**
 * Reads hours and distance from fleet telematics answers in the shape of ISO/TS 15143-3, to add them to machine logs.
 * Takes the parsed JSON: a fleet, a list of equipment, or one machine; each meter once or as a series. Senders use
 * different capitals, so keys are compared without regard to them; two such keys with different values are refused.
 *
 * @param input - parsed JSON, anything
 * @param options - `edition` that the sender follows, `2016` or `2020`; it is named in the result and changes nothing else
 * @returns readings sorted by date; the date is the one in the sender's time stamp. A value or unit that cannot be used is
 *   left out and reported (`interval/import-…`); nothing is guessed. Not ok if no machine is found
 * @throws TypeError or RangeError if `edition` is neither
 *
 * Source: field names of ISO/TS 15143-3 in public samples (`CumulativeOperatingHours`, `Distance`, `OdometerUnits`).
 *
 * @example
 * ```ts
 * // How many hours does this machine report?
 * import { importReadings } from 'drivetrain-service/v1/interval/meters'
 * const read = importReadings(
 *   { Equipment: [{ CumulativeOperatingHours: { datetime: '2031-01-12T06:30:00Z', Hour: 412.5 } }] },
 *   { edition: '2020' },
 * )
 * read.ok && read.value.machines[0]?.hours[0]?.value // => 412.5
 * ```
 */
export function importReadings(
  input: unknown,
  options: { readonly edition: '2016' | '2020' },
): Result<ImportedReadings, ImportCodes> {
  requireObject('options', options)
  const { edition } = options
  if (edition !== '2016' && edition !== '2020')
    throw refuse('options.edition', edition, "'2016' or '2020'", 'string')
  const findings: Finding<ImportCodes>[] = []
  const addFinding = <Code extends keyof ImportCodes>(
    code: Code,
    path: string,
    params: ImportCodes[Code],
  ) => {
    const finding = { code, severity: 'error', document: { kind: 'text' }, path, params }
    findings.push(finding as Finding<ImportCodes>)
  }
  /** The value of a key, without regard to capitals. */
  const field = (object: object, path: string, ...names: string[]): unknown => {
    let found: { readonly key: string; readonly value: unknown } | undefined
    for (const [key, value] of Object.entries(object)) {
      if (!names.includes(key.toLowerCase())) continue
      if (found !== undefined && found.value !== value) {
        addFinding('interval/import-ambiguous-key', path, { one: found.key, other: key })
        return undefined
      }
      found = { key, value }
    }
    return found?.value
  }

  const machines: ImportedMachine[] = []
  for (const { machine, path } of findMachines(input, field)) {
    const hours: MeterReading[] = []
    const hourEntries = field(machine, path, 'cumulativeoperatinghours')
    for (const { entry, at } of entriesOf(hourEntries, `${path}/CumulativeOperatingHours`)) {
      const reading = readEntry(entry, at, 'hours', field(entry, at, 'hour', 'hours'), 'h')
      if (reading !== undefined) hours.push(reading)
    }
    const byUnit = new Map<DistanceUnit, MeterReading[]>()
    for (const { entry, at } of entriesOf(field(machine, path, 'distance'), `${path}/Distance`)) {
      const written = field(entry, at, 'odometerunits', 'odometerunit')
      const unit = readUnit(written)
      if (unit === undefined) {
        addFinding('interval/import-unit', at, { unit: shorten(written) })
        continue
      }
      const reading = readEntry(entry, at, 'distance', field(entry, at, 'odometer'), unit)
      if (reading !== undefined) byUnit.set(unit, [...(byUnit.get(unit) ?? []), reading])
    }
    if (byUnit.size > 1)
      addFinding('interval/import-mixed-units', `${path}/Distance`, { units: [...byUnit.keys()] })
    const [distance] = byUnit.size === 1 ? byUnit : []
    const headerEntry = field(machine, path, 'equipmentheader')
    const header = isObject(headerEntry) ? readHeader(headerEntry, path) : {}
    const meter = distance && { unit: distance[0], readings: distance[1].sort(byDate) }
    machines.push(dropUndefined({ path, header, hours: hours.sort(byDate), distance: meter }))
  }
  if (machines.length === 0) {
    addFinding('interval/import-no-machines', '', {})
    return { ok: false, findings }
  }
  return { ok: true, value: { standard: `ISO/TS 15143-3:${edition}`, machines }, findings }

  function readEntry(
    entry: object,
    at: string,
    meter: 'hours' | 'distance',
    written: unknown,
    unit: 'h' | DistanceUnit,
  ): MeterReading | undefined {
    const timeStamp = field(entry, at, 'datetime')
    const date =
      typeof timeStamp === 'string' && /^.{10}($|[T ])/.test(timeStamp) ? timeStamp.slice(0, 10) : undefined
    if (!isDate(date)) {
      addFinding('interval/import-date', at, { text: shorten(timeStamp) })
      return undefined
    }
    const value =
      typeof written === 'string' && /^[0-9]{1,10}(\.[0-9]{1,6})?$/.test(written) ? Number(written) : written
    const count = typeof value === 'number' ? meterCount(value, unit) : Number.NaN
    if (typeof value !== 'number' || !(count >= 0 && count <= MAX_METER_COUNT[meter])) {
      const largest = { value: MAX_METER_COUNT[meter] / countsPer(unit), unit }
      addFinding('interval/reading-out-of-bounds', at, { meter, value: shorten(written), largest })
      return undefined
    }
    return { date, value }
  }

  function readHeader(headerEntry: object, path: string): ImportedMachine['header'] {
    const text = (name: string): string | undefined => {
      const value = field(headerEntry, `${path}/EquipmentHeader`, name)
      return typeof value === 'string' || typeof value === 'number' ? String(value) : undefined
    }
    return dropUndefined({
      make: text('oemname'),
      model: text('model'),
      equipmentId: text('equipmentid'),
      serial: text('serialnumber'),
      pin: text('pin'),
    })
  }
}

type Field = (object: object, path: string, ...names: string[]) => unknown

function* findMachines(
  input: unknown,
  field: Field,
): Generator<{ readonly machine: object; readonly path: string }> {
  if (!isObject(input)) return
  let list: unknown = input
  let path = ''
  if (!Array.isArray(input)) {
    const fleet = field(input, '', 'fleet')
    const holder = isObject(fleet) && !Array.isArray(fleet) ? fleet : input
    path = holder === input ? '' : '/Fleet'
    const equipment = field(holder, path, 'equipment')
    list = equipment ?? (MACHINE_KEYS.some((key) => field(holder, path, key) !== undefined) ? holder : [])
    if (equipment !== undefined) path += '/Equipment'
  }
  for (const { entry, at } of entriesOf(list, path)) yield { machine: entry, path: at }
}

const MACHINE_KEYS = ['equipmentheader', 'cumulativeoperatinghours', 'distance']

/** One object, or each object of a list. */
function* entriesOf(
  value: unknown,
  path: string,
): Generator<{ readonly entry: object; readonly at: string }> {
  if (Array.isArray(value)) {
    for (const [index, entry] of value.entries()) {
      if (isObject(entry)) yield { entry, at: `${path}/${index}` }
    }
  } else if (isObject(value)) yield { entry: value, at: path }
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null
}

const DISTANCE_UNITS = /^(?:(km|kilomet(?:re|er)s?)|mi|miles?)$/i

function readUnit(written: unknown): DistanceUnit | undefined {
  const match = typeof written === 'string' ? DISTANCE_UNITS.exec(written.trim().slice(0, 20)) : null
  return match === null ? undefined : match[1] === undefined ? 'mi' : 'km'
}

function shorten(value: unknown): string {
  return typeof value === 'object' && value !== null ? 'an object' : String(value).slice(0, 40)
}

function byDate(one: MeterReading, other: MeterReading): number {
  return one.date < other.date ? -1 : one.date > other.date ? 1 : one.value - other.value
}
