import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/** A good document of the fixtures or examples, with the file that it stands in. */
export interface GoodDocument {
  readonly file: string
  readonly text: string
  readonly value: Readonly<Record<string, unknown>>
}

/** All shape fixtures and all documents of the example machines. */
export function readGoodDocuments(): readonly GoodDocument[] {
  const fixtures = readdirSync('test/fixtures')
    .filter((name) => name.endsWith('.json'))
    .map((name) => join('test/fixtures', name))
  const examples = readdirSync('examples', { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && entry.name !== 'mistakes')
    .flatMap((entry) =>
      readdirSync(join('examples', entry.name))
        .filter((name) => name.endsWith('.json'))
        .map((name) => join('examples', entry.name, name)),
    )
  return [...fixtures, ...examples].flatMap((file) => {
    const text = readFileSync(file, 'utf8')
    const value = JSON.parse(text)
    return typeof value.kind === 'string' ? [{ file, text, value }] : []
  })
}

/** One fixture by its file name. */
export function readFixture(name: string): Record<string, unknown> {
  return JSON.parse(readFileSync(join('test/fixtures', name), 'utf8'))
}
