import type { WheelDrawing } from '../cardParts.js'
import { createElement, createTag, type Html } from './createElement.js'
import { drawText, inMillimetres, roundOff } from './drawShapes.js'

const RADIUS = 6
const LABEL = 3.4
/** Clockwise from the top, in degrees. The mark of a level is on one side or the other. */
const ANGLES: Readonly<Record<WheelDrawing['positions'][number]['mark'], readonly number[]>> = {
  'mark up': [0],
  'mark level': [90, 270],
  'mark down': [180],
}

/** A wheel for each position, its mark as an arrow head at the rim; of two possible sides, the second is an outline. */
export function drawWheel({ positions }: WheelDrawing, meaning: string): Html {
  const widths = positions.map(({ label }) => Math.max(2 * RADIUS + 2, label.length * LABEL * 0.56 + 2))
  const height = 2 * RADIUS + 1
  let left = 0
  return createElement(
    'svg.drawing',
    inMillimetres(
      widths.reduce((sum, width) => sum + width, 0),
      height + 5,
    ),
    createTag('title', meaning),
    positions.map(({ label, mark }, place) => {
      const width = widths[place] ?? 0
      const x = left + width / 2
      left += width
      const y = RADIUS + 0.5
      return [
        drawCircle(x, y, RADIUS),
        drawCircle(x, y, 1.6),
        ANGLES[mark].map((angle, index) => drawMark(x, y, angle, index === 0)),
        drawText(x, height + 3.6, label, LABEL, 'bold'),
      ]
    }),
  )
}

const drawCircle = (x: number, y: number, radius: number): Html =>
  createElement('circle', {
    cx: roundOff(x),
    cy: roundOff(y),
    r: radius,
    fill: 'none',
    stroke: 'currentColor',
    'stroke-width': 0.5,
  })

function drawMark(x: number, y: number, angle: number, isSolid: boolean): Html {
  const turn = (angle * Math.PI) / 180
  const [right, down] = [Math.sin(turn), -Math.cos(turn)]
  const point = (out: number, side: number) =>
    `${roundOff(x + right * out - down * side)} ${roundOff(y + down * out + right * side)}`
  return createElement('path', {
    d: `M${point(RADIUS - 0.6, 0)}L${point(RADIUS - 3.2, 1.4)}L${point(RADIUS - 3.2, -1.4)}Z`,
    fill: isSolid ? 'currentColor' : 'none',
    stroke: 'currentColor',
    'stroke-width': 0.3,
  })
}
