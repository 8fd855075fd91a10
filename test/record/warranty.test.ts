import { describe, expect, it } from 'vitest'
import { en } from '../../src/message/en/index.js'
import { renderMessage } from '../../src/v1/message.js'
import { checkDocuments } from '../../src/v1/rules.js'
import { appendRecord } from '../../src/v1/service.js'
import { type MachineLog, parseServiceRecord, type ServiceRecord, type SpecSheet } from '../../src/v1/spec.js'
import { readFolder, setOf } from '../rules/support/goodSets.js'
import { correctionOf } from './support/corrections.js'

const { records, ...documents } = setOf(readFolder('examples/tind-4'))
const exampleRecord = records[0]?.document as ServiceRecord
const log = documents.logs[0]?.document as MachineLog
const exampleSheet = documents.sheets[0]?.document as SpecSheet
const sheet: SpecSheet = {
  ...exampleSheet,
  warranty: {
    asks: ['photos', 'signature', 'wrench certificate'],
    source: { ref: 'om', confidence: 'read' },
  },
}
const certificates = [
  { tool: 'half-inch-click', number: 'C-2291', validTo: '2024-02-10' },
  { tool: 'small-click', number: 'C-2292', validTo: '2023-10-05' },
]
const RULES = ['record/warranty-facts-missing', 'record/certificate-expired']

/** The findings of these rules about a log with these records, and their places in it. */
function findingsOf(...more: readonly ServiceRecord[]) {
  const document = { ...log, records: [...log.records, ...more] }
  const set = {
    ...documents,
    sheets: [{ document: sheet }],
    logs: [{ document }],
    procedures: [],
    records: [],
  }
  return checkDocuments(set, { today: '2023-10-09' }).filter(({ code }) => RULES.includes(code))
}
const placesOf = (...more: readonly ServiceRecord[]) =>
  findingsOf(...more).map(({ code, path, params }) => [
    code.split('/')[1],
    path,
    (params as { readonly lacks?: unknown }).lacks,
  ])

describe('the facts that a warranty requires in a record', () => {
  it('is one finding with the list, at the record in its log; history without details is not judged', () => {
    const [finding, ...others] = findingsOf(exampleRecord)
    expect(others).toEqual([])
    expect(finding).toMatchObject({ severity: 'warning', path: '/records/3' })
    expect(finding && renderMessage(finding, en)).toBe(
      'The warranty requires facts that this record lacks: photos, a signature and the certificate of each torque wrench. Add them with a correction while they can still be found.',
    )
  })

  it('is added by a correction, and what runs out is found there', () => {
    const correction = correctionOf(
      {},
      { entries: [], photos: [{ file: 'IMG-1.jpg' }], signature: { name: 'A. Skarn' }, certificates },
    )
    expect(placesOf(exampleRecord, correction)).toEqual([
      ['certificate-expired', '/records/4/certificates/1/validTo', undefined],
    ])
    const { photos, ...withoutPhotos } = correction
    expect(photos).toBeDefined()
    expect(placesOf(exampleRecord, withoutPhotos)).toEqual([
      ['warranty-facts-missing', '/records/3', ['photos']],
      ['certificate-expired', '/records/4/certificates/1/validTo', undefined],
    ])
  })

  it('a correction that is appended says what it adds alone', () => {
    const record = correctionOf({}, { entries: [], certificates })
    const document = { ...log, records: [...log.records, exampleRecord] }
    const set = {
      ...documents,
      sheets: [{ document: sheet }],
      logs: [{ document }],
      procedures: [],
      records: [],
    }
    const appended = appendRecord({ document: record }, set, { today: '2023-10-09' })
    expect(appended.findings.map(({ code, path }) => [code, path])).toEqual([
      ['record/certificate-expired', '/certificates/1/validTo'],
    ])
    expect(appended.ok && appended.value.faults).toEqual([])
  })

  it('may be written in short notation', () => {
    const { detail: _detail, ...shortRecord } = {
      ...exampleRecord,
      photos: ['IMG-1.jpg'],
      signature: 'A. Skarn',
    }
    const read = parseServiceRecord(shortRecord)
    expect(read.findings).toEqual([])
    expect(read.ok && [read.value.photos, read.value.signature]).toEqual([
      [{ file: 'IMG-1.jpg' }],
      { name: 'A. Skarn' },
    ])
  })
})
