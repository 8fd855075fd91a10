import type { Element, ElementContent } from 'hast'
import type {
  CardBlanks,
  CardCaution,
  CardCell,
  CardFigurePanel,
  CardList,
  CardModel,
  CardPart,
  CardStep,
  CardSteps,
  CardTable,
} from '../cardParts.js'
import { element, plain } from './element.js'
import { cautionHtml, lineHtml, linesHtml } from './lineHtml.js'
import { cautionSign, pictureHtml } from './pictures.js'
import { torqueDrawing, torqueLegend } from './torqueDrawing.js'

type Marks = CardModel['marks']

const box = () => element('span.box', { ariaHidden: 'true' })

function cellHtml({ lines: [first, ...otherLines], drawing }: CardCell): ElementContent[] {
  return [
    ...(first === undefined ? [] : [plain('div.main', lineHtml(first))]),
    ...linesHtml(otherLines, 'note'),
    ...(drawing === undefined ? [] : [torqueDrawing(drawing)]),
  ]
}

/** A table with explicit roles, which it would lose on a narrow screen, where it has the layout of blocks. */
function tableHtml({ caption, columns, rows }: CardTable, marks: Marks): Element[] {
  const cellOf = (cell: CardCell, index: number): Element => {
    if (index === 0) return element('th', { scope: 'row', role: 'rowheader' }, cellHtml(cell))
    const className = cell.lines.length === 0 ? ['empty'] : []
    const properties = { role: 'cell', className, dataLabel: columns[index] ?? '' }
    return element('td', properties, plain('div', cellHtml(cell)))
  }
  const rowOf = (cells: readonly Element[]) => element('tr', { role: 'row' }, cells)
  const head = columns.map((column) => element('th', { scope: 'col', role: 'columnheader' }, column))
  const hasDrawing = rows.some((row) => row.some((cell) => cell.drawing !== undefined))
  return [
    element(
      'table',
      { role: 'table' },
      plain('caption', lineHtml(caption)),
      element('thead', { role: 'rowgroup' }, rowOf(head)),
      element(
        'tbody',
        { role: 'rowgroup' },
        rows.map((row) => rowOf(row.map(cellOf))),
      ),
    ),
    ...(hasDrawing ? [torqueLegend(marks.legend)] : []),
  ]
}

function pictureOf(picture: CardList['picture'], marks: Marks): Element[] {
  return picture === undefined ? [] : [pictureHtml(picture, marks.pictures[picture])]
}

function listHtml(list: CardList, marks: Marks): Element {
  const items = list.items.map(({ line, notes }) =>
    plain(
      'li',
      list.box ? box() : undefined,
      plain('div', plain('div.main', lineHtml(line)), linesHtml(notes, 'note')),
    ),
  )
  return plain(
    'div.list',
    list.heading === undefined ? undefined : plain('h3', list.heading),
    pictureOf(list.picture, marks),
    element('ul', { role: 'list', className: list.box ? ['boxed'] : [] }, items),
  )
}

function panelHtml(panel: CardFigurePanel, marks: Marks): Element {
  const rows = panel.rows.map(({ label, value, size, notes }) =>
    plain(
      `div.row.${size}`,
      plain('dt', lineHtml(label)),
      plain('dd', plain('div.main', lineHtml(value)), linesHtml(notes, 'note')),
    ),
  )
  const head = plain('div.plate-head', plain('h3', lineHtml(panel.name)), pictureOf(panel.picture, marks))
  return plain('article.plate', head, plain('dl', rows))
}

function cautionBox(caution: CardCaution): Element {
  const text = plain('div', cautionHtml(caution))
  return caution.notice ? plain('div.caution.notice', text) : plain('div.caution', cautionSign(), text)
}

function stepHtml({ number, cautions, full, short, note }: CardStep, extent: CardModel['extent']): Element {
  const text = lineHtml(extent === 'full' ? full : short)
  const noteHtml = note === undefined ? undefined : plain('div.note', lineHtml(note))
  return plain(
    'li',
    cautions.map(cautionBox),
    plain('div.step', box(), plain('span.number', String(number)), plain('div', text, noteHtml)),
  )
}

function stepsHtml({ groups }: CardSteps, extent: CardModel['extent']): Element {
  return plain(
    'div.steps',
    groups.map(({ heading, steps }) =>
      plain(
        'div.group',
        plain('h3', lineHtml(heading)),
        element(
          'ol',
          { role: 'list', start: steps[0]?.number ?? 1 },
          steps.map((step) => stepHtml(step, extent)),
        ),
      ),
    ),
  )
}

function blanksHtml({ heading, fields }: CardBlanks): Element {
  const blanks = fields.map(({ label, choices }) =>
    plain(
      choices === undefined ? 'div.blank' : 'div.blank.ticks',
      plain('span.label', label),
      choices?.map((choice) => plain('span.choice', box(), choice)) ?? plain('span.line'),
    ),
  )
  const head = heading === undefined ? undefined : plain('h3', lineHtml(heading))
  return plain('div.blanks', head, plain('div.fields', blanks))
}

/** One part of a section. */
export function partHtml(part: CardPart, { extent, marks }: Pick<CardModel, 'extent' | 'marks'>): Element[] {
  switch (part.kind) {
    case 'table':
      return tableHtml(part, marks)
    case 'list':
      return [listHtml(part, marks)]
    case 'plate':
      return [panelHtml(part, marks)]
    case 'steps':
      return [stepsHtml(part, extent)]
    case 'blanks':
      return [blanksHtml(part)]
  }
}
