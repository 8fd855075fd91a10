import { measureOf } from '../quantity/index.js'
import type { PartName, PlannedFigure } from '../service/index.js'
import { type CardContext, partLine, quantityLine } from './cardContext.js'
import type { CardFigurePanel, CardSection, FigurePanelRow, Line } from './cardParts.js'
import { driveLine, figureLines, secondaryLines } from './figureLines.js'
import { addLabel, capitalise, dropEmpty, joinLines, ownWords, quoteText } from './spans.js'

/** Roles that other parts of the card show. */
const ROLES_SHOWN_ELSEWHERE: ReadonlySet<PlannedFigure['role']> = new Set([
  'interval',
  'seal',
  'place',
  'mass',
])
const LARGE_ROLES: ReadonlySet<PlannedFigure['role']> = new Set(['refill', 'oils', 'tightening'])

/** The opening, cover, filter or shield that a path of the sheet belongs to. */
function ownerOf(path: string): string {
  return /^\/(?:gearcases\/[^/]+\/(?:openings|covers|filters)\/[^/]+|shields\/[^/]+)/.exec(path)?.[0] ?? path
}

/** The place and the drive of a part, shown under its torque. */
function partNote(context: CardContext, part: PartName): Line {
  const { plan } = context
  const owner = ownerOf(part.path)
  const notes: Line[] = []
  for (const [index, figure] of plan.figures.entries())
    if (figure.role === 'place' && ownerOf(figure.path) === owner) {
      const { main } = figureLines(context, figure, index)
      notes.push(
        figure.resolved.kind === 'stated' ? main : [...ownWords(`${context.words.roles.place} `), ...main],
      )
    }
  for (const [index, tool] of plan.tools.entries())
    if (tool.kind === 'socket' && tool.for.some(({ path }) => ownerOf(path) === owner))
      notes.push(driveLine(context, tool.drive, `/tools/${index}/drive`))
  return joinLines(notes, ' · ')
}

/** The word for a level figure: a time, a depth or a temperature. */
function levelWord({ words }: CardContext, { role, resolved }: PlannedFigure): string | undefined {
  if (role !== 'level' || resolved.kind !== 'stated' || !('unit' in resolved.value)) return undefined
  const measure = measureOf(resolved.value.unit)
  return measure === 'duration' || measure === 'length' || measure === 'temperature'
    ? words.levels[measure]
    : undefined
}

function figureRow(context: CardContext, figure: PlannedFigure, index: number): FigurePanelRow {
  const { role, part, resolved } = figure
  const lines = figureLines(context, figure, index)
  const tightening = role === 'tightening'
  const label = tightening
    ? capitalise(partLine(part, `/figures/${index}/part`, false))
    : quoteText(levelWord(context, figure) ?? context.words.roles[role], `/figures/${index}/role`)
  const isGap = resolved.kind !== 'stated'
  const notes = [
    joinLines(secondaryLines(context, lines), ' · '),
    ...(tightening && !isGap ? [] : lines.notes),
    tightening ? partNote(context, part) : [],
  ]
  return {
    label,
    value: lines.main,
    size: LARGE_ROLES.has(role) && !isGap ? 'large' : 'small',
    notes: dropEmpty(notes),
  }
}

/** The oil chosen for the ambient temperature, or all permitted oils. */
function oilRow(context: CardContext, figure: PlannedFigure, index: number): FigurePanelRow {
  const row = figureRow(context, figure, index)
  const place = context.plan.oil.findIndex((oil) => oil.figure === `/figures/${index}`)
  const choice = context.plan.oil[place]?.choice
  if (choice === undefined) return { ...row, size: 'middle' }
  const permitted = addLabel(context.words.labels.permitted, joinLines([row.value, ...row.notes], ' '))
  return {
    ...row,
    size: 'middle',
    value: quoteText(choice, `/oil/${place}/choice`, 'printed'),
    notes: [permitted],
  }
}

/** The refill of one instance, with the sum of all instances below. */
function refillRow(context: CardContext, figure: PlannedFigure, index: number): FigurePanelRow {
  const row = figureRow(context, figure, index)
  const place = context.plan.oil.findIndex((oil) => oil.refill === `/figures/${index}`)
  const oil = context.plan.oil[place]
  if (oil === undefined || oil.instances < 2 || oil.needed === undefined) return row
  const sum = [
    ...ownWords(`${context.words.labels.each} × `),
    ...quoteText(String(oil.instances), `/oil/${place}/instances`),
    ...ownWords(` = `),
    ...quantityLine(context, oil.needed, `/oil/${place}/needed`, 'computed'),
  ]
  return { ...row, notes: [...row.notes, sum] }
}

const ROW_BY_ROLE: { readonly [role: string]: typeof figureRow } = { oils: oilRow, refill: refillRow }

type Placed = readonly [index: number, figure: PlannedFigure]

function panelOf(context: CardContext, gearcase: string, figures: readonly Placed[]): CardFigurePanel {
  const wheelMarks = context.plan.steps.some(
    ({ part }) => part?.gearcase === gearcase && part?.wheelMark !== undefined,
  )
  return {
    kind: 'plate',
    name: capitalise(quoteText(gearcase, `/figures/${figures[0]?.[0]}/part/gearcase`)),
    picture: wheelMarks ? 'wheel marks' : 'plug',
    rows: figures.map(([index, figure]) => (ROW_BY_ROLE[figure.role] ?? figureRow)(context, figure, index)),
  }
}

/** A panel of figures for each gearcase: refill and oil first, then the torques of the openings, then the others. */
export function figuresSection(context: CardContext): CardSection {
  const { plan, words } = context
  const panels = new Map<string, Placed[]>()
  const seen = new Set<string>()
  for (const [index, figure] of plan.figures.entries()) {
    const key = `${figure.role} ${figure.path}`
    const { gearcase } = figure.part
    if (ROLES_SHOWN_ELSEWHERE.has(figure.role) || seen.has(key) || gearcase === undefined) continue
    seen.add(key)
    panels.set(gearcase, [...(panels.get(gearcase) ?? []), [index, figure]])
  }
  const order = ([, { role }]: Placed) => ['refill', 'oils', 'additive', 'tightening'].indexOf(role) + 1 || 9
  const parts = [...panels].map(([gearcase, figures]) =>
    panelOf(
      context,
      gearcase,
      figures.sort((one, other) => order(one) - order(other)),
    ),
  )
  return { id: 'figures', heading: words.sections.figures, parts }
}
