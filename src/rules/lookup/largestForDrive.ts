import type { Drive } from '../../spec/index.js'
import { driveMillimetres } from './driveMillimetres.js'
import type { PartAt } from './sheetParts.js'

/** N·m per cubed millimetre across flats. An ordinary plug has a tenth of it, a strong bolt two thirds. */
const INTERNAL = 0.25
const EXTERNAL_PLUG = 0.025
const EXTERNAL_BOLT = 0.04

/** The largest torque that a part without a stated thread plausibly gets by the size of its hexagon, in N·m, and that size. */
export function largestForDrive({ kind, part }: PartAt) {
  const { thread, drive } = 'uses' in part ? part : 'bolts' in part ? part.bolts : part.fasteners
  const width = driveMillimetres(drive.size)
  if (thread !== undefined || width === undefined) return undefined
  const factor = factorOf(drive, kind)
  return factor === undefined ? undefined : { limit: factor * width ** 3, size: drive.size ?? '' }
}

function factorOf(drive: Drive, kind: PartAt['kind']): number | undefined {
  if (drive.kind === 'internal hex') return INTERNAL
  if (drive.kind !== 'external hex') return undefined
  return kind === 'opening' ? EXTERNAL_PLUG : EXTERNAL_BOLT
}
