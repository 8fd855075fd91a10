import type { CardDrawing } from '../cardParts.js'
import { createElement, createTag, type Html } from './createElement.js'
import { drawLine, drawMarks, drawText, inMillimetres, roundOff } from './drawShapes.js'

/** Width of the drawing in millimetres. */
const WIDTH = 92
const MARGIN = 4
/** Closer marks would run together on paper: no scale is drawn. */
const CLOSEST_MARKS = 0.6

/**
 * The scale of a wrench with its own marks and a pointer for each setting; undefined if its marks would be too
 * close. Labels that would touch are set in rows.
 */
export function drawScale(
  { scale, settings }: Extract<CardDrawing, { kind: 'scale' }>,
  meaning: string,
): Html | undefined {
  const { lowest, highest, graduation } = scale
  const steps = Math.round((highest - lowest) / graduation)
  const width = WIDTH - 2 * MARGIN
  if (!(steps >= 1 && width / steps >= CLOSEST_MARKS)) return undefined
  const toX = (value: number) => roundOff(MARGIN + ((value - lowest) / (highest - lowest)) * width)
  const labels = placeLabels(settings.map(({ label, value }) => ({ label, x: toX(value) })))
  const rows = Math.max(1, ...labels.map(({ row }) => row + 1))
  const base = 4.2 * rows + 6
  const labelled = chooseLabelled(steps, graduation, width)
  const marks = Array.from({ length: steps + 1 }, (_step, place) => {
    const value = Number((lowest + place * graduation).toPrecision(9))
    return { x: toX(value), value, isLabelled: labelled(value) }
  })
  return createElement(
    'svg.drawing.scale',
    inMillimetres(WIDTH, base + 4.4),
    createTag('title', meaning),
    drawLine(MARGIN, base, WIDTH - MARGIN, base, 0.5),
    drawMarks(
      marks.map(({ x, isLabelled }) => ({ x, length: isLabelled ? 3 : 1.6 })),
      base,
      0.25,
    ),
    marks
      .filter(({ isLabelled }) => isLabelled)
      .map(({ x, value }) => drawText(x, base + 3.8, String(value), 3.2)),
    labels.map(({ label, x, at, row }) => {
      const y = 3.4 + row * 4.2
      return [
        createElement('path', {
          d: `M${roundOff(x - 1.2)} ${roundOff(base - 5.4)}H${roundOff(x + 1.2)}L${x} ${roundOff(base - 3.2)}Z`,
          fill: 'currentColor',
        }),
        row === rows - 1 && Math.abs(at - x) < 1 ? undefined : drawLine(at, y + 0.7, x, base - 5.4, 0.2),
        drawText(at, y, label, 3.6, 'bold'),
      ]
    }),
  )
}

/** Whether a mark has its number: numbers at steps of one, two or five, far enough apart not to touch. */
function chooseLabelled(steps: number, graduation: number, width: number) {
  const isRound = (value: number) =>
    /^[125]0*$/.test(String(Number(value.toPrecision(6))).replace(/^0\.0*/, ''))
  const every =
    [1, 2, 4, 5, 8, 10, 20, 25, 40, 50, 100, 200].find(
      (count) => (width / steps) * count >= 8 && isRound(graduation * count),
    ) ?? steps
  const unit = graduation * every
  return (value: number) => Math.abs(value / unit - Math.round(value / unit)) * unit < graduation / 1000
}

interface PlacedLabel {
  readonly label: string
  readonly x: number
  /** The middle of the label: at its pointer, or beside it where labels would touch. */
  readonly at: number
  readonly row: number
}

const SPACE = 2

function placeLabels(labels: readonly { readonly label: string; readonly x: number }[]): PlacedLabel[] {
  const sorted = labels
    .map(({ label, x }) => ({ label, x, half: label.length * 0.98 }))
    .toSorted((item, other) => item.x - other.x)
  const rows = Math.ceil(sorted.reduce((sum, { half }) => sum + 2 * half + SPACE, 0) / WIDTH)
  return Array.from({ length: rows }, (_row, row) => {
    const own = sorted.filter((_label, place) => place % rows === row)
    let free = 0
    const fromLeft = own.map((item) => {
      const at = Math.max(item.x, free + item.half)
      free = at + item.half + SPACE
      return { ...item, at }
    })
    let end = WIDTH
    return fromLeft.toReversed().map(({ label, x, half, at: target }) => {
      const at = Math.min(target, end - half)
      end = at - half - SPACE
      return { label, x, at: roundOff(at), row }
    })
  }).flat()
}
