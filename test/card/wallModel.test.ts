import type { Element, Nodes } from 'hast'
import { fromHtml } from 'hast-util-from-html'
import type { Nodes as MarkdownNodes } from 'mdast'
import { fromMarkdown } from 'mdast-util-from-markdown'
import { gfmFromMarkdown } from 'mdast-util-gfm'
import { gfm } from 'micromark-extension-gfm'
import { describe, expect, it } from 'vitest'
import { readPointer } from '../../src/base/pointers.js'
import type { Line } from '../../src/card/cardParts.js'
import { type CardPart, renderHtml, renderMarkdown, renderText, wallModel } from '../../src/v1/card.js'
import { en } from '../../src/v1/message/en.js'
import { type WallFacts, wallFacts } from '../../src/v1/service.js'
import { GOOD_MACHINES } from '../service/goodMachines/index.js'
import { readExample } from '../support/readExample.js'
import { HOSTILE_NAMES } from './hostilePlan.js'
import { oracleMarkdown } from './support/markdownOracle.js'

const FOLDERS = ['tind-4', 'acre-26', 'bud-3', 'kvist-2', 'reach-55'] as const
const factsOf = (input: Parameters<typeof wallFacts>[0]): WallFacts => {
  const facts = wallFacts(input, { iso6789: '2017' })
  if (!facts.ok) throw new Error(JSON.stringify(facts.findings))
  return facts.value
}
const exampleFacts = (folder: (typeof FOLDERS)[number], identity = {}) =>
  factsOf({
    sheet: readExample(folder, 'sheet'),
    identity,
    toolbox: readExample(folder, 'toolbox'),
    stock: readExample(folder, 'stock'),
  })
const FACTS: readonly (readonly [string, WallFacts])[] = [
  ...FOLDERS.map((folder) => [folder, exampleFacts(folder)] as const),
  ['tind-4 long', exampleFacts('tind-4', { variant: 'long' })],
  ...Object.entries(GOOD_MACHINES).map(
    ([name, { sheet, log, toolbox, stock }]) =>
      [name, factsOf({ sheet, identity: log.identity, toolbox, stock })] as const,
  ),
]
const LONG = exampleFacts('tind-4', { variant: 'long' })

/** Only the syntax, without the reader's later step that links escaped addresses. */
const EXTENSIONS = gfmFromMarkdown().map((extension) => ({ ...extension, transforms: [] }))
/** The kinds of Markdown blocks and spans, without the pieces of a text. */
const kinds = (node: MarkdownNodes, found: string[] = []): readonly string[] => {
  if (node.type !== 'text') found.push(node.type)
  if ('children' in node) for (const child of node.children) kinds(child, found)
  return found
}

/** All lines of a value, wherever they are. */
function linesIn(value: unknown, found: Line[] = []): readonly Line[] {
  if (Array.isArray(value) && value.every((candidate) => typeof candidate?.text === 'string'))
    found.push(value as Line)
  else if (typeof value === 'object' && value !== null)
    for (const candidate of Object.values(value)) linesIn(candidate, found)
  return found
}
const elements = (node: Nodes, found: Element[] = []): Element[] => {
  if (node.type === 'element') found.push(node)
  if ('children' in node) for (const child of node.children) elements(child, found)
  return found
}
const textOf = (node: Nodes): string =>
  node.type === 'text' ? node.value : 'children' in node ? node.children.map(textOf).join('') : ''
const partsOf = (facts: WallFacts): readonly CardPart[] =>
  wallModel(facts, en).sections.flatMap(({ parts }) => parts)

