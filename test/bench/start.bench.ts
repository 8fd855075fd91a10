import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
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
/** The same for a command line as it is installed. */
const COMMANDS: readonly (readonly string[])[] = [
  ['help'],
  ['convert', '8.9 lbf·ft', '--to', 'N.m'],
  ['due', '--every', '250 h, 12 months', '--last', '2022-11-20 at 301.4 h', '--now', '2023-10-06 at 512.6 h'],
  ['torque', '9.3 lbf·ft', '--wrench', '40–200 lbf·in by 1'],
  ['fill', '340 cc', '--vessel', '700 mL by 10'],
  [
    'pour',
    '340 cc',
    '--kv40',
    '143',
    '--kv100',
    '15.1',
    '--at',
    '-5 °C',
    '--hose',
    '8 mm x 1 m',
    '--funnel',
    '120 mm x 100 mm',
  ],
  ['meets', '80W-90 GL-5', '--manual', '80W-90 GL-4'],
  ['washer', '18 x 22 x 1.5 mm', '--thread', 'M18x1.5'],
]
const COMMAND_GOAL = 1.6
/** Commands on documents. */
const DOCUMENT_COMMANDS: readonly (readonly [readonly string[], number])[] = [
  [['check', 'examples/tind-4/sheet.yaml'], 3],
  [['plan', 'examples/tind-4', '--today', '2023-10-06'], 4.5],
  [['card', 'examples/tind-4', '--today', '2023-10-06', '--out', mkdtempSync(join(tmpdir(), 'bench-'))], 6],
]
const ROUNDS = 21

/** CPU time of a process that imports a file of dist, with these arguments. */
function measure(file?: string, words: readonly string[] = []): number {
  const url = file === undefined ? undefined : pathToFileURL(`dist/${file}.js`).href
  const code = `process.argv.splice(1, 0, 'drivetrain-service')
process.on('exit', () => { const { user, system } = process.cpuUsage(); process.stderr.write('\\n' + (user + system)) })
${url === undefined ? '' : `await import(${JSON.stringify(url)})`}`
  const { stderr } = spawnSync('node', ['--input-type=module', '-e', code, '--', ...words], {
    encoding: 'utf8',
  })
  // A command may write there first.
  return Number(stderr.trim().split('\n').at(-1))
}

const median = (values: readonly number[]): number =>
  values.toSorted((first, second) => first - second)[values.length >> 1] ?? Number.NaN

/** In turns, so that a slow machine affects all of them equally; the result is the median of the ratios. */
export default function run(): void {
  if (!existsSync('dist/index.js')) throw new Error('Nothing is built; run npm run build first')
  const rows = [
    ...GOALS.map(([entry, goal]) => ({ name: entry, file: entry, words: [] as readonly string[], goal })),
    ...COMMANDS.map((words) => ({ name: words[0] ?? '', file: 'cli/main', words, goal: COMMAND_GOAL })),
    ...DOCUMENT_COMMANDS.map(([words, goal]) => ({ name: words[0] ?? '', file: 'cli/main', words, goal })),
  ].map((row) => ({ ...row, ratios: [] as number[] }))
  for (let round = 0; round < ROUNDS; round++)
    for (const { file, words, ratios } of rows) ratios.push(measure(file, words) / measure())
  for (const { name, goal, ratios } of rows) {
    const ratio = median(ratios)
    console.log(
      `${name.padEnd(14)} ${ratio.toFixed(2)}× of an empty process, goal ${goal}: ${ratio <= goal ? 'reached' : 'not reached'}`,
    )
  }
}
