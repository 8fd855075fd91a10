import { figureToNumber, type Quantity, type VolumeUnit } from '../quantity/index.js'
import type { Leaf, Resolved, SpecValue } from '../spec/index.js'
import { divideExactly, multiplyExactly } from './exactNumbers.js'

/** What one instance takes, and all that are worked on. */
export interface RefillAmount {
  readonly each: Quantity<VolumeUnit>
  readonly all: Quantity<VolumeUnit>
}

/**
 * Reads how much oil a resolved refill calls for: its nominal, or the upper of two limits so that the shelf is never
 * short. Undefined where it is not stated or cannot be told.
 */
export function readRefill(
  resolved: Resolved<Leaf> | undefined,
  per: 'instance' | 'all instances' | undefined,
  instances: { readonly worked: number; readonly all: number },
): RefillAmount | undefined {
  if (resolved?.kind !== 'stated') return undefined
  const value = resolved.value as Exclude<SpecValue<VolumeUnit>, { kind: 'not stated' }>
  const figure = value.kind === 'limits' ? (value.max ?? value.min) : value.value
  if (figure === undefined) return undefined
  const { unit } = value
  const stated = { value: figureToNumber(figure), unit }
  if (per !== 'all instances')
    return { each: stated, all: { value: multiplyExactly(stated.value, instances.worked), unit } }
  // The figure stands for all that the gearcase has, also where a visit works on some of them.
  const each = { value: divideExactly(stated.value, instances.all), unit }
  const all = { value: divideExactly(multiplyExactly(stated.value, instances.worked), instances.all), unit }
  return { each, all }
}
