import type { TorqueWrench } from '../../src/spec/toolbox.js'
import { findTorqueSlip } from '../../src/torque/findTorqueSlip.js'
import { adaptorSetting, checkWrench, chooseWrenches } from '../../src/v1/torque.js'
import type { BenchResult } from './benchResult.js'
import { measureInTurns, type Work } from './measureInTurns.js'

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

/** There is nothing to compare with; the choice is measured up to its limits. */
export default async function run(): Promise<BenchResult> {
  const box = (count: number) =>
    Object.fromEntries(
      Array.from({ length: count }, (_, at) => [`w${at}`, click(10 + 8 * at, 60 + 8 * at)] as const),
    )
  const tasks = (count: number) =>
    Array.from({ length: count }, (_, at) => ({ on: `/${at}`, tightening: band(15 + ((at * 7) % 190)) }))
  const wrench = click(10, 100)
  const works: Record<string, Work> = {
    'checkWrench, two scales': () => checkWrench(wrench, band(44), BY_2017),
    'adaptorSetting at 45°': () =>
      adaptorSetting({
        torque: { value: 100, unit: 'lbf.in' },
        leverLength: { value: 12, unit: 'in' },
        extension: { value: 6, unit: 'in' },
        angle: { value: 45, unit: 'deg' },
      }),
    findTorqueSlip: () =>
      findTorqueSlip({ kind: 'nominal', value: '2.9', unit: 'N.m' }, 'M18x1.5', 'aluminium'),
  }
  for (const [wrenches, jobs] of [
    [2, 6],
    [5, 20],
    [10, 100],
    [20, 500],
  ] as const) {
    const wrenchBox = box(wrenches)
    const jobTasks = tasks(jobs)
    works[`chooseWrenches, ${wrenches} wrenches, ${jobs} tasks`] = () =>
      chooseWrenches(wrenchBox, jobTasks, BY_2017)
  }
  const times = await measureInTurns(works, { rounds: 9 })
  return { rows: Object.entries(times).map(([what, all]) => ({ what, times: all })) }
}
