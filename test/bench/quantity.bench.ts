import configureMeasurements from 'convert-units'
import torque from 'convert-units/definitions/torque'
import volume from 'convert-units/definitions/volume'
import convertUnits2 from 'convert-units2'
import { Decimal } from 'decimal.js'
import Qty from 'js-quantities'
import { unit as mathUnit } from 'mathjs'
import { Bench } from 'tinybench'
import unitmath from 'unitmath'
import { convert, convertColumn, parseQuantity } from '../../src/v1/quantity.js'

const FACTOR = 0.7375621492772654
const COUNT = 1024
const values = Array.from({ length: COUNT }, (_, at) => ((at * 37) % 997) / 10 + 0.1)
const texts = values.map((value) => `${value.toFixed(1)} ft-lb`)
const bareGallons = values.map((value) => `${value.toFixed(1)} gal`)

/** Keeps the results, so that the engine does not optimize the work away. */
let sink = 0

type Task = readonly [name: string, once: (at: number) => number]

/** Nanoseconds of one call, measured in batches, so that the clock does not affect the result. */
async function printTimes(title: string, tasks: readonly Task[], most: readonly string[]): Promise<void> {
  const bench = new Bench({ time: 400, warmupTime: 150 })
  for (const [name, task] of tasks) {
    bench.add(name, () => {
      for (let at = 0; at < COUNT; at++) sink += task(at)
    })
  }
  await bench.run()
  const times = bench.tasks.map(({ name, result }) => {
    if (!('latency' in result)) throw new Error(`${name} did not run`)
    return { name, ns: (result.latency.p50 * 1e6) / COUNT }
  })
  print(title, times, most)
}

function print(title: string, times: readonly { name: string; ns: number }[], most: readonly string[]): void {
  const base = times[0]?.ns ?? 1
  console.log(`\n${title}`)
  for (const { name, ns } of times) {
    console.log(
      `  ${name.padEnd(44)} ${ns.toFixed(1).padStart(9)} ns ${(ns / base).toFixed(2).padStart(8)} ×`,
    )
  }
  for (const limit of most) console.log(`  goal: ${limit}`)
}

/** The minimum for a reader of one spelling: digits, a point, a space, a name. */
function handScan(text: string): number {
  let at = 0
  let value = 0
  let scale = 0
  for (; at < text.length; at++) {
    const code = text.charCodeAt(at)
    if (code >= 48 && code <= 57) {
      value = value * 10 + code - 48
      scale *= 10
    } else if (code === 46) scale = 1
    else break
  }
  while (text.charCodeAt(at) === 32) at += 1
  const unit = text.slice(at)
  return unit === 'ft-lb' ? value / (scale || 1) : 0
}

type Table = Parameters<typeof configureMeasurements<string, string, string>>[0]

/** Times of this module and of the general-purpose libraries, in one run. */
export default async function run(): Promise<void> {
  const value = (at: number): number => values[at] ?? 0
  const own = configureMeasurements<string, string, string>({ torque } as unknown as Table)
  const decimal = new Decimal('0.73756214927726536387808206497105469239')
  await printTimes(
    'N·m to lbf·ft, one value (ratios to convert-units with plain numbers)',
    [
      ['convert-units 3, plain numbers, 8th digit off', (at) => own(value(at)).from('Nm').to('lbf-ft')],
      ['convert, correctly rounded', (at) => convert({ value: value(at), unit: 'N.m' }, 'lbf.ft').value],
      [
        'convert, four pairs by turns',
        (at) =>
          convert({ value: value(at), unit: at & 1 ? 'N.m' : 'kgf.m' }, at & 2 ? 'lbf.ft' : 'lbf.in').value,
      ],
      ['a bare multiplication', (at) => value(at) * FACTOR],
      ['decimal.js, one multiplication', (at) => decimal.times(value(at)).toNumber()],
      ['mathjs', (at) => mathUnit(value(at), 'N m').toNumber('lbf ft')],
      ['js-quantities', (at) => Qty(value(at), 'N*m').to('lbf*ft').scalar],
      ['unitmath', (at) => unitmath(value(at), 'N m').to('lbf ft').toString({ precision: 15 }).length],
    ],
    ['convert at most 2 × convert-units 3 with plain numbers'],
  )
  const ownVolume = configureMeasurements<string, string, string>({ volume } as unknown as Table)
  await printTimes(
    'US quarts to mL, one value (ratios to convert-units 3 with plain numbers; version 2 has no torque)',
    [
      ['convert-units 3, plain numbers', (at) => ownVolume(value(at)).from('qt').to('ml')],
      ['convert-units 2, plain numbers', (at) => convertUnits2(value(at)).from('qt').to('ml')],
      ['convert, correctly rounded', (at) => convert({ value: value(at), unit: 'qt_us' }, 'mL').value],
    ],
    ['convert at most 2 × convert-units 3 with plain numbers'],
  )
  for (const length of [1_000, 100_000, 1_000_000]) columns(length)
  await printTimes(
    'reading `8.9 ft-lb` (ratios to a hand-written scan of this one spelling)',
    [
      ['a hand-written scan', (at) => handScan(texts[at] ?? '')],
      ['parseQuantity', (at) => (parseQuantity(texts[at] ?? '').ok ? 1 : 0)],
      ['parseQuantity, refused (`8.9 gal`)', (at) => (parseQuantity(bareGallons[at] ?? '').ok ? 1 : 0)],
      ['parseQuantity, `34–44 N·m`', () => (parseQuantity('34–44 N·m').ok ? 1 : 0)],
      ['js-quantities (`8.9 ft*lbf`)', (at) => Qty(`${value(at).toFixed(1)} ft*lbf`).scalar],
      ['mathjs (`8.9 ft lbf`)', (at) => mathUnit(`${value(at).toFixed(1)} ft lbf`).toNumber('ft lbf')],
    ],
    ['reading at most 15 ×, a refusal at most 2 × an acceptance'],
  )
  console.log(`  (checksum ${sink.toExponential(3)})`)
}

function columns(length: number): void {
  const column = Float64Array.from({ length }, (_, at) => ((at * 37) % 99_991) / 10 + 0.1)
  const multiplied = (factor: number): Float64Array => {
    const result = new Float64Array(length)
    for (let at = 0; at < length; at++) result[at] = (column[at] as number) * factor
    return result
  }
  const conversions: readonly [string, () => Float64Array][] = [
    ['a bare multiply loop', () => multiplied(FACTOR)],
    ['convertColumn, N·m to lbf·ft', () => convertColumn(column, 'N.m', 'lbf.ft')],
    ['convertColumn, in to mm (ties)', () => convertColumn(column, 'in', 'mm')],
    ['convertColumn, °C to °F (offset and ties)', () => convertColumn(column, 'degC', 'degF')],
  ]
  const rounds = Math.max(3, Math.ceil(1e7 / length))
  const times = conversions.map(([name, task]) => {
    let best = Number.POSITIVE_INFINITY
    for (let set = 0; set < 6; set++) {
      const before = performance.now()
      for (let round = 0; round < rounds; round++) sink += task()[round % length] ?? 0
      best = Math.min(best, ((performance.now() - before) * 1e6) / rounds / length)
    }
    return { name, ns: best }
  })
  print(`a column of ${length} values, each value (ratios to the bare loop)`, times, ['a column within 4 ×'])
}
