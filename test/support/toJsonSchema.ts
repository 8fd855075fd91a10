import * as z from 'zod/v4/core'
import { refuse } from '../../src/base/index.js'
import { buildPattern } from '../../src/schema/notation/buildPattern.js'
import { MAX_NOTATION_LENGTH, type Notation } from '../../src/schema/notation/notation.js'
import { PLACE_TABLES } from '../../src/schema/notation/notationTables.js'
import type { PlaceNode, PlaceTable } from '../../src/schema/notation/placeTable.js'
import { readByPointer, readList } from '../../src/schema/notation/readList.js'
import { readIds, readYesOrNo } from '../../src/schema/notation/readSection.js'
import type { SheetNotationName } from '../../src/schema/notation/sheetNotations.js'
import { DOCUMENT_SHAPES } from '../../src/schema/shapes/documentShapes.js'
import { shapeKeywords } from '../../src/schema/shapes/textShapes.js'
import { DOCUMENT_NAMES, type DocumentName, listLeafTypes } from '../../src/spec/index.js'

/** A JSON Schema as plain data. */
export type JsonSchema = { readonly [keyword: string]: unknown }

/**
 * The JSON Schema (draft 2020-12) of a kind of document. It accepts the same documents as the parse function,
 * but without the limits on depth and length. Patterns have no look-ahead and no named character classes, so
 * other languages read them in the same way. `$id` is the address of the file in a web copy of the package.
 *
 * Only `npm run generate` calls it: the schemas are files of the package, and zod's converter would add 6 kB to a bundle.
 */
export function toJsonSchema(kind: DocumentName): JsonSchema {
  if (!DOCUMENT_NAMES.includes(kind))
    throw refuse('kind', kind, `one of ${DOCUMENT_NAMES.join(', ')}`, 'string')
  const shape = DOCUMENT_SHAPES[kind]()
  // The converter only calls `get` of a registry.
  const metadata = shapeKeywords as unknown as z.$ZodRegistry<{ id?: string }>
  const { $schema, ...schema } = z.toJSONSchema(shape, { metadata, io: 'input' })
  const fullSchema: JsonSchema = JSON.parse(
    JSON.stringify({
      $schema,
      $id: `https://unpkg.com/drivetrain-service/schemas/v1/${kind}.json`,
      title: TITLES[kind],
      ...schema,
    }),
  )
  const places = PLACE_TABLES[kind]?.()
  return places === undefined ? fullSchema : allowShort(fullSchema, places)
}

const TITLES: Readonly<Record<DocumentName, string>> = {
  'spec-sheet': "The manual's figures for one machine model and its variants",
  'machine-log': 'The history of one machine',
  toolbox: "The workshop's tools and equipment",
  stock: 'Oil and seals in stock',
  procedure: 'The steps of one visit',
  'service-record': 'The work done at one visit',
}

type Schema = Record<string, unknown>

/**
 * Adds short notation to the JSON Schema of a full document: texts instead of the full form, and optional
 * keys.
 */
function allowShort(schema: Schema, { places, notations }: PlaceTable): Schema {
  const shortSchema = structuredClone(schema)
  const defs = shortSchema['$defs'] as Record<string, Schema>
  const visited = new Set<Schema>()
  allowTexts(shortSchema, places)
  if (places.children?.['overrides'] !== undefined) allowTextsInOverrides()
  for (const notation of Object.values(notations)) defs[textName(notation.name)] = textSchema(notation)
  return shortSchema

  /** Allows short notation in one subschema and in those below it. */
  function allowTexts(full: Schema, { section, set, children = {}, ...node }: PlaceNode): void {
    const optionalKeys = Object.keys({ ...node.defaults, ...node.laterDefaults })
    for (const alternative of listAlternatives(full)) {
      if (visited.has(alternative)) continue
      visited.add(alternative)
      const { required, properties } = alternative as { required?: readonly string[]; properties?: Schema }
      if (required !== undefined)
        alternative['required'] = required.filter((key) => !optionalKeys.includes(key))
      if (section && !set && properties !== undefined) properties['source'] = textReference('source')
      for (const [key, node] of Object.entries(children)) {
        const subschema = findSubschema(alternative, key)
        if (subschema === undefined) continue
        allowTexts(subschema, node)
        const shortSchema = makeShortSchema(node)
        if (shortSchema !== undefined) replaceSchema(subschema, ifThenElse(...shortSchema, { ...subschema }))
      }
    }
  }

  /** The alternatives of a subschema. */
  function listAlternatives(subschema: Schema): readonly Schema[] {
    const {
      $ref,
      oneOf,
      else: full,
    } = subschema as { $ref?: string; oneOf?: readonly Schema[]; else?: Schema }
    if ($ref !== undefined) return listAlternatives(defs[$ref.replace('#/$defs/', '')] ?? {})
    if (full !== undefined) return listAlternatives(full)
    return oneOf === undefined ? [subschema] : oneOf.flatMap(listAlternatives)
  }

  /** A `set` may be a list of leaves, or an object of leaves by path. */
  function allowTextsInOverrides(): void {
    const [override = {}] = findSubschemas(['overrides', '*'])
    const [entries = {}] = findSubschemas(['overrides', '*', 'set', '*'])
    for (const alternative of listAlternatives(entries)) {
      const { kind, to } = alternative['properties'] as {
        kind: { const: keyof typeof OVERRIDE_TEXTS }
        to: Schema
      }
      allowText(to, OVERRIDE_TEXTS[kind.const])
      // An interval that is not a window also has a stricter form.
      for (const form of (alternative['anyOf'] ?? []) as { properties: { to?: Schema } }[])
        if (form.properties.to !== undefined) allowText(form.properties.to, ['interval'])
    }
    const { set, source } = (listAlternatives(override)[0]?.['properties'] ?? {}) as {
      set: Schema
      source: Schema
    }
    allowText(source, ['source'])
    const byPath = listLeafTypes().map(({ place }) => [
      `^/${place.join('/').replaceAll('*', '[^/]+')}$`,
      findSubschemas(place)[0],
    ])
    const map = {
      type: 'object',
      minProperties: 1,
      propertyNames: { not: { pattern: '\n' } },
      patternProperties: Object.fromEntries(byPath),
      additionalProperties: false,
    }
    replaceSchema(set, ifThenElse({ type: 'array' }, { ...set }, map))
  }

  /** The subschemas that these keys lead to. */
  function findSubschemas(place: readonly string[]): readonly Schema[] {
    return place.reduce<readonly Schema[]>(
      (subschemas, key) =>
        subschemas
          .flatMap(listAlternatives)
          .map((alternative) => findSubschema(alternative, key))
          .filter((subschema) => subschema !== undefined),
      [shortSchema],
    )
  }
}

