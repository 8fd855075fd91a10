import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readPointer } from '../../src/base/pointers.js'
import { buildRecordSection } from '../../src/card/buildRecordSection.js'
import { joinSpans } from '../../src/card/spans.js'
import { pickList } from '../../src/service/pickList.js'
import type { CardModel, CardPart, Line, PaperFacts } from '../../src/v1/card.js'
import { paperModel, renderHtml, renderMarkdown, renderText } from '../../src/v1/card.js'
import { en } from '../../src/v1/message/en.js'
import {
  type Kit,
  kitContents,
  listDue,
  listVariantDifferences,
  lubeChart,
  nextDue,
} from '../../src/v1/service.js'
import { law } from '../support/law.js'
import { requestExample } from '../support/planExample.js'
import { readExample } from '../support/readExample.js'
import { planExamples } from './planExamples.js'

const EXAMPLES = planExamples().map(([name, plan]) => {
  const [folder = '', file = ''] = name.split('/')
  const sheet = readExample(folder, 'sheet')
  const log = readExample(folder, 'log', file)
  return { name, plan, sheet, log, kit: kitContents(plan) }
})
const DUE = requestExample('tind-4').due
const TODAY = '2023-10-06'

/** Every line of a value: a list of spans. */
function findLines(value: unknown): readonly Line[] {
  if (
    Array.isArray(value) &&
    value.length > 0 &&
    value.every((candidate) => typeof candidate?.text === 'string')
  )
    return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(findLines) : []
}

const partsOf = (paper: CardModel) => paper.sections.flatMap(({ parts }): readonly CardPart[] => parts)
const rowsOf = (paper: CardModel) =>
  partsOf(paper).flatMap((part) =>
    part.kind === 'table' ? part.rows.map((row) => row.map(({ lines }) => lines.map(joinSpans))) : [],
  )

function allPapers({ plan, sheet, log, kit }: (typeof EXAMPLES)[number]): readonly PaperFacts[] {
  const label = nextDue({ sheet, log, today: TODAY }, DUE)
  const { make, model, type } = sheet.machine
  return [
    label,
    { ...label, upright: true },
    lubeChart({ sheet, identity: log.identity }),
    { kind: 'picks', kits: [kit, kit], today: TODAY },
    { kind: 'differences', machine: { make, model, type }, differences: listVariantDifferences(sheet) },
    { kind: 'record', plan },
  ]
}

