import fc from 'fast-check'
import type { Element, Nodes } from 'hast'
import { fromHtml } from 'hast-util-from-html'
import type { Nodes as MarkdownNodes } from 'mdast'
import { fromMarkdown } from 'mdast-util-from-markdown'
import { gfm } from 'micromark-extension-gfm'
import { describe, expect, it } from 'vitest'
import { shortenCard } from '../../src/card/shortenCard.js'
import { en } from '../../src/message/en/index.js'
import { renderHtml, renderMarkdown, renderText, slipModel } from '../../src/v1/card.js'
import { renderMessage } from '../../src/v1/message.js'
import { type OwnerSlip, openFaults, ownerSlip, type SlipFacts } from '../../src/v1/service.js'
import type { MachineLog, ServiceRecord } from '../../src/v1/spec.js'
import { CORRECTED } from '../record/support/corrections.js'
import { readFolder, setOf } from '../rules/support/goodSets.js'
import { usedMachines } from '../service/support/usedMachines.js'
import { law } from '../support/law.js'
import { HOSTILE_NAMES } from './hostilePlan.js'

const TODAY = '2023-10-09'
const { records, ...documents } = setOf(readFolder('examples/tind-4'))
const exampleRecord = records[0]?.document as ServiceRecord
const sheet = documents.sheets[0]?.document as SlipFacts['sheet']
const logWithoutRecords = documents.logs[0]?.document as MachineLog
const due = { soon: { days: 30 }, staleAfter: { days: 30 }, severity: 'normal' } as const

/** The kinds of nodes that a reader of Markdown finds: no link, image, code or HTML. */
const markdownKinds = (markdown: string) => {
  const kinds = new Set<string>()
  const walk = (node: Nodes | MarkdownNodes) => {
    kinds.add(node.type)
    if ('children' in node) node.children.forEach(walk)
  }
  walk(fromMarkdown(markdown, { extensions: [gfm()] }))
  return kinds
}

function slipOf(...more: readonly ServiceRecord[]): OwnerSlip {
  const log = { ...logWithoutRecords, records: [...logWithoutRecords.records, ...more] }
  const set = { ...documents, procedures: [], records: [], logs: [{ document: log }] }
  const faults = openFaults({ document: log }, set, { today: TODAY })
  return ownerSlip({ sheet, log, today: TODAY, faults }, { due })
}

const elements = (root: Nodes, found: Element[] = []): Element[] => {
  if (root.type === 'element') found.push(root)
  if ('children' in root) for (const child of root.children) elements(child, found)
  return found
}
const textOf = (node: Nodes): string =>
  node.type === 'text' ? node.value : 'children' in node ? node.children.map(textOf).join('') : ''
const joinSpaces = (text: string) => text.replaceAll(/[\s\u00a0\u202f]+/g, ' ')

/** The slip in each format, as plain words. */
function writtenOf(slip: OwnerSlip) {
  const card = slipModel(slip, en)
  return [
    renderText(card),
    renderMarkdown(card).replaceAll(/\\(.)/g, '$1'),
    textOf(fromHtml(renderHtml(card)).children.at(-1) as Nodes),
  ].map(joinSpaces)
}

const [rear, front] = exampleRecord.entries as [ServiceRecord['entries'][0], ServiceRecord['entries'][0]]
/** A visit with something of every kind. */
const FULL: ServiceRecord = {
  ...exampleRecord,
  note: 'Left track guard bent.',
  entries: [
    { ...rear, notDone: 'the drain plug is seized' },
    {
      ...front,
      magnet: 'chips',
      oilFinding: 'milky',
      leaks: 'weeping',
      level: 'below',
      sample: { bottle: 'B-12', laboratory: 'Nordfoss Laboratory' },
      filters: [
        { on: '/gearcases/front/filters/none', done: 'new', partNumber: 'RF-310', found: 'fine paste' },
      ],
      tightened: [
        { on: '/gearcases/front/openings/drain', kind: 'turns', turns: 1.25 },
        { on: '/gearcases/front/openings/fill', kind: 'by hand' },
      ],
    },
  ],
}

