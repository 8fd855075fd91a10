import { readFileSync } from 'node:fs'
import { fromHtml } from 'hast-util-from-html'
import { toHtml } from 'hast-util-to-html'
import { dropUndefined } from '../../src/base/index.js'
import type { CardModel, CardPart, Line } from '../../src/card/cardParts.js'
import { runCommand } from '../../src/cli/runCommand.js'
import { renderHtml, renderMarkdown, renderText, wallModel } from '../../src/v1/card.js'
import { en } from '../../src/v1/message/en.js'
import { wallFacts } from '../../src/v1/service.js'
import { oracleMarkdown } from '../card/support/markdownOracle.js'
import { memoryIo } from '../support/memoryIo.js'
import { cardOf, planExample, requestExample } from '../support/planExample.js'
import type { BenchResult, BenchRow } from './benchResult.js'
import { cpuMicros, measureInTurns } from './measureInTurns.js'

/**
 * Writes a card's texts with template literals only: every text once, escaped, with as much markup as a renderer
 * writes.
 */
function writeByTemplates(
  card: CardModel,
  escapeText: (text: string) => string,
  wrap: (text: string, from: string) => string,
): string {
  const writeLine = (line: Line) =>
    line
      .map(({ text, from }) =>
        from === undefined ? escapeText(text) : wrap(escapeText(text), escapeText(from)),
      )
      .join('')
  const writeBlock = (line: Line) => `${wrap(writeLine(line), 'block')}\n`
  const writePart = (part: CardPart): string => {
    switch (part.kind) {
      case 'table':
        return `${writeBlock(part.caption)}${part.columns.map(escapeText).join('|')}${part.rows.map((row) => row.map(({ lines }) => lines.map(writeBlock).join('')).join('')).join('')}`
      case 'list':
        return part.items
          .map(({ line, notes }) => `${writeBlock(line)}${notes.map(writeBlock).join('')}`)
          .join('')
      case 'plate':
        return `${writeBlock(part.name)}${part.rows.map(({ label, value, notes }) => `${writeBlock(label)}${writeBlock(value)}${notes.map(writeBlock).join('')}`).join('')}`
      case 'steps':
        return part.groups
          .map(
            ({ heading, steps }) =>
              `${writeBlock(heading)}${steps.map((step) => `${step.cautions.map(({ line }) => writeBlock(line)).join('')}${writeBlock(step.full)}${step.note ? writeBlock(step.note) : ''}`).join('')}`,
          )
          .join('')
      case 'panel':
        return [part.name, part.access, part.quantity, part.oil, ...part.notes]
          .concat(
            part.rows.flatMap(({ mark, name, tool, manual, setting }) => [mark, name, tool, manual, setting]),
          )
          .map(writeBlock)
          .join('')
      case 'picture':
        return [part.name, ...part.text].map(writeBlock).join('')
      case 'scenes':
        return part.scenes
          .map(({ title, say }) => `${writeBlock(title)}${say.map(({ text }) => escapeText(text)).join('')}`)
          .join('')
      case 'blanks':
        return part.fields
          .map(({ label, choices = [] }) => `${escapeText(label)} ${choices.map(escapeText).join(' ')}\n`)
          .join('')
    }
  }
  return card.sections
    .map(({ heading, parts }) => `${escapeText(heading)}\n${parts.map(writePart).join('')}`)
    .join('\n')
}

const escapeHtml = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;')
const escapeMarkdown = (text: string) => text.replace(/[\\`*_[<~|]/g, '\\$&')

const FOLDERS = ['tind-4', 'bud-3', 'acre-26', 'reach-55', 'kvist-2']

/** A thousand wall cards from one command in one process, without the disk: 714 sheets, 286 of them with two variants. */
async function runWallCards(): Promise<BenchRow> {
  const read = (name: string) => readFileSync(`examples/${name}.yaml`, 'utf8')
  const files: Record<string, string> = {
    'fleet/toolbox.yaml': read('tind-4/toolbox'),
    'fleet/stock.yaml': read('tind-4/stock'),
  }
  for (let place = 0; place < 714; place++) {
    const sheet = read(`${FOLDERS[place % FOLDERS.length]}/sheet`)
    files[`fleet/sheet-${place}.yaml`] = sheet.replace(/^id: .*/m, (id) => `${id}-${place}`)
  }
  const io = memoryIo(files)
  const before = cpuMicros()
  await runCommand(['card', 'fleet', '--paper', 'wall', '--out', 'out', '--level', 'error'], io)
  return { what: `${io.written.size / 2} wall cards from one command`, times: [cpuMicros() - before] }
}

/** A card in each form, against template literals with the same escaping. */
async function compareForms(
  name: string,
  card: CardModel,
  goals: { readonly html?: number; readonly markdown?: number; readonly text?: number },
): Promise<readonly BenchRow[]> {
  const keep = (text: string): string => text
  const times = await measureInTurns(
    {
      html: () => renderHtml(card),
      htmlPeer: () =>
        writeByTemplates(card, escapeHtml, (text, from) => `<span data-from="${from}">${text}</span>`),
      markdown: () => renderMarkdown(card),
      markdownPeer: () => writeByTemplates(card, escapeMarkdown, keep),
      text: () => renderText(card),
      textPeer: () => writeByTemplates(card, keep, keep),
    },
    // A thousand cards are written by code that the engine has optimised.
    { rounds: 25, roundMs: 10, warmUpMs: 500 },
  )
  return (['html', 'markdown', 'text'] as const).map((form) =>
    dropUndefined({
      what: `${name}: ${form === 'html' ? 'HTML' : form === 'markdown' ? 'Markdown' : 'text'}`,
      times: times[form],
      peer: { name: 'template literals', times: times[`${form}Peer`] },
      goal: goals[form],
    }),
  )
}

/** The packages that write a tree that is ready. */
async function comparePackages(card: CardModel): Promise<readonly BenchRow[]> {
  const tree = fromHtml(renderHtml(card))
  const times = await measureInTurns(
    {
      html: () => renderHtml(card),
      tree: () => toHtml(tree),
      markdown: () => renderMarkdown(card),
      oracle: () => oracleMarkdown(card),
    },
    { rounds: 9 },
  )
  return [
    {
      what: 'a card: HTML',
      times: times.html,
      peer: { name: 'hast-util-to-html, tree ready', times: times.tree },
    },
    {
      what: 'a card: Markdown',
      times: times.markdown,
      peer: { name: 'mdast-util-to-markdown', times: times.oracle },
    },
  ]
}

function makeWallCard(): CardModel {
  const { sheet, toolbox, stock } = requestExample('tind-4')
  const facts = wallFacts(dropUndefined({ sheet, identity: { variant: 'long' }, toolbox, stock }), {
    iso6789: '2017',
  })
  if (!facts.ok) throw new Error('no facts')
  return wallModel(facts.value, en)
}

export default async function run(): Promise<BenchResult> {
  const card = cardOf(planExample('tind-4'))
  return {
    rows: [
      ...(await compareForms('a card', card, { html: 10, markdown: 10, text: 5 })),
      ...(await compareForms('a wall card', makeWallCard(), { html: 10, markdown: 10 })),
      ...(await comparePackages(card)),
      await runWallCards(),
    ],
  }
}
