import type {
  CardCaution,
  CardCell,
  CardModel,
  CardPart,
  CardScene,
  CardScenes,
  CardStep,
  Line,
} from './cardParts.js'
import { escapeMarkdown, escapeStart } from './markdown/escapeMarkdown.js'
import { type Phrase, writePhrasing } from './markdown/writePhrasing.js'
import { requireCard } from './requireCard.js'
import { joinLines } from './spans.js'
import { listRowFigures } from './wall/listRowFigures.js'

/** Gaps and strong words are bold, all other text is plain. */
const makePhrases = (line: Line): Phrase[] =>
  line.map(({ text, tone }) => ({ text, strong: tone === 'gap' || tone === 'strong' }))

const makeBold = (line: Line): Phrase[] => line.map(({ text }) => ({ text, strong: true }))

const writeBlock = (phrases: readonly Phrase[]): string => escapeStart(writePhrasing(phrases))

const writeLine = (line: Line): string => writeBlock(makePhrases(line))

function writeHeading(level: 1 | 2 | 3, line: Line): string {
  // `#` signs at the end would be read as closing signs.
  return `${'#'.repeat(level)} ${writePhrasing(makePhrases(line)).trim().replace(/#$/, '\\#')}`
}

type Marks = CardModel['marks']

function writeCaution({ word, line }: CardCaution, { colon = ': ' }: Marks): string {
  return writeBlock([
    ...(word === undefined ? [] : [{ text: `${word}${colon.trimEnd()}`, strong: true }, { text: ' ' }]),
    ...makePhrases(line),
  ])
}

/** A list item: its blocks below each other, after the marker. */
function writeItem(marker: string, blocks: readonly string[]): string {
  const indent = ' '.repeat(marker.replace(/\[ \] $/, '').length)
  return `${marker}${blocks.filter((block) => block !== '').join(`\n\n${indent}`)}`
}

function writeList(items: readonly (readonly string[])[], box = false): string {
  return items.map((blocks) => writeItem(box ? '- [ ] ' : '- ', blocks)).join('\n')
}

function writeNumbered(items: readonly (readonly string[])[]): string {
  return items.map((blocks, index) => writeItem(`${index + 1}. `, blocks)).join('\n')
}

function writeCell({ lines }: CardCell, { semicolon = '; ' }: Marks): string {
  const phrases = lines.flatMap((line, index) => [
    ...(index === 0 ? [] : [{ text: semicolon }]),
    ...makePhrases(line),
  ])
  return writePhrasing(phrases).trim()
}

const writeRow = (cells: readonly string[]): string =>
  `|${cells.map((cell) => (cell === '' ? ' |' : ` ${cell} |`)).join('')}`

function writeStep(step: CardStep, { extent, marks }: CardModel): string {
  const blocks = [
    ...step.cautions.map((caution) => writeCaution(caution, marks)),
    writeLine(extent === 'full' ? step.full : joinLines([step.short, ...step.figures], ' · ')),
    ...(step.note === undefined ? [] : [writeLine(step.note)]),
  ]
  return writeItem(`${step.number}. [ ] `, blocks)
}

/** A scene of a cue sheet; its cautions are quoted. */
function writeScene(
  { number, title, time, shots, say, screen, hold }: CardScene,
  columns: CardScenes['columns'],
  cardMarks: Marks,
): string[] {
  const label = (text: string) => writeBlock([{ text, strong: true }])
  const shotItems = shots.map(({ text, marks }) => [
    writeBlock([{ text }, ...marks.flatMap((mark) => [{ text: ' ' }, { text: mark, strong: true }])]),
  ])
  const held = hold.map((caution) => [writeCaution(caution, cardMarks)])
  return [
    writeHeading(3, [{ text: `${number}. ` }, ...title, { text: ` (${time})` }]),
    ...[label(columns.show), writeList(shotItems), label(columns.say)],
    ...say.map(({ text, isCaution }) => `${isCaution ? '> ' : ''}${writeBlock([{ text }])}`),
    ...(screen.length === 0
      ? []
      : [label(columns.screen), writeList(screen.map((line) => [writeLine(line)]))]),
    ...(held.length === 0 ? [] : [label(columns.hold), writeList(held)]),
  ]
}

