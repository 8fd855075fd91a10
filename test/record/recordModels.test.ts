import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { applyPatch, type PatchOperation } from '../../src/base/applyPatch.js'
import { readPointer } from '../../src/base/pointers.js'
import { addPeriod } from '../../src/v1/calendar.js'
import { readMeters } from '../../src/v1/interval/meters.js'
import { appendRecord, checkRecord, listDue, openFaults, resolveLog } from '../../src/v1/service.js'
import { type MachineLog, parseHistory, type ServiceRecord, writeHistory } from '../../src/v1/spec.js'
import { readFolder, setOf } from '../rules/support/goodSets.js'
import { command, modelLaw } from '../support/law.js'
import { CORRECTED, correctionOf } from './support/corrections.js'

const { records, procedures: _none, ...documents } = setOf(readFolder('examples/tind-4'))
const set = { ...documents, procedures: [], records: [] }
const GOOD = records[0]?.document as ServiceRecord
const sheet = set.sheets[0]?.document as NonNullable<(typeof set.sheets)[0]>['document']
const FIRST_LOG = set.logs[0]?.document as MachineLog
const DUE = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
const setWith = (document: MachineLog) => ({ ...set, logs: [{ document }] })

// A log to which records and corrections are appended in any order, against a model that knows only which work counts and
// which mistakes are open.

interface LogModel {
  date: string
  hours: number
  distance: number
  /** Ids of the records, in order. */
  readonly ids: string[]
  /** Records with a fault that no correction has closed, by id. */
  readonly open: Map<string, (typeof CORRECTED)[number]>
  /** The day of the last front oil change that counts. */
  lastDone: string | undefined
}

const lastOf = (meter: 'hours' | 'distance') => readMeters(FIRST_LOG)[meter]?.at(-1)?.total.value ?? 0
const FIRST_METERS = { hours: lastOf('hours'), distance: lastOf('distance') }

interface RealLog {
  log: MachineLog
}

/** The record on a later day with higher meters; its id is new. */
function later(model: LogModel, record: ServiceRecord, days: number): ServiceRecord {
  model.date = addPeriod(model.date, 'P1D', days)
  model.hours += days
  model.distance += 5 * days
  return {
    ...record,
    id: `r-${model.ids.length}`,
    date: model.date,
    readings: {
      hours: { value: model.hours, unit: 'h' },
      distance: { value: model.distance, unit: 'km' },
    },
  }
}

function append(model: LogModel, real: RealLog, record: ServiceRecord): void {
  const before = real.log.records
  const appended = appendRecord({ document: record }, setWith(real.log), { today: record.date })
  if (!appended.ok) throw new Error(JSON.stringify(appended.findings))
  real.log = appended.value.log
  model.ids.push(record.id)
  // A log only grows.
  expect(real.log.records.slice(0, -1)).toEqual(before)
  expect(real.log.records.at(-1)).toEqual(record)
  compareLog(model, real)
}

/** Everything that can be asked of the log, against the model. */
function compareLog(model: LogModel, { log }: RealLog): void {
  expect(log.records.map(({ id }) => id)).toEqual(model.ids)
  const faults = openFaults({ document: log }, setWith(log), { today: model.date })
  const named = [...new Set(faults.map(({ record }) => record))]
  expect(named.sort()).toEqual([...model.open.keys()].sort())
  const meters = readMeters(resolveLog(log, sheet).log)
  expect(meters.hours?.at(-1)?.total.value).toBe(model.hours)
  const front = listDue({ sheet, log, today: model.date }, DUE).find(
    ({ service, gearcase }) => service === 'gear-oil-change' && gearcase === 'front',
  )
  expect(front?.lines.find(({ by }) => by === 'period')?.from?.date).toBe(model.lastDone)
  // As lines that are only appended it loses nothing.
  const read = parseHistory(writeHistory(log))
  expect(read.ok && read.value).toEqual(log)
}

const days = fc.integer({ min: 1, max: 3 })

const appendGood = (count: number) =>
  command<LogModel, RealLog>(`good after ${count} days`, (model, real) => {
    const record = later(model, GOOD, count)
    model.lastDone = record.date
    // A later oil change of the same gearcase closes what was wrong with the earlier one.
    model.open.clear()
    append(model, real, record)
  })

const appendMistake = (count: number, mistake: (typeof CORRECTED)[number]) =>
  command<LogModel, RealLog>(`${mistake.name} after ${count} days`, (model, real) => {
    const record = later(model, mistake.record, count)
    if (mistake.counts) model.open.clear()
    model.open.set(record.id, mistake)
    if (mistake.counts) model.lastDone = record.date
    append(model, real, record)
  })

