import { showQuantity } from '../../message/index.js'
import type { WallSize } from '../../service/index.js'
import type { CardDrawing, CardSection, Line } from '../cardParts.js'
import { joinLines, joinSpans, quoteText, writeWords } from '../spans.js'
import { writeDrive, writeFigure } from '../writeFigure.js'
import { findFact, type WallContext, writeMark } from './wallContext.js'

/** The length of the line that shows whether a printer kept the size. */
const CHECK_LINE = { value: 50, unit: 'mm' } as const

type Shape = Extract<CardDrawing, { kind: 'true sizes' }>['shapes'][number]

/** Washers, rings and hexagons in true size beside a line to check the print. */
export function buildSizesSection(context: WallContext): CardSection {
  const { facts, wall, catalogue } = context
  const described = facts.sizes
    .map((size, place) => buildSize(context, size, `/sizes/${place}`))
    .toSorted((item, other) => Number(item.shape.kind === 'hexagon') - Number(other.shape.kind === 'hexagon'))
  const label = `${wall.labels.checkLine} ${showQuantity(CHECK_LINE, catalogue.marks)}`
  return {
    id: 'sizes',
    heading: wall.sections.sizes,
    parts:
      described.length === 0
        ? []
        : [
            {
              kind: 'picture',
              name: [{ text: label, from: '/sizes' }],
              drawing: {
                kind: 'true sizes',
                checkLine: { millimetres: CHECK_LINE.value, label },
                // Two gearcases fill the first page, and the sizes move to the next.
                labels: facts.panels.length > 1 ? 'below' : 'beside',
                shapes: described.map(({ shape }) => shape),
              },
              text: described.map(({ line }) => line),
            },
          ],
  }
}

function buildSize(context: WallContext, size: WallSize, pointer: string): { shape: Shape; line: Line } {
  const { wall } = context
  const marks = joinLines(
    size.parts.map(({ path }) => writeMark(context, path)),
    ' ',
  )
  const count = quoteText(`${size.count} ×`, `${pointer}/count`)
  if (size.kind === 'hexagon') {
    const drive = writeDrive(context, size.drive, `${pointer}/drive`)
    return {
      shape: {
        kind: 'hexagon',
        acrossFlats: size.acrossFlats,
        labels: [joinSpans(marks), joinSpans(drive)],
      },
      line: joinLines([marks, drive, writeWords(wall.labels.acrossFlats)], ' '),
    }
  }
  const figure = findFact(context, 'figures', size.seal)
  const seal = figure === undefined ? [] : writeFigure(context, figure, size.seal).main
  return {
    shape: {
      kind: 'ring',
      insideDiameter: size.inside,
      outsideDiameter: size.outside,
      labels: [`${joinSpans(marks)} · ${joinSpans(count)}`, ...joinSpans(seal).split(', ')],
    },
    line: joinLines([marks, count, seal], ' '),
  }
}
