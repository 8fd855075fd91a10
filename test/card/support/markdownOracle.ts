// The card's Markdown from a general-purpose library, to compare ours with.
import type { ListItem, Paragraph, PhrasingContent, Root, RootContent, TableCell } from 'mdast'
import { gfmToMarkdown } from 'mdast-util-gfm'
import { toMarkdown } from 'mdast-util-to-markdown'
import type {
  CardCaution,
  CardCell,
  CardModel,
  CardPart,
  CardStep,
  Line,
  PanelRow,
} from '../../../src/card/cardParts.js'

import { joinLines } from '../../../src/card/spans.js'
import { listRowFigures } from '../../../src/card/wall/listRowFigures.js'

const text = (value: string): PhrasingContent => ({ type: 'text', value })
const strong = (children: PhrasingContent[]): PhrasingContent => ({ type: 'strong', children })
const paragraph = (children: PhrasingContent[]): Paragraph => ({ type: 'paragraph', children })
const heading = (depth: 1 | 2 | 3, children: PhrasingContent[]): RootContent => {
  return { type: 'heading', depth, children }
}
const list = (children: ListItem[]): RootContent => {
  return { type: 'list', ordered: false, spread: false, children }
}

/** Gaps are bold, everything else is plain. */
function renderLine(line: Line): PhrasingContent[] {
  return line.map(({ text: value, tone }) =>
    tone === 'gap' || tone === 'strong' ? strong([text(value)]) : text(value),
  )
}

const renderPlain = (lines: readonly Line[], separator: string) =>
  joinLines(lines, separator).map(({ text: value }) => text(value))
const renderJoined = (lines: readonly Line[], separator: string) => renderLine(joinLines(lines, separator))

function renderCaution({ word, line }: CardCaution): Paragraph {
  const signalWord = word === undefined ? [] : [strong([text(`${word}:`)]), text(' ')]
  return paragraph([...signalWord, ...renderLine(line)])
}

function renderCell(cell: CardCell): PhrasingContent[] {
  return cell.lines.flatMap((line, index) => [...(index === 0 ? [] : [text('; ')]), ...renderLine(line)])
}

function listItem(line: PhrasingContent[], notes: readonly Line[] = [], box = false): ListItem {
  const children = [paragraph(line), ...notes.map((note) => paragraph(renderLine(note)))]
  return { type: 'listItem', spread: false, ...(box && { checked: false }), children }
}

function renderStep(step: CardStep, { extent }: CardModel): ListItem {
  const line = paragraph(
    renderLine(extent === 'full' ? step.full : joinLines([step.short, ...step.figures], ' · ')),
  )
  const note = step.note === undefined ? [] : [paragraph(renderLine(step.note))]
  const children = [...step.cautions.map(renderCaution), line, ...note]
  return { type: 'listItem', spread: false, checked: false, children }
}

