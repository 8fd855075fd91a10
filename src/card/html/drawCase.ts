import type { CaseDrawing } from '../cardParts.js'
import { createElement, createTag, type Html } from './createElement.js'
import { drawLine, drawText, inMillimetres, roundOff } from './drawShapes.js'

const CASE = { width: 30, height: 14 } as const
const PLUG = 1.7
/** Type sizes in millimetres; 3.2 mm are 9 pt. */
const LABEL = 3.6
const END = 3.2
/** The width of a letter of a size. */
const LETTER = 0.6

type Part = CaseDrawing['parts'][number]

/** A plain box with the plugs on it: on the face as hexagons, on its edges from the side, behind it dashed. */
export function drawCase({ ends, parts }: CaseDrawing, meaning: string): Html {
  const room = (side: Part['at']) =>
    Math.max(
      0.5,
      ...parts.filter(({ at }) => at === side).map(({ label }) => label.length * LABEL * LETTER + 3.5),
    )
  const left = room('left')
  const right = left + CASE.width
  const top = parts.some(({ at }) => at === 'top') ? 6.6 : 0.5
  const bottom = top + CASE.height
  // The end of the machine is in the row of the labels below, on a side without any.
  const below = parts.filter(({ at }) => at === 'bottom')
  const isOnLeft = below.every(({ x }) => x >= 0)
  const isOnRight = !isOnLeft && below.every(({ x }) => x <= 0)
  const width = right + room('right')
  const keepIn = ({ label }: Part, x: number) => {
    const half = (label.length * LABEL * LETTER) / 2
    return Math.max(half, Math.min(width - half, x))
  }
  const row = bottom + (isOnLeft || isOnRight ? 5.6 : 9.4)
  return createElement(
    'svg.drawing',
    inMillimetres(width, row + 1),
    createTag('title', meaning),
    createElement('rect', {
      x: left,
      y: top,
      width: CASE.width,
      height: CASE.height,
      rx: 3,
      fill: 'none',
      stroke: 'currentColor',
      'stroke-width': 0.6,
    }),
    isOnRight
      ? drawText(right, row, `${ends[1]} →`, END, undefined, 'end')
      : drawText(left, row, `← ${ends[0]}`, END, undefined, 'start'),
    spread(parts).map((part) => {
      const x = left + CASE.width / 2 + part.x * (CASE.width / 2 - 5)
      const y = top + CASE.height / 2 + part.y * (CASE.height / 2 - 3.2)
      switch (part.at) {
        case 'top':
          return [
            drawEdge(part, x, top, 0, -1),
            drawText(keepIn(part, x), top - 2.8, part.label, LABEL, 'bold'),
          ]
        case 'bottom':
          return [
            drawEdge(part, x, bottom, 0, 1),
            drawText(keepIn(part, x), bottom + 5.6, part.label, LABEL, 'bold'),
          ]
        case 'left':
          return [
            drawEdge(part, left, y, -1, 0),
            drawText(left - 3, y + 1.3, part.label, LABEL, 'bold', 'end'),
          ]
        case 'right':
          return [
            drawEdge(part, right, y, 1, 0),
            drawText(right + 3, y + 1.3, part.label, LABEL, 'bold', 'start'),
          ]
        default: {
          // The label stays in the box.
          const isRight = part.x > 0
          const at = isRight ? x - PLUG - 0.8 : x + PLUG + 0.8
          return [
            part.isBreather ? drawCircle(x, y, part) : drawHexagon(x, y, part),
            drawText(at, y + 1.3, part.label, LABEL, 'bold', isRight ? 'end' : 'start'),
          ]
        }
      }
    }),
  )
}

/** Parts at one place move apart, so that each is seen. */
function spread(parts: readonly Part[]): readonly Part[] {
  return parts.map((part, index) => {
    const isSame = (other: Part) => other.at === part.at && other.x === part.x && other.y === part.y
    const before = parts.slice(0, index).filter(isSame).length
    const all = parts.filter(isSame).length
    const step = 1.1 * (before - (all - 1) / 2)
    if (part.at === 'top' || part.at === 'bottom') return { ...part, x: part.x + step }
    return { ...part, y: part.y + step }
  })
}

const outline = ({ at }: Part) => ({
  fill: 'none',
  stroke: 'currentColor',
  'stroke-width': 0.5,
  'stroke-dasharray': at === 'behind' ? '0.8 0.6' : undefined,
})

function drawHexagon(x: number, y: number, part: Part): Html {
  const corners = [0, 1, 2, 3, 4, 5].map((corner) => {
    const angle = (Math.PI / 3) * corner
    return `${roundOff(x + PLUG * Math.cos(angle))} ${roundOff(y + PLUG * Math.sin(angle))}`
  })
  return createElement('path', { d: `M${corners.join('L')}Z`, ...outline(part) })
}

const drawCircle = (x: number, y: number, part: Part): Html =>
  createElement('circle', { cx: roundOff(x), cy: roundOff(y), r: 1.2, ...outline(part) })

/** A plug from the side, outside the edge; a breather is a stem with a cap. */
function drawEdge(part: Part, x: number, y: number, right: number, down: number): Html[] {
  const along = part.isBreather ? 0 : PLUG
  const [width, height] = right === 0 ? [2 * along, 1.6] : [1.6, 2 * along]
  if (part.isBreather)
    return [
      drawLine(x, y, x + 1.8 * right, y + 1.8 * down, 0.5),
      drawLine(
        x + 1.8 * right - 1.2 * Math.abs(down),
        y + 1.8 * down - 1.2 * Math.abs(right),
        x + 1.8 * right + 1.2 * Math.abs(down),
        y + 1.8 * down + 1.2 * Math.abs(right),
        0.7,
      ),
    ]
  const boxX = right < 0 ? x - width : right > 0 ? x : x - width / 2
  const boxY = down < 0 ? y - height : down > 0 ? y : y - height / 2
  return [
    createElement('rect', {
      x: roundOff(boxX),
      y: roundOff(boxY),
      width: roundOff(width),
      height: roundOff(height),
      fill: 'currentColor',
    }),
  ]
}
