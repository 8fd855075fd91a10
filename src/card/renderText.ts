import type { CardCell, CardModel, CardPart } from './cardParts.js'
import { requireCard } from './requireCard.js'
import { plainText as write } from './spans.js'
import { wrapText } from './wrapText.js'

const WIDTH = 80

/** Wrapped lines of text; the first begins with `lead`, the others are indented by its width. */
const indent = (lead: string, text: string) => wrapText(text, WIDTH, lead, ' '.repeat(lead.length))

function rowLines(cells: readonly CardCell[], columns: readonly string[]): string[] {
  return cells.flatMap((cell, index) => {
    const cellText = cell.lines
      .map(write)
      .filter((text) => text !== '')
      .join('; ')
    if (cellText === '') return []
    return index === 0 ? indent('* ', cellText) : indent('    ', `${columns[index]}: ${cellText}`)
  })
}

function partLines(part: CardPart, { extent }: CardModel): string[] {
  switch (part.kind) {
    case 'table':
      return [
        ...indent('', write(part.caption)),
        ...part.rows.flatMap((cells) => rowLines(cells, part.columns)),
      ]
    case 'list':
      return [
        ...(part.heading === undefined ? [] : [part.heading]),
        ...part.items.flatMap(({ line, notes }) => [
          ...indent(part.box ? '[ ] ' : '* ', write(line)),
          ...notes.flatMap((note) => indent('    ', write(note))),
        ]),
      ]
    case 'plate':
      return [
        write(part.name),
        ...part.rows.flatMap(({ label, value, notes }) => [
          ...indent('* ', `${write(label)}: ${write(value)}`),
          ...notes.flatMap((note) => indent('    ', write(note))),
        ]),
      ]
    case 'steps':
      return part.groups.flatMap(({ heading, steps }) => [
        write(heading),
        ...steps.flatMap((step) => [
          ...step.cautions.flatMap(({ word, notice, line }) =>
            indent(notice ? '  -- ' : '  !! ', word === undefined ? write(line) : `${word}: ${write(line)}`),
          ),
          ...indent(
            `[ ] ${String(step.number).padStart(2)}. `,
            write(extent === 'full' ? step.full : step.short),
          ),
          ...(step.note === undefined ? [] : indent('        ', write(step.note))),
        ]),
      ])
    case 'blanks':
      return [
        ...(part.heading === undefined ? [] : [write(part.heading)]),
        ...part.fields.flatMap(({ label, choices }) =>
          indent(
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
 * Writes the card as plain text of 80 columns, for a terminal or a message. A number and its unit are always on one line.
 *
 * @param card - from {@link cardModel}
 * @returns lines of at most 80 characters, except for a single longer word
 * @throws TypeError if `card` is not a card
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
export function renderText(card: CardModel): string {
  requireCard(card)
  const lines = [
    ...indent('', `${card.title}: ${write(card.machine)}`),
    '='.repeat(WIDTH),
    ...indent('', write(card.about)),
    ...card.variant.lines.flatMap((line, index) =>
      indent(index === 0 ? `${card.variant.label}: ` : '  ', write(line)),
    ),
    ...(card.header === undefined ? [] : indent('', write(card.header))),
    ...card.authority.flatMap((sentence) => indent('! ', sentence)),
    ...card.facts.flatMap(({ label, value }) => indent('', `${label}: ${write(value)}`)),
    ...card.cautions.cautions.flatMap(({ word, notice, line }) =>
      indent(notice ? '-- ' : '!! ', word === undefined ? write(line) : `${word}: ${write(line)}`),
    ),
  ]
  for (const section of card.sections) {
    lines.push('', section.heading, '-'.repeat(WIDTH))
    for (const [index, part] of section.parts.entries()) {
      if (index > 0) lines.push('')
      lines.push(...partLines(part, card))
    }
  }
  return `${lines.join('\n')}\n`
}
