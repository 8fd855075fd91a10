import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { BenchResult } from './benchResult.js'
import { measureProcess } from './measureProcess.js'

/** Entries, each with its goal. */
const ENTRIES: readonly (readonly [string, number])[] = [
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
/** Commands that read no document. */
const QUESTIONS: readonly (readonly string[])[] = [
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
const QUESTION_GOAL = 1.6
const DOCUMENT_COMMANDS: readonly (readonly [readonly string[], number])[] = [
  [['check', 'examples/tind-4/sheet.yaml'], 3],
  [['plan', 'examples/tind-4', '--today', '2023-10-06'], 4.5],
  [['card', 'examples/tind-4', '--today', '2023-10-06'], 6],
]
const ROUNDS = 15
const PEER = 'an empty process'

/** Fresh processes: an import of an entry, and the command line as it is installed. */
export default function run(): BenchResult {
  const out = mkdtempSync(join(tmpdir(), 'bench-'))
  try {
    const tasks = [
      ...ENTRIES.map(([entry, goal]) => ({
        what: `import ${entry}`,
        file: entry,
        words: [] as readonly string[],
        goal,
      })),
      ...QUESTIONS.map((words) => ({
        what: `question: ${words[0]}`,
        file: 'cli/main',
        words,
        goal: QUESTION_GOAL,
      })),
      ...DOCUMENT_COMMANDS.map(([words, goal]) => ({
        what: `command: ${words[0]}`,
        file: 'cli/main',
        words: words[0] === 'card' ? [...words, '--out', out] : words,
        goal,
      })),
    ].map((task) => ({ ...task, times: [] as number[], peer: { name: PEER, times: [] as number[] } }))
    for (let round = 0; round < ROUNDS; round++)
      for (const { file, words, times, peer } of tasks) {
        times.push(measureProcess(file, words).micros)
        peer.times.push(measureProcess().micros)
      }
    return { rows: tasks }
  } finally {
    rmSync(out, { recursive: true })
  }
}
