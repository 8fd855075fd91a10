// Writes the JSON Schemas of the six documents and of the results, and docs/fields.md: `npm run generate`. A test fails
// if they are out of date.

import { mkdir, writeFile } from 'node:fs/promises'
import { DOCUMENT_NAMES } from '../../src/spec/documents.js'
import { describeSchema } from '../schema/support/describeSchema.js'
import { renderFieldsPage } from '../schema/support/fieldsPage.js'
import { printJson } from './printJson.js'
import { makeResultSchemas } from './resultSchemas.js'
import { toJsonSchema } from './toJsonSchema.js'

await mkdir('schemas/v1', { recursive: true })
const schemas = new Map(DOCUMENT_NAMES.map((kind) => [kind, describeSchema(kind, toJsonSchema(kind))]))
for (const [kind, { schema }] of schemas) await writeFile(`schemas/v1/${kind}.json`, printJson(schema))
const results = makeResultSchemas()
for (const [name, schema] of results) await writeFile(`schemas/v1/${name}.json`, printJson(schema))
await writeFile('docs/fields.md', renderFieldsPage(schemas))
console.log(`wrote ${schemas.size + results.size} schemas to schemas/v1, and docs/fields.md`)
