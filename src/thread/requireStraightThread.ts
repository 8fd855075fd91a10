import { quoteValue } from '../base/index.js'
import type { MetricThread, UnifiedThread } from './thread.js'

/** Throws TypeError where a programmer passes something that is no metric or unified thread. */
export function requireStraightThread<Kind extends 'metric' | 'unified'>(
  thread: unknown,
  ...kinds: readonly Kind[]
): asserts thread is Extract<MetricThread | UnifiedThread, { kind: Kind }> {
  const given = (thread ?? {}) as Partial<MetricThread> & { readonly threadsPerInch?: unknown }
  const { kind, majorDiameter } = given
  if (!(kinds as readonly unknown[]).includes(kind))
    throw new TypeError(`thread must be a ${kinds.join(' or ')} thread, got ${quoteValue(thread)}`)
  requireNumber('majorDiameter.value', majorDiameter?.value)
  if (kind === 'metric') requireNumber('pitch.value', given.pitch?.value)
  else requireNumber('threadsPerInch', given.threadsPerInch)
  const unit = kind === 'metric' ? 'mm' : 'in'
  if (majorDiameter?.unit !== unit)
    throw new TypeError(
      `thread.majorDiameter.unit must be ${unit} in a ${kind} thread, got ${quoteValue(majorDiameter?.unit)}`,
    )
}

function requireNumber(place: string, value: unknown): void {
  if (typeof value !== 'number')
    throw new TypeError(
      `thread.${place} must be a number, got ${quoteValue(value)}; parseThread makes a thread of a text`,
    )
}
