// `npm run bench [-- NAME …] [--heavy] [--write]`: one table over test/bench/*.bench.ts, or over those that are named.
import { fork } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { arch, cpus, loadavg, platform, release, totalmem } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import type { BenchResult } from './benchResult.js'
import { type BenchResults, writeComparisons, writeGrowth, writeMemory, writeNotes } from './renderBench.js'

const PAGE = 'docs/performance.md'
/** Sizes that take minutes are measured with --heavy and kept until the next time. */
const HEAVY = 'test/bench/heavyFigures.json'
const HEAVY_NAMES = ['check', 'due', 'sql']

interface HeavyFigures {
  readonly date: string
  readonly machine: string
  readonly results: readonly (readonly [string, BenchResult])[]
}

const flags = process.argv.slice(2).filter((word) => word.startsWith('--'))
const asked = process.argv.slice(2).filter((word) => !word.startsWith('--'))
const unknownFlag = flags.find((flag) => flag !== '--write' && flag !== '--heavy')
if (unknownFlag !== undefined) throw new Error(`${unknownFlag}: expected --write or --heavy`)
const isHeavy = flags.includes('--heavy')
const isWritten = flags.includes('--write')
if (isWritten && asked.length > 0) throw new Error('--write is for a run of all benchmarks: name none')

const allNames = readdirSync('test/bench')
  .filter((file) => file.endsWith('.bench.ts'))
  .map((file) => file.slice(0, -'.bench.ts'.length))
const wrong = asked.find((name) => !allNames.includes(name))
if (wrong !== undefined) throw new Error(`${wrong}: expected one of ${allNames.join(', ')}`)

/** A process for each benchmark: code that another has warmed up, or its garbage, would change the figures. */
async function runBench(name: string, folder: string, heavy: boolean): Promise<BenchResult> {
  const outfile = join(folder, `${name}.mjs`)
  await build({
    stdin: {
      contents: `import run from './${name}.bench.ts'
process.send(await run({ heavy: ${heavy} }), () => process.exit())`,
      resolveDir: 'test/bench',
    },
    outfile,
    bundle: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    logLevel: 'warning',
  })
  return new Promise((resolve, reject) => {
    const child = fork(outfile, { serialization: 'advanced' })
    child.on('message', resolve)
    child.on('exit', (code) => reject(new Error(`${name}: the process ended with ${code}`)))
  })
}

async function runAll(names: readonly string[], heavy: boolean): Promise<BenchResults> {
  const results = new Map<string, BenchResult>()
  const folder = mkdtempSync(join(process.cwd(), 'node_modules', '.bench-'))
  try {
    for (const name of names) {
      const start = performance.now()
      results.set(name, await runBench(name, folder, heavy))
      console.error(`${name}: ${((performance.now() - start) / 1000).toFixed(0)} s`)
    }
  } finally {
    rmSync(folder, { recursive: true })
  }
  return results
}

const showLoad = (): string => (loadavg()[0] ?? 0).toFixed(1)

function describeMachine(): string {
  const [{ model = 'unknown processor' } = {}] = cpus()
  const memory = `${(totalmem() / 2 ** 30).toFixed(0)} GiB`
  return `${model.trim()}, ${cpus().length} processors, ${memory}, ${platform()} ${release()} ${arch()}, Node ${process.versions.node}`
}

function writePage(results: BenchResults, heavy: HeavyFigures | undefined, load: string): string {
  const heavyResults: BenchResults = new Map(heavy?.results)
  const withHeavy: BenchResults = new Map([
    ...results,
    ...[...heavyResults].map(([name, result]) => [`${name}, heavy`, result] as const),
  ])
  const heavyRows: BenchResults = new Map([...heavyResults].filter(([, { rows }]) => rows.length > 0))
  const heavyText =
    heavy === undefined
      ? []
      : [
          `The largest sizes of some rows take minutes: 10,000 sheets, 1,000,000 logs, 10,000,000 rows of SQL. They were measured`,
          `on ${heavy.date} (${heavy.machine}) with \`npm run bench -- --heavy\`:`,
          '',
          ...writeComparisons(heavyRows),
          '',
        ]
  return [
    '# Performance',
    '',
    'One run of `npm run bench -- --write`, which writes this page. `npm run bench -- start due` runs some benchmarks.',
    '',
    `- Date: ${new Date().toISOString().slice(0, 10)}`,
    `- Machine: ${describeMachine()}`,
    `- Load of the machine (processes that wait for a processor, one minute): ${load}`,
    '',
    'Times are CPU time of one call, with the threads that compile and collect garbage. Each row and its peer ran in turns in',
    'one process, or in fresh processes in turns. The ratio is the median over the rounds; half of the rounds are in the middle',
    'half. Compare ratios: times depend on the machine.',
    '',
    '## Comparisons',
    '',
    ...writeComparisons(results),
    '',
    ...heavyText,
    '## Growth',
    '',
    'CPU time of one item by the number of items, the best round. A time that does not grow means that the whole grows with the',
    'number. Nothing here is extrapolated; an empty cell was not measured.',
    '',
    ...writeGrowth(withHeavy),
    '',
    '## Memory',
    '',
    'The most memory that a fresh process of the command had (resident set). An empty process has about 45 MiB.',
    '',
    ...writeMemory(withHeavy),
    '',
    ...writeNotes(results),
    '',
  ].join('\n')
}

const loadBefore = showLoad()
if (isHeavy) {
  const names = HEAVY_NAMES.filter((name) => asked.length === 0 || asked.includes(name))
  if (names.length === 0) throw new Error(`--heavy: expected one of ${HEAVY_NAMES.join(', ')}`)
  const results = await runAll(names, true)
  const date = new Date().toISOString().slice(0, 10)
  const machine = `load ${loadBefore} to ${showLoad()}, Node ${process.versions.node}`
  const old = readHeavy()
  const kept = (old?.results ?? []).filter(([name]) => !results.has(name))
  const figures: HeavyFigures = { date, machine, results: [...kept, ...results] }
  writeFileSync(HEAVY, `${JSON.stringify(figures, null, 2)}\n`)
  for (const lines of [writeComparisons(results), writeGrowth(results), writeMemory(results)])
    console.log(`${lines.join('\n')}\n`)
} else {
  const results = await runAll(asked.length === 0 ? allNames : asked, false)
  const load = `${loadBefore} at the start, ${showLoad()} at the end`
  for (const lines of [
    writeComparisons(results),
    writeGrowth(results),
    writeMemory(results),
    writeNotes(results),
  ])
    if (lines.length > 0) console.log(`${lines.join('\n')}\n`)
  console.log(`Load of the machine: ${load}`)
  if (isWritten) writeFileSync(PAGE, writePage(results, readHeavy(), load))
}

function readHeavy(): HeavyFigures | undefined {
  try {
    return JSON.parse(readFileSync(HEAVY, 'utf8')) as HeavyFigures
  } catch (error) {
    if ((error as { code?: unknown }).code === 'ENOENT') return undefined
    throw error
  }
}