describe('paperModel', () => {
  it.each(EXAMPLES)('$name: every figure of every paper has a pointer into its facts', (example) => {
    for (const facts of allPapers(example)) {
      const paper = paperModel(facts, en)
      const sums = facts.kind === 'picks' ? pickList(facts.kits) : undefined
      for (const line of findLines(paper))
        for (const { text, from } of line)
          if (from !== undefined)
            expect(
              readPointer({ ...facts, ...(facts.kind === 'record' && facts.plan), sums }, from),
              from,
            ).toBeDefined()
          else expect(text, facts.kind).not.toMatch(/[0-9]/)
      for (const written of [renderHtml(paper), renderMarkdown(paper), renderText(paper)])
        expect(written).not.toMatch(/undefined|NaN|\[object/)
    }
  })

  it.each(EXAMPLES)('$name: the label has the earliest meters and date of listDue', ({ sheet, log }) => {
    const facts = nextDue({ sheet, log, today: TODAY }, DUE)
    const due = listDue({ sheet, log, today: TODAY }, DUE)
    const points = due.flatMap(({ lines }) =>
      lines.flatMap(({ by, duePoint }) =>
        by === 'event' || duePoint === undefined ? [] : [{ by, ...duePoint }],
      ),
    )
    const meters = (by: 'hours' | 'distance') =>
      points.flatMap((point) => (point.by === by ? (point.meter?.value ?? []) : []))
    const dates = points.flatMap((point) => (point.by === 'period' ? (point.date ?? []) : []))
    const smallest = (values: readonly number[]) => (values.length === 0 ? undefined : Math.min(...values))
    expect(facts.hours?.at.value).toBe(smallest(meters('hours')))
    expect(facts.distance?.at.value).toBe(smallest(meters('distance')))
    expect(facts.date?.at).toBe(dates.sort()[0])
    const count = (...verdicts: readonly string[]) =>
      due.filter(({ verdict }) => verdicts.includes(verdict)).length
    expect(facts.dueNow).toHaveLength(count('due', 'overdue'))
    expect(facts.notKnown).toHaveLength(count('cannot tell'))
    const label = renderText(paperModel(facts, en))
    if (facts.date !== undefined) expect(label).toContain(facts.date.at)
    if (facts.dueNow.length > 0) expect(label).toContain('DUE NOW')
  })

  it('a label or pick list of any day has a pointer for every figure (law)', () => {
    const day = fc.date({ min: new Date('2021-01-01'), max: new Date('2030-12-31'), noInvalidDate: true })
    law(40, fc.nat({ max: EXAMPLES.length - 1 }), day, (place, drawn) => {
      const { sheet, log, kit } = EXAMPLES[place] as (typeof EXAMPLES)[number]
      const today = drawn.toISOString().slice(0, 10)
      const papers: readonly PaperFacts[] = [
        nextDue({ sheet, log, today }, DUE),
        { kind: 'picks', kits: [kit], today },
      ]
      for (const facts of papers) {
        const paper = paperModel(facts, en)
        const sums = facts.kind === 'picks' ? pickList(facts.kits) : undefined
        for (const { text, from } of findLines(paper).flat())
          if (from === undefined) expect(text, facts.kind).not.toMatch(/[0-9]/)
          else expect(readPointer({ ...facts, sums }, from), from).toBeDefined()
        expect(renderText(paper)).not.toMatch(/undefined|NaN|\[object/)
      }
    })
  })

  it('the sums of a pick list are those of the kits', () => {
    const kits = EXAMPLES.map(({ kit }) => kit)
    const sums = pickList(kits)
    const add = (pick: (kit: Kit) => readonly { name: string; count: number }[]) => {
      const counts: Record<string, number> = {}
      for (const { name, count } of kits.flatMap(pick)) counts[name] = (counts[name] ?? 0) + count
      return counts
    }
    const asCounts = (list: readonly { name: string; count: number }[]) =>
      Object.fromEntries(list.map(({ name, count }) => [name, count]))
    expect(asCounts(sums.seals)).toEqual(add(({ seals, spares = [] }) => [...seals, ...spares]))
    expect(asCounts(sums.filters)).toEqual(add(({ filters = [] }) => filters))
    expect(sums.oil.length).toBeGreaterThan(3)
    for (const { oil, volume } of sums.oil) {
      const ownOrder = kits.flatMap((kit) =>
        kit.oil.flatMap((item) => (item.oil === oil ? item.volume.value : [])),
      )
      expect(volume.value).toBeCloseTo(
        ownOrder.reduce((total, value) => total + value, 0),
        9,
      )
    }
    // The sum of one kit is the kit.
    for (const kit of kits)
      expect(pickList([kit])).toMatchObject({
        oil: kit.oil,
        seals: [...kit.seals, ...(kit.spares ?? [])],
        tools: kit.tools,
      })
    const text = renderText(paperModel({ kind: 'picks', kits, today: TODAY }, en))
    expect(text).toMatch(/^\[ \] 1400\u00a0mL SAE 80W-90, API GL-5$/m)
  })

  it('the blank record has exactly the fields of the visit sheet', () => {
    for (const { plan } of EXAMPLES) {
      const section = buildRecordSection({ plan, catalogue: en, words: en.card, form: 'written' })
      expect(paperModel({ kind: 'record', plan }, en).sections).toEqual([section])
    }
  })

  it('variants with the same figures share a column of the page of differences', () => {
    const sheet = readExample('tind-4', 'sheet')
    const { machine } = sheet
    const third = { name: 'Tind 4 M, short bed', when: { variants: ['middle'] } }
    const differences = listVariantDifferences({
      ...sheet,
      machine: { ...machine, variants: { ...machine.variants, middle: third } },
    })
    const [table] = partsOf(paperModel({ kind: 'differences', machine, differences }, en))
    expect(table?.kind === 'table' && table.columns.slice(1)).toEqual([
      'Tind 4 S, short bed / Tind 4 M, short bed',
      'Tind 4 L, long bed',
    ])
    expect(table?.kind === 'table' && table.rows.map((row) => row.length)).toEqual([3, 3, 3])
  })

  it('the page of differences has a row for each figure that differs and a column for each variant', () => {
    const sheet = readExample('tind-4', 'sheet')
    const [facts] = allPapers(
      EXAMPLES.find(({ name }) => name === 'tind-4/log') as (typeof EXAMPLES)[number],
    ).filter(({ kind }) => kind === 'differences')
    const paper = paperModel(facts as PaperFacts, en)
    expect(rowsOf(paper)).toEqual([
      [
        ['Rear gearcase', 'Refill'],
        ['700\u00a0mL', '0.74\u00a0US\u00a0qt'],
        ['950\u00a0mL', '1.0\u00a0US\u00a0qt'],
      ],
      [
        ['Rear gearcase, drain plug', 'Position'],
        ['lowest point of the housing, on the centre line'],
        ['lowest point of the housing, 60 mm left of the centre line, behind the tow bar bracket'],
      ],
      [
        ['Rear gearcase, drain plug', 'On the case'],
        ['bottom face, middle'],
        ['bottom face, left, 60\u00a0mm from the middle'],
      ],
    ])
    expect(Object.values(sheet.machine.variants).map(({ name }) => name)).toEqual(
      partsOf(paper).flatMap((part) => (part.kind === 'table' ? part.columns.slice(1) : [])),
    )
    expect(
      renderText(paperModel({ kind: 'differences', machine: sheet.machine, differences: [] }, en)),
    ).toContain('The variants have the same figures.')
  })

  it('the chart has the oil, the quantity, the level and the intervals of each gearcase', () => {
    const { sheet, log } = EXAMPLES.find(({ name }) => name === 'acre-26/log') as (typeof EXAMPLES)[number]
    const rows = rowsOf(paperModel(lubeChart({ sheet, identity: log.identity }), en))
    expect(rows).toContainEqual([
      ['2\u00a0× Hub reduction'],
      ['SAE 80W-90, API GL-4, no limited-slip additive'],
      ['0.45\u00a0L', '0.48\u00a0US\u00a0qt', 'each'],
      ['to the lower edge of the hub plug'],
    ])
    expect(rows).toContainEqual([
      ['Front axle oil change', 'front axle housing, hub reduction'],
      ['400\u00a0h, 24\u00a0months', 'Before next use after submersion, a rebuild'],
      ['50\u00a0h'],
      ['200\u00a0h, 12\u00a0months', '× 0.5', 'working in water or mud above the axle'],
    ])
    const loaderExample = EXAMPLES.find(({ name }) => name === 'reach-55/log') as (typeof EXAMPLES)[number]
    expect(
      rowsOf(
        paperModel(lubeChart({ sheet: loaderExample.sheet, identity: loaderExample.log.identity }), en),
      )[1],
    ).toEqual([['Two-speed gearbox'], ['shares the oil of the rear axle with wet brakes'], [], []])
  })

  it('throws for an invalid paper', () => {
    expect(() => paperModel({} as never, en)).toThrow('facts.kind must be')
    expect(() => paperModel({ kind: 'record', plan: {} } as never, en)).toThrow(
      'facts.plan must be a visit plan',
    )
  })
})
