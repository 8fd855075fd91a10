import fc from 'fast-check'
import type { Element, Nodes } from 'hast'
import { fromHtml } from 'hast-util-from-html'
import { toHtml } from 'hast-util-to-html'
import { describe, expect, it } from 'vitest'
import { shortenCard } from '../../src/card/shortenCard.js'
import { en } from '../../src/message/en/index.js'
import { cardModel, cardStyle, renderHtml } from '../../src/v1/card.js'
import { law } from '../support/law.js'
import { cardOf } from '../support/planExample.js'
import { HOSTILE_NAMES, withHostileNames } from './hostilePlan.js'
import { PLAN_WITHOUT_VARIANT, SKARNFELL_PLAN } from './skarnfellPlan.js'

const elements = (root: Nodes, found: Element[] = []): Element[] => {
  if (root.type === 'element') found.push(root)
  if ('children' in root) for (const child of root.children) elements(child, found)
  return found
}
const textOf = (node: Nodes): string =>
  node.type === 'text' ? node.value : 'children' in node ? node.children.map(textOf).join('') : ''

const card = cardOf(SKARNFELL_PLAN)
const html = renderHtml(card)
const all = elements(fromHtml(html))
const named = (...names: string[]) => all.filter(({ tagName }) => names.includes(tagName))

/** Contrast ratio of two colours as in WCAG 2.2 (relative luminance); from memory. */
function contrast(one: string, other: string): number {
  const luminance = (colour: string) => {
    const sixDigits = colour.length === 4 ? colour.replace(/[0-9a-f]/g, '$&$&') : colour
    const channels = [1, 3, 5].map((at) => Number.parseInt(sixDigits.slice(at, at + 2), 16) / 255)
    const [red = 0, green = 0, blue = 0] = channels.map((value) =>
      value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4,
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue
  }
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b)
  return (high + 0.05) / (low + 0.05)
}

