import { once } from 'node:events'
import { createReadStream, createWriteStream, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { finished } from 'node:stream/promises'
import { listBriefDue, writeBriefLines } from '../../src/cli/briefDue.js'
import { judgeLogLines } from '../../src/cli/judgeLogLines.js'
import { en } from '../../src/v1/message/en.js'
import type { BenchResult, BenchRow, SizeRow } from './benchResult.js'
import { FLEET_SHEETS, makeFleetLogs } from './fleetLogs.js'
import { cpuMicros, measureInTurns } from './measureInTurns.js'
import { measureProcess } from './measureProcess.js'

const TODAY = '2023-10-06'
const DUE = {
  soon: { hours: 10, distance: { value: 100, unit: 'km' }, days: 14 },
  staleAfter: { days: 30 },
} as const
/** The size that is compared; at the others only the growth is measured. */
const COMPARED = 10_000
const SIZES = [1000, COMPARED, 100_000]
const HEAVY_SIZES = [1_000_000]
const GOAL = 3
const EXAMPLES = ['tind-4', 'acre-26', 'bud-3', 'kvist-2', 'reach-55']

/** Reads lines, parses each and writes a line: what any judge of logs must do. */
async function bare(from: string, to: string): Promise<void> {
  const output = createWriteStream(to)
  const lines = createInterface({ input: createReadStream(from), crlfDelay: Number.POSITIVE_INFINITY })
  for await (const line of lines) {
    const { id, name, use } = JSON.parse(line) as Record<string, unknown>
    if (!output.write(`${JSON.stringify({ machine: id, name, use })}\n`)) await once(output, 'drain')
  }
  output.end()
  await finished(output)
}

async function judge(from: string, to: string, brief: boolean): Promise<void> {
  const output = createWriteStream(to)
  await judgeLogLines({
    input: createReadStream(from),
    output,
    sheets: FLEET_SHEETS,
    today: TODAY,
    catalogue: en,
    chooseOptions: ({ use = 'normal' }) => ({ ...DUE, severity: use }),
    ...(brief && {
      writeAnswer: ({ machine = '', due = [], faults }) =>
        writeBriefLines(listBriefDue(machine, due, faults?.length)),
    }),
  })
  output.end()
  await finished(output)
}

async function writeLogs(path: string, count: number): Promise<void> {
  const file = createWriteStream(path)
  for (const line of makeFleetLogs(count)) if (!file.write(line)) await once(file, 'drain')
  file.end()
  await finished(file)
}

/** Logs on lines, judged in this process; and the memory of the command on the same file. */
export default async function run({ heavy }: { readonly heavy: boolean }): Promise<BenchResult> {
  const folder = mkdtempSync(join(tmpdir(), 'due-logs-'))
  const rows: BenchRow[] = []
  const growth: SizeRow[] = []
  const memory: SizeRow[] = []
  try {
    const from = join(folder, 'fleet.jsonl')
    const to = join(folder, 'due.jsonl')
    for (const count of heavy ? HEAVY_SIZES : SIZES) {
      await writeLogs(from, count)
      const works = {
        bare: () => bare(from, to),
        brief: () => judge(from, to, true),
        full: () => judge(from, to, false),
      }
      if (count === COMPARED) {
        const times = await measureInTurns(works, { rounds: 9, roundMs: 1 })
        const peer = { name: 'parse and write', times: times.bare }
        const what = `${count.toLocaleString('en')} logs`
        rows.push(
          { what: `due --brief: ${what}`, times: times.brief, peer, goal: GOAL },
          { what: `due, all lines and reasons: ${what}`, times: times.full, peer },
        )
      }
      for (const [what, work] of [
        ['due --brief', works.brief],
        ...(heavy ? [] : [['due, all lines and reasons', works.full] as const]),
      ] as const) {
        const before = cpuMicros()
        await work()
        growth.push({ what, item: 'log', sizes: [[count, (cpuMicros() - before) / count]] })
      }
      const sheets = EXAMPLES.map((name) => `examples/${name}/sheet.yaml`)
      const command = ['due', from, ...sheets, '--today', TODAY, '--brief']
      memory.push({
        what: 'due --brief',
        item: 'logs',
        sizes: [[count, measureProcess('cli/main', command).mebibytes]],
      })
    }
    return { rows, growth, memory }
  } finally {
    rmSync(folder, { recursive: true })
  }
}
