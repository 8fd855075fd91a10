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

/** CPU time of each, in turn, so that a busy machine slows all of them equally; the median of the rounds in ms. */
function compare(tasks: Readonly<Record<string, () => unknown>>): Record<string, number> {
  const times: Record<string, number[]> = {}
  // A thousand cards, written by code that the engine has optimized.
  for (const task of Object.values(tasks)) for (let turn = 0; turn < 300; turn++) task()
  for (let round = 0; round < 41; round++)
    for (const [name, task] of Object.entries(tasks)) {
      const start = process.cpuUsage()
      for (let turn = 0; turn < 20; turn++) task()
      const { user, system } = process.cpuUsage(start)
      times[name] = [...(times[name] ?? []), (user + system) / 20_000]
    }
  return Object.fromEntries(
    Object.entries(times).map(([name, all]) => [name, all.sort((a, b) => a - b)[20] ?? 0]),
  )
}

/** Milliseconds of CPU time. */
async function timeOf(task: () => unknown): Promise<number> {
  const start = process.cpuUsage()
  await task()
  const { user, system } = process.cpuUsage(start)
  return (user + system) / 1000
}

const FOLDERS = ['tind-4', 'bud-3', 'acre-26', 'reach-55', 'kvist-2']

/** A thousand wall cards from one command in one process, without the disk: 714 sheets, 286 of them with two variants. */
async function runWallCards(): Promise<void> {
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
  const words = ['card', 'fleet', '--paper', 'wall', '--out', 'out', '--level', 'error']
  const command = await timeOf(() => runCommand(words, io))
  const identity = { variant: 'long' }
  const { sheet, toolbox, stock } = requestExample('tind-4')
  const facts = wallFacts(dropUndefined({ sheet, identity, toolbox, stock }), { iso6789: '2017' })
  if (!facts.ok) throw new Error('no facts')
  const card = wallModel(facts.value, en)
  const repeat = (task: () => unknown) =>
    timeOf(() => {
      for (let turn = 0; turn < 1000; turn++) task()
    })
  const literals = () => [
    writeByTemplates(card, escapeHtml, (text, from) => `<span data-from="${from}">${text}</span>`),
    writeByTemplates(card, escapeMarkdown, (text) => text),
  ]
  await repeat(literals)
  const base = await repeat(literals)
  const writing = await repeat(() => [renderHtml(card), renderMarkdown(card)])
  console.log(`${io.written.size / 2} wall cards from one command: ${(command / 1000).toFixed(1)} s`)
  console.log(
    `their HTML and Markdown alone: ${(writing / base).toFixed(1)} × templates (${base.toFixed(0)} ms)`,
  )
}

/** A full card as HTML, Markdown and text: ratios to template literals with the same escaping, in one run. */
export default async function run(): Promise<void> {
  const card = cardOf(planExample('tind-4'))
  const tree = fromHtml(renderHtml(card))
  const ms = compare({
    'HTML by templates': () =>
      writeByTemplates(card, escapeHtml, (text, from) => `<span data-from="${from}">${text}</span>`),
    HTML: () => renderHtml(card),
    'HTML by hast-util-to-html (tree ready)': () => toHtml(tree),
    'Markdown by templates': () => writeByTemplates(card, escapeMarkdown, (text) => text),
    Markdown: () => renderMarkdown(card),
    'Markdown by mdast-util-to-markdown': () => oracleMarkdown(card),
    'text by templates': () =>
      writeByTemplates(
        card,
        (text) => text,
        (text) => text,
      ),
    text: () => renderText(card),
  })
  for (const [name, time] of Object.entries(ms)) {
    const base = ms[`${name.split(' ')[0]} by templates`] ?? 1
    console.log(`${name}: ${time.toFixed(3)} ms, ${(time / base).toFixed(1)} ×`)
  }
  await runWallCards()
}
