// Writes the JSON Schemas of the six documents: `npm run generate`. A test says when they are behind the shapes.
import { mkdir, writeFile } from 'node:fs/promises'
import { toJsonSchema } from '../../src/schema/toJsonSchema.js'
import { DOCUMENT_NAMES } from '../../src/spec/documents.js'
import { describeSchema } from '../schema/support/describeSchema.js'

await mkdir('schemas/v1', { recursive: true })
for (const kind of DOCUMENT_NAMES) {
  const { schema, missing } = describeSchema(kind, toJsonSchema(kind))
  if (missing.length > 0) console.log(missing.join('\n'))
  await writeFile(`schemas/v1/${kind}.json`, `${JSON.stringify(schema, null, 2)}\n`)
}
console.log(`wrote ${DOCUMENT_NAMES.length} schemas to schemas/v1`)
