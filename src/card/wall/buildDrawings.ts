import type { JsonPointer } from '../../base/index.js'
import type { WallPanel, WallPart } from '../../service/index.js'
import { WHEEL_MARKS } from '../../spec/index.js'
import { buildCase } from '../buildCase.js'
import type { CardPicture } from '../cardParts.js'
import { addLabel, joinLines, joinSpans, quoteText, writeWords } from '../spans.js'
import { orderCrosswise, orderFromMiddle } from './orderBolts.js'
import { findFact, type WallContext, writeMark } from './wallContext.js'

/** More bolts than this do not fit on the circle of a panel. */
const MOST_BOLTS = 20

/** The drawings of a panel: its case, its wheel positions, and the bolts of its covers. Each only if the sheet has the data. */
export function buildDrawings(
  context: WallContext,
  { parts, breatherPosition }: WallPanel,
  pointer: JsonPointer,
): readonly CardPicture[] {
  const drawnCase = buildCase(context, [
    ...parts.map(({ part, position }) => ({
      label: writeMark(context, part.path),
      figure: findFact(context, 'figures', position),
      pointer: position,
      isBreather: false,
    })),
    {
      label: writeWords(context.wall.labels.breather),
      figure: findFact(context, 'figures', breatherPosition),
      pointer: breatherPosition,
      isBreather: true,
    },
  ])
  return [
    drawnCase,
    ...parts.flatMap((part, place) => [
      buildWheel(context, part, `${pointer}/parts/${place}`),
      buildBolts(context, part, `${pointer}/parts/${place}`),
    ]),
  ].filter((drawing) => drawing !== undefined)
}

/** A wheel for each position of its mark, with what is done there. */
function buildWheel(
  context: WallContext,
  { uses = [] }: WallPart,
  pointer: JsonPointer,
): CardPicture | undefined {
  const { wall } = context
  const positions = WHEEL_MARKS.flatMap((mark) => {
    const roles = uses.flatMap(({ role, wheelMark }, place) =>
      wheelMark === mark ? [quoteText(wall.roles[role], `${pointer}/uses/${place}/role`)] : [],
    )
    return roles.length === 0 ? [] : [{ mark, roles: joinLines(roles, ', ') }]
  })
  if (positions.length === 0) return undefined
  return {
    kind: 'picture',
    name: writeWords(wall.labels.wheelPositions),
    drawing: {
      kind: 'wheel',
      positions: positions.map(({ mark, roles }) => ({ mark, label: joinSpans(roles) })),
    },
    text: positions.map(({ mark, roles }) => [
      ...roles,
      ...writeWords(`: ${wall.wheelMarks[mark]}, ${wall.clockPositions[mark]}`),
    ]),
  }
}

/** The bolts of a cover with the order of tightening. A pattern without a known number of bolts cannot be drawn. */
function buildBolts(
  context: WallContext,
  { part, count = 0, pattern }: WallPart,
  pointer: JsonPointer,
): CardPicture | undefined {
  if (pattern === undefined || pattern === 'in turn' || count < 3 || count > MOST_BOLTS) return undefined
  const isCircle = pattern === 'crosswise'
  if (!isCircle && count % 2 === 1) return undefined
  const { wall } = context
  const numbers = isCircle ? orderCrosswise(count) : orderFromMiddle(count)
  return {
    kind: 'picture',
    name: joinLines(
      [writeMark(context, part.path), quoteText(wall.boltOrders[pattern], `${pointer}/pattern`)],
      ': ',
    ),
    drawing: { kind: 'bolts', numbers, layout: isCircle ? 'circle' : 'two rows' },
    text: [
      addLabel(
        isCircle ? wall.labels.clockwise : wall.labels.leftToRight,
        quoteText(numbers.join(', '), `${pointer}/count`),
      ),
    ],
  }
}