describe('the slip on paper', () => {
  it('says everything in short lines, what needs care first', () => {
    const text = joinSpaces(renderText(slipModel(slipOf(FULL), en)))
    const at = (line: string) => text.indexOf(` ${line}`)
    const order = [
      'Use of the machine: Not to be used until every fault below is corrected',
      "! The machine's own manual comes before this slip.",
      'Hour meter: 512.8 h',
      '!! WARNING: Do not use this machine.',
      '* Front differential: gear oil change, 450 mL of station gear oil 80W-90',
      'Tightened: drain plug 1.25 turns past finger tight; fill plug by hand, torque not measured',
      'New seals: drain plug, part HB-1418',
      'Seals inspected and used again: fill plug',
      'part RF-310: new',
      '* Shields refitted: front skid plate 12 N·m',
      '* Rear gearcase: fine paste on the magnet; old oil dark; no leak; level correct',
      '* Front differential: chips on the magnet; old oil milky: water is in it; leaks a little; level low',
      '* Note: Left track guard bent.',
      '* Rear gearcase: gear oil change',
      'Not done: the drain plug is seized.',
      '* Gear oil change: rear gearcase — due, was due at 501.4 h',
      '* Gear oil change: front differential — at 712.8 h or at 6342.2 km or on 2024-10-06, whichever comes first',
      '* Oil sample B-12, front differential, 2023-10-06, Nordfoss Laboratory: no result yet',
    ].map(at)
    expect(order).not.toContain(-1)
    expect(order).toEqual([...order].sort((item, other) => item - other))
  })

  it('is half a page of lines for a visit without surprises, and keeps them in every length', () => {
    const card = slipModel(slipOf(exampleRecord), en)
    expect(renderText(card).split('\n').length).toBeLessThan(45)
    expect(renderText(card)).toContain('Use of the machine: No open fault on record')
    expect(card.sections.map(({ id }) => id)).toEqual(['done', 'found', 'next'])
    expect(shortenCard(card)).toEqual(card)
  })

  it('points each figure and name to its place in the slip', () => {
    const slip = slipOf(FULL)
    const spans = JSON.stringify(slipModel(slip, en)).match(/"from":"[^"]*"/g) ?? []
    expect(spans.length).toBeGreaterThan(60)
    const lostSpans = spans.filter((span) => {
      const path = span.slice(8, -1).split('/').slice(1)
      return (
        path.reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], slip) ===
        undefined
      )
    })
    expect(lostSpans).toEqual([])
  })

  it('decides: a correction removes the fault', () => {
    const [{ record, correction }] = CORRECTED as [(typeof CORRECTED)[0]]
    for (const text of writtenOf(slipOf(record))) expect(text).toContain('520 mL of station gear oil')
    for (const text of writtenOf(slipOf(record, correction))) {
      expect(text).not.toContain('WARNING')
      expect(text).toMatch(/Corrected:? ?2023-10-08/)
      expect(text).toContain('450 mL of station gear oil')
    }
  })
})

