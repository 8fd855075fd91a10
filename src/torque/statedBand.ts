import { type Exact, minus, over, plus, type TorqueUnit, times } from '../quantity/index.js'
import type { StatedValue } from '../spec/index.js'
import { exactOf } from './exact.js'
import { exactNewtonMetres } from './exactTorque.js'

/** What one stated torque asks for, in N·m, exactly. Internal. */
export type StatedBand =
  | {
      readonly kind: 'band'
      readonly low: Exact
      readonly high: Exact
      /** The nominal, or the middle of two limits. */
      readonly aim: Exact
      readonly from: 'nominal' | 'middle'
      readonly basis: 'manual' | 'caller'
    }
  | { readonly kind: 'bare nominal'; readonly aim: Exact }
  | { readonly kind: 'one limit'; readonly limit: Exact; readonly which: 'least' | 'most' }

/**
 * The first printed figure decides; other printed figures are for show. A bare nominal has no band unless the caller
 * states a tolerance.
 */
export function statedBand(torque: StatedValue<TorqueUnit>, tolerancePercent?: number): StatedBand {
  const exact = (figure: string) => exactNewtonMetres(figure, torque.unit)
  if (torque.kind === 'limits') {
    if (torque.min === undefined || torque.max === undefined) {
      const limit = torque.min ?? torque.max
      if (limit === undefined) throw new TypeError('torque must state at least one of min and max')
      return { kind: 'one limit', limit: exact(limit), which: torque.min === undefined ? 'most' : 'least' }
    }
    const low = exact(torque.min)
    const high = exact(torque.max)
    return {
      kind: 'band',
      low,
      high,
      aim: over(plus(low, high), exactOf(2)),
      from: 'middle',
      basis: 'manual',
    }
  }
  const aim = exact(torque.value)
  if (torque.kind === 'nominal with tolerance')
    return {
      kind: 'band',
      low: minus(aim, exact(torque.minus)),
      high: plus(aim, exact(torque.plus)),
      aim,
      from: 'nominal',
      basis: 'manual',
    }
  if (tolerancePercent === undefined) return { kind: 'bare nominal', aim }
  const part = times(aim, over(exactOf(tolerancePercent), exactOf(100)))
  return { kind: 'band', low: minus(aim, part), high: plus(aim, part), aim, from: 'nominal', basis: 'caller' }
}
