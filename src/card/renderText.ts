import { requireKnownKeys, requireShape } from '../base/index.js'
import type {
  CardCaution,
  CardCell,
  CardModel,
  CardPanel,
  CardPart,
  CardPicture,
  CardScene,
  CardScenes,
  CardStep,
  Line,
} from './cardParts.js'
import { requireCard } from './requireCard.js'
import { joinLines, joinSpans } from './spans.js'
import { listRowFigures } from './wall/listRowFigures.js'
import { addWrapped } from './wrapText.js'

const USUAL_WIDTH = 80
const MIN_WIDTH = 20

type Marks = CardModel['marks']
/** What all parts of one card share. */
type Frame = Pick<CardModel, 'extent' | 'marks'>

/** Adds a text as wrapped lines. The first line begins with `prefix`; the others are indented by its width. */
type AddText = (prefix: string, text: string) => void

const addLine = (add: AddText, prefix: string, line: Line): void => add(prefix, joinSpans(line))

function addLines(add: AddText, prefix: string, lines: readonly Line[]): void {
  for (const line of lines) add(prefix, joinSpans(line))
}

function addRow(
  add: AddText,
  cells: readonly CardCell[],
  columns: readonly string[],
  { colon = ': ', semicolon = '; ' }: Marks,
): void {
  for (const [index, { lines }] of cells.entries()) {
    let cellText = ''
    for (const line of lines) {
      const text = joinSpans(line)
      if (text !== '') cellText += cellText === '' ? text : `${semicolon}${text}`
    }
    if (cellText === '') continue
    if (index === 0) add('* ', cellText)
    else add('    ', `${columns[index]}${colon}${cellText}`)
  }
}

/** A caution behind `!!`, or `--` if it is about damage only. */
function addCaution(
  add: AddText,
  indent: string,
  { word, notice, line }: CardCaution,
  { colon = ': ' }: Marks,
): void {
  const text = joinSpans(line)
  add(`${indent}${notice ? '--' : '!!'} `, word === undefined ? text : `${word}${colon}${text}`)
}

function addDrawing(add: AddText, { name, text }: CardPicture, namePrefix: string, prefix: string): void {
  addLine(add, namePrefix, name)
  addLines(add, prefix, text)
}

function addStep(add: AddText, step: CardStep, { extent, marks }: Frame): void {
  for (const caution of step.cautions) addCaution(add, '  ', caution, marks)
  const text = extent === 'full' ? step.full : joinLines([step.short, ...step.figures], ' · ')
  addLine(add, `[ ] ${String(step.number).padStart(2)}. `, text)
  if (step.note !== undefined) addLine(add, '        ', step.note)
}

function addPanel(add: AddText, panel: CardPanel): void {
  addLine(add, '', joinLines([panel.name, panel.access], ', '))
  for (const line of [panel.quantity, panel.oil, ...panel.notes])
    if (line.length > 0) addLine(add, '    ', line)
  for (const drawing of panel.drawings) addDrawing(add, drawing, '    ', '    - ')
  for (const row of panel.rows) {
    addLine(add, '* ', joinLines([row.mark, row.name], ' '))
    addLines(add, '    ', listRowFigures(row, panel.columns))
  }
}

function addScene(add: AddText, columns: CardScenes['columns'], scene: CardScene, marks: Marks): void {
  add('', '')
  add(`${scene.number}. `, `${joinSpans(scene.title)} (${scene.time})`)
  add('  ', columns.show)
  for (const { text, marks: signs } of scene.shots) add('    * ', [text, ...signs].join(' ** '))
  add('  ', columns.say)
  for (const { text, isCaution } of scene.say) add(isCaution ? ' !! ' : '    ', text)
  if (scene.screen.length > 0) add('  ', columns.screen)
  addLines(add, '    * ', scene.screen)
  if (scene.hold.length > 0) add('  ', columns.hold)
  for (const { word, line } of scene.hold)
    addCaution(add, ' ', { ...(word !== undefined && { word }), line }, marks)
}

function addPart(add: AddText, part: CardPart, frame: Frame): void {
  const { marks } = frame
  const { colon = ': ' } = marks
  switch (part.kind) {
    case 'table':
      addLine(add, '', part.caption)
      for (const cells of part.rows) addRow(add, cells, part.columns, marks)
      return
    case 'list':
      if (part.heading !== undefined) add('', part.heading)
      for (const [index, { line, notes }] of part.items.entries()) {
        addLine(add, part.numbered ? `${String(index + 1).padStart(2)}. ` : part.box ? '[ ] ' : '* ', line)
        addLines(add, '    ', notes)
      }
      return
    case 'plate':
      addLine(add, '', part.name)
      for (const { label, value, notes } of part.rows) {
        add('* ', `${joinSpans(label)}${colon}${joinSpans(value)}`)
        addLines(add, '    ', notes)
      }
      for (const drawing of part.drawings ?? []) addDrawing(add, drawing, '* ', '    ')
      return
    case 'steps':
      for (const { heading, steps } of part.groups) {
        addLine(add, '', heading)
        for (const step of steps) addStep(add, step, frame)
      }
      return
    case 'panel':
      addPanel(add, part)
      return
    case 'picture':
      addDrawing(add, part, '', '* ')
      return
    case 'scenes':
      for (const scene of part.scenes) addScene(add, part.columns, scene, marks)
      return
    case 'blanks':
      if (part.heading !== undefined) addLine(add, '', part.heading)
      for (const { label, choices } of part.fields)
        add(
          '',
          choices === undefined
            ? `${label}${colon}${'_'.repeat(24)}`
            : `${label}${colon}${choices.map((choice) => `[ ]\u00a0${choice}`).join('  ')}`,
        )
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
  const lines: string[] = []
  const add: AddText = (prefix, text) => addWrapped(lines, text, width, prefix)
  const { colon = ': ' } = card.marks
  add('', `${card.title}${colon}${joinSpans(card.machine)}`)
  lines.push('='.repeat(width))
  addLine(add, '', card.about)
  for (const [index, line] of card.variant.lines.entries())
    addLine(add, index === 0 ? `${card.variant.label}${colon}` : '  ', line)
  if (card.header !== undefined) addLine(add, '', card.header)
  for (const sentence of card.authority) add('! ', sentence)
  for (const { label, value } of card.facts) add('', `${label}${colon}${joinSpans(value)}`)
  for (const caution of card.cautions.cautions) addCaution(add, '', caution, card.marks)
  for (const { heading, parts } of card.sections) {
    lines.push('')
    add('', heading)
    lines.push('-'.repeat(width))
    for (const [index, part] of parts.entries()) {
      if (index > 0) lines.push('')
      addPart(add, part, card)
    }
  }
  return `${lines.join('\n')}\n`
}
