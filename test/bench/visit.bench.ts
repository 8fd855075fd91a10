import { readFileSync } from 'node:fs'
import { parse } from 'yaml'
import { checkDocuments } from '../../src/v1/rules.js'
import { planVisit } from '../../src/v1/service.js'
import { parseMachineLog, parseSpecSheet, parseStock, parseToolbox } from '../../src/v1/spec.js'
import type { BenchResult } from './benchResult.js'
import { measureInTurns } from './measureInTurns.js'

/** The README's visit, from the texts of its four documents to its plan. */
export default async function run(): Promise<BenchResult> {
  const texts = ['sheet', 'log', 'toolbox', 'stock'].map((name) =>
    readFileSync(`examples/tind-4/${name}.yaml`, 'utf8'),
  )
  const today = '2023-10-06'
  const plan = (): void => {
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
  }
  const times = await measureInTurns(
    { plan, yaml: () => texts.map((text) => parse(text)) },
    { rounds: 25, warmUpMs: 1000 },
  )
  return {
    rows: [
      {
        what: 'read, check and plan the visit of tind-4',
        times: times.plan,
        peer: { name: 'its YAML parsed alone', times: times.yaml },
      },
    ],
  }
}
