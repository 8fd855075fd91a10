import type { CardDrawing } from '../cardParts.js'
import { createElement, createTag, type Html } from './createElement.js'
import { drawLine, drawText, inMillimetres, roundOff } from './drawShapes.js'

const WIDTH = 26
const HEIGHT = 20
const [LEFT, RIGHT, TOP, BOTTOM] = [4, 12, 1.5, 19]

/** A measuring jug with the oil in it, and marks at its own graduation, or at multiples if they would be too close. */
export function drawJug(
  { size, graduation, marks }: Extract<CardDrawing, { kind: 'jug' }>,
  meaning: string,
): Html {
  const toY = (value: number) => roundOff(BOTTOM - (value / size) * (BOTTOM - TOP - 1.5))
  const step =
    [1, 2, 5, 10, 20, 50, 100]
      .map((count) => graduation * count)
      .find((candidate) => BOTTOM - toY(candidate) >= 1.2) ?? size
  const ticks = Array.from({ length: Math.floor(size / step + 1e-9) }, (_tick, place) => {
    const y = toY((place + 1) * step)
    return drawLine(LEFT, y, LEFT + 2, y, 0.2)
  })
  const levels = marks.toSorted((mark, other) => other.value - mark.value)
  // Labels beside their marks, one line apart if the marks are close.
  const placed: number[] = []
  for (const [place, { value }] of levels.entries()) {
    const lowest = BOTTOM - (levels.length - 1 - place) * 3.6
    placed.push(Math.min(lowest, Math.max(toY(value) + 1.1, (placed.at(-1) ?? 0) + 3.6)))
  }
  const highest = Math.max(0, ...levels.map(({ value }) => value))
  return createElement(
    'svg.drawing',
    inMillimetres(WIDTH, HEIGHT),
    createTag('title', meaning),
    createElement('rect', {
      x: LEFT,
      y: toY(highest),
      width: RIGHT - LEFT,
      height: roundOff(BOTTOM - toY(highest)),
      fill: 'currentColor',
      'fill-opacity': 0.15,
    }),
    createElement('path', {
      d: `M${LEFT} ${TOP}V${BOTTOM}H${RIGHT}V${TOP}M${LEFT} 5H1V13H${LEFT}`,
      fill: 'none',
      stroke: 'currentColor',
      'stroke-width': 0.5,
    }),
    ticks,
    levels.map(({ value }) => drawLine(LEFT, toY(value), RIGHT, toY(value), 0.7)),
    levels.map(({ label }, place) => drawText(RIGHT + 1, placed[place] ?? 0, label, 3.2, 'bold', 'start')),
  )
}
