import { requireKnownKeys, requireShape } from '../base/index.js'
import type { CardCaution, CardCell, CardModel, CardPart } from './cardParts.js'
import { requireCard } from './requireCard.js'
import { joinLines, joinSpans } from './spans.js'
import { listRowFigures } from './wall/listRowFigures.js'
import { wrapText } from './wrapText.js'

const USUAL_WIDTH = 80
const MIN_WIDTH = 20

/** Wraps a text. The first line begins with `prefix`; the others are indented by its width. */
type Wrap = (prefix: string, text: string) => string[]

function renderRow(cells: readonly CardCell[], columns: readonly string[], wrapLines: Wrap): string[] {
  return cells.flatMap((cell, index) => {
    const cellText = cell.lines
      .map(joinSpans)
      .filter((text) => text !== '')
      .join('; ')
    if (cellText === '') return []
    return index === 0 ? wrapLines('* ', cellText) : wrapLines('    ', `${columns[index]}: ${cellText}`)
  })
}

const writeCautionText = ({ word, line }: CardCaution) =>
  word === undefined ? joinSpans(line) : `${word}: ${joinSpans(line)}`

function renderPart(part: CardPart, { extent }: CardModel, wrapLines: Wrap): string[] {
  switch (part.kind) {
    case 'table':
      return [
        ...wrapLines('', joinSpans(part.caption)),
        ...part.rows.flatMap((cells) => renderRow(cells, part.columns, wrapLines)),
      ]
    case 'list':
      return [
        ...(part.heading === undefined ? [] : wrapLines('', part.heading)),
        ...part.items.flatMap(({ line, notes }, index) => [
          ...wrapLines(
            part.numbered ? `${String(index + 1).padStart(2)}. ` : part.box ? '[ ] ' : '* ',
            joinSpans(line),
          ),
          ...notes.flatMap((note) => wrapLines('    ', joinSpans(note))),
        ]),
      ]
    case 'plate':
      return [
        joinSpans(part.name),
        ...part.rows.flatMap(({ label, value, notes }) => [
          ...wrapLines('* ', `${joinSpans(label)}: ${joinSpans(value)}`),
          ...notes.flatMap((note) => wrapLines('    ', joinSpans(note))),
        ]),
        ...(part.drawings ?? []).flatMap(({ name, text }) => [
          ...wrapLines('* ', joinSpans(name)),
          ...text.flatMap((line) => wrapLines('    ', joinSpans(line))),
        ]),
      ]
    case 'steps':
      return part.groups.flatMap(({ heading, steps }) => [
        ...wrapLines('', joinSpans(heading)),
        ...steps.flatMap((step) => [
          ...step.cautions.flatMap(({ word, notice, line }) =>
            wrapLines(
              notice ? '  -- ' : '  !! ',
              word === undefined ? joinSpans(line) : `${word}: ${joinSpans(line)}`,
            ),
          ),
          ...wrapLines(
            `[ ] ${String(step.number).padStart(2)}. `,
            joinSpans(extent === 'full' ? step.full : joinLines([step.short, ...step.figures], ' · ')),
          ),
          ...(step.note === undefined ? [] : wrapLines('        ', joinSpans(step.note))),
        ]),
      ])
    case 'panel':
      return [
        ...wrapLines('', joinSpans(joinLines([part.name, part.access], ', '))),
        ...[part.quantity, part.oil, ...part.notes].flatMap((line) =>
          line.length === 0 ? [] : wrapLines('    ', joinSpans(line)),
        ),
        ...part.drawings.flatMap(({ name, text }) => [
          ...wrapLines('    ', joinSpans(name)),
          ...text.flatMap((line) => wrapLines('    - ', joinSpans(line))),
        ]),
        ...part.rows.flatMap((row) => [
          ...wrapLines('* ', joinSpans(joinLines([row.mark, row.name], ' '))),
          ...listRowFigures(row, part.columns).flatMap((line) => wrapLines('    ', joinSpans(line))),
        ]),
      ]
    case 'picture':
      return [
        ...wrapLines('', joinSpans(part.name)),
        ...part.text.flatMap((line) => wrapLines('* ', joinSpans(line))),
      ]
    case 'scenes':
      return part.scenes.flatMap(({ number, title, time, shots, say, screen, hold }) => [
        '',
        ...wrapLines(`${number}. `, `${joinSpans(title)} (${time})`),
        ...[
          `  ${part.columns.show}`,
          ...shots.flatMap(({ text, marks }) => wrapLines('    * ', [text, ...marks].join(' ** '))),
        ],
        ...[
          `  ${part.columns.say}`,
          ...say.flatMap(({ text, isCaution }) => wrapLines(isCaution ? ' !! ' : '    ', text)),
        ],
        ...(screen.length === 0
          ? []
          : [`  ${part.columns.screen}`, ...screen.flatMap((line) => wrapLines('    * ', joinSpans(line)))]),
        ...(hold.length === 0
          ? []
          : [
              `  ${part.columns.hold}`,
              ...hold.flatMap((caution) => wrapLines(' !! ', writeCautionText(caution))),
            ]),
      ])
    case 'blanks':
      return [
        ...(part.heading === undefined ? [] : wrapLines('', joinSpans(part.heading))),
        ...part.fields.flatMap(({ label, choices }) =>
          wrapLines(
            '',
            choices === undefined
              ? `${label}: ${'_'.repeat(24)}`
              : `${label}: ${choices.map((choice) => `[ ]\u00a0${choice}`).join('  ')}`,
          ),
        ),
      ]
  }
}

