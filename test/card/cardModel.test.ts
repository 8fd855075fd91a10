import { describe, expect, it } from 'vitest'
import { insertSpans } from '../../src/card/insertSpans.js'
import { joinLines } from '../../src/card/spans.js'
import { writeFigure } from '../../src/card/writeFigure.js'
import { en } from '../../src/message/en/index.js'
import type { PlannedFigure } from '../../src/service/index.js'
import { type Line, renderText } from '../../src/v1/card.js'
import type { Leaf } from '../../src/v1/spec.js'
import { cardOf, type JudgedPlan, planExample } from '../support/planExample.js'
import { SKARNFELL_PLAN } from './skarnfellPlan.js'

const write = (line: Line) => line.map(({ text }) => text).join('')
const context = { plan: SKARNFELL_PLAN, catalogue: en, words: en.card, form: 'written' as const }

/** Only the machine is known: no readings, no stock, no toolbox, no work. */
const BARE_PLAN: JudgedPlan = {
  ...SKARNFELL_PLAN,
  machine: {
    log: 'a',
    name: 'Station 9',
    make: 'Hallbrekka',
    model: 'Tind 4',
    type: 'machine',
    sheet: { id: 's', revision: '1' },
    identity: {},
    variant: { verdict: 'cannot tell', missing: [], candidates: [], reasons: [] },
  },
  readings: {},
  due: [],
  work: [],
  figures: [],
  steps: [],
  lines: [],
  oil: [],
  seals: [],
  tightenings: [],
  tools: [],
  wrenches: { use: [], reasons: [] },
  pan: { verdict: 'missing', reasons: [{ code: 'service/no-toolbox', params: {} }] },
  waits: [],
  consumables: [],
  cautions: [
    { code: 'service/manual-first', params: {} },
    { code: 'service/licensed-work', params: {} },
  ],
  usedOil: { reasons: [] },
  missing: [],
  findings: [],
  sources: {},
}

function formatFigure(role: PlannedFigure['role'], leaf: PlannedFigure['leaf'], value: Leaf): string {
  const figure = {
    role,
    leaf,
    part: { path: '' },
    path: '',
    resolved: { kind: 'stated', value, trace: { path: '', reasons: [] } },
  }
  const { main, notes } = writeFigure(context, figure as PlannedFigure, '/figures/0')
  return [write(main), ...notes.map(write)].join(' | ')
}

describe('cardModel', () => {
  it('makes a card of a plan with hardly any facts, and says so', () => {
    const card = cardOf(BARE_PLAN)
    expect(card.sections.map(({ id }) => id)).toEqual(['due', 'ready', 'missing', 'record', 'sources'])
    expect(card.cautions.cautions).toEqual([])
    const text = renderText(card)
    expect(text).toContain('Variant: not known: see the manual')
    expect(text).toContain('Drain pan: not in the toolbox')
    expect(text).toContain('Every figure of this visit is stated.')
  })

  it('does not say twice that the manual comes first', () => {
    const cautions = [
      { code: 'service/manual-first', params: {} },
      { code: 'service/used-oil-rules', params: {} },
    ]
    const card = cardOf({ ...SKARNFELL_PLAN, cautions })
    expect(card.cautions.cautions.map(({ line }) => line[0]?.from)).toEqual(['/cautions/1'])
    expect(card.authority).toHaveLength(2)
  })

  it('joins two gearcases with the same count under one table, and names both', () => {
    const [first] = SKARNFELL_PLAN.due
    if (first === undefined) throw new Error('the plan has lost its first service')
    const second = { ...first, part: { path: '/gearcases/rear', gearcase: 'rear axle case' } }
    const [due] = cardOf({ ...SKARNFELL_PLAN, due: [first, second] }).sections
    expect(due?.parts).toHaveLength(1)
    expect(due?.parts[0]?.kind === 'table' && write(due.parts[0].caption)).toBe(
      'Front differential: gear oil change; Rear axle case: gear oil change — overdue',
    )
  })

  it('multiplies a refill for several instances in the open', () => {
    const oil = SKARNFELL_PLAN.oil.map((entry, index) =>
      index === 0 ? { ...entry, instances: 2, needed: { value: 900, unit: 'mL' as const } } : entry,
    )
    expect(renderText(cardOf({ ...SKARNFELL_PLAN, oil }))).toContain('each × 2 = 900\u00a0mL')
  })

  it('begins the line of a wait without a part with a capital', () => {
    const settleWait = { kind: 'settle' as const, part: { path: '' }, seconds: 300, reasons: [] }
    const text = renderText(cardOf({ ...SKARNFELL_PLAN, waits: [settleWait] }))
    expect(text).toMatch(/^\* Settle, 5\u00a0min\n/m)
  })

  it('names the additive with its amount where the plan has one', () => {
    const amount = { value: 120, unit: 'mL' as const }
    const oil = SKARNFELL_PLAN.oil.map((entry) =>
      entry.additive === undefined
        ? entry
        : { ...entry, additive: { ...entry.additive, perInstance: amount, needed: amount } },
    )
    const text = renderText(cardOf({ ...SKARNFELL_PLAN, oil }))
    expect(text).toContain('with: friction additive, 120\u00a0mL')
    expect(text.replaceAll(/\s+/g, ' ')).toContain(
      'Pour 120 mL of friction additive in through the fill opening, before the oil.',
    )
  })

  it('survives pointers that lead nowhere', () => {
    const steps = SKARNFELL_PLAN.steps.map((step) => ({
      ...step,
      figures: { a: '/figures/999', b: 'nonsense' },
      tightening: '/tightenings/99',
      wait: '/waits/-1',
      oil: '/figures/0',
    }))
    const card = cardOf({ ...SKARNFELL_PLAN, steps, wrenches: { use: ['nobody'], reasons: [] } })
    expect(renderText(card)).toMatch(/Tighten it as\s+the manual says/)
  })

  it('tells sources that are second hand or doubtful', () => {
    const [first] = SKARNFELL_PLAN.figures
    if (first?.resolved.kind !== 'stated') throw new Error('the plan has lost its first figure')
    const trace = { ...first.resolved.trace, source: { ref: 'manual', confidence: 'doubtful' as const } }
    const figures = [{ ...first, resolved: { ...first.resolved, trace } }]
    const text = renderText(
      cardOf({ ...SKARNFELL_PLAN, figures, steps: [], lines: [], tightenings: [], oil: [] }),
    )
    expect(text).toMatch(/partly\s+doubtful/)
  })
})

