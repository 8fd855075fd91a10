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
import { element, tag } from './element.js'
import { cautionHtml, lineHtml, linesHtml } from './lineHtml.js'
import { cautionSign, pictureHtml } from './pictures.js'
import { torqueDrawing, torqueLegend } from './torqueDrawing.js'

type Marks = CardModel['marks']

const box = () => element('span.box', { ariaHidden: 'true' })

function cellHtml({ lines: [first, ...otherLines], drawing }: CardCell): ElementContent[] {
  return [
    ...(first === undefined ? [] : [tag('div.main', lineHtml(first))]),
    ...linesHtml(otherLines, 'note'),
    ...(drawing === undefined ? [] : [torqueDrawing(drawing)]),
  ]
}

/** A table with explicit roles, since the block layout on narrow screens removes them. */
function tableHtml({ caption, columns, rows }: CardTable, marks: Marks): Element[] {
  const cellOf = (cell: CardCell, index: number): Element => {
    if (index === 0) return element('th', { scope: 'row', role: 'rowheader' }, cellHtml(cell))
    const className = cell.lines.length === 0 ? ['empty'] : []
    const properties = { role: 'cell', className, dataLabel: columns[index] ?? '' }
    return element('td', properties, tag('div', cellHtml(cell)))
  }
  const rowOf = (cells: readonly Element[]) => element('tr', { role: 'row' }, cells)
  const head = columns.map((column) => element('th', { scope: 'col', role: 'columnheader' }, column))
  const hasDrawing = rows.some((row) => row.some((cell) => cell.drawing !== undefined))
  return [
    element(
      'table',
      { role: 'table' },
      tag('caption', lineHtml(caption)),
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
    tag(
      'li',
      list.box ? box() : undefined,
      tag('div', tag('div.main', lineHtml(line)), linesHtml(notes, 'note')),
    ),
  )
  return tag(
    'div.list',
    list.heading === undefined ? undefined : tag('h3', list.heading),
    pictureOf(list.picture, marks),
    element('ul', { role: 'list', className: list.box ? ['boxed'] : [] }, items),
  )
}

function panelHtml(panel: CardFigurePanel, marks: Marks): Element {
  const rows = panel.rows.map(({ label, value, size, notes }) =>
    tag(
      `div.row.${size}`,
      tag('dt', lineHtml(label)),
      tag('dd', tag('div.main', lineHtml(value)), linesHtml(notes, 'note')),
    ),
  )
  const head = tag('div.plate-head', tag('h3', lineHtml(panel.name)), pictureOf(panel.picture, marks))
  return tag('article.plate', head, tag('dl', rows))
}

function cautionBox(caution: CardCaution): Element {
  const text = tag('div', cautionHtml(caution))
  return caution.notice ? tag('div.caution.notice', text) : tag('div.caution', cautionSign(), text)
}

function stepHtml(
  { number, steps, cautions, full, short, note }: CardStep,
  extent: CardModel['extent'],
): Element {
  const text = lineHtml(extent === 'full' ? full : short)
  const noteHtml = note === undefined ? undefined : tag('div.note', lineHtml(note))
  return element(
    'li',
    { dataSteps: steps.join(' ') },
    cautions.map(cautionBox),
    tag('div.step', box(), tag('span.number', String(number)), tag('div', text, noteHtml)),
  )
}

function stepsHtml({ groups }: CardSteps, extent: CardModel['extent']): Element {
  return tag(
    'div.steps',
    groups.map(({ heading, steps }) =>
      tag(
        'div.group',
        tag('h3', lineHtml(heading)),
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
    tag(
      choices === undefined ? 'div.blank' : 'div.blank.ticks',
      tag('span.label', label),
      choices?.map((choice) => tag('span.choice', box(), choice)) ?? tag('span.line'),
    ),
  )
  const head = heading === undefined ? undefined : tag('h3', lineHtml(heading))
  return tag('div.blanks', head, tag('div.fields', blanks))
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
