import { readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { checkDocuments } from '../../src/v1/rules.js'
import { parseDocumentText, parseSpecSheet } from '../../src/v1/spec.js'

const ROUNDS = 25

/** Microseconds of CPU time of one call: the lowest of many rounds, since other processes only add to it. */
function measure(work: () => void, calls: number): number {
  let lowest = Number.POSITIVE_INFINITY
  for (let round = 0; round < ROUNDS; round++) {
    const before = process.cpuUsage()
    for (let call = 0; call < calls; call++) work()
    const { user, system } = process.cpuUsage(before)
    lowest = Math.min(lowest, (user + system) / calls)
  }
  return lowest
}

/** A sheet in full form: what reading and checking cost, as a multiple of `JSON.parse` alone. */
export default function run(): void {
  for (const example of ['tind-4', 'acre-26', 'bud-3']) {
    const read = parseSpecSheet(parse(readFileSync(`examples/${example}/sheet.yaml`, 'utf8')))
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
    const parseTime = measure(() => JSON.parse(text), 400)
    const parsing = measure(() => parseDocumentText('spec-sheet', text), 20)
    const rules = measure(() => checkDocuments(set), 20)
    for (const [name, micros, targetText] of [
      ['text to document', parsing, 8],
      ['text to all rules', parsing + rules, 20],
    ] as const) {
      const ratio = micros / parseTime
      console.log(
        `${example}, ${name}: ${micros.toFixed(0)} µs, ${ratio.toFixed(1)}× of JSON.parse, goal ${targetText}: ${ratio <= targetText ? 'reached' : 'not reached'}`,
      )
    }
  }
}
