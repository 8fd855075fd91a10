import fc from 'fast-check'
import type { Nodes, PhrasingContent } from 'mdast'
import { fromMarkdown } from 'mdast-util-from-markdown'
import { gfmFromMarkdown } from 'mdast-util-gfm'
import { gfm } from 'micromark-extension-gfm'
import { describe, expect, it } from 'vitest'
import type { CardModel } from '../../src/card/cardParts.js'
import { shortenCard } from '../../src/card/shortenCard.js'
import { renderMarkdown } from '../../src/v1/card.js'
import { law } from '../support/law.js'
import { cardOf } from '../support/planExample.js'
import { planExamples } from './planExamples.js'
import { SKARNFELL_PLAN } from './skarnfellPlan.js'
import { cardTree, oracleMarkdown } from './support/markdownOracle.js'

/** Only the syntax, without the reader's later step that links escaped addresses. */
const EXTENSIONS = gfmFromMarkdown().map((extension) => ({ ...extension, transforms: [] }))
const read = (markdown: string) =>
  fromMarkdown(markdown, { extensions: [gfm()], mdastExtensions: EXTENSIONS })

/** A line as its characters, bold ones with a mark; white space is one space, as a reader sees it. */
function readLine(nodes: readonly PhrasingContent[], strong = false): string {
  const line = nodes
    .map((node) => {
      if (node.type === 'strong') return readLine(node.children, true)
      if (node.type !== 'text') return `<${node.type}>`
      return strong ? node.value.replace(/\S/g, '$&●') : node.value
    })
    .join('')
  return strong ? line : line.replace(/●+/g, '●').replace(/\s+/g, ' ').trim()
}

/** The Markdown as a reader sees it: blocks with their kind, and lines. */
function withoutPosition(node: Nodes): unknown {
  if (node.type === 'paragraph' || node.type === 'heading' || node.type === 'tableCell') {
    const line = readLine(node.children)
    return node.type === 'heading' ? [`h${node.depth}`, line] : line
  }
  if (!('children' in node)) return node.type
  const mark = node.type === 'list' ? [node.ordered, node.start ?? null] : []
  const box = node.type === 'listItem' ? [node.checked ?? null] : []
  return [node.type, ...mark, ...box, ...node.children.map(withoutPosition)]
}

const CUT = /^(rows|items|groups|steps|fields|cautions)$/

/** A short piece of the card with its texts replaced by others, in turn. */
function withTexts(card: CardModel, texts: readonly string[]): CardModel {
  let turn = 0
  const replace = (value: unknown, key: string): unknown => {
    if (typeof value === 'string')
      return /^(text|label|heading|title)$/.test(key) ? texts[turn++ % texts.length] : value
    if (Array.isArray(value))
      return (CUT.test(key) ? value.slice(0, 2) : value).map((item) => replace(item, ''))
    if (typeof value !== 'object' || value === null) return value
    return Object.fromEntries(Object.entries(value).map(([inner, item]) => [inner, replace(item, inner)]))
  }
  return replace(card, '') as CardModel
}

const SIGNS =
  '\\ ` * _ ** __ [ ] ( ) < > ~ ~~ | & &amp; &#35; # ## + - --- = === 1. 2) ! : @ " / . ☐ “ ” é ß 字'.split(
    ' ',
  )
const PIECES = [
  ...SIGNS,
  ' ',
  '  ',
  '\n',
  '\t',
  'a',
  'b1',
  'www.a.no',
  'https://a.no',
  'a@b.no',
  '<b>',
  '[x](y)',
  '[ ] ',
]
/** A text with at least one letter: an item without a letter is not a tick box. */
const anyText = fc
  .array(fc.constantFrom(...PIECES), { maxLength: 8 })
  .chain((pieces) =>
    fc.nat(pieces.length).map((at) => [...pieces.slice(0, at), 'x', ...pieces.slice(at)].join('')),
  )

describe('Markdown of cards, held against mdast-util-to-markdown', () => {
  it.each(planExamples())('%s gives the expected tree', (_name, plan) => {
    for (const card of [cardOf(plan), shortenCard(cardOf(plan))]) {
      const markdown = renderMarkdown(card)
      expect(withoutPosition(read(markdown))).toEqual(withoutPosition(cardTree(card)))
      // The library's output differs only for a gap that is bold twice.
      expect(markdown).toBe(oracleMarkdown(card).replace(/\*\*__(.*?)__\*\*/g, '**$1**'))
    }
  })

  it('gives the expected tree for any texts', () => {
    const card = cardOf(SKARNFELL_PLAN)
    law(25, fc.array(anyText, { minLength: 30, maxLength: 90 }), (texts) => {
      const hostileCard = withTexts(card, texts)
      expect(withoutPosition(read(renderMarkdown(hostileCard)))).toEqual(
        withoutPosition(cardTree(hostileCard)),
      )
    })
  })
})
