import type { JsonPointer } from '../../base/index.js'
import type { DriveOnPart, Opening } from '../../spec/index.js'
import { parseThread } from '../../thread/index.js'
import { clampLoad } from '../../torque/index.js'
import type { SheetIndex } from './indexSheet.js'
import type { SheetPart } from './listSheetParts.js'

interface Fastening {
  readonly thread?: string
  readonly propertyClass?: string
  readonly drive?: DriveOnPart
  /** Only for an opening. */
  readonly uses?: Opening['uses']
}

/**
 * The object that describes the fastening of a part, with its pointer: the opening, the bolts of a cover, the
 * fasteners of a shield, the thread of a filter. Empty for a filter behind a plug or cover.
 */
export function findFastening(on: SheetPart): {
  readonly path: JsonPointer
  readonly fastening: Fastening
} {
  if (on.kind === 'opening') return { path: on.path, fastening: on.part }
  if (on.kind === 'cover') return { path: `${on.path}/bolts`, fastening: on.part.bolts }
  if (on.kind === 'filter')
    return { path: `${on.path}/held`, fastening: on.part.held.kind === 'screwed' ? on.part.held : {} }
  return { path: `${on.path}/fasteners`, fastening: on.part.fasteners }
}

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

/**
 * N·m per mm³ of the width across flats. An ordinary plug is tightened to a tenth of the result, a strong
 * bolt to two thirds.
 */
const INTERNAL_HEX_FACTOR = 0.25
const PLUG_HEX_FACTOR = 0.025
const BOLT_HEX_FACTOR = 0.04

/** The largest plausible torque in N·m of a part without a stated thread, from the size of its hexagon. */
export function calculateMaxTorque(on: SheetPart) {
  const { thread, drive } = findFastening(on).fastening
  const size = drive && 'size' in drive ? drive.size : undefined
  const width = readHexWidth(size)
  if (thread !== undefined || drive === undefined || width === undefined) return undefined
  const factor = chooseHexFactor(drive, on.kind)
  return factor === undefined ? undefined : { limit: factor * width ** 3, size: size ?? '' }
}

function chooseHexFactor(drive: DriveOnPart, kind: SheetPart['kind']): number | undefined {
  if (drive.kind === 'internal hex') return INTERNAL_HEX_FACTOR
  if (drive.kind !== 'external hex') return undefined
  return kind === 'opening' || kind === 'filter' ? PLUG_HEX_FACTOR : BOLT_HEX_FACTOR
}

/** The width across flats in mm of a drive's size such as `22 mm`, `3/8 in` or `1 1/8 in`. */
function readHexWidth(size: string | undefined): number | undefined {
  const [, millimetres] = /^([0-9]+(?:\.[0-9]+)?) ?mm$/.exec(size ?? '') ?? []
  if (millimetres !== undefined) return Number(millimetres)
  const [, whole = '0', numerator, denominator] =
    /^(?:([0-9]+) )?([0-9]+)\/([0-9]+) ?in$/.exec(size ?? '') ?? []
  if (numerator === undefined || denominator === undefined) return undefined
  return 25.4 * (Number(whole) + Number(numerator) / Number(denominator))
}
