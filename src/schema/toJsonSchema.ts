import * as z from 'zod/v4/core'
import { refuse } from '../base/index.js'
import { DOCUMENT_NAMES, type DocumentName } from '../spec/index.js'
import { allowShort } from './notation/allowShort.js'
import { PLACE_TABLES } from './notation/notationTables.js'
import { DOCUMENT_SHAPES } from './shapes/documentShapes.js'
import { shapeKeywords } from './shapes/textShapes.js'

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
  const full: JsonSchema = JSON.parse(
    JSON.stringify({
      $schema,
      $id: `https://unpkg.com/drivetrain-service/schemas/v1/${kind}.json`,
      title: TITLES[kind],
      ...schema,
    }),
  )
  const places = PLACE_TABLES[kind]?.()
  return places === undefined ? full : allowShort(full, places)
}

const TITLES: Readonly<Record<DocumentName, string>> = {
  'spec-sheet': "The manual's figures for one machine model and its variants",
  'machine-log': 'The history of one machine',
  toolbox: "The workshop's tools and equipment",
  stock: 'Oil and seals in stock',
  procedure: 'The steps of one visit',
  'service-record': 'The work done at one visit',
}
