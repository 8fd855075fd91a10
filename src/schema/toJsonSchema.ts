import * as z from 'zod/v4/core'
import { refuse } from '../base/index.js'
import { DOCUMENT_NAMES, type DocumentName } from '../spec/index.js'
import { allowShort } from './notation/allowShort.js'
import { ALL_PLACES } from './notation/allPlaces.js'
import { DOCUMENT_SHAPES } from './shapes/documentShapes.js'
import { shapeKeywords } from './shapes/textShapes.js'

/** A JSON Schema as plain data. */
export type JsonSchema = { readonly [keyword: string]: unknown }

/**
 * The JSON Schema (draft 2020-12) of a kind of document: it accepts the same documents as the parse function, except for its
 * limits on depth and length. Patterns have no look-ahead and no named character classes, so that other languages read
 * them alike. `$id` is where a copy of the package on the web has the file.
 *
 * Only `npm run generate` calls it: the schemas are files of the package, and zod's converter would add 6 kB to a bundle.
 */
export function toJsonSchema(kind: DocumentName): JsonSchema {
  if (!DOCUMENT_NAMES.includes(kind))
    throw refuse('kind', kind, `one of ${DOCUMENT_NAMES.join(', ')}`, 'string')
  const shape = DOCUMENT_SHAPES[kind]()
  // Of a registry, the converter only asks `get`.
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
  const places = ALL_PLACES[kind]?.()
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
