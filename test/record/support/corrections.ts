import { readFileSync } from 'node:fs'
import { applyPatch, type PatchOperation } from '../../../src/base/applyPatch.js'
import type { RecordEntry, ServiceRecord } from '../../../src/v1/spec.js'

/** A record of examples/tind-4 with a mistake, and its correction. */
export interface Corrected {
  readonly name: string
  readonly counts: boolean
  readonly fault: string
  readonly says: string
  readonly record: ServiceRecord
  readonly correction: ServiceRecord
}

const GOOD: ServiceRecord = JSON.parse(readFileSync('schemas/v1/vectors/bases/tind-4/record.json', 'utf8'))

const listed: readonly (Omit<Corrected, 'record' | 'correction'> & {
  readonly patch: readonly PatchOperation[]
  readonly correction: Partial<RecordEntry>
})[] = JSON.parse(readFileSync('examples/corrections.json', 'utf8'))

/** The records of `examples/corrections.json`. */
export const CORRECTED: readonly Corrected[] = listed.map(({ patch, correction, ...about }) => ({
  ...about,
  record: applyPatch(GOOD, patch) as ServiceRecord,
  correction: correctionOf(correction),
}))

/** A correction, two days later, of the front differential in the record of examples/tind-4. */
export function correctionOf(entry: Partial<RecordEntry>, head: Partial<ServiceRecord> = {}): ServiceRecord {
  const service = { service: 'gear-oil-change', gearcase: 'front', opened: [], tightened: [], seals: [] }
  return {
    kind: 'service-record',
    version: '1.0',
    id: `${GOOD.id}-corrected`,
    machine: GOOD.machine,
    sheet: GOOD.sheet,
    detail: 'full',
    date: '2023-10-08',
    readings: { hours: { value: 513.1, unit: 'h' }, distance: { value: 4415, unit: 'km' } },
    corrects: GOOD.id,
    entries: [{ ...service, ...entry }],
    ...head,
  }
}
