import type { Nodes } from 'mdast'
import { fromMarkdown } from 'mdast-util-from-markdown'
import { gfmFromMarkdown } from 'mdast-util-gfm'
import { gfm } from 'micromark-extension-gfm'
import { describe, expect, it } from 'vitest'
import { shortenCard } from '../../src/card/shortenCard.js'
import { renderMarkdown } from '../../src/v1/card.js'
import { cardOf } from '../support/planExample.js'
import { HOSTILE_NAMES, withHostileNames } from './hostilePlan.js'
import { PLAN_WITHOUT_VARIANT, SKARNFELL_PLAN } from './skarnfellPlan.js'

/** Only the syntax, without the reader's later step that links escaped addresses. */
const EXTENSIONS = gfmFromMarkdown().map((extension) => ({ ...extension, transforms: [] }))
const read = (markdown: string) =>
  fromMarkdown(markdown, { extensions: [gfm()], mdastExtensions: EXTENSIONS })
const nodes = (node: Nodes, found: Nodes[] = []): Nodes[] => {
  found.push(node)
  if ('children' in node) for (const child of node.children) nodes(child, found)
  return found
}
const textOf = (node: Nodes): string =>
  'value' in node ? node.value : 'children' in node ? node.children.map(textOf).join('') : ''

describe('renderMarkdown', () => {
  const markdown = renderMarkdown(cardOf(SKARNFELL_PLAN))
  const found = nodes(read(markdown))

  it('has one title, nine sections, tables and a tick box for every line', () => {
    const headings = found.flatMap((node) => (node.type === 'heading' ? [node] : []))
    expect(headings.filter(({ depth }) => depth === 1)).toHaveLength(1)
    expect(headings.filter(({ depth }) => depth === 2)).toHaveLength(9)
    expect(found.filter(({ type }) => type === 'table').length).toBeGreaterThan(2)
    const boxes = found.filter((node) => node.type === 'listItem' && node.checked === false)
    expect(boxes.length).toBeGreaterThanOrEqual(SKARNFELL_PLAN.lines.length)
  })

  it('holds the figures, the gaps and the order of what comes first', () => {
    const text = textOf(read(markdown))
    for (const piece of [
      '450\u00a0±\u00a020\u00a0mL',
      '20–25\u00a0N·m',
      '22.5\u00a0N·m',
      'not stated: see the manual',
    ]) {
      expect(text).toContain(piece)
    }
    expect(text.indexOf('own manual and the local codes')).toBeLessThan(text.indexOf('What is due'))
  })

  it('says that the variant is unknown', () => {
    const text = textOf(read(renderMarkdown(cardOf(PLAN_WITHOUT_VARIANT))))
    expect(text).toContain('not known without the serial number and variant')
  })

  it('writes the short card too', () => {
    const shortMarkdown = renderMarkdown(shortenCard(cardOf(SKARNFELL_PLAN)))
    expect(shortMarkdown.length).toBeLessThan(markdown.length)
    expect(shortMarkdown).toContain('Gear oil, short card')
  })

  it.each(HOSTILE_NAMES)('makes no markup of what the sheet calls things: %j', (name) => {
    const kindsOf = (text: string) => nodes(read(text)).map(({ type }) => type)
    const hostileKinds = kindsOf(renderMarkdown(cardOf(withHostileNames(name))))
    const forbidden = ['html', 'link', 'image', 'code', 'inlineCode', 'delete', 'emphasis', 'linkReference']
    expect(hostileKinds.filter((kind) => forbidden.includes(kind))).toEqual([])
    const counted = (kind: string) => hostileKinds.filter((found) => found === kind).length
    const plainKinds = kindsOf(renderMarkdown(cardOf(withHostileNames('plain'))))
    for (const kind of ['heading', 'listItem', 'table', 'tableRow', 'tableCell', 'strong']) {
      expect([kind, counted(kind)]).toEqual([kind, plainKinds.filter((found) => found === kind).length])
    }
  })

  it('throws for an invalid card', () => {
    expect(() => renderMarkdown({ kind: 'other' } as never)).toThrow(TypeError)
    expect(() => renderMarkdown(undefined as never)).toThrow(TypeError)
  })
})