describe('renderHtml', () => {
  it('is one document in its language, with landmarks and no script or outside file', () => {
    expect(html.startsWith('<!doctype html><html lang="en" dir="ltr">')).toBe(true)
    for (const landmark of ['header', 'main', 'footer', 'title'])
      expect(named(landmark).length).toBeGreaterThan(0)
    expect(named('main')).toHaveLength(1)
    expect(named('script', 'link', 'img', 'iframe', 'object', 'a', 'form')).toEqual([])
    expect(html).not.toMatch(/url\(|@import|https?:/)
    expect(all.filter(({ properties }) => Object.keys(properties).some((name) => /^on/i.test(name)))).toEqual(
      [],
    )
  })

  it('has one h1 and headings that never skip a level', () => {
    const levels = named('h1', 'h2', 'h3', 'h4').map(({ tagName }) => Number(tagName.slice(1)))
    expect(levels.filter((level) => level === 1)).toHaveLength(1)
    expect(levels[0]).toBe(1)
    for (const [place, level] of levels.entries())
      expect(level - (levels[place - 1] ?? 0)).toBeLessThanOrEqual(1)
  })

  it('labels every section by its heading, every table by a caption, every header cell by a scope', () => {
    const ids = new Set(all.map(({ properties }) => properties['id']))
    const sections = named('section')
    expect(sections).toHaveLength(9)
    for (const section of sections) expect(ids.has(String(section.properties['ariaLabelledBy']))).toBe(true)
    const tables = named('table')
    expect(tables.length).toBeGreaterThan(2)
    for (const table of tables) {
      const tableElements = elements(table)
      expect(
        textOf(tableElements.find(({ tagName }) => tagName === 'caption') ?? table).length,
      ).toBeGreaterThan(3)
      for (const cell of tableElements.filter(({ tagName }) => tagName === 'th')) {
        expect(['col', 'row']).toContain(cell.properties['scope'])
      }
    }
    expect(new Set([...ids].filter(Boolean)).size).toBe(
      [...all].filter(({ properties }) => properties['id']).length,
    )
  })

  it('gives each picture a meaning in words or hides it', () => {
    const drawings = named('svg')
    expect(drawings.length).toBeGreaterThan(6)
    for (const drawing of drawings) {
      const isHidden = drawing.properties['ariaHidden'] === 'true'
      const hasTitle = elements(drawing).some(({ tagName }) => tagName === 'title')
      expect(isHidden !== hasTitle).toBe(true)
    }
  })

  it('numbers its lines and names their steps, with the cautions before the line that needs them', () => {
    const numbers = all.filter(({ properties }) => String(properties['className']) === 'number').map(textOf)
    expect(numbers).toEqual(SKARNFELL_PLAN.lines.map((_line, index) => String(index + 1)))
    const steps = all.flatMap(({ properties }) => String(properties['dataSteps'] ?? []).split(' '))
    expect(steps.filter(Boolean)).toEqual(SKARNFELL_PLAN.steps.map(({ id }) => id))
    const lifting = html.indexOf('A raised machine can fall')
    expect(lifting).toBeGreaterThan(-1)
    expect(lifting).toBeLessThan(html.indexOf('Raise the machine and set it on'))
    expect(lifting).toBeGreaterThan(html.indexOf('Chock both sides of each wheel of the'))
  })

  it('uses only colours with a contrast of at least 4.5 to their background', () => {
    const style = textOf(named('style')[0] as Element)
    // Light, dark (unchanged values as in light), print.
    const blocks = [...style.matchAll(/\{((?:page:[^;]*;)?--(?:ink|soft)[^}]*)\}/g)].map(
      ([, text = '']) => text,
    )
    expect(blocks).toHaveLength(3)
    const read = (text: string) =>
      Object.fromEntries([...text.matchAll(/--([a-z]+):(#[0-9a-f]{3,6})/g)].map(([, key, hue]) => [key, hue]))
    const [light = {}, dark = {}, print = {}] = blocks.map(read)
    for (const colours of [light, { ...light, ...dark }, { ...light, ...print }])
      for (const ink of ['ink', 'soft', 'deep'])
        for (const paper of ['paper', 'tint', 'warn'])
          expect(contrast(colours[ink] ?? '', colours[paper] ?? '')).toBeGreaterThanOrEqual(4.5)
    const used = [...style.matchAll(/(?<![-a-z])color:([^;}]+)/g)].map(([, colour]) => colour)
    expect(new Set(used)).toEqual(new Set(['var(--ink)', 'var(--soft)', 'var(--deep)']))
  })

  it('is the same bytes for the same plan, and changes nothing in it', () => {
    const frozen = JSON.stringify(SKARNFELL_PLAN)
    expect(renderHtml(cardOf(SKARNFELL_PLAN))).toBe(html)
    expect(JSON.stringify(SKARNFELL_PLAN)).toBe(frozen)
    expect(JSON.parse(JSON.stringify(card))).toEqual(card)
  })

  it('says that the variant is unknown and what is missing, and that a torque is not stated', () => {
    const text = textOf(fromHtml(renderHtml(cardOf(PLAN_WITHOUT_VARIANT))))
    expect(text).toContain('not known without the serial number and variant')
    expect(text).toContain('Tind 4 S, short bed or Tind 4 L, long bed')
    expect(text).toContain('not stated: see the manual')
    expect(text).toContain('300\u00a0mL or 340\u00a0mL')
  })

  it('puts the manual’s own figure first, what it prints beside it next, and marks what was worked out', () => {
    const at = (text: string) => html.indexOf(text)
    expect(at('450\u00a0±\u00a020\u00a0mL')).toBeLessThan(at('½\u00a0US\u00a0qt'))
    expect(at('½\u00a0US\u00a0qt')).toBeLessThan(at('15.8\u00a0imp\u00a0fl\u00a0oz'))
    expect(html).toContain('15.8\u00a0imp\u00a0fl\u00a0oz</span> (calculated)')
  })

  it.each(HOSTILE_NAMES)('keeps its structure with any names in the sheet: %j', (name) => {
    const hostileHtml = renderHtml(cardOf(withHostileNames(name)))
    const tags = (text: string) => elements(fromHtml(text)).map(({ tagName }) => tagName)
    const plainTags = tags(renderHtml(cardOf(withHostileNames('plain'))))
    expect(tags(hostileHtml)).toEqual(plainTags)
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the test looks for control characters
    expect(hostileHtml).not.toMatch(/[\u202a-\u202e\u2066-\u2069\u200e\u200f\u001b\u0007\ue000]|\p{Cs}/u)
    expect(textOf(fromHtml(hostileHtml))).not.toContain('\n\n')
  })

  it('keeps it for any name', () => {
    law(50, fc.string({ unit: 'binary', maxLength: 60 }), (name) => {
      const found = elements(fromHtml(renderHtml(cardOf(withHostileNames(name)))))
      expect(found.filter(({ tagName }) => tagName === 'script' || tagName === 'img')).toEqual([])
      expect(found.filter(({ tagName }) => tagName === 'section')).toHaveLength(9)
    })
  })

  it.each(['plain', ...HOSTILE_NAMES])('is as hast-util-to-html writes what a browser reads: %j', (name) => {
    const written = renderHtml(cardOf(withHostileNames(name)))
    // The library also writes apostrophes and backticks in attributes as codes.
    const rewritten = toHtml(fromHtml(written.trimEnd())).replaceAll('&#x27;', "'").replaceAll('&#x60;', '`')
    expect(`${rewritten}\n` === written).toBe(true)
  })

  it('throws for an invalid card, plan or catalogue', () => {
    expect(() => renderHtml({} as never)).toThrow("card must be a card, with kind 'service-card'")
    expect(() => renderHtml(null as never)).toThrow(TypeError)
    const sheet = { kind: 'spec-sheet' }
    expect(() => cardModel({ value: sheet, findings: [] } as never, en)).toThrow(
      'planned.value must be a visit plan',
    )
    expect(() => cardModel(null as never, en)).toThrow(TypeError)
    expect(() => cardModel({ value: SKARNFELL_PLAN, findings: [] }, {} as never)).toThrow(
      'catalogue.language must be a string',
    )
  })
})

describe('the short card', () => {
  const shortHtml = renderHtml(shortenCard(card))

  it('keeps figures, settings, the order of work and the gaps, in short words', () => {
    expect(shortenCard(card).sections.map(({ id }) => id)).toEqual([
      'missing',
      'figures',
      'tightening',
      'steps',
    ])
    expect(shortHtml).toContain('>20–25\u00a0N·m</span></span><span>set <span')
    expect(shortHtml).toContain('22.5\u00a0N·m')
    expect(shortHtml).not.toContain('Turn the drain plug in by hand until it is finger tight')
    expect(shortHtml.length).toBeLessThan(html.length)
  })

  it('throws for an invalid card', () => {
    expect(() => shortenCard({} as never)).toThrow(TypeError)
    expect(() => renderHtml(shortenCard(undefined as never))).toThrow(TypeError)
  })
})

it('has the layouts of narrow screens for screens alone: paper in a print dialog is as narrow', () => {
  const html = renderHtml(cardOf(SKARNFELL_PLAN))
  const queries = [...html.matchAll(/@media ([^{]*)\{/g)].map(([, query]) => query)
  expect(new Set(queries)).toEqual(
    new Set([
      'print',
      'screen and (max-width:760px)',
      'screen and (prefers-color-scheme:dark)',
      // Dates are kept whole where the table is wide enough, on paper too.
      '(min-width:650px)',
    ]),
  )
  // Only default margins, so that the user can choose others in the dialog.
  expect(html.match(/@page[^}]*\}|max-height/g)).toEqual(['@page service-card{margin:7mm}'])
})

describe('a card in an app with a strict content policy', () => {
  it('names its stylesheet in place of a style, or is one element', () => {
    const page = renderHtml(card, { stylesheet: '/a"b.css' })
    expect(page).toContain('<link rel="stylesheet" href="/a&#x22;b.css">')
    expect(page).toContain("style-src 'self'")
    const fragment = renderHtml(card, { form: 'fragment' })
    expect(fragment).toMatch(/^<div class="service-card full" lang="en" dir="ltr">.*<\/div>\n$/s)
    for (const text of [page, fragment]) expect(text).not.toMatch(/<style|style=/)
  })

  it('has a stylesheet whose every rule is for the card alone', () => {
    const rules = [...cardStyle(card).matchAll(/(?:^|[{}])\s*([^{}@]+)\{/g)].map(
      ([, selectors = '']) => selectors,
    )
    expect(rules.length).toBeGreaterThan(100)
    // A comma inside parentheses, as in `:is(td,th)`, begins no selector.
    for (const selector of rules.flatMap((selectors) => selectors.replaceAll(/\([^()]*\)/g, '()').split(',')))
      expect(selector).toMatch(/^\.service-card/)
  })

  it('refuses another form and an unknown option', () => {
    expect(() => renderHtml(card, { form: 'part' as never })).toThrow('options.form')
    expect(() => renderHtml(card, { style: '' } as never)).toThrow('style')
    expect(() => cardStyle({} as never)).toThrow(TypeError)
  })
})