describe.each(FACTS)('the wall card of %s', (_name, facts) => {
  const card = wallModel(facts, en)

  it('has a pointer into the facts for every digit', () => {
    const spans = linesIn(card).flat()
    expect(spans.length).toBeGreaterThan(30)
    expect(spans.filter(({ text, from }) => /[0-9]/.test(text) && from === undefined)).toEqual([])
    const lostSources = spans.flatMap(({ from }) =>
      from !== undefined && readPointer(facts, from) === undefined ? [from] : [],
    )
    expect(lostSources).toEqual([])
  })

  it('says the same in HTML, Markdown and text; a picture has its values as text', () => {
    const html = renderHtml(card)
    const written = textOf(fromHtml(html))
    for (const candidate of [renderMarkdown(card), renderText(card), html])
      expect(candidate).not.toMatch(/undefined|NaN|\[object/)
    for (const { setting } of facts.tightenings)
      if (setting !== undefined) {
        expect(renderText(card)).toContain(`${setting.value}\u00a0`)
        expect(written).toContain(`${setting.value}\u00a0`)
      }
    const titles = elements(fromHtml(html)).filter(({ tagName }) => tagName === 'title')
    const pictures = partsOf(facts).flatMap((part) =>
      part.kind === 'picture' ? [part] : part.kind === 'panel' ? part.drawings : [],
    )
    // One of them is the title of the page.
    expect(titles.length).toBeGreaterThan(0)
    expect(titles.length - 1).toBeLessThanOrEqual(pictures.length)
    for (const { text } of pictures) expect(text.length).toBeGreaterThan(0)
    expect(renderMarkdown(card)).toBe(oracleMarkdown(card))
  })
})

describe('wallModel', () => {
  const card = wallModel(LONG, en)
  const html = renderHtml(card)

  it('has the parts of a wall card in the order in which they are needed', () => {
    expect(card.sections.map(({ id }) => id)).toEqual([
      'panels',
      'job',
      'settings',
      'pours',
      'wallSources',
      'sizes',
    ])
    const text = textOf(fromHtml(html))
    const order = [
      'Tind 4',
      'TL00001',
      'Not this machine',
      'WARNING',
      'Rear gearcase',
      'The job',
      'Wrench settings',
      'Pouring',
    ]
    const places = order.map((words) => text.indexOf(words, text.indexOf('</style>')))
    expect(places.every((place) => place >= 0)).toBe(true)
    expect(places.slice(1)).toEqual(places.slice(1).toSorted((place, other) => place - other))
  })

  it('names the plugs of a gearcase that shares the oil in the order of work, and severe use in figures', () => {
    const text = renderText(wallModel(exampleFacts('reach-55'), en))
    expect(text).toContain('Loosen F1, D1, D2. Tighten D1, D2, F1')
    const acre = renderText(wallModel(exampleFacts('acre-26'), en)).replaceAll('\u00a0', ' ')
    expect(acre.replaceAll(/\s+/g, ' ')).toContain('200 h')
    expect(acre.replaceAll(/\s+/g, ' ')).toContain('the interval times 0.5: working in water')
  })

  it('names the drain plug of the gearcase that has one, and says where no level is read', () => {
    const text = (folder: (typeof FOLDERS)[number], identity = {}) =>
      renderText(wallModel(exampleFacts(folder, identity), en)).replaceAll(/\s+/g, ' ')
    expect(text('bud-3', { variant: 'locking' })).toContain('Drain plug out (D2). Cover off (C1).')
    expect(text('kvist-2')).toContain('No level to read: the measured quantity goes in.')
    expect(text('kvist-2')).not.toContain('Read the level.')
    expect(text('tind-4', { variant: 'long' })).toContain(
      'Rear gearcase: Finish it first, with the machine on the ground. Front differential: Raise it onto rated stands.',
    )
    expect(text('acre-26')).toContain('Turn the wheel: mark down (hub reduction).')
  })

  it('puts what the manual does not state before the warning', () => {
    const withoutToolbox = renderHtml(wallModel(exampleFacts('kvist-2'), en))
    expect(withoutToolbox.indexOf('Not in the manual')).toBeGreaterThan(0)
    expect(withoutToolbox.indexOf('Not in the manual')).toBeLessThan(withoutToolbox.indexOf('WARNING'))
  })

  it('draws the marks of the wrench itself: one for each step of its scale', () => {
    const scales = elements(fromHtml(html)).filter(({ properties }) =>
      (properties['className'] as readonly string[] | undefined)?.includes('scale'),
    )
    const countMarks = (scale: Element) =>
      elements(scale)
        .filter(({ tagName, properties }) => tagName === 'path' && Number(properties['strokeWidth']) === 0.25)
        .map(({ properties }) => String(properties['d']).match(/M/g)?.length ?? 0)
    // 20 to 110 N·m by 1 has 91 marks; 5 to 25 N·m by 0.5 has 41.
    const svgs = scales.filter(({ tagName }) => tagName === 'svg')
    expect(svgs.map(countMarks)).toEqual([[91], [41]])
  })

  it('draws no scale whose marks would touch, and writes its settings', () => {
    const [wrench] = LONG.wrenches
    if (wrench === undefined) throw new Error('no wrench')
    const scales = wrench.scales.map((scale) => ({ ...scale, scale: { ...scale.scale, graduation: 0.01 } }))
    const fineScalePage = renderHtml(wallModel({ ...LONG, wrenches: [{ ...wrench, scales }] }, en))
    expect(fineScalePage).not.toContain('drawing scale')
    expect(fineScalePage).toContain('31\u00a0N·m')
  })

  it('shows four gearcases, with the job before the panels', () => {
    const panels = [0, 1].flatMap(() => LONG.panels)
    const longWall = wallModel({ ...LONG, panels }, en)
    expect(longWall.sections.map(({ id }) => id).slice(0, 2)).toEqual(['job', 'panels'])
    expect(renderHtml(longWall).match(/<article class="panel">/g)).toHaveLength(4)
  })

  it.each(HOSTILE_NAMES)('stays inert whatever the documents call things: %j', (name) => {
    const FREE =
      /^(name|make|model|type|header|serial|gearcase|part|text|serviceName|criteria|filler|oil|title|edition|page|partNumber|product|grade|category|asPrinted|drive|size)$/
    const replace = (value: unknown, key: string, text: string): unknown => {
      if (typeof value === 'string')
        return FREE.test(key) || key === 'instances' || key === 'supports' ? text : value
      if (Array.isArray(value)) return value.map((item) => replace(item, key, text))
      if (typeof value !== 'object' || value === null) return value
      return Object.fromEntries(
        Object.entries(value).map(([inner, child]) => [inner, replace(child, inner, text)]),
      )
    }
    for (const [, facts] of FACTS.slice(0, 6)) {
      // The oil of a panel is a pointer, and its part is an object.
      const makeInvalid = (text: string) => {
        const invalidFacts = replace(facts, '', text) as WallFacts
        return {
          ...invalidFacts,
          panels: invalidFacts.panels.map((panel, place) => ({ ...panel, ...pointersOf(facts, place) })),
        }
      }
      const hostileHtml = renderHtml(wallModel(makeInvalid(name), en))
      // A long label of a drawing is set in more lines, each a text element.
      const tags = (text: string) =>
        elements(fromHtml(text)).flatMap(({ tagName }) => (tagName === 'text' ? [] : [tagName]))
      expect(tags(hostileHtml)).toEqual(tags(renderHtml(wallModel(makeInvalid('plain'), en))))
      // biome-ignore lint/suspicious/noControlCharactersInRegex: the test looks for control characters
      const steering = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]|\p{Cs}/u
      expect(hostileHtml).not.toMatch(steering)
      expect(renderText(wallModel(makeInvalid(name), en))).not.toMatch(steering)
      const kindsOf = (text: string) =>
        kinds(
          fromMarkdown(renderMarkdown(wallModel(makeInvalid(text), en)), {
            extensions: [gfm()],
            mdastExtensions: EXTENSIONS,
          }),
        )
      expect(kindsOf(name)).toEqual(kindsOf('plain'))
    }
  })

  it('throws for what are no facts', () => {
    expect(() => wallModel({} as never, en)).toThrow("with kind 'wall-facts'")
    expect(() => wallModel({ ...LONG, panels: [{}] } as never, en)).toThrow(TypeError)
    expect(() => wallModel(LONG, {} as never)).toThrow('catalogue.language must be a string')
  })
})

const pointersOf = ({ panels }: WallFacts, place: number) => {
  const { oil, oils, refill } = panels[place] ?? {}
  return { ...(oil && { oil }), ...(oils && { oils }), ...(refill && { refill }) }
}
