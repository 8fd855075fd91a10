import { dropUndefined, type Finding, type Result, refuse, requireObject } from '../base/index.js'
import { isDate } from '../calendar/index.js'
import { countsPerUnit, type IntervalCodes, MAX_METER_COUNT, meterCount } from '../interval/index.js'
import type { DistanceUnit } from '../quantity/index.js'
import type { MeterReading } from '../spec/index.js'

/** The meters of one machine, in the form of its log. */
export interface ImportedMachine {
  /** Pointer into the input. */
  readonly path: string
  /** The sender's data about the machine. The caller finds the log. */
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

/** The codes of findings about a sender's answer. */
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
 * Takes the parsed JSON: a fleet, a list of equipment, or one machine; each meter once or as a series. Capitals in
 * keys are ignored, since senders differ. Two keys that differ only in capitals are refused if their values differ.
 *
 * @param input - parsed JSON of any shape
 * @param options - `edition` of the standard that the sender follows, `2016` or `2020`; it only appears in the result
 * @returns readings sorted by date, taken from the sender's time stamp. A value or unit that cannot be used is left
 *   out and reported (`interval/import-…`), never guessed. Not ok if no machine is found
 * @throws TypeError or RangeError if `edition` is not one of them
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
  const addError = <Code extends keyof ImportCodes>(code: Code, path: string, params: ImportCodes[Code]) => {
    const finding = { code, severity: 'error', document: { kind: 'text' }, path, params }
    findings.push(finding as Finding<ImportCodes>)
  }
  /** The value of a key; capitals are ignored. */
  const getField = (object: object, path: string, ...names: string[]): unknown => {
    let match: { readonly key: string; readonly value: unknown } | undefined
    for (const [key, value] of Object.entries(object)) {
      if (!names.includes(key.toLowerCase())) continue
      if (match !== undefined && match.value !== value) {
        addError('interval/import-ambiguous-key', path, { one: match.key, other: key })
        return undefined
      }
      match = { key, value }
    }
    return match?.value
  }

  const importedMachines: ImportedMachine[] = []
  for (const { machine, path } of findMachines(input, getField)) {
    const hours: MeterReading[] = []
    const rawHours = getField(machine, path, 'cumulativeoperatinghours')
    for (const { entry, entryPath } of listEntries(rawHours, `${path}/CumulativeOperatingHours`)) {
      const reading = parseEntry(entry, entryPath, 'hours', getField(entry, entryPath, 'hour', 'hours'), 'h')
      if (reading !== undefined) hours.push(reading)
    }
    const readingsByUnit = new Map<DistanceUnit, MeterReading[]>()
    for (const { entry, entryPath } of listEntries(getField(machine, path, 'distance'), `${path}/Distance`)) {
      const rawUnit = getField(entry, entryPath, 'odometerunits', 'odometerunit')
      const unit = parseUnit(rawUnit)
      if (unit === undefined) {
        addError('interval/import-unit-unknown', entryPath, { unit: shortenValue(rawUnit) })
        continue
      }
      const reading = parseEntry(entry, entryPath, 'distance', getField(entry, entryPath, 'odometer'), unit)
      if (reading === undefined) continue
      const readings = readingsByUnit.get(unit)
      if (readings === undefined) readingsByUnit.set(unit, [reading])
      else readings.push(reading)
    }
    if (readingsByUnit.size > 1)
      addError('interval/import-mixed-units', `${path}/Distance`, { units: [...readingsByUnit.keys()] })
    const [distance] = readingsByUnit.size === 1 ? readingsByUnit : []
    const rawHeader = getField(machine, path, 'equipmentheader')
    const header = isObject(rawHeader) ? parseHeader(rawHeader, path) : {}
    const distanceMeter = distance && { unit: distance[0], readings: distance[1].sort(compareByDate) }
    importedMachines.push(
      dropUndefined({ path, header, hours: hours.sort(compareByDate), distance: distanceMeter }),
    )
  }
  if (importedMachines.length === 0) {
    addError('interval/import-no-machines', '', {})
    return { ok: false, findings }
  }
  return { ok: true, value: { standard: `ISO/TS 15143-3:${edition}`, machines: importedMachines }, findings }

