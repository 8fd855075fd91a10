import type { CardDrawing } from '../cardParts.js'
import { createElement, createTag, type Html } from './createElement.js'
import { drawLine, drawText, inMillimetres, roundOff } from './drawShapes.js'

/** Width of the drawing in millimetres: it fits on A4 and Letter with wide margins. */
const WIDTH = 160
const LINE = 3.9
const GAP = 4

type TrueSizes = Extract<CardDrawing, { kind: 'true sizes' }>

/** Rings and hexagons in true size, with their labels below, and a line to check the size of the print. */
export function drawTrueSizes({ checkLine, shapes }: TrueSizes, meaning: string): Html {
  const cells = shapes.map((shape) => {
    const across = shape.kind === 'ring' ? shape.outsideDiameter : (shape.acrossFlats * 2) / Math.sqrt(3)
    const text = Math.max(...shape.labels.map((label) => label.length * 1.75), 0)
    return { shape, across, width: Math.max(across, text, 14) + GAP }
  })
  const rows: (typeof cells)[] = []
  let used = WIDTH + 1
  for (const cell of cells) {
    if (used + cell.width > WIDTH) {
      rows.push([])
      used = 0
    }
    rows.at(-1)?.push(cell)
    used += cell.width
  }
  let top = 10
  const drawn = rows.map((row) => {
    const tallest = Math.max(...row.map(({ across }) => across))
    const labels = Math.max(...row.map(({ shape }) => shape.labels.length))
    let left = 0
    const html = row.map(({ shape, width }) => {
      const x = left + width / 2
      const y = top + tallest / 2
      left += width
      return [
        drawShape(shape, x, y),
        shape.labels.map((label, place) =>
          drawText(x, top + tallest + 4.2 + place * LINE, label, 3.3, place === 0 ? 'bold' : undefined),
        ),
      ]
    })
    top += tallest + labels * LINE + 8
    return html
  })
  const { millimetres, label } = checkLine
  return createElement(
    'svg.drawing',
    inMillimetres(WIDTH, top),
    createTag('title', meaning),
    drawText(millimetres + 4, 5, label, 3.6, 'bold', 'start'),
    drawLine(0.5, 4, millimetres + 0.5, 4, 0.3),
    drawLine(0.5, 1.5, 0.5, 6.5, 0.3),
    drawLine(millimetres + 0.5, 1.5, millimetres + 0.5, 6.5, 0.3),
    drawn,
  )
}

function drawShape(shape: TrueSizes['shapes'][number], x: number, y: number): Html {
  const outline = { fill: 'none', stroke: 'currentColor' }
  if (shape.kind === 'ring') {
    // One stroke as wide as the ring.
    const width = (shape.outsideDiameter - shape.insideDiameter) / 2
    const circle = (diameter: number) =>
      createElement('circle', {
        cx: roundOff(x),
        cy: roundOff(y),
        r: roundOff(diameter / 2),
        ...outline,
        'stroke-width': 0.25,
      })
    return createTag(
      'g',
      createElement('circle', {
        cx: roundOff(x),
        cy: roundOff(y),
        r: roundOff((shape.outsideDiameter + shape.insideDiameter) / 4),
        ...outline,
        'stroke-width': roundOff(width),
        'stroke-opacity': 0.2,
      }),
      circle(shape.outsideDiameter),
      circle(shape.insideDiameter),
    )
  }
  const radius = shape.acrossFlats / Math.sqrt(3)
  const corners = [0, 1, 2, 3, 4, 5].map((corner) => {
    const angle = (Math.PI / 3) * corner
    return `${roundOff(x + radius * Math.cos(angle))} ${roundOff(y + radius * Math.sin(angle))}`
  })
  return createElement('path', { d: `M${corners.join('L')}Z`, ...outline, 'stroke-width': 0.25 })
}
