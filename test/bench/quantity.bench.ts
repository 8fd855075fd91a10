import configureMeasurements from 'convert-units'
import torque from 'convert-units/definitions/torque'
import volume from 'convert-units/definitions/volume'
import convertUnits2 from 'convert-units2'
import { Decimal } from 'decimal.js'
import Qty from 'js-quantities'
import { unit as mathUnit } from 'mathjs'
import unitmath from 'unitmath'
import { convert, convertColumn, parseQuantity } from '../../src/v1/quantity.js'
import type { BenchResult, BenchRow, SizeRow } from './benchResult.js'
import { measureInTurns, type Work } from './measureInTurns.js'

const FACTOR = 0.7375621492772654
const COUNT = 1024
const values = Array.from({ length: COUNT }, (_, at) => ((at * 37) % 997) / 10 + 0.1)
const texts = values.map((value) => `${value.toFixed(1)} ft-lb`)
const bareGallons = values.map((value) => `${value.toFixed(1)} gal`)

/** Keeps the results, so that the engine does not optimize the work away. */
let sink = 0

/** Microseconds of one call, measured in batches, so that the clock does not affect the result. */
async function measureBatches<Name extends string>(
  tasks: Readonly<Record<Name, (at: number) => number>>,
): Promise<Readonly<Record<Name, readonly number[]>>> {
  const names = Object.keys(tasks) as Name[]
  const works: Record<string, Work> = {}
  for (const name of names)
    works[name] = () => {
      for (let at = 0; at < COUNT; at++) sink += tasks[name](at)
    }
  const times = await measureInTurns(works)
  const found: Partial<Record<Name, readonly number[]>> = {}
  for (const name of names) found[name] = times[name]?.map((micros) => micros / COUNT) ?? []
  return found as Record<Name, readonly number[]>
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

/** One value of a torque and of a volume. */
async function compareConvert(): Promise<readonly BenchRow[]> {
  const value = (at: number): number => values[at] ?? 0
  const torques = configureMeasurements<string, string, string>({ torque } as unknown as Table)
  const volumes = configureMeasurements<string, string, string>({ volume } as unknown as Table)
  const decimal = new Decimal('0.73756214927726536387808206497105469239')
  const times = await measureBatches({
    'convert-units 3': (at) => torques(value(at)).from('Nm').to('lbf-ft'),
    convert: (at) => convert({ value: value(at), unit: 'N.m' }, 'lbf.ft').value,
    'four pairs': (at) =>
      convert({ value: value(at), unit: at & 1 ? 'N.m' : 'kgf.m' }, at & 2 ? 'lbf.ft' : 'lbf.in').value,
    'a bare multiplication': (at) => value(at) * FACTOR,
    'decimal.js, one multiplication': (at) => decimal.times(value(at)).toNumber(),
    mathjs: (at) => mathUnit(value(at), 'N m').toNumber('lbf ft'),
    'js-quantities': (at) => Qty(value(at), 'N*m').to('lbf*ft').scalar,
    unitmath: (at) => unitmath(value(at), 'N m').to('lbf ft').toString({ precision: 15 }).length,
    'volume by convert-units 3': (at) => volumes(value(at)).from('qt').to('ml'),
    'volume by convert-units 2': (at) => convertUnits2(value(at)).from('qt').to('ml'),
    'volume by convert': (at) => convert({ value: value(at), unit: 'qt_us' }, 'mL').value,
  })
  const peerOf = (name: keyof typeof times) => ({ name, times: times[name] })
  const torqueName = 'convert, N·m to lbf·ft'
  const volumeName = 'convert, US quarts to mL'
  return [
    // Plain numbers; its eighth digit is off, ours are rounded correctly.
    { what: torqueName, times: times.convert, peer: peerOf('convert-units 3'), goal: 2 },
    { what: 'convert, four pairs by turns', times: times['four pairs'], peer: peerOf('convert-units 3') },
    ...(
      [
        'a bare multiplication',
        'decimal.js, one multiplication',
        'mathjs',
        'js-quantities',
        'unitmath',
      ] as const
    ).map((name) => ({ what: torqueName, times: times.convert, peer: peerOf(name) })),
    {
      what: volumeName,
      times: times['volume by convert'],
      peer: { name: 'convert-units 3', times: times['volume by convert-units 3'] },
      goal: 2,
    },
    {
      what: volumeName,
      times: times['volume by convert'],
      peer: { name: 'convert-units 2', times: times['volume by convert-units 2'] },
    },
  ]
}

async function compareColumns(length: number): Promise<Readonly<Record<string, readonly number[]>>> {
  const column = Float64Array.from({ length }, (_, at) => ((at * 37) % 99_991) / 10 + 0.1)
  const multiplied = (factor: number): Float64Array => {
    const result = new Float64Array(length)
    for (let at = 0; at < length; at++) result[at] = (column[at] as number) * factor
    return result
  }
  let round = 0
  const keep = (task: () => Float64Array) => () => {
    sink += task()[round++ % length] ?? 0
  }
  return measureInTurns({
    bare: keep(() => multiplied(FACTOR)),
    'N·m to lbf·ft': keep(() => convertColumn(column, 'N.m', 'lbf.ft')),
    'in to mm (ties)': keep(() => convertColumn(column, 'in', 'mm')),
    '°C to °F (offset and ties)': keep(() => convertColumn(column, 'degC', 'degF')),
  })
}

async function compareReading(): Promise<readonly BenchRow[]> {
  const times = await measureBatches({
    'a scan of this one spelling': (at) => handScan(texts[at] ?? ''),
    read: (at) => (parseQuantity(texts[at] ?? '').ok ? 1 : 0),
    refused: (at) => (parseQuantity(bareGallons[at] ?? '').ok ? 1 : 0),
    range: () => (parseQuantity('34–44 N·m').ok ? 1 : 0),
    'js-quantities, `ft*lbf`': (at) => Qty(`${(values[at] ?? 0).toFixed(1)} ft*lbf`).scalar,
    'mathjs, `ft lbf`': (at) => mathUnit(`${(values[at] ?? 0).toFixed(1)} ft lbf`).toNumber('ft lbf'),
  })
  const peerOf = (name: keyof typeof times) => ({ name, times: times[name] })
  return [
    {
      what: 'parseQuantity, `8.9 ft-lb`',
      times: times.read,
      peer: peerOf('a scan of this one spelling'),
      goal: 15,
    },
    {
      what: 'parseQuantity, `8.9 gal` refused',
      times: times.refused,
      peer: { name: '`8.9 ft-lb` read', times: times.read },
      goal: 2,
    },
    { what: 'parseQuantity, `34–44 N·m`', times: times.range, peer: peerOf('a scan of this one spelling') },
    ...(['js-quantities, `ft*lbf`', 'mathjs, `ft lbf`'] as const).map((name) => ({
      what: 'parseQuantity, `8.9 ft-lb`',
      times: times.read,
      peer: peerOf(name),
    })),
  ]
}

/** This module and general-purpose libraries. */
export default async function run(): Promise<BenchResult> {
  const rows: BenchRow[] = [...(await compareConvert())]
  const growth: SizeRow[] = []
  for (const length of [1000, 10_000, 100_000, 1_000_000]) {
    const { bare = [], ...times } = await compareColumns(length)
    for (const [what, all] of Object.entries(times)) {
      growth.push({
        what: `convertColumn, ${what}`,
        item: 'value',
        sizes: [[length, Math.min(...all) / length]],
      })
      if (length === 1_000_000)
        rows.push({
          what: `convertColumn, ${what}, ${length.toLocaleString('en')} values`,
          times: all,
          peer: { name: 'a loop that multiplies', times: bare },
          goal: 4,
        })
    }
  }
  rows.push(...(await compareReading()))
  if (!Number.isFinite(sink)) throw new Error('the results are not numbers')
  return { rows, growth }
}
