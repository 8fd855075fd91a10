import { shown } from '../quantity/shown.js'
import type { MetricThread, UnifiedThread } from './thread.js'

/** Throws TypeError where a programmer passes something that is no metric or unified thread. Internal. */
export function requireStraightThread<Kind extends 'metric' | 'unified'>(
  thread: unknown,
  ...kinds: readonly Kind[]
): asserts thread is Extract<MetricThread | UnifiedThread, { kind: Kind }> {
  const { kind, majorDiameter, ...rest } = (thread ?? {}) as Partial<
    MetricThread & { threadsPerInch: number }
  >
  if (!(kinds as readonly unknown[]).includes(kind))
    throw new TypeError(`thread must be a ${kinds.join(' or ')} thread, got ${shown(thread)}`)
  const turns = kind === 'metric' ? rest.pitch?.value : rest.threadsPerInch
  for (const [name, value] of Object.entries({
    'majorDiameter.value': majorDiameter?.value,
    [kind === 'metric' ? 'pitch.value' : 'threadsPerInch']: turns,
  }))
    if (typeof value !== 'number')
      throw new TypeError(
        `thread.${name} must be a number, got ${shown(value)}; parseThread makes a thread of a text`,
      )
  const unit = kind === 'metric' ? 'mm' : 'in'
  if (majorDiameter?.unit !== unit)
    throw new TypeError(
      `thread.majorDiameter.unit must be ${unit} in a ${kind} thread, got ${shown(majorDiameter?.unit)}`,
    )
}
