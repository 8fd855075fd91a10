import { calculateViscosityIndex } from '../../src/oil/calculateViscosityIndex.js'
import { chooseContainers, chooseVessel, type PourInput, pourTime } from '../../src/v1/fill.js'
import { oilMeets, viscosityAt } from '../../src/v1/oil.js'
import type { BenchResult } from './benchResult.js'
import { measureInTurns, type Work } from './measureInTurns.js'

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
 * There is nothing to compare with. A visit's hundred calls must be too fast to notice, and no stock or funnel may make
 * one call slow.
 */
export default async function run(): Promise<BenchResult> {
  const works: Record<string, Work> = {
    'pourTime, cylinder': () => pourTime(question('cylinder', 1500)),
    'pourTime, cone': () => pourTime(question('cone', 1200)),
    'pourTime, cone, 40 fillings': () => pourTime(question('cone', 50_000)),
    viscosityAt: () => viscosityAt({ kv40: mm2(135), kv100: mm2(14.5) }, { value: 5, unit: 'degC' }),
    viscosityIndex: () => calculateViscosityIndex(mm2(135), mm2(14.5)),
    oilMeets: () => oilMeets(permitted, oil, { yellowMetal: 'yes' }),
    chooseVessel: () => chooseVessel(jug, mL(1234), mL(30)),
  }
  for (const [kinds, stock] of shelves)
    works[`chooseContainers, ${kinds} kinds`] = () => chooseContainers(stock, mL(9876))
  const times = await measureInTurns(works, { rounds: 9 })
  return { rows: Object.entries(times).map(([what, all]) => ({ what, times: all })) }
}
