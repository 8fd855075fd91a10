import { describe, expect, it } from 'vitest'
import { WARRANTY_FACTS } from '../../src/spec/index.js'
import { en } from '../../src/v1/message/en.js'
import { add, patched } from '../support/patched.js'
import { cardOf, planExample } from '../support/planExample.js'
import { toJsonSchema } from '../support/toJsonSchema.js'

const { blanks } = en.card

/** The key of a record for each label of the blank form. */
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
  [blanks.photos]: 'photos',
  [blanks.certificate]: 'certificates',
  [blanks.signature]: 'signature',
  [blanks.batch]: 'oil',
  [blanks.partNumber]: 'seals',
}

/**
 * Keys that the card states in other words, or that only a correction has. `opened`: every plug of the visit has its
 * line.
 */
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

/** A sheet whose warranty requires every fact. */
const sheet = patched(add('/warranty', { asks: WARRANTY_FACTS }))

function fieldsOf(example: string, changes: Parameters<typeof planExample>[1] = {}) {
  const section = cardOf(planExample(example, changes)).sections.find(({ id }) => id === 'record')
  return (section?.parts ?? []).flatMap((part) => (part.kind === 'blanks' ? part.fields : []))
}
/** The label itself, or its words after or before the name of a part. */
const keyOf = (label: string) =>
  KEYS[label] ?? KEYS[label.split(': ')[0] ?? ''] ?? KEYS[label.split(', ').at(-1) ?? ''] ?? label

describe('the blank record of a card', () => {
  it('has the fields of a service record, and no others', () => {
    const asked = new Set(fieldsOf('tind-4', { sheet }).map(({ label }) => keyOf(label)))
    const ofRecord = Object.keys(schema.properties).filter(
      (key) => ![...ELSEWHERE, ...CORRECTION].includes(key),
    )
    const ofEntry = Object.keys(entry).filter((key) => !IN_ENTRY_ELSEWHERE.includes(key))
    // The line of the skid plate has its tightening, like that of a plug.
    expect([...asked].sort()).toEqual([...ofRecord.filter((key) => key !== 'shields'), ...ofEntry].sort())
    expect(fieldsOf('tind-4').map(({ label }) => label)).toContain('Front skid plate, setting and wrench')
  })

  it('asks for what a warranty asks only where the sheet states it', () => {
    const labelsOf = (facts?: readonly string[]) => {
      const changes = facts && { sheet: patched(add('/warranty', { asks: facts })) }
      return new Set(fieldsOf('tind-4', changes).map(({ label }) => label))
    }
    const plainLabels = labelsOf()
    const added = (fact: string) => [...labelsOf([fact])].filter((label) => !plainLabels.has(label))
    expect(added('photos')).toEqual([blanks.photos])
    expect(added('wrench certificate')).toEqual([blanks.certificate])
    expect(added('signature')).toEqual([blanks.signature])
    expect(added('oil batch')).toEqual([blanks.batch])
    expect(added('part numbers').sort()).toEqual(['Drain plug, part number', 'Fill plug, part number'])
    expect(added('who did it')).toEqual([])
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
