import type { CasePosition } from '../../spec/index.js'
import { listPositions } from '../lookup/listPositions.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A coordinate that a face does not have, such as left or right on the left face. It could not be drawn.
 * Judges: Every stated position. Finds `across` left or right on the left or right face, front or rear on the front or
 * rear face, `height` on the top or bottom face, and `offset` without a side.
 * Place: the coordinate in the position
 * Params: part: the name of the part, or of the gearcase of a breather; face: the face; coordinate: the key
 * Harm: job
 * House rule: a point on a face has two coordinates.
 */
export const rule = sheetRule('spec/position-off-face', 'error', ({ sheet }) =>
  listPositions(sheet).flatMap(({ path, kind, part, position }) => {
    const coordinate = kind === 'place' ? undefined : findOffFace(position)
    return coordinate === undefined
      ? []
      : [{ path: `${path}/${coordinate}`, params: { part, face: position.face, coordinate } }]
  }),
)

const SIDES: readonly unknown[] = ['left', 'right']
const ENDS: readonly unknown[] = ['front', 'rear']

function findOffFace({ face, across, height, offset }: CasePosition) {
  if ([SIDES, ENDS].some((axis) => axis.includes(face) && axis.includes(across))) return 'across'
  if (height !== undefined && (face === 'top' || face === 'bottom')) return 'height'
  if (offset !== undefined && (across === undefined || across === 'middle')) return 'offset'
  return undefined
}
