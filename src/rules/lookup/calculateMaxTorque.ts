import type { DriveOnPart } from '../../spec/index.js'
import { findFastening } from './findFastening.js'
import type { SheetPart } from './listSheetParts.js'

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
