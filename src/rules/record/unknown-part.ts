import type { JsonPointer } from '../../finding.js'
import type { RecordEntry, SpecSheet } from '../../spec/index.js'
import { readPointer } from '../../spec/readPointer.js'
import { findSheet } from '../partners.js'
import { defineRule } from '../rule.js'
import { complainOfName } from '../walk/complainOfName.js'
import { lookUp } from '../walk/lookUp.js'

/**
 * A record that names a service, a gearcase, an instance, an opening, a seal or a shield that its sheet does
 * not have, or has elsewhere: the work would count for nothing. House rule; pointers in a record lead into
 * the sheet.
 */
export const unknownRecordPart = defineRule({
  code: 'record/unknown-part',
  severity: 'error',
  about: 'service-record',
  check: (record, set) => {
    const sheet = findSheet(set, record.sheet)?.document
    if (sheet === undefined) return []
    const named = [
      ...record.entries.flatMap((entry, place) => namesOf(entry, sheet, `/entries/${place}`)),
      ...(record.shields ?? []).flatMap(({ on }, place) =>
        pointer(sheet, `/shields/${place}/on`, on, '/shields/'),
      ),
    ]
    return named.map(({ path, id, known }) => {
      return complainOfName(path, id, known)
    })
  },
})

interface WrongName {
  readonly path: JsonPointer
  readonly id: string
  readonly known: readonly string[]
}

function namesOf(entry: RecordEntry, sheet: SpecSheet, path: JsonPointer): readonly WrongName[] {
  const gearcase = lookUp(sheet.gearcases, entry.gearcase)
  if (gearcase === undefined)
    return [{ path: `${path}/gearcase`, id: entry.gearcase, known: Object.keys(sheet.gearcases) }]
  const service = lookUp(sheet.services, entry.service)
  const instances = Object.keys(gearcase.instances ?? {})
  const base = `/gearcases/${entry.gearcase}/`
  return [
    ...(service === undefined
      ? [{ path: `${path}/service`, id: entry.service, known: Object.keys(sheet.services) }]
      : service.gearcases.includes(entry.gearcase)
        ? []
        : [{ path: `${path}/gearcase`, id: entry.gearcase, known: service.gearcases }]),
    ...(entry.instance === undefined || instances.includes(entry.instance)
      ? []
      : [{ path: `${path}/instance`, id: entry.instance, known: instances }]),
    ...entry.opened.flatMap((on, place) => pointer(sheet, `${path}/opened/${place}`, on, base)),
    ...entry.tightened.flatMap(({ on }, place) => pointer(sheet, `${path}/tightened/${place}/on`, on, base)),
    ...entry.seals.flatMap(({ on }, place) => pointer(sheet, `${path}/seals/${place}/on`, on, base)),
  ]
}

function pointer(sheet: SpecSheet, path: JsonPointer, on: JsonPointer, base: string): readonly WrongName[] {
  return on.startsWith(base) && readPointer(sheet, on) !== undefined ? [] : [{ path, id: on, known: [] }]
}
