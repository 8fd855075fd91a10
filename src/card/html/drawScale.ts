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
  // A label beside its pointer needs a line that is steep enough to follow.
  const isBeside = labels.some(({ x, at }) => Math.abs(at - x) >= 1)
  const base = 4.2 * rows + (isBeside ? 8 : 6)
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

/** Each label as near its pointer as the labels beside it allow: those that would touch move apart by the same amount. */
function placeLabels(labels: readonly { readonly label: string; readonly x: number }[]): PlacedLabel[] {
  const sorted = labels
    .map(({ label, x }) => ({ label, x, half: label.length * 0.98 }))
    .toSorted((item, other) => item.x - other.x)
  const rows = Math.ceil(sorted.reduce((sum, { half }) => sum + 2 * half + SPACE, 0) / WIDTH)
  return Array.from({ length: rows }, (_row, row) =>
    placeRow(
      sorted.filter((_label, place) => place % rows === row),
      row,
    ),
  ).flat()
}

function placeRow(own: readonly { label: string; x: number; half: number }[], row: number): PlacedLabel[] {
  let end = -SPACE
  // If the labels stood in one block, each would be this far from its start.
  const steps = own.map(({ half }) => {
    const step = end + SPACE + half
    end = step + half
    return step
  })
  // Starts of blocks from left to right; blocks that would overlap become one, at the mean of their labels.
  const blocks: { sum: number; count: number }[] = []
  for (const [place, { x }] of own.entries()) {
    let block = { sum: x - (steps[place] ?? 0), count: 1 }
    for (let before = blocks.at(-1); before !== undefined; before = blocks.at(-1)) {
      if (before.sum / before.count < block.sum / block.count) break
      block = { sum: before.sum + block.sum, count: before.count + block.count }
      blocks.pop()
    }
    blocks.push(block)
  }
  const starts = blocks.flatMap(({ sum, count }) =>
    Array.from({ length: count }, () => Math.max(0, Math.min(sum / count, WIDTH - end))),
  )
  return own.map(({ label, x }, place) => ({
    label,
    x,
    at: roundOff((starts[place] ?? 0) + (steps[place] ?? 0)),
    row,
  }))
}
