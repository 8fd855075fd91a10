import { describe, expect, it } from 'vitest'
import { toJsonSchema } from '../../src/schema/toJsonSchema.js'
import { en } from '../../src/v1/message/en.js'
import { add, patched } from '../support/patched.js'
import { cardOf, planExample } from '../support/planExample.js'

const { blanks } = en.card

/** The key of a record that a blank asks for, by the words of its label. */
const KEYS: Readonly<Record<string, string>> = {
  [blanks.date]: 'date',
  [blanks.initials]: 'by',
  [blanks.hours]: 'readings',
  [blanks.distance]: 'readings',
  [blanks.workingTime]: 'workingTime',
  [blanks.usedOil]: 'usedOilLog',
  [blanks.notes]: 'note',
  [blanks.notDone]: 'notDone',
  [blanks.drained]: 'drained',
  [blanks.oilLooks]: 'oilFinding',
  [blanks.magnet]: 'magnet',
  [blanks.filter]: 'filters',
  [blanks.oil]: 'oil',
  [blanks.refilled]: 'refilled',
  [blanks.tightened]: 'tightened',
  [blanks.seals]: 'seals',
  [blanks.level]: 'level',
  [blanks.leaks]: 'leaks',
}

/** What the card says itself, in other words, or a correction alone says. `opened`: every plug of the visit has its line. */
const ELSEWHERE = [
  'kind',
  '$schema',
  'version',
  'id',
  'header',
  'machine',
  'sheet',
  'detail',
  'entries',
  'usedOil',
]
const IN_ENTRY_ELSEWHERE = ['service', 'gearcase', 'instance', 'opened', 'filters', 'sample']
const CORRECTION = ['corrects', 'corrected']

interface Schema {
  readonly properties: Readonly<Record<string, { readonly enum?: readonly string[] }>>
  readonly $defs: Readonly<Record<string, Schema>>
}
const schema = toJsonSchema('service-record') as unknown as Schema
const entry = schema.$defs['record-entry']?.properties ?? {}

function fieldsOf(example: string) {
  const section = cardOf(planExample(example)).sections.find(({ id }) => id === 'record')
  return (section?.parts ?? []).flatMap((part) => (part.kind === 'blanks' ? part.fields : []))
}
/** The label itself, or its words behind or before the name of a part. */
const keyOf = (label: string) =>
  KEYS[label] ?? KEYS[label.split(': ')[0] ?? ''] ?? KEYS[label.split(', ').at(-1) ?? ''] ?? label

describe('the blank record of a card', () => {
  it('has the fields of a service record, and no others', () => {
    const asked = new Set(fieldsOf('tind-4').map(({ label }) => keyOf(label)))
    const ofRecord = Object.keys(schema.properties).filter(
      (key) => ![...ELSEWHERE, ...CORRECTION].includes(key),
    )
    const ofEntry = Object.keys(entry).filter((key) => !IN_ENTRY_ELSEWHERE.includes(key))
    // The line of the skid plate asks for its tightening, like that of a plug.
    expect([...asked].sort()).toEqual([...ofRecord.filter((key) => key !== 'shields'), ...ofEntry].sort())
    expect(fieldsOf('tind-4').map(({ label }) => label)).toContain('Front skid plate, setting and wrench')
  })

  it('has as many choices as the record has words', () => {
    const { choices } = en.card
    const words = (key: string) => entry[key]?.enum?.length
    expect(choices.oil).toHaveLength(words('oilFinding') ?? 0)
    expect(choices.magnet).toHaveLength(words('magnet') ?? 0)
    expect(choices.level).toHaveLength(words('level') ?? 0)
    expect(choices.leaks).toHaveLength(words('leaks') ?? 0)
  })

  it('asks for the bottle only where a sample is taken', () => {
    const sheet = patched(add('/services/gear-oil-change/samples', ['front']))
    const labelsOf = (changes: Parameters<typeof planExample>[1]) =>
      (cardOf(planExample('tind-4', changes)).sections.find(({ id }) => id === 'record')?.parts ?? [])
        .flatMap((part) => (part.kind === 'blanks' ? part.fields : []))
        .filter(({ label }) => label === blanks.sample)
    expect(labelsOf({ sheet })).toHaveLength(1)
    expect(labelsOf({})).toEqual([])
  })

  it('asks for a magnet only where there is one, and for each plug that is opened', () => {
    expect(fieldsOf('kvist-2').map(({ label }) => keyOf(label))).not.toContain('magnet')
    const tightened = fieldsOf('tind-4').filter(({ label }) => label.endsWith(blanks.tightened))
    expect(tightened).toHaveLength(5)
  })
})
