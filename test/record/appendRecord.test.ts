import { describe, expect, it } from 'vitest'
import type { Reason } from '../../src/base/finding.js'
import { en } from '../../src/message/en/index.js'
import { PAPERWORK_CODES } from '../../src/record/openFaults.js'
import { allRules } from '../../src/rules/allRules.js'
import { computeDue } from '../../src/v1/interval.js'
import { renderMessage } from '../../src/v1/message.js'
import { checkDocuments } from '../../src/v1/rules.js'
import {
  appendRecord,
  checkRecord,
  listDue,
  openFaults,
  planVisit,
  resolveLog,
} from '../../src/v1/service.js'
import type { MachineLog, ServiceRecord } from '../../src/v1/spec.js'
import { readFolder, setOf } from '../rules/support/goodSets.js'
import { readComment } from '../rules/support/manifest.js'
import { CORRECTED, correctionOf } from './support/corrections.js'

const TODAY = '2023-10-09'
const { records, procedures: _none, ...documents } = setOf(readFolder('examples/tind-4'))
const set = { ...documents, procedures: [], records: [] }
const exampleRecord = records[0]?.document as ServiceRecord
const sheet = set.sheets[0]?.document as NonNullable<(typeof set.sheets)[0]>['document']
const log = set.logs[0]?.document as MachineLog
const DUE = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const

const say = (candidate: Reason) => renderMessage(candidate, en).replaceAll('\u00a0', ' ')
const setWith = (document: MachineLog) => ({ ...set, logs: [{ document }] })

function append(record: ServiceRecord, to: MachineLog = log) {
  const appended = appendRecord({ document: record }, setWith(to), { today: TODAY })
  if (!appended.ok) throw new Error(JSON.stringify(appended.findings))
  return { ...appended.value, findings: appended.findings }
}

const faultsOf = (candidate: MachineLog) =>
  openFaults({ document: candidate }, setWith(candidate), { today: TODAY })
const frontChange = (candidate: MachineLog) =>
  listDue({ sheet, log: candidate, today: TODAY }, DUE).find(
    ({ service, gearcase }) => service === 'gear-oil-change' && gearcase === 'front',
  )

describe('a record of what really happened', () => {
  it('a good one leaves no fault and counts', () => {
    const { log: after, entries, faults, findings } = append(exampleRecord)
    expect(after.records.at(-1)).toBe(exampleRecord)
    expect(entries.map(({ done }) => done)).toEqual(['yes', 'yes'])
    expect(faults).toEqual([])
    expect(findings).toEqual([])
    expect(frontChange(after)?.verdict).toBe('not due')
  })

  it.each(CORRECTED)('$name: is kept, with its fault and the cure', ({ record, counts, fault, says }) => {
    const { log: after, entries, faults } = append(record)
    expect(after.records.at(-1)).toEqual(record)
    expect(faults.map(({ finding }) => finding.code)).toContain(fault)
    expect(faults.map(({ finding }) => say(finding)).join('\n')).toContain(says)
    expect(entries[1]?.done).toBe(counts ? 'yes' : 'no')
    expect(frontChange(after)?.verdict).toBe(counts ? 'not due' : frontChange(log)?.verdict)
    expect(faultsOf(after)).toEqual(faults)
  })

  it.each(CORRECTED)('$name: its correction closes the fault, and both stay', ({ record, correction }) => {
    const first = append(record)
    const second = append(correction, first.log)
    expect(second.faults).toEqual([])
    expect(second.entries.map(({ done }) => done)).toEqual(['yes'])
    expect(second.findings).toEqual([])
    expect(second.log.records.slice(-2)).toEqual([record, correction])
    // The work counts from the day of the service.
    const front = frontChange(second.log)
    expect(front?.verdict).toBe('not due')
    expect(front?.lines.find(({ by }) => by === 'period')?.from?.date).toBe(record.date)
  })

  it('says that the machine is not to be used in the plan, first of all cautions', () => {
    const { log: after } = append(CORRECTED[0]?.record as ServiceRecord)
    const facts = { sheet, log: after, today: TODAY, faults: faultsOf(after) }
    const planned = planVisit(facts, { services: ['gear-oil-check'], due: DUE, iso6789: '2017' })
    if (!planned.ok) throw new Error('no plan')
    const [caution] = planned.value.cautions
    expect(caution && say(caution)).toMatch(
      /^WARNING: Do not use this machine\. A fault has been open since 2023-10-06\. front differential: 520 mL was refilled/,
    )
  })

  it('due names the record that does not count, with the reason', () => {
    const { record } = CORRECTED.find(({ counts }) => !counts) as (typeof CORRECTED)[0]
    const reasons = frontChange(append(record).log)?.reasons.map((reason) => say(reason))
    expect(reasons?.at(-1)).toBe(
      'The record of 2023-10-06 does not count. front differential: not done: no drain plug, cover or suction opening was opened.',
    )
  })
})

