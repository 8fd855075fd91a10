import { describe, expect, it } from 'vitest'
import { checkDocuments } from '../../src/v1/rules.js'
import type { MachineLog, ServiceRecord, SpecSheet } from '../../src/v1/spec.js'
import { readFolder, setOf } from './support/goodSets.js'

const { sheets, logs, records } = setOf(readFolder('examples/tind-4'))
const EMPTY = { sheets: [], logs: [], toolboxes: [], stocks: [], procedures: [], records: [] }

function first<T>(list: readonly { readonly document: T }[]): T {
  const [named] = list
  if (named === undefined) throw new Error('examples/tind-4 lacks a document')
  return named.document
}

function makeMany<T>(count: number, make: (place: number) => T): readonly T[] {
  return Array.from({ length: count }, (_, place) => make(place))
}

/** A limit that linear growth meets even on a slow machine, and quadratic growth does not. */
const SECONDS = 60

describe('large documents', () => {
  it('1,000 overrides of one leaf give 999 findings', { timeout: SECONDS * 1000 }, () => {
    const sheet: SpecSheet = first(sheets)
    const [override] = sheet.overrides ?? []
    if (override === undefined) throw new Error('the sheet has no override')
    const set = override.set.slice(0, 1)
    const document = { ...sheet, overrides: makeMany(1000, () => ({ ...override, set })) }
    expect(checkDocuments({ ...EMPTY, sheets: [{ document }] })).toHaveLength(999)
  })

  it('2,000 wrong names among 2,000 others stay short', { timeout: SECONDS * 1000 }, () => {
    const sheet: SpecSheet = first(sheets)
    const [service] = Object.values(sheet.services)
    if (service === undefined) throw new Error('the sheet has no service')
    const name = { title: 'Manual', document: 'other' } as const
    const sources = Object.fromEntries(makeMany(2000, (place) => [`source-${place}`, name]))
    const document = { ...sheet, sources: { ...sheet.sources, ...sources }, waivers: [] }
    const overrides = makeMany(2000, () => ({
      when: {},
      set: [],
      source: { ref: 'nowhere-to-be-found', confidence: 'read' as const },
    }))
    const found = checkDocuments({ ...EMPTY, sheets: [{ document: { ...document, overrides } }] })
    const danglingReferences = found.filter(({ code }) => code === 'spec/dangling-reference')
    expect(danglingReferences).toHaveLength(2000)
    expect(JSON.stringify(danglingReferences).length).toBeLessThan(2000 * 500)
  })

  it('a log of 1,000 full records is judged record by record', { timeout: SECONDS * 1000 }, () => {
    const record: ServiceRecord = first(records)
    const log: MachineLog = first(logs)
    const history = makeMany(1000, (place) => ({ ...record, id: `record-${place}`, usedOil: 'drum' }))
    const found = checkDocuments({ ...EMPTY, sheets, logs: [{ document: { ...log, records: history } }] })
    expect(found.filter(({ code }) => code.startsWith('record/') || code.startsWith('spec/'))).toEqual([])
  })
})
