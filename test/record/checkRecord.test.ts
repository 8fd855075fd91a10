import { describe, expect, it } from 'vitest'
import { applyPatch } from '../../src/base/applyPatch.js'
import type { DocumentSet } from '../../src/v1/rules.js'
import { checkRecord } from '../../src/v1/service.js'
import type { ServiceRecord, SpecSheet } from '../../src/v1/spec.js'
import { readFolder, setOf } from '../rules/support/goodSets.js'

const EMPTY: DocumentSet = { sheets: [], logs: [], toolboxes: [], stocks: [], procedures: [], records: [] }

describe('checkRecord', () => {
  it('judges one record alone, and leaves the rest of the set in peace', () => {
    const record: ServiceRecord = {
      kind: 'service-record',
      version: '1.0',
      id: 'r',
      machine: 'station-3',
      sheet: { id: 'hallbrekka-tind-4', revision: '2023-03' },
      detail: 'full',
      date: '2023-10-06',
      readings: {},
      entries: [],
    }
    const { sheets, ...others } = setOf(readFolder('examples/tind-4'))
    const patched = sheets.map((named) => ({
      ...named,
      document: applyPatch(named.document, [
        { op: 'replace', path: '/gearcases/front/axle', value: 'x' },
      ]) as SpecSheet,
    }))
    const set = { ...others, sheets: patched, procedures: [], records: [] }
    const found = checkRecord({ name: 'r.json', document: record }, set)
    expect(found.map(({ code, document, params }) => ({ code, name: document.name, params }))).toEqual([
      {
        code: 'record/machine-not-found',
        name: 'r.json',
        params: { id: 'station-3', known: ['station-2'], more: 0, meant: 'station-2' },
      },
    ])
  })

  it('refuses a record that is none', () => {
    expect(() => checkRecord({ document: { kind: 'stock' } } as never, EMPTY)).toThrow(TypeError)
    expect(() => checkRecord(undefined as never, EMPTY)).toThrow(
      /^record\.document must be a service record; parse the document first$/,
    )
  })

  it('refuses an invalid list of records, and the record', () => {
    const document = { kind: 'service-record', date: '2023-10-06', readings: {}, entries: [] }
    const record = { document } as never
    for (const records of [undefined, {}])
      expect(() => checkRecord(record, { ...EMPTY, records } as never)).toThrow(
        /^set\.records .*must be a list/,
      )
    expect(() => checkRecord(record, { ...EMPTY, records: [null] } as never)).toThrow(
      /^set\.records\[0\]\.document must be a service record/,
    )
  })
})
