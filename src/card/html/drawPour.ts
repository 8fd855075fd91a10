import type { CardDrawing } from '../cardParts.js'
import { createElement, createTag, type Html } from './createElement.js'
import { drawBox, drawText, inMillimetres } from './drawShapes.js'

/** Width of the drawing in millimetres. */
const WIDTH = 67
const LABEL_WIDTH = 20
const TEMPERATURE_WIDTH = 10.5
const CLOCK_WIDTH = 14
const ROW = 5.6

/** A bar for each temperature, from the clock at its start to that at its end: hose full, funnel empty (grey), dry. */
export function drawPour({ bars, start }: Extract<CardDrawing, { kind: 'pour' }>, meaning: string): Html {
  const longest = Math.max(1, ...bars.flatMap(({ ends = [] }) => ends.map(({ seconds }) => seconds)))
  const toX = (seconds: number) => LABEL_WIDTH + (seconds / longest) * (WIDTH - LABEL_WIDTH - CLOCK_WIDTH)
  const height = bars.length * ROW
  const drawn = bars.map(({ label, ends, end }, place) => {
    const top = place * ROW + 0.4
    const temperature = drawText(TEMPERATURE_WIDTH, top + 3.9, label, 3.3, 'bold', 'end')
    if (ends === undefined)
      return [temperature, drawText(LABEL_WIDTH, top + 3.9, end, 3.3, undefined, 'start')]
    const text = [temperature, drawText(LABEL_WIDTH - 1, top + 3.9, start, 3.3, undefined, 'end')]
    let from = toX(0)
    const boxes = ends.map(({ seconds, clock }, index) => {
      const [left, right] = [from, toX(seconds)]
      from = right
      const isFunnel = index === 1
      return [
        isFunnel
          ? createElement('rect', {
              x: left.toFixed(2),
              y: top.toFixed(2),
              width: (right - left).toFixed(2),
              height: 5,
              fill: 'currentColor',
              'fill-opacity': 0.15,
            })
          : undefined,
        drawBox(left, top, right - left, 5),
        index < 2 && right - left > 9
          ? drawText(right - 0.8, top + 3.7, clock, 3.2, undefined, 'end')
          : undefined,
      ]
    })
    return [text, boxes, drawText(from + 1.2, top + 4.1, end, 4.2, 'bold', 'start')]
  })
  return createElement('svg.drawing', inMillimetres(WIDTH, height), createTag('title', meaning), drawn)
}