/**
 * Writes the card as plain text in columns, for a terminal or a message. A number and its unit stay on one line.
 *
 * @param card - from {@link cardModel}
 * @param options - `width`: characters per line, at least 20; default 80
 * @returns lines of at most that many characters; only a single word may be longer
 * @throws TypeError if `card` is not a card; RangeError for another `width`
 *
 * @example
 * ```ts
 * import { cardModel, renderText } from 'drivetrain-service/v1/card'
 * import { en } from 'drivetrain-service/v1/message/en'
 * import { planVisit } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'Station 1', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [] } as const
 * const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * const planned = planVisit({ sheet, log, today: '2031-10-06' }, { services: 'due', due, iso6789: '2017' })
 * if (!planned.ok) throw new Error('no plan')
 * // What is the first line?
 * renderText(cardModel(planned, en)).split('\n')[0] // => 'Gear oil service card: Station 1'
 * ```
 */
export function renderText(card: CardModel, options: { readonly width?: number } = {}): string {
  requireCard(card)
  requireShape('options', options, { 'width?': 'number' })
  requireKnownKeys('options', options, ['width'])
  const { width = USUAL_WIDTH } = options
  if (!(Number.isInteger(width) && width >= MIN_WIDTH))
    throw new RangeError(`options.width must be a whole number of at least ${MIN_WIDTH}, got ${width}`)
  const wrapLines: Wrap = (prefix, text) => wrapText(text, width, prefix, ' '.repeat(prefix.length))
  const lines = [
    ...wrapLines('', `${card.title}: ${joinSpans(card.machine)}`),
    '='.repeat(width),
    ...wrapLines('', joinSpans(card.about)),
    ...card.variant.lines.flatMap((line, index) =>
      wrapLines(index === 0 ? `${card.variant.label}: ` : '  ', joinSpans(line)),
    ),
    ...(card.header === undefined ? [] : wrapLines('', joinSpans(card.header))),
    ...card.authority.flatMap((sentence) => wrapLines('! ', sentence)),
    ...card.facts.flatMap(({ label, value }) => wrapLines('', `${label}: ${joinSpans(value)}`)),
    ...card.cautions.cautions.flatMap(({ word, notice, line }) =>
      wrapLines(notice ? '-- ' : '!! ', word === undefined ? joinSpans(line) : `${word}: ${joinSpans(line)}`),
    ),
  ]
  for (const section of card.sections) {
    lines.push('', ...wrapLines('', section.heading), '-'.repeat(width))
    for (const [index, part] of section.parts.entries()) {
      if (index > 0) lines.push('')
      lines.push(...renderPart(part, card, wrapLines))
    }
  }
  return `${lines.join('\n')}\n`
}
