import { Bench } from 'tinybench'
import { calculateViscosityIndex } from '../../src/oil/calculateViscosityIndex.js'
import { chooseContainers, chooseVessel, type PourInput, pourTime } from '../../src/v1/fill.js'
import { oilMeets, viscosityAt } from '../../src/v1/oil.js'

const mm = (value: number) => ({ value, unit: 'mm' }) as const
const mm2 = (value: number) => ({ value, unit: 'mm2/s' }) as const
const mL = (value: number) => ({ value, unit: 'mL' }) as const

const question = (shape: 'cylinder' | 'cone', volume: number): PourInput => ({
  funnel: { shape, diameter: mm(180), depth: mm(150) },
  hose: { bore: mm(12), length: mm(1500), drop: mm(1200) },
  kinematicViscosity: mm2(460),
  volume: mL(volume),
})
const oil = { name: 'Invented 80W-90', grade: '80W-90', system: 'SAE J306', categories: ['GL-5'] } as const
const permitted = {
  kind: 'grade',
  grade: '80W-90',
  system: 'SAE J306',
  category: 'GL-4',
  limitedSlip: 'either',
} as const
const shelf = (kinds: number) =>
  Object.fromEntries(
    Array.from({ length: kinds }, (_, place) => [
      `k${place}`,
      { name: `Kind ${place}`, oil: { name: 'Invented' }, size: mL(473 + place * 311), count: 12 },
    ]),
  )
const shelves = [2, 4, 8].map((kinds) => [kinds, shelf(kinds)] as const)
const jug = { jug: { name: 'Jug', size: mL(500), graduation: mL(10) } }

/**
 * Microseconds of one call among many. There is nothing to compare with. A visit's hundred calls must be too fast to
 * notice, and no stock or funnel may make one call slow.
 */
export default async function run(): Promise<void> {
  const bench = new Bench({ time: 300, warmupTime: 100 })
  bench.add('pourTime, cylinder', () => pourTime(question('cylinder', 1500)))
  bench.add('pourTime, cone', () => pourTime(question('cone', 1200)))
  bench.add('pourTime, cone, 40 fillings', () => pourTime(question('cone', 50_000)))
  bench.add('viscosityAt', () =>
    viscosityAt({ kv40: mm2(135), kv100: mm2(14.5) }, { value: 5, unit: 'degC' }),
  )
  bench.add('viscosityIndex', () => calculateViscosityIndex(mm2(135), mm2(14.5)))
  bench.add('oilMeets', () => oilMeets(permitted, oil, { yellowMetal: 'yes' }))
  bench.add('chooseVessel', () => chooseVessel(jug, mL(1234), mL(30)))
  for (const [kinds, stock] of shelves) {
    bench.add(`chooseContainers, ${kinds} kinds`, () => chooseContainers(stock, mL(9876)))
  }
  await bench.run()
  console.log('\nOne call, µs (median)')
  for (const { name, result } of bench.tasks) {
    if (!('latency' in result)) throw new Error(`${name} did not run`)
    console.log(`${name.padEnd(32)}${(result.latency.p50 * 1000).toFixed(1).padStart(12)}`)
  }
}
