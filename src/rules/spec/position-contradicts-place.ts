import type { CasePosition } from '../../spec/index.js'
import { listPositions } from '../lookup/listPositions.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * The position of a plug or breather contradicts the words of its place. The drawing would send the reader to the
 * wrong side.
 * Judges: Every stated position, on the base sheet and with each override. Finds English words of the place for a side
 * of the gearcase (`left side`, `rear face`, `top of`, `underside`, `lowest point`, `left of the centre line`) if the
 * position has only the opposite side, and a distance from the centre line that differs in the same unit. Words
 * relative to other parts, such as `behind the axle`, are not judged.
 * Place: the position, or the place in an override that sets only the place
 * Params: part: the name of the part, or of the gearcase of a breather; place: what its words say; position: what the
 * position says
 * Harm: job
 * Common practice, no source: parts are on one side of a gearcase.
 */
export const rule = sheetRule('spec/position-contradicts-place', 'warning', ({ sheet }) =>
  listPositions(sheet).flatMap(({ path, part, position, place }) => {
    const contradiction = place && findContradiction(place.text, position)
    return contradiction === undefined ? [] : [{ path, params: { part, ...contradiction } }]
  }),
)

type Side = CasePosition['face']
const OPPOSITES: Readonly<Record<Side, Side>> = {
  left: 'right',
  right: 'left',
  front: 'rear',
  rear: 'front',
  top: 'bottom',
  bottom: 'top',
}
const OF_CASE = '(?:-hand)? (?:side|face|end|half)\\b'
const OF_CENTRE = 'of the (?:cent(?:re|er)|middle)'
const SIDE_WORDS: Readonly<Record<Side, RegExp>> = {
  left: new RegExp(`\\bleft(?:${OF_CASE}| ${OF_CENTRE})`, 'i'),
  right: new RegExp(`\\bright(?:${OF_CASE}| ${OF_CENTRE})`, 'i'),
  front: new RegExp(`\\bfront${OF_CASE}|(?<!\\bin )\\bfront of\\b`, 'i'),
  rear: new RegExp(`\\b(?:rear|back)(?:${OF_CASE}| of\\b)`, 'i'),
  top: new RegExp(`\\b(?:top|upper)${OF_CASE}|\\btop of\\b|\\bhighest point\\b`, 'i'),
  bottom: new RegExp(`\\b(?:bottom|lower)${OF_CASE}|\\bbottom of\\b|\\bunderside\\b|\\blowest point\\b`, 'i'),
}
const FROM_CENTRE = new RegExp(
  `\\b([0-9]+(?:\\.[0-9]+)?) ?(mm|cm|in) (?:to the )?(?:left|right) ${OF_CENTRE}`,
  'i',
)

function findContradiction(text: string, position: CasePosition) {
  const { face, across, height, offset } = position
  const claimed: readonly (string | undefined)[] = [
    face,
    across,
    height === 'high' ? 'top' : height === 'low' ? 'bottom' : undefined,
  ]
  for (const [side, pattern] of Object.entries(SIDE_WORDS) as [Side, RegExp][]) {
    const opposite = OPPOSITES[side]
    if (!claimed.includes(opposite) || claimed.includes(side)) continue
    if (pattern.test(text) && !SIDE_WORDS[opposite].test(text)) return { place: side, position: opposite }
  }
  const [, distance, unit] = FROM_CENTRE.exec(text) ?? []
  if (offset?.kind === 'nominal' && offset.unit === unit && Number(offset.value) !== Number(distance))
    return { place: `${distance} ${unit}`, position: `${offset.value} ${unit}` }
  return undefined
}
