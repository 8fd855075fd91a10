import type { JsonPointer } from '../base/index.js'
import type { PlannedFigure } from '../service/index.js'
import type { CaseFace, CasePosition } from '../spec/index.js'
import type { TextContext } from './cardContext.js'
import type { CardPicture, CaseDrawing, Line } from './cardParts.js'
import { joinLines, joinSpans, writeWords } from './spans.js'
import { writeFigure } from './writeFigure.js'

/** A plug or breather with the figure of its position; `label` is short, for the drawing. */
export interface PartOnCase {
  readonly label: Line
  /** The name after the label in the text. */
  readonly name?: Line
  readonly figure: PlannedFigure | undefined
  readonly pointer: JsonPointer | undefined
  readonly isBreather: boolean
}

type View = 'front' | 'rear' | 'left' | 'right'
/** The ends of the machine to the left and right of a reader who looks at a face. */
const ENDS: Readonly<Record<View, readonly [View, View]>> = {
  front: ['right', 'left'],
  rear: ['left', 'right'],
  left: ['front', 'rear'],
  right: ['rear', 'front'],
}
const OPPOSITES: Readonly<Record<View, View>> = { front: 'rear', rear: 'front', left: 'right', right: 'left' }
const HEIGHTS = { high: -1, middle: 0, low: 1 } as const

/** The gearcase from the side where most plugs are; undefined if no plug has a stated position. */
export function buildCase(context: TextContext, parts: readonly PartOnCase[]): CardPicture | undefined {
  const stated = parts.flatMap(({ label, name = [], figure, pointer, isBreather }) => {
    const resolved = figure?.resolved
    if (figure === undefined || pointer === undefined || resolved?.kind !== 'stated') return []
    const { value } = resolved
    return value.kind === 'position' ? [{ label, name, figure, pointer, isBreather, position: value }] : []
  })
  if (stated.every(({ isBreather }) => isBreather)) return undefined
  const { words } = context
  const view = chooseView(stated.filter(({ isBreather }) => !isBreather).map(({ position }) => position))
  const [left, right] = ENDS[view]
  return {
    kind: 'picture',
    name: writeWords(`${words.caseViews[view]}, ${words.labels.notToScale}`),
    drawing: {
      kind: 'case',
      ends: [words.casePoints[left], words.casePoints[right]],
      parts: stated.map(({ label, position, isBreather }) => ({
        label: joinSpans(label),
        ...project(position, view),
        isBreather,
      })),
    },
    text: stated.map(({ label, name, figure, pointer }) =>
      joinLines([joinLines([label, name], ' '), writeFigure(context, figure, pointer).main], ': '),
    ),
  }
}

/** The upright face with the most plugs; without any, the face from which a side of the others is seen. */
function chooseView(positions: readonly CasePosition[]): View {
  const views = ['rear', 'front', 'left', 'right'] as const
  const count = (view: View) =>
    positions.reduce(
      (sum, { face, across }) =>
        sum + (face === view ? 2 : across !== undefined && ENDS[view].some((end) => end === across) ? 1 : 0),
      0,
    )
  return views.reduce((best, view) => (count(view) > count(best) ? view : best))
}

function project(
  { face, across, height = 'middle' }: CasePosition,
  view: View,
): Pick<CaseDrawing['parts'][number], 'at' | 'x' | 'y'> {
  const toX = (side: CaseFace | 'middle' | undefined) =>
    side === ENDS[view][0] ? -1 : side === ENDS[view][1] ? 1 : 0
  if (face === 'top' || face === 'bottom') return { at: face, x: toX(across), y: face === 'top' ? -1 : 1 }
  const y = HEIGHTS[height]
  if (face === view) return { at: 'face', x: toX(across), y }
  if (face === OPPOSITES[view]) return { at: 'behind', x: toX(across), y }
  return { at: toX(face) < 0 ? 'left' : 'right', x: toX(face), y }
}
