import * as z from 'zod/v4/core'
import { refuse } from '../base/index.js'
import { DOCUMENT_NAMES, type DocumentName } from '../spec/index.js'
import { DOCUMENT_SHAPES } from './shapes/documentShapes.js'
import { partRegistry } from './shapes/textShapes.js'

/** A JSON Schema as plain data. */
export type JsonSchema = { readonly [keyword: string]: unknown }

/**
 * Gives the JSON Schema of a kind of document, for editors and for programs in other languages. To read a document
 * here use {@link parseDocument}: it says more, and says it in findings.
 *
 * Equation: what the schema accepts is what the parse function accepts, short of its limits on depth and length.
 * @param kind One of the six kinds.
 * @returns Draft 2020-12, with every part that is used twice under `$defs`; no look-ahead and no named character
 * classes, so that other languages read the patterns alike. `$id` is a name, not a place to fetch from.
 * @throws RangeError when `kind` is none of the six.
 *
 * Source: JSON Schema, draft 2020-12.
 *
 * @internal Not exported: the schemas are files of the package, and zod's converter would add 6 kB to every bundle.
 */
export function toJsonSchema(kind: DocumentName): JsonSchema {
  if (!DOCUMENT_NAMES.includes(kind))
    throw refuse('kind', kind, `one of ${DOCUMENT_NAMES.join(', ')}`, 'string')
  const shape = DOCUMENT_SHAPES[kind]()
  const { $schema, ...schema } = z.toJSONSchema(shape, { metadata: partRegistry(), io: 'input' })
  return JSON.parse(
    JSON.stringify({
      $schema,
      $id: `https://drivetrain-service.example/schemas/v1/${kind}.json`,
      title: TITLES[kind],
      ...schema,
    }),
  )
}

const TITLES: Readonly<Record<DocumentName, string>> = {
  'spec-sheet': 'What the manual says about one machine model and its variants',
  'machine-log': "One machine's history",
  toolbox: 'What the workshop has to work with',
  stock: 'What is on the shelf',
  procedure: "A writer's own steps for a sheet",
  'service-record': 'What was done at one visit',
}
