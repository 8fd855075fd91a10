import { measureOf } from '../quantity/index.js'
import type { PartName, PlannedFigure } from '../service/index.js'
import { type CardContext, partLine, quantityLine } from './cardContext.js'
import type { CardPlate, CardSection, Line, PictureName, PlateRow } from './cardParts.js'
import { type FigureLines, figureLines } from './figureLines.js'
import { capitalised, joined, ownWords, quoted } from './spans.js'

/** Roles that other parts of the card show. */
const ELSEWHERE: ReadonlySet<PlannedFigure['role']> = new Set(['interval', 'seal', 'place', 'mass'])
const LARGE: ReadonlySet<PlannedFigure['role']> = new Set(['refill', 'oils', 'tightening'])

/** After the manual's own figure, in small type. */
function beside({ words }: CardContext, lines: FigureLines): Line[] {
  const also = joined(lines.also, ' · ')
  const computed =
    lines.computed.length === 0
      ? []
      : [...joined(lines.computed, ' · '), ...ownWords(` ${words.computedMark}`)]
  return [joined([also, computed], ' · ')].filter((line) => line.length > 0)
}

/** The opening, cover or shield that a path of the sheet belongs to. */
function ownerOf(path: string): string {
  return /^\/(?:gearcases\/[^/]+\/(?:openings|covers)\/[^/]+|shields\/[^/]+)/.exec(path)?.[0] ?? path
}

/** Where the part sits and what turns it, under its torque. */
function partNote(context: CardContext, part: PartName): Line {
  const { plan, words } = context
  const owner = ownerOf(part.path)
  const notes: Line[] = []
  for (const [index, figure] of plan.figures.entries()) {
    if (figure.role === 'place' && ownerOf(figure.path) === owner)
      notes.push(figureLines(context, figure, index).main)
  }
  for (const [index, tool] of plan.tools.entries()) {
    if (tool.kind !== 'socket' || tool.drive === undefined) continue
    if (!tool.for.some(({ path }) => ownerOf(path) === owner)) continue
    notes.push(
      quoted(
        [words.drives[tool.drive.kind], tool.drive.size].filter(Boolean).join(' '),
        `/tools/${index}/drive`,
      ),
    )
  }
  return joined(notes, ' · ')
}

/** A level has a time, a depth and a temperature; each needs its own word. */
function levelWord({ words }: CardContext, { role, resolved }: PlannedFigure): string | undefined {
  if (role !== 'level' || resolved.kind !== 'stated' || !('unit' in resolved.value)) return undefined
  const measure = measureOf(resolved.value.unit)
  return measure === 'duration' || measure === 'length' || measure === 'temperature'
    ? words.levels[measure]
    : undefined
}

function figureRow(context: CardContext, figure: PlannedFigure, index: number): PlateRow {
  const { words } = context
  const lines = figureLines(context, figure, index)
  const tightening = figure.role === 'tightening'
  const label = tightening
    ? capitalised(partLine(figure.part, `/figures/${index}/part`, 'under its gearcase'))
    : quoted(levelWord(context, figure) ?? words.roles[figure.role], `/figures/${index}/role`)
  const notes = [
    ...beside(context, lines),
    ...(tightening ? [partNote(context, figure.part)] : lines.notes),
  ].filter((note) => note.length > 0)
  const gap = figure.resolved.kind !== 'stated'
  const size = gap ? 'small' : LARGE.has(figure.role) ? 'large' : 'small'
  return {
    label,
    value: lines.main,
    size,
    notes: gap ? [...lines.notes, ...notes.filter((note) => !lines.notes.includes(note))] : notes,
  }
}

/** The oil that holds at this ambient temperature, where one was chosen. */
function oilRow(context: CardContext, figure: PlannedFigure, index: number): PlateRow {
  const row = figureRow(context, figure, index)
  const { plan } = context
  const place = plan.oil.findIndex((oil) => oil.figure === `/figures/${index}`)
  const choice = plan.oil[place]?.choice
  if (choice === undefined) return { ...row, size: 'middle' }
  const permitted = joined([row.value, ...row.notes], ' ')
  return {
    ...row,
    size: 'middle',
    value: quoted(choice, `/oil/${place}/choice`, 'printed'),
    notes: [[...ownWords(`${context.words.labels.permitted}: `), ...permitted]],
  }
}

/** What all instances take together, under the refill of one. */
function refillRow(context: CardContext, figure: PlannedFigure, index: number): PlateRow {
  const row = figureRow(context, figure, index)
  const place = context.plan.oil.findIndex((oil) => oil.refill === `/figures/${index}`)
  const oil = context.plan.oil[place]
  if (oil === undefined || oil.instances < 2 || oil.needed === undefined) return row
  const { labels } = context.words
  const together = [
    ...ownWords(`${labels.each} × `),
    ...quoted(String(oil.instances), `/oil/${place}/instances`),
    ...ownWords(` = `),
    ...quantityLine(context, oil.needed, `/oil/${place}/needed`, 'computed'),
  ]
  return { ...row, notes: [...row.notes, together] }
}

function plateOf(context: CardContext, figures: readonly (readonly [number, PlannedFigure])[]): CardPlate {
  const [first] = figures
  const rows = figures.map(([index, figure]) =>
    figure.role === 'oils'
      ? oilRow(context, figure, index)
      : figure.role === 'refill'
        ? refillRow(context, figure, index)
        : figureRow(context, figure, index),
  )
  const name =
    first === undefined
      ? []
      : capitalised(quoted(first[1].part.gearcase ?? '', `/figures/${first[0]}/part/gearcase`))
  const gearcase = first?.[1].part.gearcase
  const wheelMarks = context.plan.steps.some(
    ({ part }) => part?.gearcase === gearcase && part?.wheelMark !== undefined,
  )
  const picture: PictureName = wheelMarks ? 'wheel marks' : 'plug'
  return { kind: 'plate', name, picture, rows }
}

/** A plate for each gearcase with its figures: refill and oil, then every opening's torque, then what else is stated. */
export function figuresSection(context: CardContext): CardSection {
  const { plan, words } = context
  const plates = new Map<string, (readonly [number, PlannedFigure])[]>()
  const seen = new Set<string>()
  for (const [index, figure] of plan.figures.entries()) {
    const same = `${figure.role} ${figure.path}`
    if (ELSEWHERE.has(figure.role) || seen.has(same) || figure.part.gearcase === undefined) continue
    seen.add(same)
    const key = figure.part.gearcase
    plates.set(key, [...(plates.get(key) ?? []), [index, figure]])
  }
  const order = (role: PlannedFigure['role']) =>
    ['refill', 'oils', 'additive', 'tightening'].indexOf(role) + 1 || 9
  const sorted = [...plates.values()].map((figures) =>
    plateOf(
      context,
      [...figures].sort(([, one], [, other]) => order(one.role) - order(other.role)),
    ),
  )
  return { id: 'figures', heading: words.sections.figures, parts: sorted }
}
