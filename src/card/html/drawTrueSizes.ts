import type { CardDrawing } from '../cardParts.js'
import { createElement, createTag, type Html } from './createElement.js'
import { drawLine, drawText, inMillimetres, roundOff } from './drawShapes.js'

/** Width of the drawing in millimetres: it fits on A4 and Letter with wide margins. */
const WIDTH = 160
const GAP = 4.5
/** In millimetres: font, line and mean width of a character of the labels; the space above the shapes and below a row. */
const TYPE = {
  beside: { font: 3.3, line: 3.9, character: 1.75, top: 12, below: 4 },
  below: { font: 4.2, line: 5.4, character: 2.2, top: 18, below: 14 },
} as const
/** Mean width of a character of large labels that need a third row, in millimetres. */
const NARROW = 2

type TrueSizes = Extract<CardDrawing, { kind: 'true sizes' }>
type Shape = TrueSizes['shapes'][number]

/** Rings and hexagons in true size with their labels, and a line to check the size of the print. */
export function drawTrueSizes({ checkLine, shapes, labels }: TrueSizes, meaning: string): Html {
  const type = TYPE[labels]
  const isBeside = labels === 'beside'
  const usual = fillRows(shapes, labels, type.character)
  // Two rows of large labels fill the page; longer words are set closer, with the size of a hexagon on its own line.
  const isCrowded = !isBeside && usual.length > 2
  const rows = isCrowded ? fillRows(shapes.map(splitLabels), labels, NARROW) : usual
  const below = isCrowded ? 5 : type.below
  let top: number = type.top
  const drawn = rows.map((row) => {
    const tallest = Math.max(...row.map(({ height }) => height))
    let left = 0
    const html = row.map(({ shape, across, width, lines }) => {
      const x = left + (isBeside ? across : width) / 2
      const y = top + tallest / 2
      const textX = isBeside ? left + across + 2 : x
      const textY = isBeside ? y - lines / 2 + type.font : top + tallest + 2 + type.font
      left += width
      return [drawShape(shape, x, y), drawLabels(shape, textX, textY, labels)]
    })
    top += tallest + below + (isBeside ? 0 : Math.max(...row.map(({ lines }) => lines)))
    return html
  })
  const { millimetres, label } = checkLine
  return createElement(
    'svg.drawing',
    inMillimetres(WIDTH, top),
    createTag('title', meaning),
    drawText(millimetres + 4, 5.5, label, isBeside ? 3.6 : 4.6, 'bold', 'start'),
    drawLine(0.5, 4, millimetres + 0.5, 4, 0.3),
    drawLine(0.5, 1.5, 0.5, 6.5, 0.3),
    drawLine(millimetres + 0.5, 1.5, millimetres + 0.5, 6.5, 0.3),
    drawn,
  )
}

/** `hex key 8 mm` on two lines. */
const splitLabels = (shape: Shape): Shape => ({
  ...shape,
  labels: shape.labels.flatMap((label) => label.split(/(?<=\p{L})\s(?=\d)/u)),
})

/** Shapes with their sizes in millimetres, in as many rows as the width needs. */
function fillRows(shapes: readonly Shape[], labels: TrueSizes['labels'], character: number) {
  const isBeside = labels === 'beside'
  const cells = shapes.map((shape) => {
    const across = shape.kind === 'ring' ? shape.outsideDiameter : (shape.acrossFlats * 2) / Math.sqrt(3)
    const text = Math.max(...shape.labels.map((label) => label.length * character), 0)
    const lines = shape.labels.length * TYPE[labels].line
    return {
      shape,
      across,
      width: GAP + (isBeside ? across + 2 + text : Math.max(across, text)),
      height: isBeside ? Math.max(across, lines) : across,
      lines,
    }
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
  return rows
}

function drawLabels({ labels }: Shape, x: number, y: number, place: TrueSizes['labels']): readonly Html[] {
  const { font, line } = TYPE[place]
  const anchor = place === 'beside' ? 'start' : 'middle'
  return labels.map((label, index) =>
    drawText(x, y + index * line, label, font, index === 0 ? 'bold' : undefined, anchor),
  )
}

function drawShape(shape: Shape, x: number, y: number): Html {
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
