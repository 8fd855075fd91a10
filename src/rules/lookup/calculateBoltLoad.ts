import { parseThread } from '../../thread/index.js'
import { clampLoad } from '../../torque/index.js'
import { findFastening } from './findFastening.js'
import type { SheetIndex } from './indexSheet.js'

/**
 * The load on the dry bolts (K = 0.20) of a cover or shield, from the nominal torque or the maximum of limits
 * (the minimum if there is no maximum). Undefined if class, thread or figure is unknown.
 */
export function calculateBoltLoad({ tightening, on }: SheetIndex['tightenings'][number]) {
  const { fastening } = findFastening(on)
  if (tightening.kind !== 'torque' || 'uses' in fastening) return undefined
  const { thread: designation, propertyClass } = fastening
  const { torque } = tightening
  const figure = torque.kind === 'limits' ? (torque.max ?? torque.min) : torque.value
  if (designation === undefined || propertyClass === undefined || figure === undefined) return undefined
  const thread = parseThread(designation)
  if (!thread.ok || thread.value.kind === 'pipe' || Number(figure) === 0) return undefined
  const load = clampLoad({
    torque: { value: Number(figure), unit: torque.unit },
    thread: thread.value,
    propertyClass,
    nutFactor: 0.2,
    scatterPercent: 0,
  })
  if (load.verdict === 'cannot tell') return undefined
  const { belowProof, shareOfProof } = load
  const params = {
    part: on.name,
    thread: designation,
    propertyClass,
    load: { ...load.load },
    proof: { ...load.proof },
    torque: { value: figure, unit: torque.unit },
  }
  return { belowProof, shareOfProof, params }
}
