import type { CardPanel, PanelRow } from '../cardParts.js'
import { createElement, createTag, type Html } from './createElement.js'
import { renderDrawing } from './renderDrawing.js'
import { renderLine, renderLines } from './renderLine.js'

/** The panel of one gearcase on a wall card. */
export function renderPanel({
  name,
  access,
  quantity,
  oil,
  notes,
  columns,
  rows,
  drawings,
}: CardPanel): Html {
  const { tool, manual, setting } = columns
  const hasSettings = setting !== ''
  const headings = ['', tool, manual, ...(hasSettings ? [setting] : [])]
  const head = createTag(
    'thead',
    createTag(
      'tr',
      headings.map((text) => (text === '' ? createTag('td') : createElement('th', { scope: 'col' }, text))),
    ),
  )
  const body = rows.map((row) => createTag('tbody', renderRow(row, hasSettings)))
  return createTag(
    'article.panel',
    createTag('div.panel-head', createTag('h3', renderLine(name)), createTag('p.access', renderLine(access))),
    drawings.map(renderDrawing),
    createTag(
      'div.fill',
      quantity.length === 0 ? undefined : createTag('p.quantity', renderLine(quantity)),
      oil.length === 0 ? undefined : createTag('p.oil', renderLine(oil)),
    ),
    renderLines(notes, 'div.note'),
    rows.length === 0 ? undefined : createTag('table', head, body),
  )
}

function renderRow(row: PanelRow, hasSettings: boolean): Html[] {
  const cell = (large: PanelRow['tool'], small: PanelRow['tool'], name = 'td') =>
    createTag(
      name,
      large.length === 0 ? undefined : createTag('div.big', renderLine(large)),
      small.length === 0 ? undefined : createTag('div.small', renderLine(small)),
    )
  const columns = hasSettings ? 4 : 3
  return [
    createTag(
      'tr',
      createElement(
        'th',
        { scope: 'row' },
        createTag('div.mark', renderLine(row.mark)),
        createTag('div.small', renderLine(row.name)),
      ),
      cell(row.tool, row.toolForm, 'td.tool'),
      cell(row.manual, row.manualNotes),
      hasSettings ? cell(row.setting, row.wrench, row.setting.length === 0 ? 'td' : 'td.setting') : undefined,
    ),
    ...(row.notes.length === 0
      ? []
      : [
          createTag('tr.more', createElement('td', { colspan: columns }, renderLines(row.notes, 'div.note'))),
        ]),
  ]
}