describe('laws', () => {
  it('no open fault is left out, in any format, and all are before what was done', () => {
    law(
      25,
      fc.subarray(CORRECTED.map((_one, place) => place)),
      fc.array(fc.nat({ max: CORRECTED.length - 1 }), { maxLength: 3 }),
      (open, corrected) => {
        const more = open.flatMap((place, number): readonly ServiceRecord[] => {
          const { record, correction } = CORRECTED[place] as (typeof CORRECTED)[0]
          const id = `visit-${number}`
          const first = { ...record, id }
          return corrected.includes(place)
            ? [first, { ...correction, id: `c-${number}`, corrects: id }]
            : [first]
        })
        const slip = slipOf(...more)
        const texts = slip.faults.map(({ finding }) => joinSpaces(renderMessage(finding, en)))
        for (const written of writtenOf(slip)) {
          for (const text of texts) {
            const place = written.indexOf(text)
            expect(place, text).toBeGreaterThan(-1)
            const doneIndex = written.search(/Done[^a-z]*(Rear|Front)/)
            expect(doneIndex === -1 || place < doneIndex).toBe(true)
          }
          expect(written.includes('Not to be used')).toBe(texts.length > 0)
        }
      },
    )
  })

  it('every service of the machine is once in the next services', () => {
    law(
      40,
      usedMachines.filter(({ log }) => log.records.length > 0),
      (facts) => {
        const slip = ownerSlip({ ...facts, faults: [] }, { due })
        const next = slipModel(slip, en).sections.find(({ id }) => id === 'next')
        const parts = JSON.stringify(next ?? '').match(/"\/due\/[0-9]+\/part\/gearcase"/g) ?? []
        expect(parts.sort()).toEqual(slip.due.map((_due, place) => `"/due/${place}/part/gearcase"`).sort())
      },
    )
  })
})

describe('strings that try to break out', () => {
  const FREE = new Set([
    ...['name', 'make', 'model', 'type', 'header', 'serial', 'serviceName', 'gearcase', 'part', 'why', 'by'],
    ...['bottle', 'laboratory', 'result', 'partNumber', 'record', 'date', 'set', 'stated', 'notes', 'turns'],
  ])
  function withName(name: string): OwnerSlip {
    const replace = (value: unknown, key: string): unknown => {
      if (typeof value === 'string') return FREE.has(key) ? name : value
      if (Array.isArray(value)) return value.map((item) => replace(item, key === 'notes' ? key : ''))
      if (typeof value !== 'object' || value === null) return value
      return Object.fromEntries(Object.entries(value).map(([inner, item]) => [inner, replace(item, inner)]))
    }
    return replace(slipOf(FULL), '') as OwnerSlip
  }

  it.each(HOSTILE_NAMES)('are text in HTML, Markdown and plain text: %j', (name) => {
    const [hostileSlip, plainSlip] = [slipModel(withName(name), en), slipModel(withName('plain'), en)]
    const tags = (card: typeof plainSlip) =>
      elements(fromHtml(renderHtml(card))).map(({ tagName }) => tagName)
    expect(tags(hostileSlip)).toEqual(tags(plainSlip))
    const markdown = renderMarkdown(hostileSlip)
    expect(markdown.match(/^#/gm)).toEqual(renderMarkdown(plainSlip).match(/^#/gm))
    expect(markdownKinds(markdown)).toEqual(markdownKinds(renderMarkdown(plainSlip)))
    for (const text of [renderText(hostileSlip), markdown, renderHtml(hostileSlip)])
      expect(text.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\u202a-\u202e\u2066-\u2069]|\p{Cs}/u)
    for (const line of renderText(hostileSlip).split('\n')) expect(line).not.toMatch(/^(# Heading|NOTE)/)
  })
})

describe('misuse', () => {
  const slip = slipOf(exampleRecord)
  it.each([
    [null, /slip must be an owner's slip/],
    [{ kind: 'visit-plan' }, /slip must be an owner's slip, with kind 'owner-slip'/],
    [{ ...slip, work: 7 }, /slip\.work must be a list, got 7/],
    [{ ...slip, faults: [{}] }, /slip\.faults\[0\]\.finding must be/],
    [{ ...slip, notes: [7] }, /slip\.notes\[0\] must be a string/],
  ])('%#', (given, expectedText) => {
    expect(() => slipModel(given as never, en)).toThrow(expectedText)
  })
  it('of the language', () => {
    expect(() => slipModel(slip, { ...en, slip: undefined } as never)).toThrow(/catalogue\.slip must be/)
  })
})