describe('what is refused', () => {
  const expectRefused = (record: ServiceRecord, of = set) => {
    const appended = appendRecord({ document: record }, of)
    return appended.ok ? [] : appended.findings.map(({ code, path }) => `${code} ${path}`)
  }

  it('a record of another machine or sheet, and an id that is used', () => {
    expect(expectRefused({ ...exampleRecord, machine: 'station-9' })).toContain(
      'record/machine-not-found /machine',
    )
    expect(expectRefused(exampleRecord, { ...set, logs: [] })).toEqual(['record/machine-not-found /machine'])
    expect(expectRefused({ ...exampleRecord, sheet: { id: 'other', revision: '1' } })[0]).toBe(
      'record/other-sheet /sheet/id',
    )
    expect(expectRefused({ ...exampleRecord, id: 'station-2-2022' })).toContain('spec/id-used-twice /id')
  })
})

describe('what counts as done', () => {
  const isDoneAfter = (change: object) => {
    const entry = { ...exampleRecord.entries[1], ...change } as ServiceRecord['entries'][0]
    const [done] = append({ ...exampleRecord, entries: [entry] }).entries
    return done?.done === 'no' ? done.reason.code : done?.done
  }
  const { refilled: _none, ...withoutRefill } = exampleRecord.entries[1] ?? {}
  const entryWith = (change: object) => {
    const entry = { ...withoutRefill, ...change } as ServiceRecord['entries'][0]
    const [done] = append({ ...exampleRecord, entries: [entry] }).entries
    return done?.done === 'no' ? done.reason.code : done?.done
  }

  it('a change: something that lets the oil out was opened, and oil went in, however much', () => {
    expect(isDoneAfter({})).toBe('yes')
    expect(isDoneAfter({ refilled: { value: 1, unit: 'mL' } })).toBe('yes')
    expect(isDoneAfter({ refilled: { value: 0, unit: 'mL' } })).toBe('record/new-oil-not-filled')
    expect(isDoneAfter({ opened: [] })).toBe('record/old-oil-not-drained')
    expect(entryWith({})).toBe('record/new-oil-not-filled')
    expect(entryWith({ level: 'at the mark' })).toBe('yes')
    expect(entryWith({ level: 'below' })).toBe('record/new-oil-not-filled')
    expect(isDoneAfter({ notDone: 'the plug is seized' })).toBe('record/reported-not-done')
  })

  it('a check: the level was looked at', () => {
    expect(isDoneAfter({ service: 'gear-oil-check', level: 'below', opened: [] })).toBe('yes')
    expect(isDoneAfter({ service: 'gear-oil-check', level: 'not checked' })).toBe('record/level-not-checked')
  })

  it('what cannot be judged: no details, another revision, no sheet', () => {
    const entries = [{ service: 'gear-oil-change', gearcase: 'front', opened: [], tightened: [], seals: [] }]
    expect(append({ ...exampleRecord, detail: 'date and meters only', entries }).entries[0]?.done).toBe('yes')
    const olderRecord = { ...exampleRecord, sheet: { ...exampleRecord.sheet, revision: '2021-01' }, entries }
    expect(append(olderRecord).entries[0]?.done).toBe('yes')
    const withoutSheet = appendRecord({ document: { ...exampleRecord, entries } }, { ...set, sheets: [] })
    expect(withoutSheet.ok && withoutSheet.value.entries[0]?.done).toBe('yes')
  })

  it('resolveLog gives computeDue only what counts', () => {
    const { log: after } = append({
      ...exampleRecord,
      entries: [{ ...exampleRecord.entries[1], opened: [] } as never],
    })
    const facts = {
      intervals: {
        repeat: {
          kind: 'stated',
          value: { kind: 'interval', period: 'P12M' },
          trace: { path: '/x', reasons: [] },
        },
        countFrom: 'completion',
      },
      service: 'gear-oil-change',
      gearcase: 'front',
      today: TODAY,
    } as const
    const from = (candidate: MachineLog) => computeDue({ ...facts, log: candidate }, DUE).lines[0]?.from?.date
    expect(from(after)).toBe('2023-10-06')
    expect(from(resolveLog(after, sheet).log)).toBe('2022-11-20')
  })
})

