import { readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { checkDocuments } from '../../src/v1/rules.js'
import { planVisit } from '../../src/v1/service.js'
import { parseMachineLog, parseSpecSheet, parseStock, parseToolbox } from '../../src/v1/spec.js'

/** The README's visit, from the texts of its four documents to its plan: the lowest CPU time of many rounds. */
export default function run(): void {
  const texts = ['sheet', 'log', 'toolbox', 'stock'].map((name) =>
    readFileSync(`examples/tind-4/${name}.yaml`, 'utf8'),
  )
  let lowest = Number.POSITIVE_INFINITY
  for (let round = 0; round < 60; round++) {
    const before = process.cpuUsage()
    const [sheet, log, toolbox, stock] = texts.map((text) => parse(text))
    const read = [
      parseSpecSheet(sheet),
      parseMachineLog(log),
      parseToolbox(toolbox),
      parseStock(stock),
    ] as const
    const [readSheet, readLog, readTools, readStock] = read
    if (!readSheet.ok || !readLog.ok || !readTools.ok || !readStock.ok)
      throw new Error('the example has errors')
    const set = {
      sheets: [{ document: readSheet.value }],
      logs: [{ document: readLog.value }],
      toolboxes: [{ document: readTools.value }],
      stocks: [{ document: readStock.value }],
      procedures: [],
      records: [],
    }
    const today = '2023-10-06'
    const findings = checkDocuments(set, { today })
    const facts = {
      sheet: readSheet.value,
      log: readLog.value,
      toolbox: readTools.value,
      stock: readStock.value,
    }
    const planned = planVisit(
      { ...facts, today, ambient: { value: 6, unit: 'degC' } },
      { services: 'due', due: { soon: {}, staleAfter: { days: 30 }, severity: 'normal' }, iso6789: '2017' },
    )
    if (!planned.ok || findings.some(({ severity }) => severity === 'error')) throw new Error('no plan')
    const { user, system } = process.cpuUsage(before)
    lowest = Math.min(lowest, user + system)
  }
  console.log(`read, check and plan the visit of tind-4: ${(lowest / 1000).toFixed(1)} ms of CPU time`)
}
