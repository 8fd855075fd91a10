import { readdirSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import ts from 'typescript'
import { expect, it } from 'vitest'
import { publicFunctions } from '../support/publicFunctions.js'

const ROOT = new URL('../../', import.meta.url).pathname

/** Folders of `test/` that are not a module of `src/`, each with its reason. */
const NO_MODULE: Readonly<Record<string, string>> = {
  bench: 'how fast, not how right',
  browser: 'cards laid out in a browser: several modules at once',
  docs: 'examples and samples of every module',
  engines: 'what needs an engine that is too large to install for each run',
  expected: 'tables made by hand, read by tests of several modules',
  fixtures: 'documents, read by tests of several modules',
  page: 'the page to try it, whose sources are in docs/page',
  published: 'numbers out of print, read by tests of several modules',
  support: 'helpers of the tests',
  walls: 'what holds between the modules and for the package',
}

/** Modules of `src/` without a folder of tests, each with its reason. */
const NO_TESTS: Readonly<Record<string, string>> = {
  v1: 'entries that only export again; test/walls and test/docs go through them',
}

/** Public functions that no test calls by name, each with its reason. */
const NO_CALL: Readonly<Record<string, string>> = {}

const foldersIn = (place: string): readonly string[] =>
  readdirSync(join(ROOT, place), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)

it('each folder of tests is a module of src, and each module has one', () => {
  const modules = foldersIn('src')
  const tested = foldersIn('test')
  expect(tested.filter((name) => !modules.includes(name) && !(name in NO_MODULE))).toEqual([])
  expect(modules.filter((name) => !tested.includes(name) && !(name in NO_TESTS))).toEqual([])
  const staleNames = [...Object.keys(NO_MODULE).filter((name) => modules.includes(name))]
  expect(staleNames.concat(Object.keys(NO_TESTS).filter((name) => tested.includes(name)))).toEqual([])
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
  const untestedNames = names.filter((name) => !named.has(name) && !tests.has(name))
  expect(untestedNames.sort()).toEqual(Object.keys(NO_CALL).sort())
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
