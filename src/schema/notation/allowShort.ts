import { listLeafTypes } from '../../spec/index.js'
import { MAX_NOTATION_LENGTH, type Notation } from './notation.js'
import type { PlaceNode, PlaceTable } from './placeTable.js'
import { patternOf } from './readNotation.js'
import type { SheetNotation } from './sheetNotations.js'

type Schema = Record<string, unknown>

/** Adds the short notation to the JSON Schema of a full document: at each place a text or the full form, and gaps. */
export function allowShort(schema: Schema, { places, notations }: PlaceTable): Schema {
  const whole = structuredClone(schema)
  const defs = whole['$defs'] as Record<string, Schema>
  const done = new Set<Schema>()
  shorten(whole, places)
  if (places.below['overrides'] !== undefined) shortenOverrides()
  for (const notation of Object.values(notations)) defs[textName(notation.name)] = textSchema(notation)
  return whole

  /** Loosens the full form of one place, and what is below it. */
  function shorten(full: Schema, { row, below }: PlaceNode): void {
    const leftOut = [...Object.keys(row.leftOut ?? {}), ...Object.keys(row.leftOutLast ?? {})]
    for (const arm of armsOf(full)) {
      if (done.has(arm)) continue
      done.add(arm)
      const { required, properties } = arm as { required?: readonly string[]; properties?: Schema }
      if (required !== undefined) arm['required'] = required.filter((key) => !leftOut.includes(key))
      if (row.isSection && properties !== undefined) properties['source'] = textReference('source')
      for (const [key, node] of Object.entries(below)) {
        const slot = slotOf(arm, key)
        if (slot === undefined) continue
        shorten(slot, node)
        const short = shortOf(node)
        if (short !== undefined) replace(slot, either(...short, { ...slot }))
      }
    }
  }

  /** The objects that may be at a place. */
  function armsOf(slot: Schema): readonly Schema[] {
    const { $ref, oneOf, else: full } = slot as { $ref?: string; oneOf?: readonly Schema[]; else?: Schema }
    if ($ref !== undefined) return armsOf(defs[$ref.replace('#/$defs/', '')] ?? {})
    if (full !== undefined) return armsOf(full)
    return oneOf === undefined ? [slot] : oneOf.flatMap(armsOf)
  }

  /** A set may be a list of leaves, or an object of leaves by their paths. */
  function shortenOverrides(): void {
    const [override = {}] = slotsAt(['overrides', '*'])
    const [entries = {}] = slotsAt(['overrides', '*', 'set', '*'])
    for (const arm of armsOf(entries)) {
      const { kind, to } = arm['properties'] as { kind: { const: keyof typeof OVERRIDE_TEXTS }; to: Schema }
      allowText(to, OVERRIDE_TEXTS[kind.const])
      // An interval that is not a window also has a stricter form.
      for (const form of (arm['anyOf'] ?? []) as { properties: { to?: Schema } }[])
        if (form.properties.to !== undefined) allowText(form.properties.to, ['interval'])
    }
    const { set, source } = (armsOf(override)[0]?.['properties'] ?? {}) as { set: Schema; source: Schema }
    allowText(source, ['source'])
    const byPath = listLeafTypes().map(({ place }) => [
      `^/${place.join('/').replaceAll('*', '[^/]+')}$`,
      slotsAt(place)[0],
    ])
    const map = {
      type: 'object',
      minProperties: 1,
      propertyNames: { not: { pattern: '\n' } },
      patternProperties: Object.fromEntries(byPath),
      additionalProperties: false,
    }
    replace(set, either({ type: 'array' }, { ...set }, map))
  }

  /** The places of a full sheet that these keys lead to. */
  function slotsAt(place: readonly string[]): readonly Schema[] {
    return place.reduce<readonly Schema[]>(
      (slots, key) =>
        slots
          .flatMap(armsOf)
          .map((arm) => slotOf(arm, key))
          .filter((slot) => slot !== undefined),
      [whole],
    )
  }
}

/** A place that holds what a test is true for in one form, and everything else in another. */
const either = (test: Schema, short: Schema, full: Schema): Schema => ({
  if: test,
  // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
  then: short,
  else: full,
})

function slotOf(arm: Schema, key: string): Schema | undefined {
  const { properties, additionalProperties, items } = arm as {
    properties?: Readonly<Record<string, Schema>>
    additionalProperties?: Schema | false
    items?: Schema
  }
  return key === '*' ? additionalProperties || items : properties?.[key]
}

/** What a writer may put at a place besides its full form. */
function shortOf(node: PlaceNode): readonly [test: Schema, short: Schema] | undefined {
  const { row, byPointer, lists } = node
  if (lists !== undefined) {
    const anyOf = lists.map(({ name }) => ({ items: textReference(name) }))
    return [{ type: 'array' }, { type: 'array', anyOf }]
  }
  if (byPointer !== undefined) {
    const texts = { type: 'object', additionalProperties: textReference(byPointer.name) }
    return [{ type: 'object' }, { ...texts, propertyNames: { $ref: '#/$defs/pointer' } }]
  }
  if (row.isYesOrNo) return [{ type: 'boolean' }, {}]
  if (row.isListOfIds) {
    const ids = { type: 'array', items: { $ref: '#/$defs/id' }, uniqueItems: true }
    return [{ type: 'array' }, ids]
  }
  if (row.isOverride) return undefined
  const name = notationAt(node)
  const isText = { type: 'string', ...(row.word !== undefined && { not: { const: row.word } }) }
  return name === undefined ? undefined : [isText, textReference(name)]
}

/** A text at a section is read at the key that it is the value of. */
function notationAt({ row, text, below }: PlaceNode): string | undefined {
  if (text !== undefined || row.under === undefined) return text?.name
  const node = below[row.under === '[]' ? '*' : row.under]
  return node && notationAt(node)
}

const OVERRIDE_TEXTS = {
  value: ['volume', 'length', 'temperature', 'mass', 'minutes'],
  tightening: ['tightening'],
  oils: ['oils'],
  seal: ['seal'],
  interval: ['window'],
  place: ['place'],
  drive: ['drive'],
} as const satisfies { readonly [kind: string]: readonly SheetNotation[] }

function allowText(slot: Schema, names: readonly SheetNotation[]): void {
  const [first = {}, ...others] = names.map(textReference)
  const texts = others.length === 0 ? first : { anyOf: [first, ...others] }
  replace(slot, either({ type: 'string' }, texts, { ...slot }))
}

function replace(slot: Schema, by: Schema): void {
  for (const keyword of Object.keys(slot)) delete slot[keyword]
  Object.assign(slot, by)
}

const textName = (name: string): string =>
  `text-${name.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`
const textReference = (name: string): Schema => ({ $ref: `#/$defs/${textName(name)}` })

const textSchema = (notation: Notation): Schema => ({
  type: 'string',
  maxLength: MAX_NOTATION_LENGTH,
  pattern: patternOf(notation),
  not: { pattern: notation.outside },
})
