import { Bench } from 'tinybench'
import { buildProcedure, repairProcedure, validateProcedure } from '../../src/v1/procedure.js'
import { makeCase, makeSheet, VARIETY } from '../procedure/sheets.js'

function visit(times: number) {
  const cases = Array.from({ length: times }, (_, copy) =>
    Object.entries(VARIETY).map(([id, options]) => [`${id}-${copy}`, makeCase(id, options)] as const),
  )
  const sheet = makeSheet(Object.fromEntries(cases.flat()))
  const built = buildProcedure({ sheet, identity: { variant: 'plain' }, services: ['change'] })
  if (!built.ok) throw new Error('not built')
  return { sheet, procedure: built.value }
}

/** Microseconds per step: the same for a short and a long list, since the time grows linearly with the steps. */
export default async function run(): Promise<void> {
  const bench = new Bench({ time: 300, warmupTime: 100 })
  const sizes = new Map<string, number>()
  for (const times of [1, 2, 4, 8]) {
    const { sheet, procedure } = visit(times)
    const name = `validateProcedure, ${procedure.steps.length} steps`
    sizes.set(name, procedure.steps.length)
    bench.add(name, () => validateProcedure(procedure, sheet))
  }
  const { sheet, procedure } = visit(1)
  // Goals for 292 steps: 114 findings in 200 ms, and a repair of 48 in 2 s.
  const { steps } = procedure
  const brokenLists = [
    ['every fifth left out', steps.filter((_step, place) => place % 5 !== 0)],
    ['every second left out', steps.filter((_step, place) => place % 2 !== 0)],
    ['swapped in pairs', steps.map((step, place) => steps[place % 2 === 0 ? place + 1 : place - 1] ?? step)],
  ] as const
  for (const [how, list] of brokenLists) {
    const brokenProcedure = { ...procedure, steps: list }
    const found = validateProcedure(brokenProcedure, sheet).length
    for (const work of [validateProcedure, repairProcedure]) {
      const name = `${work.name}, ${steps.length} steps ${how}, ${found} findings`
      sizes.set(name, list.length)
      bench.add(name, () => work(brokenProcedure, sheet))
    }
  }
  await bench.run()
  for (const { name, result } of bench.tasks)
    if (result?.state === 'completed') {
      const micros = result.latency.mean * 1000
      console.log(
        `${name}: ${(micros / (sizes.get(name) ?? 1)).toFixed(1)} µs a step, ${micros.toFixed(0)} µs`,
      )
    }
}
