import { measureOf } from '../quantity/index.js'
import type { PlannedFigure } from '../service/index.js'
import { buildCase } from './buildCase.js'
import { type CardContext, writePart, writeQuantity } from './cardContext.js'
import type { CardFigurePanel, CardSection, FigurePanelRow } from './cardParts.js'
import {
  addLabel,
  capitalise,
  dropEmptyLines,
  joinLines,
  quoteOptionalText,
  quoteText,
  writeWords,
} from './spans.js'
import { writeFigure, writeSecondaryFigures } from './writeFigure.js'
import { writePartNote } from './writePartNote.js'

/** Roles that other parts of the card show. */
const ROLES_SHOWN_ELSEWHERE: ReadonlySet<PlannedFigure['role']> = new Set([
  'interval',
  'seal',
  'place',
  'position',
  'mass',
])
const LARGE_ROLES: ReadonlySet<PlannedFigure['role']> = new Set(['refill', 'oils', 'tightening'])

/** The word for a level figure: a time, a depth or a temperature. */
function findLevelWord({ words }: CardContext, { role, resolved }: PlannedFigure): string | undefined {
  if (role !== 'level' || resolved.kind !== 'stated' || !('unit' in resolved.value)) return undefined
  const measure = measureOf(resolved.value.unit)
  return measure === 'duration' || measure === 'length' || measure === 'temperature'
    ? words.levels[measure]
    : undefined
}

function buildFigureRow(context: CardContext, figure: PlannedFigure, index: number): FigurePanelRow {
  const { role, part, resolved } = figure
  const lines = writeFigure(context, figure, `/figures/${index}`)
  const isTightening = role === 'tightening'
  const label = isTightening
    ? capitalise(writePart(part, `/figures/${index}/part`, false))
    : quoteText(findLevelWord(context, figure) ?? context.words.roles[role], `/figures/${index}/role`)
  const isGap = resolved.kind !== 'stated'
  const notes = [
    joinLines(writeSecondaryFigures(context, lines), ' · '),
    ...lines.notes,
    isTightening ? writePartNote(context, part) : [],
  ]
  return {
    label,
    value: lines.main,
    size: LARGE_ROLES.has(role) && !isGap ? 'large' : 'small',
    notes: dropEmptyLines(notes),
  }
}

/** The oil for the ambient temperature, or all permitted oils. */
function buildOilRow(context: CardContext, figure: PlannedFigure, index: number): FigurePanelRow {
  const row = buildFigureRow(context, figure, index)
  const oilIndex = context.plan.oil.findIndex((oil) => oil.figure === `/figures/${index}`)
  const choice = context.plan.oil[oilIndex]?.choice
  if (choice === undefined) return { ...row, size: 'middle' }
  const permitted = addLabel(context.words.labels.permitted, joinLines([row.value, ...row.notes], ' '))
  return {
    ...row,
    size: 'middle',
    value: quoteText(choice, `/oil/${oilIndex}/choice`, 'printed'),
    notes: [permitted],
  }
}

/** The refill of one instance, with the total of all instances below it. */
function buildRefillRow(context: CardContext, figure: PlannedFigure, index: number): FigurePanelRow {
  const row = buildFigureRow(context, figure, index)
  const oilIndex = context.plan.oil.findIndex((oil) => oil.refill === `/figures/${index}`)
  const oil = context.plan.oil[oilIndex]
  if (oil === undefined || oil.instances < 2 || oil.needed === undefined) return row
  const total = [
    ...writeWords(`${context.words.labels.each} × `),
    ...quoteText(String(oil.instances), `/oil/${oilIndex}/instances`),
    ...writeWords(` = `),
    ...writeQuantity(context, oil.needed, `/oil/${oilIndex}/needed`, 'computed'),
  ]
  return { ...row, notes: [...row.notes, total] }
}

const ROW_BUILDERS: { readonly [role: string]: typeof buildFigureRow } = {
  oils: buildOilRow,
  refill: buildRefillRow,
}

type IndexedFigure = readonly [index: number, figure: PlannedFigure]

function buildPanel(
  context: CardContext,
  gearcase: string,
  figures: readonly IndexedFigure[],
): CardFigurePanel {
  const hasWheelMarks = context.plan.steps.some(
    ({ part }) => part?.gearcase === gearcase && part?.wheelMark !== undefined,
  )
  return {
    kind: 'plate',
    name: capitalise(quoteText(gearcase, `/figures/${figures[0]?.[0]}/part/gearcase`)),
    ...(hasWheelMarks && { picture: 'wheel marks' as const }),
    ...drawCase(context, gearcase),
    rows: figures.map(([index, figure]) =>
      (ROW_BUILDERS[figure.role] ?? buildFigureRow)(context, figure, index),
    ),
  }
}

const A = 65
/** The case of a gearcase whose plugs have positions, with a letter for each. */
function drawCase(context: CardContext, gearcase: string): Pick<CardFigurePanel, 'drawings'> {
  const { wall } = context.catalogue
  const parts = [...context.plan.figures.entries()]
    .filter(([, { role, part }]) => role === 'position' && part.gearcase === gearcase)
    .map(([index, figure], place) => {
      const pointer = `/figures/${index}`
      const isBreather = figure.path.endsWith('/breather/position')
      return {
        label: quoteText(String.fromCharCode(A + (place % 26)), pointer),
        name: isBreather
          ? writeWords(wall.labels.breather)
          : quoteOptionalText(figure.part.part, `${pointer}/part/part`),
        figure,
        pointer,
        isBreather,
      }
    })
  const drawing = buildCase(context, parts)
  return drawing === undefined ? {} : { drawings: [drawing] }
}

/** A panel of figures for each gearcase: refill and oil, then the torques of the openings, then the other figures. */
export function buildFiguresSection(context: CardContext): CardSection {
  const { plan, words } = context
  const inTable = new Set(plan.tightenings.map(({ figure }) => figure))
  const panels = new Map<string, IndexedFigure[]>()
  const seenKeys = new Set<string>()
  for (const [index, figure] of plan.figures.entries()) {
    const key = `${figure.role} ${figure.path}`
    const { gearcase } = figure.part
    if (inTable.has(`/figures/${index}`)) continue
    if (ROLES_SHOWN_ELSEWHERE.has(figure.role) || seenKeys.has(key) || gearcase === undefined) continue
    seenKeys.add(key)
    panels.set(gearcase, [...(panels.get(gearcase) ?? []), [index, figure]])
  }
  const rankFigure = ([, { role }]: IndexedFigure) =>
    ['refill', 'oils', 'additive', 'tightening'].indexOf(role) + 1 || 9
  const parts = [...panels].map(([gearcase, figures]) =>
    buildPanel(
      context,
      gearcase,
      figures.sort((first, second) => rankFigure(first) - rankFigure(second)),
    ),
  )
  return { id: 'figures', heading: words.sections.figures, parts }
}
