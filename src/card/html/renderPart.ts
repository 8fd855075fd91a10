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
import { drawLimit } from './drawLimit.js'
import { drawTorque, drawTorqueLegend } from './drawTorque.js'
import { drawCautionSign, drawPicture } from './pictures.js'
import { renderDrawing } from './renderDrawing.js'
import { renderCaution, renderLine, renderLines } from './renderLine.js'
import { renderPanel } from './renderPanel.js'
import { renderScenes } from './renderScenes.js'

type Marks = CardModel['marks']

/** A tick box for paper and screen, inside its label. */
const createBox = () => createElement('input.box', { type: 'checkbox' })

function renderCell({ lines: [first, ...otherLines], drawing, bar }: CardCell): HtmlChild[] {
  return [
    ...(first === undefined ? [] : [createTag('div.main', renderLine(first))]),
    ...renderLines(otherLines, 'div.note'),
    ...(drawing === undefined ? [] : [drawTorque(drawing)]),
    ...(bar === undefined ? [] : [drawLimit(bar)]),
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
  const items = list.items.map(({ line, notes }) => {
    const text = createTag(
      'span',
      createTag('span.main', renderLine(line)),
      notes.map((note) => [' ', createTag('span.note', renderLine(note))]),
    )
    return createTag('li', list.box ? createTag('label', createBox(), text) : text)
  })
  return createTag(
    'div.list',
    list.heading === undefined ? undefined : createTag('h3', list.heading),
    renderPicture(list.picture, marks),
    createElement(list.numbered ? 'ol.numbered' : list.box ? 'ul.boxed' : 'ul', { role: 'list' }, items),
  )
}

function renderPlate(panel: CardFigurePanel, marks: Marks): Html {
  const rows = panel.rows.map(({ label, value, size, notes }) =>
    createTag(
      `div.row.${size}`,
      createTag('dt', renderLine(label)),
      createTag('dd', createTag('div.main', renderLine(value)), renderLines(notes, 'div.note')),
    ),
  )
  const head = createTag(
    'div.plate-head',
    createTag('h3', renderLine(panel.name)),
    renderPicture(panel.picture, marks),
  )
  const drawings = (panel.drawings ?? []).map((drawing) =>
    createTag('div.drawn', renderDrawing(drawing), renderLines(drawing.text, 'div.note')),
  )
  return createTag('article.plate', head, createTag('dl', rows), drawings)
}

function renderCautionBox(caution: CardCaution, marks: Marks): Html {
  const text = createTag('div', renderCaution(caution, marks))
  return caution.notice
    ? createTag('div.caution.notice', text)
    : createTag('div.caution', drawCautionSign(), text)
}

function renderStep(
  { number, steps, cautions, full, short, figures, note }: CardStep,
  { extent, marks }: Pick<CardModel, 'extent' | 'marks'>,
): Html {
  const text = createTag(
    'span.text',
    createTag('span', renderLine(short)),
    figures.length === 0 ? undefined : createTag('span.figures', renderLines(figures, 'span')),
  )
  const label = createTag('label', createBox(), createTag('span.number', String(number)), text)
  const inFull =
    extent === 'full'
      ? createTag('details', createTag('summary', marks.inFull), createTag('p', renderLine(full)))
      : undefined
  return createElement(
    'li',
    { 'data-steps': steps.join(' ') },
    cautions.length === 0
      ? undefined
      : createTag(
          'div.before',
          cautions.map((caution) => renderCautionBox(caution, marks)),
        ),
    createTag(
      'div.step',
      label,
      note === undefined ? undefined : createTag('div.note', renderLine(note)),
      inFull,
    ),
  )
}

function renderSteps({ groups }: CardSteps, card: Pick<CardModel, 'extent' | 'marks'>): Html {
  return createTag(
    'div.steps',
    groups.map(({ heading, steps }) =>
      createTag(
        'div.group',
        createTag('h3', renderLine(heading)),
        createElement(
          'ol',
          { role: 'list', start: steps[0]?.number ?? 1 },
          steps.map((step) => renderStep(step, card)),
        ),
      ),
    ),
  )
}

function renderBlanks({ heading, fields }: CardBlanks): Html {
  const blanks = fields.map(({ label, choices }) => {
    const name = createTag('span.label', label)
    if (choices === undefined)
      return createTag('label.blank', name, createElement('input.write', { type: 'text' }))
    const boxes = choices.map((choice) => createTag('label.choice', createBox(), choice))
    return createElement('div.blank.ticks', { role: 'group', 'aria-label': label }, name, boxes)
  })
  const head = heading === undefined ? undefined : createTag('h3', renderLine(heading))
  return createTag('div.blanks', head, createTag('div.fields', blanks))
}

/** One part of a section. */
export function renderPart(part: CardPart, card: Pick<CardModel, 'extent' | 'marks'>): Html[] {
  const { marks } = card
  switch (part.kind) {
    case 'table':
      return renderTable(part, marks)
    case 'list':
      return [renderList(part, marks)]
    case 'plate':
      return [renderPlate(part, marks)]
    case 'steps':
      return [renderSteps(part, card)]
    case 'blanks':
      return [renderBlanks(part)]
    case 'panel':
      return [renderPanel(part)]
    case 'picture':
      return [renderDrawing(part)]
    case 'scenes':
      return [renderScenes(part, marks)]
  }
}
