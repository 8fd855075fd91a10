import { buildProcedure, repairProcedure, validateProcedure } from '../../src/v1/procedure.js'
import { makeCase, makeSheet, VARIETY } from '../procedure/sheets.js'
import type { BenchResult, BenchRow, SizeRow } from './benchResult.js'
import { measureInTurns } from './measureInTurns.js'

function visit(times: number) {
  const cases = Array.from({ length: times }, (_, copy) =>
    Object.entries(VARIETY).map(([id, options]) => [`${id}-${copy}`, makeCase(id, options)] as const),
  )
  const sheet = makeSheet(Object.fromEntries(cases.flat()))
  const built = buildProcedure({ sheet, identity: { variant: 'plain' }, services: ['change'] })
  if (!built.ok) throw new Error('not built')
  return { sheet, procedure: built.value }
}

/** A repair has no peer: its goals are times. */
export default async function run(): Promise<BenchResult> {
  const growth: SizeRow[] = []
  for (const times of [1, 2, 4, 8]) {
    const { sheet, procedure } = visit(times)
    const count = procedure.steps.length
    const { micros } = await measureInTurns(
      { micros: () => validateProcedure(procedure, sheet) },
      { rounds: 5 },
    )
    growth.push({ what: 'validateProcedure', item: 'step', sizes: [[count, Math.min(...micros) / count]] })
  }
  const { sheet, procedure } = visit(1)
  const { steps } = procedure
  const brokenLists = [
    ['every fifth left out', steps.filter((_step, place) => place % 5 !== 0)],
    ['every second left out', steps.filter((_step, place) => place % 2 !== 0)],
    ['swapped in pairs', steps.map((step, place) => steps[place % 2 === 0 ? place + 1 : place - 1] ?? step)],
  ] as const
  const rows: BenchRow[] = []
  for (const [how, list] of brokenLists) {
    const broken = { ...procedure, steps: list }
    const found = validateProcedure(broken, sheet).length
    const times = await measureInTurns(
      { validate: () => validateProcedure(broken, sheet), repair: () => repairProcedure(broken, sheet) },
      { rounds: 9 },
    )
    const what = `${steps.length} steps ${how}, ${found} findings`
    rows.push(
      { what: `validateProcedure: ${what}`, times: times.validate, goalMicros: 200_000 },
      { what: `repairProcedure: ${what}`, times: times.repair, goalMicros: 2_000_000 },
    )
  }
  return { rows, growth }
}
