import type { LimitBar } from '../cardParts.js'
import { createElement, createTag, type Html } from './createElement.js'
import { drawBox, roundOff } from './drawShapes.js'

const HEIGHT = 4
/** The due point has the same place in all bars, so that they compare at a glance. */
const DUE_AT = 16
/** Room for what is over the limit. */
const WIDTH = 20

/**
 * Draws how much of a limit is used: a box up to the due point, filled as far as it is used. An arrow means that more is
 * over than there is room for.
 */
export function drawLimit({ fraction, text }: LimitBar): Html {
  const end = roundOff(Math.max(0, Math.min(fraction * DUE_AT, WIDTH)))
  const isCut = fraction * DUE_AT > WIDTH
  const fill = { fill: 'currentColor' }
  return createElement(
    'svg.limit',
    { viewBox: `0 0 ${WIDTH} ${HEIGHT}`, role: 'img', focusable: 'false' },
    createTag('title', text),
    createElement('path', {
      d: isCut ? `M0 1H${WIDTH - 2}V.2L${WIDTH} 2L${WIDTH - 2} 3.8V3H0Z` : `M0 1H${end}V3H0Z`,
      ...fill,
    }),
    drawBox(0.18, 0.4, DUE_AT - 0.18, HEIGHT - 0.8),
    createElement('path', { d: `M${DUE_AT} 0V${HEIGHT}`, stroke: 'currentColor', 'stroke-width': 0.6 }),
  )
}