describe('the variant', () => {
  it('says a missing fact once, however many variants turn on it', () => {
    const card = cardOf(planExample('tind-4', { log: (log) => ({ ...log, identity: {} }) }))
    const lines = card.variant.lines.map(write)
    expect(lines.filter((line) => line.startsWith('The serial number is not known'))).toEqual([
      'The serial number is not known. Enter it in the log.',
    ])
    expect(lines[1]).toBe('One of: Tind 4 S, short bed or Tind 4 L, long bed')
  })
})

describe('figures in words', () => {
  it('writes every kind of leaf with its printed digits', () => {
    expect(
      formatFigure('interval', 'interval', {
        kind: 'interval',
        hours: '200',
        distance: { value: '2000', unit: 'km', printed: [{ value: '1200', unit: 'mi' }] },
        period: 'P1Y6M',
      }),
    ).toBe('200\u00a0h, 2000\u00a0km (1200\u00a0mi), 1\u00a0year and 6\u00a0months')
    expect(
      formatFigure('interval', 'interval', { kind: 'interval', distance: { value: '500', unit: 'km' } }),
    ).toBe('500\u00a0km')
    expect(formatFigure('interval', 'interval', { kind: 'interval', period: 'nonsense' })).toBe('nonsense')
    expect(formatFigure('place', 'place', { kind: 'place', text: 'left side' })).toBe('left side')
    expect(
      formatFigure('refill', 'value', { kind: 'nominal', value: '7.5', unit: 'qt_us', asPrinted: '7 1/2' }),
    ).toBe('7 1/2\u00a0US\u00a0qt')
    expect(
      formatFigure('refill', 'value', {
        kind: 'nominal',
        value: '0.5',
        unit: 'qt_us',
        asPrinted: '½ qt (US)',
      }),
    ).toBe('½ qt (US)')
    expect(formatFigure('refill', 'value', { kind: 'limits', max: '10.0', unit: 'mL' })).toBe(
      '≤\u00a010.0\u00a0mL',
    )
    expect(
      formatFigure('seal', 'seal', { kind: 'bonded seal', material: 'FKM', replace: 'every opening' }),
    ).toBe('bonded seal, FKM')
    expect(
      formatFigure('seal', 'seal', {
        kind: 'crush washer',
        form: 'folded',
        material: 'not stated',
        replace: 'every opening',
      }),
    ).toBe('crush washer, folded')
    expect(
      formatFigure('seal', 'seal', {
        kind: 'thread sealant',
        product: 'pipe paste',
        replace: 'every opening',
      }),
    ).toBe('thread sealant, pipe paste')
    expect(formatFigure('seal', 'seal', { kind: 'none' })).toBe('no seal')
    expect(
      formatFigure('tightening', 'tightening', { kind: 'turns', min: '1.5', threadCondition: 'dry' }),
    ).toBe('1.5 turns past finger tight | thread: dry')
    expect(
      formatFigure('oils', 'oils', {
        kind: 'oils',
        choices: [{ kind: 'grade', grade: '90', system: 'SAE J306', limitedSlip: 'required' }],
      }),
    ).toBe('SAE 90, for limited slip')
    expect(formatFigure('oils', 'oils', { kind: 'oils', choices: [] })).toBe('')
  })
})

describe('spans', () => {
  it('joins the stated parts, without a separator for a missing one', () => {
    expect(write(joinLines([[{ text: 'a' }], [], [{ text: 'b' }]], ', '))).toBe('a, b')
  })

  it('weaves pieces into a sentence and keeps where each came from', () => {
    const pieces = { part: [{ text: 'plug', from: '/a' }], gone: [] }
    expect(
      insertSpans(pieces, ({ part, gone }) => [`Take out the ${part}${gone === undefined ? '.' : '!'}`]),
    ).toEqual([[{ text: 'Take out the ' }, { text: 'plug', from: '/a' }, { text: '.' }]])
    expect(insertSpans({}, () => ['stray \ue000\ue1ff\ue001 sign'])).toEqual([
      [{ text: 'stray ' }, { text: ' sign' }],
    ])
  })

  it('lists hand tools in one line, and oil and seals once only', () => {
    const ready = section(renderText(cardOf(planExample('tind-4'))), 'Tools, parts and supplies')
    expect(ready).toContain('Hand tools: chocks, brush, breaker bar, scraper and jack.')
    expect(ready).toContain('[ ] Rags.')
    expect(ready).not.toMatch(/\[ \] (New seals|Oil)\./)
  })

  it('names a measuring jug that fits any refill without a tolerance, and does not call it not known', () => {
    const ready = section(renderText(cardOf(planExample('kvist-2'))), 'Tools, parts and supplies')
    expect(ready).toContain('Measuring jug: 1 litre measuring jug\n')
    expect(ready).toContain('The manual states no tolerance for the refill.')
  })
})

const section = (text: string, heading: string) =>
  text.split(`${heading}\n`)[1]?.split('Order of work')[0] ?? ''