/** Values that pass the test have one schema, all others another. */
const ifThenElse = (test: Schema, short: Schema, full: Schema): Schema => ({
  if: test,
  // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
  then: short,
  else: full,
})

function findSubschema(alternative: Schema, key: string): Schema | undefined {
  const { properties, additionalProperties, items } = alternative as {
    properties?: Readonly<Record<string, Schema>>
    additionalProperties?: Schema | false
    items?: Schema
  }
  return key === '*' ? additionalProperties || items : properties?.[key]
}

/** The short form of a place, with the test for it. */
function makeShortSchema(node: PlaceNode): readonly [test: Schema, short: Schema] | undefined {
  const { read, texts = [], fullText } = node
  const [first, ...others] = texts.map(textReference)
  if (read === readList)
    return [{ type: 'array' }, { type: 'array', anyOf: [first, ...others].map((items) => ({ items })) }]
  if (read === readByPointer) {
    const map = { type: 'object', additionalProperties: first }
    return [{ type: 'object' }, { ...map, propertyNames: { $ref: '#/$defs/pointer' } }]
  }
  if (read === readYesOrNo) return [{ type: 'boolean' }, {}]
  if (read === readIds) {
    const ids = { type: 'array', items: { $ref: '#/$defs/id' }, uniqueItems: true }
    return [{ type: 'array' }, ids]
  }
  const name = findTextNotation(node)
  const isText = { type: 'string', ...(fullText !== undefined && { not: { const: fullText } }) }
  return name === undefined ? undefined : [isText, textReference(name)]
}

/** A text instead of an object is the value of one of its keys, and uses that key's notation. */
function findTextNotation({ text, textKey, children }: PlaceNode): string | undefined {
  if (text !== undefined || textKey === undefined) return text
  const node = children?.[textKey === '[]' ? '*' : textKey]
  return node && findTextNotation(node)
}

const OVERRIDE_TEXTS = {
  value: ['volume', 'length', 'temperature', 'mass', 'minutes'],
  tightening: ['tightening'],
  oils: ['oils'],
  seal: ['seal'],
  interval: ['window'],
  place: ['place'],
  position: ['position'],
  drive: ['drive'],
} as const satisfies { readonly [kind: string]: readonly SheetNotationName[] }

function allowText(subschema: Schema, names: readonly SheetNotationName[]): void {
  const [first = {}, ...others] = names.map(textReference)
  const texts = others.length === 0 ? first : { anyOf: [first, ...others] }
  replaceSchema(subschema, ifThenElse({ type: 'string' }, texts, { ...subschema }))
}

function replaceSchema(subschema: Schema, newSchema: Schema): void {
  for (const keyword of Object.keys(subschema)) delete subschema[keyword]
  Object.assign(subschema, newSchema)
}

const textName = (name: string): string =>
  `text-${name.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`
const textReference = (name: string): Schema => ({ $ref: `#/$defs/${textName(name)}` })

const textSchema = (notation: Notation): Schema => ({
  type: 'string',
  maxLength: MAX_NOTATION_LENGTH,
  pattern: buildPattern(notation),
  not: { pattern: notation.forbiddenPattern },
})
