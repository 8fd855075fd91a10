import type { DriveOnPart } from '../../spec/index.js'
import { fasteningOf } from './fasteningOf.js'
import type { PartAt } from './sheetParts.js'

/** N·m per cubed millimetre across flats. An ordinary plug has a tenth of it, a strong bolt two thirds. */
const INTERNAL = 0.25
const EXTERNAL_PLUG = 0.025
const EXTERNAL_BOLT = 0.04

/** The largest torque that a part without a stated thread plausibly gets by the size of its hexagon, in N·m, and that size. */
export function largestForDrive(on: PartAt) {
  const { thread, drive } = fasteningOf(on).fastening
  const size = drive && 'size' in drive ? drive.size : undefined
  const width = driveMillimetres(size)
  if (thread !== undefined || drive === undefined || width === undefined) return undefined
  const factor = factorOf(drive, on.kind)
  return factor === undefined ? undefined : { limit: factor * width ** 3, size: size ?? '' }
}

function factorOf(drive: DriveOnPart, kind: PartAt['kind']): number | undefined {
  if (drive.kind === 'internal hex') return INTERNAL
  if (drive.kind !== 'external hex') return undefined
  return kind === 'opening' || kind === 'filter' ? EXTERNAL_PLUG : EXTERNAL_BOLT
}

/** The width across flats that a drive's size names, in mm: `22 mm`, `3/8 in`, `1 1/8 in`; undefined for others. */
function driveMillimetres(size: string | undefined): number | undefined {
  const [, millimetres] = /^([0-9]+(?:\.[0-9]+)?) ?mm$/.exec(size ?? '') ?? []
  if (millimetres !== undefined) return Number(millimetres)
  const [, whole = '0', above, below] = /^(?:([0-9]+) )?([0-9]+)\/([0-9]+) ?in$/.exec(size ?? '') ?? []
  if (above === undefined || below === undefined) return undefined
  return 25.4 * (Number(whole) + Number(above) / Number(below))
}
