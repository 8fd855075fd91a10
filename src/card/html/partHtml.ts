import type { Element, ElementContent } from 'hast'
import type {
  CardBlanks,
  CardCell,
  CardList,
  CardModel,
  CardPart,
  CardPlate,
  CardSteps,
  CardTable,
} from '../cardParts.js'
import { element } from './element.js'
import { lineHtml, linesHtml } from './lineHtml.js'
import { cautionSign, pictureHtml } from './pictures.js'
import { torqueDrawing, torqueLegend } from './torqueDrawing.js'

type Marks = CardModel['marks']

const box = () => element('span', { className: ['box'], ariaHidden: 'true' })

function cellHtml(cell: CardCell): ElementContent[] {
  const [first, ...rest] = cell.lines
  return [
    ...(first === undefined ? [] : [element('div', { className: ['main'] }, lineHtml(first))]),
    ...linesHtml(rest, 'note'),
    ...(cell.drawing === undefined ? [] : [torqueDrawing(cell.drawing)]),
  ]
}

/** Roles are stated, since a table that is laid out as blocks on a narrow screen would lose them. */
function tableHtml(table: CardTable, marks: Marks): Element[] {
  const head = table.columns.map((column) => element('th', { scope: 'col', role: 'columnheader' }, column))
  const rows = table.rows.map((row) =>
    element(
      'tr',
      { role: 'row' },
      row.map((cell, index) =>
        index === 0
          ? element('th', { scope: 'row', role: 'rowheader' }, cellHtml(cell))
          : element(
              'td',
              {
                role: 'cell',
                className: cell.lines.length === 0 ? ['empty'] : [],
                dataLabel: table.columns[index] ?? '',
              },
              element('div', {}, cellHtml(cell)),
            ),
      ),
    ),
  )
  const drawn = table.rows.some((row) => row.some((cell) => cell.drawing !== undefined))
  return [
    element(
      'table',
      { role: 'table' },
      element('caption', {}, lineHtml(table.caption)),
      element('thead', { role: 'rowgroup' }, element('tr', { role: 'row' }, head)),
      element('tbody', { role: 'rowgroup' }, rows),
    ),
    ...(drawn ? [torqueLegend(marks.legend)] : []),
  ]
}

function pictureOf(picture: CardList['picture'], marks: Marks): Element[] {
  return picture === undefined || picture === 'torque' ? [] : [pictureHtml(picture, marks.pictures[picture])]
}

function listHtml(list: CardList, marks: Marks): Element {
  const items = list.items.map(({ line, notes }) =>
    element(
      'li',
      {},
      list.box ? box() : undefined,
      element('div', {}, element('div', { className: ['main'] }, lineHtml(line)), linesHtml(notes, 'note')),
    ),
  )
  return element(
    'div',
    { className: ['list'] },
    list.heading === undefined ? undefined : element('h3', {}, list.heading),
    pictureOf(list.picture, marks),
    element('ul', { role: 'list', className: list.box ? ['boxed'] : [] }, items),
  )
}

function plateHtml(plate: CardPlate, marks: Marks): Element {
  const rows = plate.rows.map(({ label, value, size, notes }) =>
    element(
      'div',
      { className: ['row', size] },
      element('dt', {}, lineHtml(label)),
      element('dd', {}, element('div', { className: ['main'] }, lineHtml(value)), linesHtml(notes, 'note')),
    ),
  )
  return element(
    'article',
    { className: ['plate'] },
    element(
      'div',
      { className: ['plate-head'] },
      element('h3', {}, lineHtml(plate.name)),
      pictureOf(plate.picture, marks),
    ),
    element('dl', {}, rows),
  )
}

function stepsHtml(steps: CardSteps, extent: CardModel['extent']): Element {
  const groups = steps.groups.map(({ heading, steps: within }) =>
    element(
      'div',
      { className: ['group'] },
      element('h3', {}, lineHtml(heading)),
      element(
        'ol',
        { role: 'list', start: within[0]?.number ?? 1 },
        within.map((step) =>
          element(
            'li',
            {},
            step.cautions.map(({ word, line }) =>
              element(
                'div',
                { className: ['caution'] },
                cautionSign(),
                element(
                  'div',
                  {},
                  word === undefined ? undefined : element('strong', {}, `${word}: `),
                  lineHtml(line),
                ),
              ),
            ),
            element(
              'div',
              { className: ['step'] },
              box(),
              element('span', { className: ['number'] }, String(step.number)),
              element(
                'div',
                {},
                lineHtml(extent === 'full' ? step.full : step.short),
                step.note === undefined
                  ? undefined
                  : element('div', { className: ['note'] }, lineHtml(step.note)),
              ),
            ),
          ),
        ),
      ),
    ),
  )
  return element('div', { className: ['steps'] }, groups)
}

function blanksHtml(blanks: CardBlanks): Element {
  const fields = blanks.fields.map(({ label, choices }) =>
    element(
      'div',
      { className: choices === undefined ? ['blank'] : ['blank', 'ticks'] },
      element('span', { className: ['label'] }, label),
      choices === undefined
        ? element('span', { className: ['line'] })
        : choices.map((choice) => element('span', { className: ['choice'] }, box(), choice)),
    ),
  )
  return element(
    'div',
    { className: ['blanks'] },
    blanks.heading === undefined ? undefined : element('h3', {}, lineHtml(blanks.heading)),
    element('div', { className: ['fields'] }, fields),
  )
}

/** One part of a section. */
export function partHtml(part: CardPart, { extent, marks }: Pick<CardModel, 'extent' | 'marks'>): Element[] {
  switch (part.kind) {
    case 'table':
      return tableHtml(part, marks)
    case 'list':
      return [listHtml(part, marks)]
    case 'plate':
      return [plateHtml(part, marks)]
    case 'steps':
      return [stepsHtml(part, extent)]
    case 'blanks':
      return [blanksHtml(part)]
  }
}