const correct = (count: number, pick: number) =>
  command<LogModel, RealLog>(
    `correct ${pick} after ${count} days`,
    (model, real) => {
      const open = [...model.open]
      const place = pick % open.length
      const [id, mistake] = open[place] ?? []
      const [entry] = mistake?.correction.entries ?? []
      if (id === undefined || entry === undefined) throw new Error('nothing to correct')
      const wrong = real.log.records.find((record) => record.id === id)
      // Corrected, it is an oil change, which closes the earlier faults too.
      for (const [earlier] of open.slice(0, place + 1)) model.open.delete(earlier)
      model.lastDone = [model.lastDone ?? '', wrong?.date ?? ''].sort().at(-1)
      append(model, real, later(model, { ...correctionOf(entry), corrects: id }, count))
    },
    ({ open }) => open.size > 0,
  )

/** A record under a used id is refused, and the log stays as it was. */
const appendAgain = command<LogModel, RealLog>('used id', (model, real) => {
  const [id = ''] = model.ids.slice(-1)
  const appended = appendRecord({ document: { ...GOOD, id } }, setWith(real.log), { today: model.date })
  expect(appended.ok ? [] : appended.findings.map(({ code }) => code)).toContain('spec/id-used-twice')
  compareLog(model, real)
})

test('log and corrections: any records in any order, their faults, corrections, meters and due dates', () => {
  modelLaw<LogModel, RealLog>(
    30,
    [
      days.map(appendGood),
      fc.tuple(days, fc.constantFrom(...CORRECTED)).map(([count, mistake]) => appendMistake(count, mistake)),
      fc.tuple(days, fc.nat({ max: 5 })).map(([count, pick]) => correct(count, pick)),
      fc.constant(appendAgain),
    ],
    () => ({
      model: {
        date: '2023-10-06',
        ...FIRST_METERS,
        ids: FIRST_LOG.records.map(({ id }) => id),
        open: new Map(),
        lastDone: FIRST_LOG.records.findLast(({ entries }) =>
          entries.some(({ service, gearcase }) => service === 'gear-oil-change' && gearcase === 'front'),
        )?.date,
      },
      real: { log: FIRST_LOG },
    }),
  )
})

// A record in which mistakes are made and put right again in any order: each vector of the rules about records that
// changes only the record. The check finds exactly the mistakes that are in it.

interface Mistake {
  readonly name: string
  readonly code: string
  readonly operation: PatchOperation
  readonly undo: PatchOperation
}

/**
 * Another machine or part, or a tightening without a figure, hides what is wrong with it; another day explains a jump of
 * the meters; a plug that was not opened needs no new seal.
 */
const HIDING =
  /^(machine-not-found|unknown-part|tightening-not-measured|date-in-the-future|drain-not-opened)\b/

const VECTORS = 'schemas/v1/vectors/record'
const BASE: ServiceRecord = JSON.parse(readFileSync('schemas/v1/vectors/bases/tind-4/record.json', 'utf8'))

const MISTAKES: readonly Mistake[] = readdirSync(VECTORS).flatMap((file): readonly Mistake[] => {
  const { base, code, patch, expect: expected } = JSON.parse(readFileSync(`${VECTORS}/${file}`, 'utf8'))
  const [operation] = patch as readonly PatchOperation[]
  if (base !== 'bases/tind-4' || patch.length !== 1 || expected.length !== 1 || operation?.op !== 'replace')
    return []
  if (!operation.path.startsWith('/record.json/') || HIDING.test(file)) return []
  const path = operation.path.slice('/record.json'.length)
  const value = readPointer(BASE, path)
  return [{ name: file, code, operation: { ...operation, path }, undo: { op: 'replace', path, value } }]
})

interface RecordModel {
  readonly mistakes: Set<Mistake>
}

interface RealRecord {
  record: ServiceRecord
}

const codesOf = (record: ServiceRecord): readonly string[] => [
  ...new Set(checkRecord({ document: record }, set, { today: '2023-10-09' }).map(({ code }) => code)),
]

/** Makes a mistake, or corrects it if it is in the record already. */
const toggle = (mistake: Mistake) =>
  command<RecordModel, RealRecord>(mistake.name, (model, real) => {
    const isMade = model.mistakes.delete(mistake)
    if (!isMade) {
      // of two mistakes in one place the later one is there
      for (const other of model.mistakes)
        if (other.operation.path === mistake.operation.path) model.mistakes.delete(other)
      model.mistakes.add(mistake)
    }
    real.record = applyPatch(real.record, [isMade ? mistake.undo : mistake.operation]) as ServiceRecord
    expect([...codesOf(real.record)].sort()).toEqual(
      [...new Set([...model.mistakes].map(({ code }) => code))].sort(),
    )
  })

test('record: any mistakes made and put right in any order, each found as long as it is there', () => {
  console.log(`${MISTAKES.length} mistakes: ${MISTAKES.map(({ name }) => name).join(' ')}`)
  modelLaw<RecordModel, RealRecord>(60, [fc.constantFrom(...MISTAKES).map(toggle)], () => ({
    model: { mistakes: new Set() },
    real: { record: BASE },
  }))
})