  function parseEntry(
    entry: object,
    entryPath: string,
    meterName: 'hours' | 'distance',
    rawValue: unknown,
    unit: 'h' | DistanceUnit,
  ): MeterReading | undefined {
    const timeStamp = getField(entry, entryPath, 'datetime')
    const date =
      typeof timeStamp === 'string' && /^.{10}($|[T ])/.test(timeStamp) ? timeStamp.slice(0, 10) : undefined
    if (!isDate(date)) {
      addError('interval/import-date-unreadable', entryPath, { text: shortenValue(timeStamp) })
      return undefined
    }
    const value =
      typeof rawValue === 'string' && /^[0-9]{1,10}(\.[0-9]{1,6})?$/.test(rawValue)
        ? Number(rawValue)
        : rawValue
    const count = typeof value === 'number' ? meterCount(value, unit) : Number.NaN
    if (typeof value !== 'number' || !(count >= 0 && count <= MAX_METER_COUNT[meterName])) {
      const largest = { value: MAX_METER_COUNT[meterName] / countsPerUnit(unit), unit }
      addError('interval/reading-out-of-bounds', entryPath, {
        meter: meterName,
        value: shortenValue(rawValue),
        largest,
      })
      return undefined
    }
    return { date, value }
  }

  function parseHeader(rawHeader: object, path: string): ImportedMachine['header'] {
    const getText = (name: string): string | undefined => {
      const value = getField(rawHeader, `${path}/EquipmentHeader`, name)
      return typeof value === 'string' || typeof value === 'number' ? String(value) : undefined
    }
    return dropUndefined({
      make: getText('oemname'),
      model: getText('model'),
      equipmentId: getText('equipmentid'),
      serial: getText('serialnumber'),
      pin: getText('pin'),
    })
  }
}

type GetField = (object: object, path: string, ...names: string[]) => unknown

function* findMachines(
  input: unknown,
  getField: GetField,
): Generator<{ readonly machine: object; readonly path: string }> {
  if (!isObject(input)) return
  let entries: unknown = input
  let path = ''
  if (!Array.isArray(input)) {
    const fleet = getField(input, '', 'fleet')
    const parent = isObject(fleet) && !Array.isArray(fleet) ? fleet : input
    path = parent === input ? '' : '/Fleet'
    const equipment = getField(parent, path, 'equipment')
    entries =
      equipment ?? (MACHINE_KEYS.some((key) => getField(parent, path, key) !== undefined) ? parent : [])
    if (equipment !== undefined) path += '/Equipment'
  }
  for (const { entry, entryPath } of listEntries(entries, path)) yield { machine: entry, path: entryPath }
}

const MACHINE_KEYS = ['equipmentheader', 'cumulativeoperatinghours', 'distance']

/** One object, or each object of a list. */
function* listEntries(
  value: unknown,
  path: string,
): Generator<{ readonly entry: object; readonly entryPath: string }> {
  if (Array.isArray(value)) {
    for (const [index, entry] of value.entries()) {
      if (isObject(entry)) yield { entry, entryPath: `${path}/${index}` }
    }
  } else if (isObject(value)) yield { entry: value, entryPath: path }
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null
}

const DISTANCE_UNITS = /^(?:(km|kilomet(?:re|er)s?)|mi|miles?)$/i

function parseUnit(rawUnit: unknown): DistanceUnit | undefined {
  const unitMatch = typeof rawUnit === 'string' ? DISTANCE_UNITS.exec(rawUnit.trim().slice(0, 20)) : null
  return unitMatch === null ? undefined : unitMatch[1] === undefined ? 'mi' : 'km'
}

function shortenValue(value: unknown): string {
  return typeof value === 'object' && value !== null ? 'an object' : String(value).slice(0, 40)
}

function compareByDate(first: MeterReading, second: MeterReading): number {
  return first.date < second.date ? -1 : first.date > second.date ? 1 : first.value - second.value
}
