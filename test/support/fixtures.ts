import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'

/** A good document of the fixtures or examples, with its file. */
export interface GoodDocument {
  readonly file: string
  readonly text: string
  readonly value: Readonly<Record<string, unknown>>
}

/** All shape fixtures, and the documents of the example machines in full form, next to the vectors or in `examples`. */
export function readGoodDocuments(): readonly GoodDocument[] {
  const files = [
    ...listFiles('test/fixtures', '.json', false),
    ...['examples', 'schemas/v1/vectors/bases'].flatMap((folder) => listFiles(folder, '.json')),
  ]
  return files.flatMap((file) => {
    const text = readFileSync(file, 'utf8')
    const value = JSON.parse(text)
    return typeof value.kind === 'string' ? [{ file, text, value }] : []
  })
}

/** All documents of the example machines in short notation, as JSON. */
export function readShortDocuments(): readonly GoodDocument[] {
  return listFiles('examples', '.yaml').map((file) => {
    const value = parse(readFileSync(file, 'utf8'))
    return { file, text: JSON.stringify(value, null, 2), value }
  })
}

function listFiles(folder: string, ending: string, recursive = true): readonly string[] {
  return readdirSync(folder, { recursive, encoding: 'utf8' })
    .filter((name) => name.endsWith(ending))
    .map((name) => join(folder, name))
}

/** One fixture by its file name. */
export function readFixture(name: string): Record<string, unknown> {
  return JSON.parse(readFileSync(join('test/fixtures', name), 'utf8'))
}