function renderPart(part: CardPart, card: CardModel): RootContent[] {
  switch (part.kind) {
    case 'table': {
      const createRow = (cells: PhrasingContent[][]) => ({
        type: 'tableRow' as const,
        children: cells.map((children): TableCell => ({ type: 'tableCell', children })),
      })
      const headRow = createRow(part.columns.map((column) => [text(column)]))
      const rows = part.rows.map((cells) => createRow(cells.map(renderCell)))
      return [paragraph([strong(renderLine(part.caption))]), { type: 'table', children: [headRow, ...rows] }]
    }
    case 'list': {
      const items = part.items.map(({ line, notes }) => listItem(renderLine(line), notes, part.box))
      return [
        ...(part.heading === undefined ? [] : [heading(3, [text(part.heading)])]),
        part.numbered
          ? { type: 'list', ordered: true, start: 1, spread: false, children: items }
          : list(items),
      ]
    }
    case 'plate': {
      const rows = part.rows.map(({ label, value, notes }) =>
        listItem([...renderLine(label), text(': '), strong(renderLine(value))], notes),
      )
      const drawings = (part.drawings ?? []).map(({ name, text: lines }) => listItem(renderLine(name), lines))
      return [heading(3, renderLine(part.name)), list([...rows, ...drawings])]
    }
    case 'steps':
      return part.groups.flatMap(({ heading: name, steps }): RootContent[] => {
        const children = steps.map((step) => renderStep(step, card))
        const start = steps[0]?.number ?? 1
        return [heading(3, renderLine(name)), { type: 'list', ordered: true, start, spread: false, children }]
      })
    case 'panel': {
      const row = ({ mark, name, ...figures }: PanelRow) =>
        listItem(
          [strong(renderPlain([mark, name], ' '))],
          listRowFigures({ mark, name, ...figures }, part.columns),
        )
      return [
        heading(3, renderJoined([part.name, part.access], ', ')),
        paragraph([strong(renderPlain([part.quantity, part.oil], ', '))]),
        ...(part.notes.length + part.drawings.length === 0
          ? []
          : [
              list([
                ...part.notes.map((note) => listItem(renderLine(note))),
                ...part.drawings.map((drawing) => listItem(renderLine(drawing.name), drawing.text)),
              ]),
            ]),
        list(part.rows.map(row)),
      ]
    }
    case 'picture':
      return [heading(3, renderLine(part.name)), list(part.text.map((line) => listItem(renderLine(line))))]
    case 'scenes':
      return part.scenes.flatMap((scene): RootContent[] => [
        heading(3, [text(`${scene.number}. `), ...renderLine(scene.title), text(` (${scene.time})`)]),
        paragraph([strong([text(part.columns.show)])]),
        list(
          scene.shots.map((shot) =>
            listItem([text(shot.text), ...shot.marks.flatMap((mark) => [text(' '), strong([text(mark)])])]),
          ),
        ),
        paragraph([strong([text(part.columns.say)])]),
        ...scene.say.map((speech): RootContent => {
          const spokenText = paragraph([text(speech.text)])
          return speech.isCaution ? { type: 'blockquote', children: [spokenText] } : spokenText
        }),
        ...(scene.screen.length === 0
          ? []
          : [
              paragraph([strong([text(part.columns.screen)])]),
              list(scene.screen.map((line) => listItem(renderLine(line)))),
            ]),
        ...(scene.hold.length === 0
          ? []
          : [
              paragraph([strong([text(part.columns.hold)])]),
              list(
                scene.hold.map(
                  (caution): ListItem => ({
                    type: 'listItem',
                    spread: false,
                    children: [renderCaution(caution)],
                  }),
                ),
              ),
            ]),
      ])
    case 'blanks': {
      const items = part.fields.map(({ label, choices }) => {
        const blankText = choices?.map((choice) => `☐ ${choice}`).join('  ') ?? '________'
        return listItem([text(`${label}: ${blankText}`)])
      })
      return [...(part.heading === undefined ? [] : [heading(3, renderLine(part.heading))]), list(items)]
    }
  }
}

/** The meaning of the card's Markdown as a tree. */
export function cardTree(card: CardModel): Root {
  const facts = card.facts.map(({ label, value }) => listItem([text(`${label}: `), ...renderLine(value)]))
  const [known, ...others] = card.variant.lines
  const cautions = card.cautions.cautions.map(renderCaution)
  const children: RootContent[] = [
    heading(1, [text(`${card.title}: `), ...renderLine(card.machine)]),
    paragraph(renderLine(card.about)),
    ...(known === undefined ? [] : [renderCaution({ word: card.variant.label, line: known })]),
    ...others.map((line) => paragraph(renderLine(line))),
    ...(card.header === undefined ? [] : [paragraph(renderLine(card.header))]),
    ...card.authority.map((sentence) => paragraph([strong([text(sentence)])])),
    list(facts),
    ...(cautions.length === 0 ? [] : [{ type: 'blockquote' as const, children: cautions }]),
    ...card.sections.flatMap((section) => [
      heading(2, [text(section.heading)]),
      ...section.parts.flatMap((part) => renderPart(part, card)),
    ]),
  ]
  return { type: 'root', children }
}

/** The card's Markdown as mdast-util-to-markdown writes it. */
export const oracleMarkdown = (card: CardModel): string =>
  toMarkdown(cardTree(card), { bullet: '-', extensions: [gfmToMarkdown({ tablePipeAlign: false })] })
