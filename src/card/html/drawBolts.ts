import type { BoltsDrawing } from '../cardParts.js'
import { createElement, createTag, type Html } from './createElement.js'
import { drawText, inMillimetres, roundOff } from './drawShapes.js'

const BOLT = 2.4
const LABEL = 3.3
/** The distance between the middles of two bolts. */
const STEP = 6.4

/** The bolts of a cover with their numbers in the order of tightening. */
export function drawBolts({ numbers, layout }: BoltsDrawing, meaning: string): Html {
  const { places, width, height } =
    layout === 'circle' ? placeOnCircle(numbers.length) : placeInRows(numbers.length)
  return createElement(
    'svg.drawing',
    inMillimetres(width, height),
    createTag('title', meaning),
    createElement('rect', {
      x: 0.3,
      y: 0.3,
      width: roundOff(width - 0.6),
      height: roundOff(height - 0.6),
      rx: layout === 'circle' ? roundOff(width / 2) : 2.5,
      fill: 'none',
      stroke: 'currentColor',
      'stroke-width': 0.5,
    }),
    places.map(({ x, y }, at) => [
      createElement('circle', {
        cx: roundOff(x),
        cy: roundOff(y),
        r: BOLT,
        fill: 'none',
        stroke: 'currentColor',
        'stroke-width': 0.35,
      }),
      drawText(x, y + 1.15, String(numbers[at]), LABEL, 'bold'),
    ]),
  )
}

interface Layout {
  readonly places: readonly { readonly x: number; readonly y: number }[]
  readonly width: number
  readonly height: number
}

function placeOnCircle(count: number): Layout {
  const radius = Math.max(5, (count * STEP) / (2 * Math.PI))
  const middle = radius + BOLT + 1
  const places = Array.from({ length: count }, (_bolt, at) => {
    const turn = (2 * Math.PI * at) / count
    return { x: middle + radius * Math.sin(turn), y: middle - radius * Math.cos(turn) }
  })
  return { places, width: 2 * middle, height: 2 * middle }
}

function placeInRows(count: number): Layout {
  const columns = count / 2
  const first = BOLT + 1.2
  const below = first + 1.6 * STEP
  const places = Array.from({ length: count }, (_bolt, at) => ({
    x: first + (at % columns) * STEP,
    y: at < columns ? first : below,
  }))
  return { places, width: 2 * first + (columns - 1) * STEP, height: below + first }
}
