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
import { createElement, createTag, type Html, type HtmlChild } from './createElement.js'
import { drawTorque, drawTorqueLegend } from './drawTorque.js'
import { drawCautionSign, drawPicture } from './pictures.js'
import { renderCaution, renderLine, renderLines } from './renderLine.js'

type Marks = CardModel['marks']

const createBox = () => createElement('span.box', { 'aria-hidden': 'true' })

function renderCell({ lines: [first, ...otherLines], drawing }: CardCell): HtmlChild[] {
  return [
    ...(first === undefined ? [] : [createTag('div.main', renderLine(first))]),
    ...renderLines(otherLines, 'note'),
    ...(drawing === undefined ? [] : [drawTorque(drawing)]),
  ]
}

/** A table with explicit roles: the block layout on narrow screens removes the implicit ones. */
function renderTable({ caption, columns, rows }: CardTable, marks: Marks): Html[] {
  const renderTableCell = (cell: CardCell, index: number): Html => {
    if (index === 0) return createElement('th', { scope: 'row', role: 'rowheader' }, renderCell(cell))
    const attributes = { role: 'cell', 'data-label': columns[index] ?? '' }
    return createElement(
      cell.lines.length === 0 ? 'td.empty' : 'td',
      attributes,
      createTag('div', renderCell(cell)),
    )
  }
  const renderRow = (cells: readonly Html[]) => createElement('tr', { role: 'row' }, cells)
  const headCells = columns.map((column) =>
    createElement('th', { scope: 'col', role: 'columnheader' }, column),
  )
  const hasDrawing = rows.some((row) => row.some((cell) => cell.drawing !== undefined))
  return [
    createElement(
      'table',
      { role: 'table' },
      createTag('caption', renderLine(caption)),
      createElement('thead', { role: 'rowgroup' }, renderRow(headCells)),
      createElement(
        'tbody',
        { role: 'rowgroup' },
        rows.map((row) => renderRow(row.map(renderTableCell))),
      ),
    ),
    ...(hasDrawing ? [drawTorqueLegend(marks.legend)] : []),
  ]
}

function renderPicture(picture: CardList['picture'], marks: Marks): Html[] {
  return picture === undefined ? [] : [drawPicture(picture, marks.pictures[picture])]
}

function renderList(list: CardList, marks: Marks): Html {
  const items = list.items.map(({ line, notes }) =>
    createTag(
      'li',
      list.box ? createBox() : undefined,
      createTag('div', createTag('div.main', renderLine(line)), renderLines(notes, 'note')),
    ),
  )
  return createTag(
    'div.list',
    list.heading === undefined ? undefined : createTag('h3', list.heading),
    renderPicture(list.picture, marks),
    createElement(list.box ? 'ul.boxed' : 'ul', { role: 'list' }, items),
  )
}

function renderPanel(panel: CardFigurePanel, marks: Marks): Html {
  const rows = panel.rows.map(({ label, value, size, notes }) =>
    createTag(
      `div.row.${size}`,
      createTag('dt', renderLine(label)),
      createTag('dd', createTag('div.main', renderLine(value)), renderLines(notes, 'note')),
    ),
  )
  const head = createTag(
    'div.plate-head',
    createTag('h3', renderLine(panel.name)),
    renderPicture(panel.picture, marks),
  )
  return createTag('article.plate', head, createTag('dl', rows))
}

function renderCautionBox(caution: CardCaution): Html {
  const text = createTag('div', renderCaution(caution))
  return caution.notice
    ? createTag('div.caution.notice', text)
    : createTag('div.caution', drawCautionSign(), text)
}

function renderStep(
  { number, steps, cautions, full, short, note }: CardStep,
  extent: CardModel['extent'],
): Html {
  const text = renderLine(extent === 'full' ? full : short)
  const noteHtml = note === undefined ? undefined : createTag('div.note', renderLine(note))
  return createElement(
    'li',
    { 'data-steps': steps.join(' ') },
    cautions.map(renderCautionBox),
    createTag(
      'div.step',
      createBox(),
      createTag('span.number', String(number)),
      createTag('div', text, noteHtml),
    ),
  )
}

function renderSteps({ groups }: CardSteps, extent: CardModel['extent']): Html {
  return createTag(
    'div.steps',
    groups.map(({ heading, steps }) =>
      createTag(
        'div.group',
        createTag('h3', renderLine(heading)),
        createElement(
          'ol',
          { role: 'list', start: steps[0]?.number ?? 1 },
          steps.map((step) => renderStep(step, extent)),
        ),
      ),
    ),
  )
}

function renderBlanks({ heading, fields }: CardBlanks): Html {
  const blanks = fields.map(({ label, choices }) =>
    createTag(
      choices === undefined ? 'div.blank' : 'div.blank.ticks',
      createTag('span.label', label),
      choices?.map((choice) => createTag('span.choice', createBox(), choice)) ?? createTag('span.line'),
    ),
  )
  const head = heading === undefined ? undefined : createTag('h3', renderLine(heading))
  return createTag('div.blanks', head, createTag('div.fields', blanks))
}

/** One part of a section. */
export function renderPart(part: CardPart, { extent, marks }: Pick<CardModel, 'extent' | 'marks'>): Html[] {
  switch (part.kind) {
    case 'table':
      return renderTable(part, marks)
    case 'list':
      return [renderList(part, marks)]
    case 'plate':
      return [renderPanel(part, marks)]
    case 'steps':
      return [renderSteps(part, extent)]
    case 'blanks':
      return [renderBlanks(part)]
  }
}