/** The blocks of a part: headings, tables and lists. */
function writePart(part: CardPart, card: CardModel): string[] {
  const { colon = ': ' } = card.marks
  switch (part.kind) {
    case 'table': {
      const head = writeRow(part.columns.map((column) => escapeMarkdown(column)))
      const rows = part.rows.map((cells) => writeRow(cells.map((cell) => writeCell(cell, card.marks))))
      return [
        writeBlock(makeBold(part.caption)),
        [head, writeRow(part.columns.map(() => '-')), ...rows].join('\n'),
      ]
    }
    case 'list': {
      const items = part.items.map(({ line, notes }) => [line, ...notes].map(writeLine))
      const heading = part.heading === undefined ? [] : [writeHeading(3, [{ text: part.heading }])]
      return [...heading, part.numbered ? writeNumbered(items) : writeList(items, part.box)]
    }
    case 'plate': {
      const items = part.rows.map(({ label, value, notes }) => [
        writeBlock([...makePhrases(label), { text: colon }, ...makeBold(value)]),
        ...notes.map(writeLine),
      ])
      const drawings = (part.drawings ?? []).map(({ name, text }) => [name, ...text].map(writeLine))
      return [writeHeading(3, part.name), writeList([...items, ...drawings])]
    }
    case 'steps':
      return part.groups.flatMap(({ heading, steps }) => [
        writeHeading(3, heading),
        steps.map((step) => writeStep(step, card)).join('\n'),
      ])
    case 'panel': {
      const items = part.rows.map((row) => [
        writeBlock(makeBold(joinLines([row.mark, row.name], ' '))),
        ...listRowFigures(row, part.columns).map(writeLine),
      ])
      return [
        writeHeading(3, joinLines([part.name, part.access], ', ')),
        writeBlock(makeBold(joinLines([part.quantity, part.oil], ', '))),
        writeList([
          ...part.notes.map((note) => [writeLine(note)]),
          ...part.drawings.map(({ name, text }) => [name, ...text].map(writeLine)),
        ]),
        writeList(items),
      ]
    }
    case 'picture':
      return [writeHeading(3, part.name), writeList(part.text.map((line) => [writeLine(line)]))]
    case 'blanks': {
      const items = part.fields.map(({ label, choices }) => {
        const answerBoxes = choices?.map((choice) => `☐ ${choice}`).join('  ') ?? '________'
        return [writeBlock([{ text: `${label}${colon}${answerBoxes}` }])]
      })
      return [...(part.heading === undefined ? [] : [writeHeading(3, part.heading)]), writeList(items)]
    }
    case 'scenes':
      return part.scenes.flatMap((scene) => writeScene(scene, part.columns, card.marks))
  }
}

/** Without a heading between them, two lists stay separate only if their markers differ. */
function separateLists(blocks: readonly string[]): string[] {
  const separatedBlocks: string[] = []
  for (const block of blocks) {
    const followsList = block.startsWith('- ') && separatedBlocks.at(-1)?.startsWith('- ') === true
    separatedBlocks.push(followsList ? block.replace(/^- /gm, '* ') : block)
  }
  return separatedBlocks
}

/**
 * Writes the card as GitHub Markdown, with tables and check boxes. Each caution precedes its step.
 *
 * @param card - from {@link cardModel}
 * @returns Markdown; markup in names from the sheet is escaped
 * @throws TypeError if `card` is not a card
 *
 * @example
 * ```ts
 * import { cardModel, renderMarkdown } from 'drivetrain-service/v1/card'
 * import { en } from 'drivetrain-service/v1/message/en'
 * import { planVisit } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'Station 1', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [] } as const
 * const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * const planned = planVisit({ sheet, log, today: '2031-10-06' }, { services: 'due', due, iso6789: '2017' })
 * if (!planned.ok) throw new Error('no plan')
 * // What is the first line?
 * renderMarkdown(cardModel(planned, en)).split('\n')[0] // => '# Gear oil service card: Station 1'
 * ```
 */
export function renderMarkdown(card: CardModel): string {
  requireCard(card)
  const [known, ...others] = card.variant.lines
  const { colon = ': ' } = card.marks
  const facts = card.facts.map(({ label, value }) => [
    writeBlock([{ text: `${label}${colon}` }, ...makePhrases(value)]),
  ])
  const cautions = card.cautions.cautions.map((caution) => `> ${writeCaution(caution, card.marks)}`)
  const blocks = [
    writeHeading(1, [{ text: `${card.title}${colon}` }, ...card.machine]),
    writeLine(card.about),
    ...(known === undefined ? [] : [writeCaution({ word: card.variant.label, line: known }, card.marks)]),
    ...others.map(writeLine),
    ...(card.header === undefined ? [] : [writeLine(card.header)]),
    ...card.authority.map((text) => writeBlock([{ text, strong: true }])),
    writeList(facts),
    cautions.join('\n>\n'),
    ...card.sections.flatMap((section) => [
      writeHeading(2, [{ text: section.heading }]),
      ...section.parts.flatMap((part) => writePart(part, card)),
    ]),
  ]
  return `${separateLists(blocks.filter((block) => block !== '')).join('\n\n')}\n`
}
