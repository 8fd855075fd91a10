import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { build } from 'esbuild'
import { afterAll, beforeAll, expect, test } from 'vitest'

let folder = ''
let bundle = ''

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'spec-bundle-'))
  const outfile = join(folder, 'spec.mjs')
  await build({
    stdin: {
      contents: `export * from './src/v1/spec.ts'`,
      resolveDir: process.cwd(),
    },
    outfile,
    bundle: true,
    minify: true,
    format: 'esm',
    platform: 'neutral',
    mainFields: ['module', 'main'],
  })
  bundle = readFileSync(outfile, 'utf8')
})
afterAll(() => rmSync(folder, { recursive: true }))

test('the module with zod is at most 46 kB, since a page that reads documents loads it whole', () => {
  const kilobytes = gzipSync(bundle).length / 1000
  console.log(`spec with zod: ${kilobytes.toFixed(1)} kB gzip`)
  expect(kilobytes).toBeLessThanOrEqual(46)
})

/** Runs a script in a separate process, next to the bundle. */
function run(script: string): string {
  const file = join(folder, 'script.mjs')
  writeFileSync(file, script)
  const { stdout, stderr } = spawnSync(process.execPath, [file], { encoding: 'utf8', cwd: folder })
  expect(stderr).toBe('')
  return stdout.trim()
}

test('no code is compiled, or tried to be, on import, at first use or at later uses', () => {
  const stock = JSON.stringify(readFileSync('test/fixtures/full.stock.json', 'utf8'))
  const output = run(`
    const tried = []
    const Real = Function
    globalThis.Function = new Proxy(Real, {
      construct(target, parts) { tried.push(parts); return new target(...parts) },
      apply(target, self, parts) { tried.push(parts); return target(...parts) },
    })
    Real.prototype.constructor = globalThis.Function
    const { parseDocumentText } = await import('./spec.mjs')
    const answers = [parseDocumentText('any', ${stock}).ok, parseDocumentText('any', ${stock}).ok, parseDocumentText('any', '{}').ok]
    new Function('')
    console.log(JSON.stringify({ answers, tried: tried.length }))
  `)
  // The only one found is that of the test itself, which shows that the check works.
  expect(JSON.parse(output)).toEqual({ answers: [true, true, false], tried: 1 })
})

test('it reads documents where code generation from text is forbidden', () => {
  const stock = JSON.stringify(readFileSync('test/fixtures/full.stock.json', 'utf8'))
  const file = join(folder, 'forbidden.mjs')
  writeFileSync(
    file,
    `const { parseDocumentText } = await import('./spec.mjs')\nconsole.log(parseDocumentText('any', ${stock}).ok)`,
  )
  const { stdout } = spawnSync(process.execPath, ['--disallow-code-generation-from-strings', file], {
    encoding: 'utf8',
  })
  expect(stdout.trim()).toBe('true')
})

test("a user's own jitless setting is put back too", async () => {
  await build({
    stdin: {
      contents: `import * as z from 'zod/mini'
import { DOCUMENT_SHAPES } from './src/schema/shapes/documentShapes.ts'
z.config({ jitless: false })
for (const build of Object.values(DOCUMENT_SHAPES)) build()
console.log(JSON.stringify(z.config().jitless))`,
      resolveDir: process.cwd(),
    },
    outfile: join(folder, 'own.mjs'),
    bundle: true,
    format: 'esm',
    platform: 'neutral',
    mainFields: ['module', 'main'],
  })
  expect(run(`await import('./own.mjs')`)).toBe('false')
})

test("the user's own configuration of zod stays as it is", async () => {
  const z = await import('zod')
  const { DOCUMENT_SHAPES } = await import('../../src/schema/shapes/documentShapes.js')
  // Zod itself fills in its configuration when it builds its first shape.
  z.strictObject({ first: z.string() })
  const before = { ...z.config() }
  const shapes = Object.values(DOCUMENT_SHAPES).map((build) => build())
  expect({ ...z.config() }).toEqual(before)
  expect(Object.hasOwn(z.config(), 'jitless')).toBe(Object.hasOwn(before, 'jitless'))
  for (const [at, build] of Object.values(DOCUMENT_SHAPES).entries()) expect(build()).toBe(shapes[at])
})