describe('corrections', () => {
  const wrongRecord = CORRECTED[0]?.record as ServiceRecord
  const first = append(wrongRecord).log

  it('a chain: the last word counts', () => {
    const secondCorrection = correctionOf({ refilled: { value: 510, unit: 'mL' } }, { id: 'second' })
    const third = correctionOf({ refilled: { value: 460, unit: 'mL' } }, { id: 'third', corrects: 'second' })
    const second = append(secondCorrection, first)
    expect(second.faults).toHaveLength(1)
    expect(second.findings.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'record/refill-outside-tolerance /entries/0/refilled',
    ])
    expect(append(third, second.log).faults).toEqual([])
  })

  it('an item of a list replaces the one of the same part; omitted items stay', () => {
    const tightened = [{ kind: 'by hand', on: '/gearcases/front/openings/fill' }] as const
    const { log: after } = append(correctionOf({ tightened }), first)
    const [, , , root] = resolveLog(after, sheet).log.records
    expect(root?.entries[1]?.tightened.map(({ on, kind }) => `${on.slice(-5)} ${kind}`)).toEqual([
      'drain torque set',
      '/fill by hand',
    ])
    expect(root?.entries[1]?.seals).toEqual(wrongRecord.entries[1]?.seals)
    expect(root?.entries[0]).toEqual(wrongRecord.entries[0])
  })

  it('a wrong reading and a wrong date are put right; the readings of the correction are its own', () => {
    const misreadRecord = {
      ...exampleRecord,
      date: '2023-10-05',
      readings: { ...exampleRecord.readings, hours: { value: 5128, unit: 'h' } },
    } as const
    const { log: before, findings } = append(misreadRecord)
    expect(findings.map(({ code }) => code)).toContain('record/reading-contradicts-log')
    const corrected = { date: '2023-10-06', readings: { hours: { value: 512.8, unit: 'h' } } } as const
    const { log: after } = append(correctionOf({}, { entries: [], corrected }), before)
    const resolved = resolveLog(after, sheet).log.records
    expect(resolved[3]).toMatchObject({
      date: '2023-10-06',
      readings: exampleRecord.readings,
      entries: exampleRecord.entries,
    })
    expect(resolved[4]).toMatchObject({
      date: '2023-10-08',
      readings: { hours: { value: 513.1 } },
      entries: [],
    })
    const errors = checkDocuments(setWith(after), { today: TODAY }).filter(
      ({ severity }) => severity === 'error',
    )
    expect(errors).toEqual([])
  })

  it('of an unknown record, of itself or in a circle: kept, found, and not counted', () => {
    const unmatchedCorrection = append(correctionOf({}, { corrects: 'station-2-2023-10-07' }), first)
    expect(unmatchedCorrection.findings[0]).toMatchObject({
      code: 'record/corrects-unknown-record',
      path: '/corrects',
      params: { meant: 'station-2-2023-10-06' },
    })
    expect(unmatchedCorrection.entries[0]).toMatchObject({
      done: 'no',
      reason: { code: 'record/corrected-record-missing' },
    })
    const selfCorrection = append(correctionOf({}, { id: 'loop', corrects: 'loop' }), first)
    expect(selfCorrection.findings.map(({ code }) => code)).toEqual(['record/corrects-itself'])
    expect(selfCorrection.entries[0]?.done).toBe('no')
  })

  it('checkDocuments finds the remaining mistakes, in the record that contains them', () => {
    const secondCorrection = correctionOf({ refilled: { value: 510, unit: 'mL' } }, { id: 'second' })
    const { log: after } = append(secondCorrection, first)
    const found = checkDocuments(setWith(after), { today: TODAY }).map(({ code, path }) => `${code} ${path}`)
    expect(found).toEqual(['record/refill-outside-tolerance /records/4/entries/0/refilled'])
    const correctedLog = append(CORRECTED[0]?.correction as ServiceRecord, first).log
    expect(checkDocuments(setWith(correctedLog), { today: TODAY })).toEqual([])
  })

  it('checkRecord of a correction judges what it says in the record that it corrects', () => {
    const { log: before } = append(exampleRecord)
    const openedCorrection = correctionOf({ opened: ['/gearcases/front/covers/none'] })
    expect(
      checkRecord({ document: openedCorrection }, setWith(before)).map(({ code, path }) => `${code} ${path}`),
    ).toEqual(['record/unknown-part /entries/0/opened/0'])
  })
})

describe('open faults', () => {
  it('a later change of that oil closes them, a check does not', () => {
    const { log: first } = append(CORRECTED[0]?.record as ServiceRecord)
    const check = {
      ...exampleRecord,
      id: 'check',
      date: '2023-10-08',
      entries: [
        {
          ...exampleRecord.entries[1],
          service: 'gear-oil-check',
          opened: [],
          tightened: [],
          seals: [],
          level: 'at the mark',
        },
      ],
    } as unknown as ServiceRecord
    const checked = append(check, first)
    expect(checked.faults).toHaveLength(1)
    const secondAppend = append({ ...exampleRecord, id: 'again', date: '2023-10-09' }, checked.log)
    expect(secondAppend.faults).toEqual([])
  })

  it('every error of a record about the machine leaves one, and none about the papers', () => {
    const rules = allRules.filter(
      ({ about, severity }) => severity === 'error' && about.includes('service-record'),
    )
    const papers = rules.map(({ code }) => code).filter((code) => readComment(code).harm === 'record')
    const others = rules.map(({ code }) => code).filter((code) => !papers.includes(code))
    expect(PAPERWORK_CODES.filter((code) => others.includes(code))).toEqual(['spec/id-used-twice'])
    expect(papers.filter((code) => !PAPERWORK_CODES.includes(code))).toEqual([])
  })

  it('papers alone leave none: a date, a reading, an unknown part', () => {
    const { log: after } = append({ ...exampleRecord, date: '2031-01-01', readings: {} })
    expect(faultsOf(after)).toEqual([])
  })
})
