import { quoteValue, refuse } from '../base/index.js'
import type { MetricThread, UnifiedThread } from './thread.js'

/** Throws TypeError if the argument is not a metric or unified thread. */
export function requireStraightThread<Kind extends 'metric' | 'unified'>(
  thread: unknown,
  ...kinds: readonly Kind[]
): asserts thread is Extract<MetricThread | UnifiedThread, { kind: Kind }> {
  const threadFields = (thread ?? {}) as Partial<MetricThread> & { readonly threadsPerInch?: unknown }
  const { kind, majorDiameter } = threadFields
  if (!(kinds as readonly unknown[]).includes(kind))
    throw refuse('thread', thread, `a ${kinds.join(' or ')} thread`)
  requireNumber('majorDiameter.value', majorDiameter?.value)
  if (kind === 'metric') requireNumber('pitch.value', threadFields.pitch?.value)
  else requireNumber('threadsPerInch', threadFields.threadsPerInch)
  const unit = kind === 'metric' ? 'mm' : 'in'
  if (majorDiameter?.unit !== unit)
    throw refuse('thread.majorDiameter.unit', majorDiameter?.unit, `${unit} in a ${kind} thread`)
}

function requireNumber(fieldName: string, value: unknown): void {
  if (typeof value !== 'number')
    throw new TypeError(
      `thread.${fieldName} must be a number, got ${quoteValue(value)}; parseThread reads a thread from a text`,
    )
}
