import { once } from 'node:events'
import { createReadStream, createWriteStream, mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { finished } from 'node:stream/promises'
import { listBriefDue, writeBriefLines } from '../../src/cli/briefDue.js'
import { judgeLogLines } from '../../src/cli/judgeLogLines.js'
import { en } from '../../src/v1/message/en.js'
import { FLEET_SHEETS, makeFleetLogs } from './fleetLogs.js'

const TODAY = '2023-10-06'
const DUE = {
  soon: { hours: 10, distance: { value: 100, unit: 'km' }, days: 14 },
  staleAfter: { days: 30 },
} as const
const LOGS = 20_000
const GOAL = 3

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

/** CPU time in ms. */
async function time(work: () => Promise<void>): Promise<number> {
  const before = process.cpuUsage()
  await work()
  const { user, system } = process.cpuUsage(before)
  return (user + system) / 1000
}

export default async function run(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'due-logs-'))
  try {
    const from = join(folder, 'fleet.jsonl')
    const to = join(folder, 'due.jsonl')
    const file = createWriteStream(from)
    for (const line of makeFleetLogs(LOGS)) if (!file.write(line)) await once(file, 'drain')
    file.end()
    await finished(file)
    const works = [
      ['bare', () => bare(from, to)],
      ['due --brief', () => judge(from, to, true)],
      ['due', () => judge(from, to, false)],
    ] as const
    const best = works.map(() => Number.POSITIVE_INFINITY)
    for (let turn = 0; turn < 9; turn++)
      for (const [at, [, work]] of works.entries()) best[at] = Math.min(best[at] ?? 0, await time(work))
    const [unit = 1] = best
    console.log(`${LOGS} logs, ${(statSync(from).size / LOGS).toFixed(0)} bytes each`)
    for (const [at, [name]] of works.entries())
      console.log(
        `${name.padEnd(14)} ${(((best[at] ?? 0) * 1000) / LOGS).toFixed(0)} µs a log  ${((best[at] ?? 0) / unit).toFixed(2)}×${at === 1 ? ` (goal ${GOAL})` : ''}`,
      )
  } finally {
    rmSync(folder, { recursive: true })
  }
}
