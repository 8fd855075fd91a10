import { readdirSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import ts from 'typescript'
import { expect, it } from 'vitest'
import { publicFunctions } from '../support/publicFunctions.js'

const ROOT = new URL('../../', import.meta.url).pathname

/** Folders of `test/` that are not a room of `src/`, each with its reason. */
const NO_ROOM: Readonly<Record<string, string>> = {
  bench: 'how fast, not how right',
  browser: 'cards laid out in a browser: several rooms at once',
  docs: 'examples and samples of every room',
  expected: 'tables made by hand, read by tests of several rooms',
  fixtures: 'documents, read by tests of several rooms',
  published: 'numbers out of print, read by tests of several rooms',
  support: 'helpers of the tests',
  walls: 'what holds between the rooms and for the package',
}

/** Rooms of `src/` without a folder of tests, each with its reason. */
const NO_TESTS: Readonly<Record<string, string>> = {
  v1: 'entries that only export again; test/walls and test/docs go through them',
}

/** Public functions that no test calls by name, each with its reason. */
const NO_CALL: Readonly<Record<string, string>> = {}

const foldersIn = (place: string): readonly string[] =>
  readdirSync(join(ROOT, place), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)

it('each folder of tests is a room of src, and each room has one', () => {
  const rooms = foldersIn('src')
  const tested = foldersIn('test')
  expect(tested.filter((name) => !rooms.includes(name) && !(name in NO_ROOM))).toEqual([])
  expect(rooms.filter((name) => !tested.includes(name) && !(name in NO_TESTS))).toEqual([])
  const stale = [...Object.keys(NO_ROOM).filter((name) => rooms.includes(name))]
  expect(stale.concat(Object.keys(NO_TESTS).filter((name) => tested.includes(name)))).toEqual([])
})

it('each public function has a test file of its name, or a test that uses it', async () => {
  const files = readdirSync(join(ROOT, 'test'), { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file.endsWith('.test.ts') && !/^(walls|docs)\//.test(file))
  const tests = new Map<string, string[]>()
  for (const file of files)
    for (const name of namesUsed(file)) tests.set(name, [...(tests.get(name) ?? []), file])
  const named = new Set(files.map((file) => basename(file, '.test.ts')))
  const names = [...(await publicFunctions()).keys()]
  expect(names.length).toBeGreaterThan(40)
  const untested = names.filter((name) => !named.has(name) && !tests.has(name))
  expect(untested.sort()).toEqual(Object.keys(NO_CALL).sort())
})

/** The names that the code of a test file uses; an import alone does not count. */
function namesUsed(file: string): ReadonlySet<string> {
  const text = readFileSync(join(ROOT, 'test', file), 'utf8')
  const found = new Set<string>()
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) return
    if (ts.isIdentifier(node)) found.add(node.text)
    node.forEachChild(visit)
  }
  ts.createSourceFile(file, text, ts.ScriptTarget.ES2022).forEachChild(visit)
  return found
}
