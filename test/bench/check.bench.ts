import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parse } from 'yaml'
import { checkDocuments } from '../../src/v1/rules.js'
import { parseDocumentText, parseSpecSheet } from '../../src/v1/spec.js'
import type { BenchResult, BenchRow, SizeRow } from './benchResult.js'
import { measureInTurns } from './measureInTurns.js'
import { measureProcess } from './measureProcess.js'

const EXAMPLES = ['tind-4', 'acre-26', 'bud-3']

const readText = (example: string): string => readFileSync(`examples/${example}/sheet.yaml`, 'utf8')

/** A sheet in full form: what reading and checking cost, against `JSON.parse` alone. */
async function compareParsing(): Promise<readonly BenchRow[]> {
  const rows: BenchRow[] = []
  for (const example of EXAMPLES) {
    const short = parse(readText(example))
    const read = parseSpecSheet(short)
    if (!read.ok) throw new Error(`${example} has errors`)
    const text = JSON.stringify(read.value)
    const set = {
      sheets: [{ document: read.value }],
      logs: [],
      toolboxes: [],
      stocks: [],
      procedures: [],
      records: [],
    }
    // The rules are a lot of code: the engine needs a second to optimise it.
    const times = await measureInTurns(
      {
        bare: () => JSON.parse(text),
        parsed: () => parseDocumentText('spec-sheet', text),
        all: () => [parseDocumentText('spec-sheet', text), checkDocuments(set)],
        full: () => parseSpecSheet(read.value),
        short: () => parseSpecSheet(short),
      },
      { warmUpMs: 1000 },
    )
    const peer = { name: 'JSON.parse', times: times.bare }
    rows.push(
      { what: `${example}: text to document`, times: times.parsed, peer, goal: 8 },
      { what: `${example}: text to all rules`, times: times.all, peer, goal: 20 },
      {
        what: `${example}: short form to document`,
        times: times.short,
        peer: { name: 'the full form', times: times.full },
        goal: 2,
      },
    )
  }
  return rows
}

/** A folder of sheets, a hundred to a subfolder, each with its own id. */
function writeSheets(folder: string, count: number): readonly string[] {
  const paths: string[] = []
  const texts = EXAMPLES.map(readText)
  for (let at = 0; at < count; at++) {
    const place = join(folder, `batch-${Math.floor(at / 100)}`)
    mkdirSync(place, { recursive: true })
    const path = join(place, `sheet-${at}.yaml`)
    const text = texts[at % texts.length] as string
    writeFileSync(
      path,
      text.replace(/^id: .*/m, (id) => `${id}-${at}`),
    )
    paths.push(path)
  }
  return paths
}

/** Reads and parses each file as a program written for it would. */
const HAND = `import { readFileSync } from 'node:fs'
import { parse } from 'yaml'
let count = 0
for (const path of JSON.parse(readFileSync(process.argv.at(-1), 'utf8'))) count += Object.keys(parse(readFileSync(path, 'utf8'))).length
if (count === 0) throw new Error('nothing read')
`

/** Fresh processes over the same files; heavy: 10,000 sheets. */
function compareFolders(sizes: readonly number[]): Pick<BenchResult, 'rows' | 'growth' | 'memory'> {
  const rows: BenchRow[] = []
  const growth: SizeRow[] = []
  const memory: SizeRow[] = []
  const hand = join(process.cwd(), 'dist', 'bench-hand.js')
  for (const size of sizes) {
    const folder = mkdtempSync(join(tmpdir(), 'sheets-'))
    try {
      const list = join(folder, 'paths.txt')
      writeFileSync(list, JSON.stringify(writeSheets(join(folder, 'sheets'), size)))
      writeFileSync(hand, HAND)
      const ways = [
        ['read and parsed by hand', 'bench-hand', [list]],
        ['check', 'cli/main', ['check', join(folder, 'sheets')]],
      ] as const
      const uses = ways.map(([what, file, words]) => ({
        what,
        file,
        words,
        micros: [] as number[],
        mebibytes: 0,
      }))
      for (let round = 0; round < (size > 2000 ? 1 : 3); round++)
        for (const use of uses) {
          const { micros, mebibytes } = measureProcess(use.file, use.words)
          use.micros.push(micros)
          use.mebibytes = Math.max(use.mebibytes, mebibytes)
        }
      const [bare, ...others] = uses
      if (bare === undefined) throw new Error('no peer')
      for (const { what, micros } of others)
        rows.push({
          what: `${what}: ${size.toLocaleString('en')} YAML sheets`,
          times: micros,
          peer: { name: bare.what, times: bare.micros },
          goal: 3,
        })
      for (const { what, micros, mebibytes } of uses) {
        growth.push({ what, item: 'sheet', sizes: [[size, Math.min(...micros) / size]] })
        memory.push({ what, item: 'sheets', sizes: [[size, mebibytes]] })
      }
    } finally {
      rmSync(folder, { recursive: true })
      rmSync(hand, { force: true })
    }
  }
  return { rows, growth, memory }
}

export default async function run({ heavy }: { readonly heavy: boolean }): Promise<BenchResult> {
  if (heavy) return compareFolders([10_000])
  const parsing = await compareParsing()
  const { rows, growth = [], memory = [] } = compareFolders([100, 1000])
  return { rows: [...parsing, ...rows], growth, memory }
}
