import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { listDue, openFaults, ownerSlip, type SlipFacts } from '../../src/v1/service.js'
import type { MachineLog, ServiceRecord } from '../../src/v1/spec.js'
import { CORRECTED } from '../record/support/corrections.js'
import { readFolder, setOf } from '../rules/support/goodSets.js'
import { law } from '../support/law.js'
import { usedMachines } from './support/usedMachines.js'

const TODAY = '2023-10-09'
const { records, ...documents } = setOf(readFolder('examples/tind-4'))
const exampleRecord = records[0]?.document as ServiceRecord
const sheet = documents.sheets[0]?.document as SlipFacts['sheet']
const logWithoutRecords = documents.logs[0]?.document as MachineLog
const due = { soon: { days: 30 }, staleAfter: { days: 30 }, severity: 'normal' } as const

const logOf = (...more: readonly ServiceRecord[]): MachineLog => ({
  ...logWithoutRecords,
  records: [...logWithoutRecords.records, ...more],
})
function slipOf(log: MachineLog, record?: string) {
  const set = { ...documents, procedures: [], records: [], logs: [{ document: log }] }
  const faults = openFaults({ document: log }, set, { today: TODAY })
  const facts = { sheet, log, today: TODAY, faults }
  return ownerSlip(facts, { due, ...(record !== undefined && { record }) })
}

describe('the slip of a visit', () => {
  it('says what was done and found at each gearcase, with the names of the sheet', () => {
    const slip = slipOf(logOf(exampleRecord))
    expect(slip).toMatchObject({
      record: exampleRecord.id,
      date: '2023-10-06',
      readings: { hours: { value: 512.8, unit: 'h' } },
      by: 'A. Skarn',
      corrections: [],
      faults: [],
      notes: [],
      samples: [],
      shields: [{ part: { part: 'front skid plate' }, torque: { value: 12, unit: 'N.m' } }],
    })
    expect(slip.work[0]).toMatchObject({
      serviceName: 'gear oil change',
      part: { gearcase: 'rear gearcase' },
      refilled: { value: 960, unit: 'mL' },
      oil: { name: 'station gear oil 80W-90' },
      magnet: 'fine paste',
      tightened: [{ part: { part: 'drain plug' }, torque: { value: 31 } }, { part: { part: 'fill plug' } }],
      seals: [{ part: { part: 'drain plug' }, done: 'new', partNumber: 'HB-1620' }, { done: 'new' }],
    })
    expect(slip.work.every(({ notDone }) => notDone === undefined)).toBe(true)
  })

  it('is that of the last day, whatever the order of the log, or of the record that is named', () => {
    const log = { ...logWithoutRecords, records: [exampleRecord, ...logWithoutRecords.records] }
    expect(slipOf(log).record).toBe(exampleRecord.id)
    expect(slipOf(log, 'station-2-2022')).toMatchObject({ record: 'station-2-2022', date: '2022-11-20' })
  })

  it.each(CORRECTED)('follows the correction: $name', ({ record, correction, counts }) => {
    const before = slipOf(logOf(record))
    expect(before.faults.length).toBeGreaterThan(0)
    expect(before.work[1]?.notDone === undefined).toBe(counts)
    const after = slipOf(logOf(record, { ...correction, note: 'measured again' }))
    expect(after.faults).toEqual([])
    expect(after.record).toBe(record.id)
    expect(after.corrections).toEqual([{ record: correction.id, date: correction.date }])
    expect(after.notes).toEqual(['measured again'])
    expect(after.work[1]?.notDone).toBeUndefined()
    const [entry] = correction.entries
    if (entry?.refilled) expect(after.work[1]?.refilled).toEqual(entry.refilled)
    // The id of the correction gives the same visit.
    expect(slipOf(logOf(record, { ...correction, note: 'measured again' }), correction.id)).toEqual(after)
  })

  it('has every sample without a result, and the result where it is known', () => {
    const [rear, front] = exampleRecord.entries as [ServiceRecord['entries'][0], ServiceRecord['entries'][0]]
    const entries = [
      { ...rear, sample: { bottle: 'B-1', result: 'iron 40 mg/kg' } },
      { ...front, sample: { bottle: 'B-2' } },
    ]
    const slip = slipOf(logOf({ ...exampleRecord, entries }))
    expect(slip.work[0]?.sample?.result).toBe('iron 40 mg/kg')
    expect(slip.samples).toMatchObject([{ bottle: 'B-2', part: { gearcase: 'front differential' } }])
  })

  it('has every service of the machine once, what is due now first, then by day', () => {
    law(
      50,
      usedMachines.filter(({ log }) => log.records.length > 0),
      (facts) => {
        const slip = ownerSlip({ ...facts, faults: [] }, { due })
        const text = (list: readonly unknown[]) => list.map((item) => JSON.stringify(item)).sort()
        expect(text(slip.due)).toEqual(text(listDue(facts, due)))
        const dueNowFlags = slip.due.map(({ verdict }) => verdict === 'overdue' || verdict === 'due')
        expect(dueNowFlags.lastIndexOf(true)).toBeLessThan(
          dueNowFlags.includes(false) ? dueNowFlags.indexOf(false) : Infinity,
        )
        const days = slip.due.filter((_one, place) => !dueNowFlags[place]).map(({ dueOn = '~' }) => dueOn)
        expect(days).toEqual([...days].sort())
      },
    )
  })

  it('is the same for corrections in any number of steps', () => {
    const [{ record, correction }] = CORRECTED as [(typeof CORRECTED)[0]]
    law(20, fc.integer({ min: 1, max: 6 }), (steps) => {
      const chain = Array.from({ length: steps }, (_one, place): ServiceRecord => {
        const corrects = place === 0 ? record.id : `c-${place - 1}`
        return {
          ...correction,
          id: `c-${place}`,
          corrects,
          entries: place + 1 < steps ? [] : correction.entries,
        }
      })
      const slip = slipOf(logOf(record, ...chain))
      expect(slip.work).toEqual(slipOf(logOf(record, correction)).work)
      expect(slip.corrections).toHaveLength(steps)
    })
  })
})

describe('misuse', () => {
  const facts: SlipFacts = { sheet, log: logWithoutRecords, today: TODAY, faults: [] }
  it.each([
    [{ ...facts, faults: undefined }, { due }, /facts\.faults must be a list/],
    [{ ...facts, faults: [{ date: TODAY }] }, { due }, /facts\.faults\[0\]\.record must be a string/],
    [{ ...facts, today: 'soon' }, { due }, /facts\.today must be a date/],
    [
      { ...facts, log: { ...logWithoutRecords, records: [] } },
      { due },
      /facts\.log must have a record of a visit/,
    ],
    [{ ...facts, sheet: {} }, { due }, /facts\.sheet/],
    [{ ...facts, toolbox: {} }, { due }, /must not have the key 'toolbox'/],
    [facts, {}, /options must be an object/],
    [
      facts,
      { due, record: 'nowhere' },
      /options\.record must be the id of a record of the log, got 'nowhere'/,
    ],
    [facts, { due, record: 7 }, /options\.record must be the id/],
    [facts, { due, rekord: 'x' }, /did you mean record\?/],
  ])('%#', (given, options, says) => {
    expect(() => ownerSlip(given as never, options as never)).toThrow(says)
  })
})
