import { parseQuantity } from '../../../src/v1/quantity.js'
import type {
  Drive,
  DriveKind,
  MakerFluid,
  Opening,
  OpeningRole,
  Seal,
  Service,
  SourceRef,
  StatedValue,
  ThreadCondition,
  Tightening,
  WheelMark,
} from '../../../src/v1/spec.js'

// A short notation for whole machines, written from a manual page: figures as printed, the rest with the usual values.
// Every maker, model and figure of these documents is invented: not for use on a real machine.

const source: SourceRef = { ref: 'manual', confidence: 'read' }

/** A value as printed, such as `value('45 ± 5 N·m', '33 ± 4 lbf·ft')`; the first print is the figure. */
export function value<Leaf = StatedValue>(print: string, ...others: readonly string[]): Leaf {
  const [first, ...printed] = [print, ...others].map((text) => {
    const read = parseQuantity(text, { decimalMark: '.', assume: ['lb'] })
    if (!read.ok) throw new Error(`${text}: ${JSON.stringify(read.findings)}`)
    return read.value
  })
  return { ...first, ...(printed.length > 0 && { printed }), source } as Leaf
}

export const torque = (threadCondition: ThreadCondition, ...prints: [string, ...string[]]): Tightening => ({
  kind: 'torque',
  torque: value(...prints),
  threadCondition,
})

export const turns = (min: string, max: string): Tightening => ({
  kind: 'turns',
  min,
  max,
  threadCondition: 'sealant',
  source,
})

export const NO_TORQUE: Tightening = { kind: 'not stated', threadCondition: 'not stated', source }

export const drive = (kind: DriveKind, size?: string): Drive => ({ kind, ...(size && { size }) })

export const at = (text: string) => ({ kind: 'place', text, source }) as const

export const washer = (partNumber: string, material: 'copper' | 'aluminium', print: string): Seal => {
  const [inside = '', outside = '', thickness = ''] = print.split(' x ')
  const size = { inside, outside, thickness, unit: 'mm' } as const
  return { kind: 'crush washer', form: 'flat', material, size, replace: 'every opening', partNumber, source }
}

/** A plug: `uses` as in `fill, level` or `drain mark down`. */
export function plug(
  name: string,
  uses: string,
  thread: string,
  more: Omit<Opening, 'name' | 'uses'>,
): Opening {
  const roles = uses.split(', ').map((use) => {
    const [role, ...mark] = use.split(' ')
    const wheelMark = mark.join(' ') as WheelMark
    return { role: role as OpeningRole, ...(mark.length > 0 && { wheelMark }) }
  })
  return { name, uses: roles, ...(thread !== '' && { thread }), ...more }
}

export const gearOil = (grade: string, category: string, more: object = {}) =>
  ({ kind: 'grade', grade, system: 'SAE J306', category, limitedSlip: 'not stated', ...more }) as const

export const makerFluid = (name: string): MakerFluid => ({
  kind: 'maker fluid',
  name,
  limitedSlip: 'not stated',
})

/** Kinematic viscosity at 40 °C and 100 °C, as on a data sheet. */
export const viscosity = (kv40: number, kv100: number) => ({
  kv40: { value: kv40, unit: 'mm2/s' },
  kv100: { value: kv100, unit: 'mm2/s' },
})

/** Oil change of all these gearcases after this number of hours. */
export const change = (
  name: string,
  gearcases: readonly string[],
  hours: string,
  more: Partial<Service> = {},
): Service => ({
  name,
  task: 'change',
  gearcases,
  intervals: { repeat: { kind: 'interval', hours, source }, countFrom: 'completion' },
  ...more,
})
