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

/** Microseconds of one step: the same for a short and a long list, since checking grows with the steps. */
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
  const broken = { ...procedure, steps: procedure.steps.filter((_step, place) => place % 5 !== 0) }
  const found = validateProcedure(broken, sheet).length
  for (const [name, work] of [
    [`validateProcedure, ${found} findings`, validateProcedure],
    [`repairProcedure, ${found} findings`, repairProcedure],
  ] as const) {
    sizes.set(name, broken.steps.length)
    bench.add(name, () => work(broken, sheet))
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
