import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { pathToFileURL } from 'node:url'

/** CPU time to import an entry in a fresh process, as a multiple of an empty process, each with its goal. */
const GOALS: readonly (readonly [string, number])[] = [
  ['v1/calendar', 1.15],
  ['v1/quantity', 1.15],
  ['v1/thread', 1.15],
  ['v1/interval', 1.15],
  ['v1/torque', 1.15],
  ['v1/oil', 1.15],
  ['v1/fill', 1.15],
  ['v1/seal', 1.15],
  ['v1/service', 1.5],
  ['v1/spec', 1.9],
]
const ROUNDS = 21

function measure(entry?: string): number {
  const url = entry === undefined ? undefined : pathToFileURL(`dist/${entry}.js`).href
  const code = `${url === undefined ? '' : `await import(${JSON.stringify(url)});`}
const { user, system } = process.cpuUsage(); process.stdout.write(String(user + system))`
  return Number(execFileSync('node', ['--input-type=module', '-e', code], { encoding: 'utf8' }))
}

const median = (values: readonly number[]): number =>
  values.toSorted((first, second) => first - second)[values.length >> 1] ?? Number.NaN

/** Interleaved, so that a machine that slows down slows all alike; the median of the ratios counts. */
export default function run(): void {
  if (!existsSync('dist/index.js')) throw new Error('Nothing is built; run npm run build first')
  const ratios = new Map(GOALS.map(([entry]) => [entry, [] as number[]]))
  for (let round = 0; round < ROUNDS; round++)
    for (const [entry, measured] of ratios) measured.push(measure(entry) / measure())
  for (const [entry, goal] of GOALS) {
    const ratio = median(ratios.get(entry) ?? [])
    console.log(
      `${entry.padEnd(14)} ${ratio.toFixed(2)}× of an empty process, goal ${goal}: ${ratio <= goal ? 'reached' : 'not reached'}`,
    )
  }
}
