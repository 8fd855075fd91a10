import { Bench } from 'tinybench'
import type { TorqueWrench } from '../../src/spec/toolbox.js'
import { findTorqueSlip } from '../../src/torque/findTorqueSlip.js'
import { adaptorSetting, checkWrench, chooseWrenches } from '../../src/v1/torque.js'

const BY_2017 = { iso6789: '2017' } as const

function click(lowest: number, highest: number): TorqueWrench {
  return {
    name: `${lowest} to ${highest}`,
    type: 'click',
    drive: '1/2 in',
    scales: [
      { unit: 'N.m', lowest, highest, graduation: 1 },
      {
        unit: 'lbf.ft',
        lowest: Math.ceil(lowest * 0.75),
        highest: Math.floor(highest * 0.73),
        graduation: 1,
      },
    ],
    accuracy: { kind: 'ISO 6789' },
  }
}

function band(target: number) {
  const torque = { kind: 'limits', min: String(target - 5), max: String(target + 5), unit: 'N.m' } as const
  return { kind: 'torque', threadCondition: 'dry', torque } as const
}

/** Time of one call in microseconds, and how it grows up to the limits of the choice. */
export default async function run(): Promise<void> {
  const box = (count: number) =>
    Object.fromEntries(
      Array.from({ length: count }, (_, at) => [`w${at}`, click(10 + 8 * at, 60 + 8 * at)] as const),
    )
  const tasks = (count: number) =>
    Array.from({ length: count }, (_, at) => ({ on: `/${at}`, tightening: band(15 + ((at * 7) % 190)) }))
  const wrench = click(10, 100)
  const bench = new Bench({ time: 300 })
  bench
    .add('checkWrench, two scales', () => {
      checkWrench(wrench, band(44), BY_2017)
    })
    .add('adaptorSetting at 45°', () => {
      adaptorSetting({
        torque: { value: 100, unit: 'lbf.in' },
        leverLength: { value: 12, unit: 'in' },
        extension: { value: 6, unit: 'in' },
        angle: { value: 45, unit: 'deg' },
      })
    })
    .add('findTorqueSlip', () => {
      findTorqueSlip({ kind: 'nominal', value: '2.9', unit: 'N.m' }, 'M18x1.5', 'aluminium')
    })
  for (const [wrenches, jobs] of [
    [2, 6],
    [5, 20],
    [10, 100],
    [20, 500],
  ] as const)
    bench.add(`chooseWrenches, ${wrenches} wrenches, ${jobs} tasks`, () => {
      chooseWrenches(box(wrenches), tasks(jobs), BY_2017)
    })
  await bench.run()
  console.table(
    bench.tasks.map(({ name, result }) => ({
      what: name,
      'µs a call': 'latency' in result ? Number((result.latency.p50 * 1000).toFixed(1)) : Number.NaN,
    })),
  )
}
