import { describe, expect, it } from 'vitest'
import { groupKits } from '../../src/service/groupKits.js'
import { listVariantDifferences } from '../../src/service/listVariantDifferences.js'
import { remainingStock } from '../../src/service/remainingStock.js'
import { checkRecord, kitContents, listDue, orderList, planVisit } from '../../src/v1/service.js'
import { planExample, planRequest, requestExample } from '../support/planExample.js'

/** Arguments that a caller without types can pass. */
// biome-ignore lint/suspicious/noExplicitAny: these tests pass values that the types forbid
type Anything = any

const request = requestExample('tind-4')
const plan = planExample('tind-4')
const kit = kitContents(plan)
const { sheet, log, today, due: options } = request

describe('planVisit: misuse throws and names the argument', () => {
  it.each<[string, Anything, typeof TypeError | typeof RangeError, RegExp]>([
    ['no sheet', { ...request, sheet: undefined }, TypeError, /^facts\.sheet must be a spec sheet/],
    ['a log for a sheet', { ...request, sheet: log }, TypeError, /^facts\.sheet/],
    ['no log', { ...request, log: null }, TypeError, /^facts\.log must be a machine log/],
    ['a sheet for a log', { ...request, log: sheet }, TypeError, /^facts\.log/],
    ['a stock for a toolbox', { ...request, toolbox: request.stock }, TypeError, /^facts\.toolbox/],
    ['a toolbox for a stock', { ...request, stock: request.toolbox }, TypeError, /^facts\.stock/],
    ['null for a toolbox', { ...request, toolbox: null }, TypeError, /^facts\.toolbox/],
    ['one service as a word', { ...request, services: 'all' }, TypeError, /^options\.services/],
    ['services that are numbers', { ...request, services: [1] }, TypeError, /^options\.services/],
    ['no today', { ...request, today: undefined }, RangeError, /^facts\.today/],
    ['30 February', { ...request, today: '2023-02-30' }, RangeError, /^facts\.today.*2023-02-30/],
    ['a Date', { ...request, today: new Date(0) }, RangeError, /^facts\.today/],
    ['no due options', { ...request, due: undefined }, TypeError, /^options\.due/],
    ['a severity of its own', { ...request, due: { ...options, severity: 'hard' } }, RangeError, /severity/],
    ['NaN days', { ...request, due: { ...options, staleAfter: { days: Number.NaN } } }, RangeError, /days/],
    ['a bigint for today', { ...request, today: 10n }, RangeError, /^facts\.today must .* got bigint$/],
    [
      'a bigint for an edition',
      { ...request, iso6789: 10n },
      RangeError,
      /^options\.iso6789 must .* got bigint$/,
    ],
    [
      'a unit that is no text',
      { ...request, ambient: { value: 6, unit: 10n } },
      RangeError,
      /^facts\.ambient\.unit must be .* got bigint/,
    ],
    [
      'half a sheet',
      { ...request, sheet: { ...sheet, services: undefined } },
      TypeError,
      /^facts\.sheet\.services must be an object, got undefined; parse the document first$/,
    ],
    [
      'a log without meters',
      { ...request, log: { ...log, meters: 5 } },
      TypeError,
      /^facts\.log\.meters must be an object, got 5/,
    ],
    ['an unknown edition', { ...request, iso6789: '1992' }, RangeError, /^options\.iso6789.*1992/],
    ['a number for an edition', { ...request, iso6789: 2017 }, RangeError, /^options\.iso6789/],
    ['ambient as a number', { ...request, ambient: 6 }, TypeError, /^facts\.ambient/],
    ['ambient null', { ...request, ambient: null }, TypeError, /^facts\.ambient/],
    [
      'ambient NaN',
      { ...request, ambient: { value: Number.NaN, unit: 'degC' } },
      RangeError,
      /^facts\.ambient/,
    ],
    ['ambient in mm', { ...request, ambient: { value: 6, unit: 'mm' } }, RangeError, /^facts\.ambient\.unit/],
    ['ambient at 0 K', { ...request, ambient: { value: 0, unit: 'K' } }, RangeError, /above 0 K/],
    ['ambient at 1000 K', { ...request, ambient: { value: 1000, unit: 'K' } }, RangeError, /below 1000 K/],
    ['a tolerance in words', { ...request, tolerancePercent: '5' }, TypeError, /tolerancePercent/],
    [
      'a negative tolerance',
      { ...request, tolerancePercent: -1 },
      RangeError,
      /tolerancePercent must be above 0 and below 100, got -1/,
    ],
    [
      'no tolerance at all',
      { ...request, tolerancePercent: 0 },
      RangeError,
      /tolerancePercent must be above 0 and below 100, got 0/,
    ],
    [
      'a whole tolerance',
      { ...request, tolerancePercent: 100 },
      RangeError,
      /tolerancePercent must be above 0 and below 100, got 100/,
    ],
    ['a NaN tolerance', { ...request, tolerancePercent: Number.NaN }, RangeError, /tolerancePercent/],
  ])('%s', (_what, asked, kind, message) => {
    expect(() => planRequest(asked)).toThrow(kind)
    expect(() => planRequest(asked)).toThrow(message)
  })

  it.each([
    [0.001, 'K'],
    [999.9, 'K'],
  ] as const)('the lowest and highest valid temperatures are accepted: %s %s', (value, unit) => {
    expect(planRequest({ ...request, ambient: { value, unit } }).ok).toBe(true)
  })

  it('a tolerance of almost nothing and of almost all are taken', () => {
    expect(planRequest({ ...request, tolerancePercent: 0.001 }).ok).toBe(true)
    expect(planRequest({ ...request, tolerancePercent: 99.9 }).ok).toBe(true)
  })
})

describe('an unknown key is refused by name, and a similar one is suggested', () => {
  const facts = { sheet, log, today }
  const document = { kind: 'service-record', date: '2023-10-06', readings: {}, entries: [] }
  const record = { document } as Anything
  const set = { sheets: [], logs: [], toolboxes: [], stocks: [], procedures: [], records: [] }
  const choices = { services: 'due', due: options, iso6789: '2017' }
  it.each<[string, () => unknown, RegExp]>([
    [
      'a fact',
      () => planVisit({ ...facts, toolBox: {} } as Anything, choices as Anything),
      /toolBox.*toolbox/,
    ],
    [
      'an option',
      () => planVisit(facts, { ...choices, tolerancePercnt: 5 } as Anything),
      /did you mean tolerancePercent/,
    ],
    [
      'the former name of an option',
      () => planVisit(facts, { ...choices, edition: '2017' } as Anything),
      /edition/,
    ],
    [
      'a fact of listDue',
      () => listDue({ ...facts, Today: today } as Anything, options),
      /did you mean today/,
    ],
    ['a circumstance', () => checkRecord(record, set, { toDay: today } as Anything), /toDay/],
  ])('%s', (_what, call, message) => {
    expect(call).toThrow(TypeError)
    expect(call).toThrow(message)
  })
})

describe('the other functions: misuse throws and names the argument', () => {
  it.each<[string, () => unknown, typeof TypeError | typeof RangeError, RegExp]>([
    [
      'planVisit null',
      () => planVisit(null as Anything, {} as Anything),
      TypeError,
      /^facts must be an object/,
    ],
    [
      'planVisit a text',
      () => planVisit('plan' as Anything, {} as Anything),
      TypeError,
      /^facts must be an object/,
    ],
    [
      'planVisit without options',
      () => planVisit({ sheet, log, today }, undefined as Anything),
      TypeError,
      /^options/,
    ],
    ['listDue null', () => listDue(null as Anything, options), TypeError, /^facts/],
    [
      'listDue sheet',
      () => listDue({ sheet: {}, log, today } as Anything, options),
      TypeError,
      /^facts\.sheet/,
    ],
    ['listDue log', () => listDue({ sheet, log: [], today } as Anything, options), TypeError, /^facts\.log/],
    [
      'listDue today',
      () => listDue({ sheet, log, today: '31-10-06' } as Anything, options),
      RangeError,
      /today/,
    ],
    ['listDue options', () => listDue({ sheet, log, today }, undefined as Anything), TypeError, /^options/],
    [
      'listDue a bigint for today',
      () => listDue({ sheet, log, today: 10n } as Anything, options),
      RangeError,
      /^facts\.today must be a date YYYY-MM-DD, got bigint$/,
    ],
    [
      'kitContents oil of nothing',
      () => kitContents({ ...plan, oil: [null] } as Anything),
      TypeError,
      /^plan\.oil\[0\] must be an object, got null; pass the result of planVisit$/,
    ],
    [
      'kitContents a seal line without a seal',
      () => kitContents({ ...plan, seals: [{}] } as Anything),
      TypeError,
      /^plan\.seals\[0\]\.seal must be an object/,
    ],
    [
      'remainingStock oil without what is taken',
      () => remainingStock(request.stock as Anything, { ...plan, oil: [[]] } as Anything),
      TypeError,
      /^plan\.oil\[0\] must be an object, got a list/,
    ],
    [
      'remainingStock a shelf of nothing',
      () => remainingStock({ ...request.stock, seals: { a: null } } as Anything, plan),
      TypeError,
      /^stock\.seals\.a must be an object, got null; parse the document first$/,
    ],
    [
      'listVariantDifferences no machine',
      () => listVariantDifferences({ ...sheet, machine: {} } as Anything),
      TypeError,
      /^sheet\.machine\.variants must be an object, got undefined; parse the document first$/,
    ],
    ['kitContents null', () => kitContents(null as Anything), TypeError, /^plan must be/],
    ['kitContents {}', () => kitContents({} as Anything), TypeError, /^plan\.machine/],
    [
      'kitContents oil',
      () => kitContents({ ...plan, oil: {} } as Anything),
      TypeError,
      /^plan\.oil must be a list/,
    ],
    ['groupKits null', () => groupKits(null as Anything), TypeError, /^kits must be a list/],
    ['groupKits null in it', () => groupKits([kit, null] as Anything), TypeError, /^kits\[1\]/],
    ['groupKits a plan', () => groupKits([{ ...kit, tools: 3 }] as Anything), TypeError, /^kits\[0\]\.tools/],
    ['orderList a kit', () => orderList(kit as Anything), TypeError, /^kits must be a list/],
    ['orderList null in it', () => orderList([null] as Anything), TypeError, /^kits\[0\]/],
    ['remainingStock null', () => remainingStock(null as Anything, plan), TypeError, /^stock must be/],
    [
      'remainingStock no plan',
      () => remainingStock(request.stock as Anything, {} as Anything),
      TypeError,
      /^plan\.oil/,
    ],
    [
      'listVariantDifferences',
      () => listVariantDifferences(log as Anything),
      TypeError,
      /^sheet must be a spec/,
    ],
    [
      'checkRecord null',
      () => checkRecord(null as Anything, {} as Anything),
      TypeError,
      /^record\.document must be/,
    ],
    [
      'checkRecord a log',
      () => checkRecord({ document: log } as Anything, {} as Anything),
      TypeError,
      /^record/,
    ],
  ])('%s', (_what, call, kind, message) => {
    expect(call).toThrow(kind)
    expect(call).toThrow(message)
  })

  it('checkRecord names what is wrong in the set and in the facts', () => {
    const document = { kind: 'service-record', date: '2023-10-06', readings: {}, entries: [] }
    const record = { document } as Anything
    const set = { sheets: [], logs: [], toolboxes: [], stocks: [], procedures: [], records: [] }
    expect(() => checkRecord(record, null as Anything)).toThrow(/^set/)
    expect(() => checkRecord(record, { ...set, sheets: {} } as Anything)).toThrow(/^set\.sheets/)
    expect(() => checkRecord(record, { ...set, records: 5 } as Anything)).toThrow(
      /^set\.records must be a list of documents, got 5$/,
    )
    const emptyRecord = { document: { kind: 'service-record' } } as Anything
    expect(() => checkRecord(emptyRecord, set)).toThrow(/^record\.document\.date must be a string/)
    expect(() => checkRecord(record, set, { today: 'tomorrow' })).toThrow(/today/)
  })
})

describe('invalid documents give findings, not exceptions', () => {
  it('a log of another sheet, or of another revision of it', () => {
    for (const otherSheet of [
      { id: 'other', revision: '2023-03' },
      { ...log.sheet, revision: '1' },
    ]) {
      const planned = planRequest({ ...request, log: { ...log, sheet: otherSheet } })
      expect(planned).toMatchObject({
        ok: false,
        findings: [{ code: 'service/wrong-sheet', severity: 'error', path: '/sheet' }],
      })
    }
  })

  it('each service that is not in the sheet is reported; `constructor` too', () => {
    const planned = planRequest({ ...request, services: ['constructor', 'gear-oil-change', '__proto__'] })
    expect(planned.ok).toBe(false)
    expect(planned.findings.map(({ code, params }) => [code, 'service' in params && params.service])).toEqual(
      [
        ['service/service-not-on-sheet', 'constructor'],
        ['service/service-not-on-sheet', '__proto__'],
      ],
    )
  })

  it('a named service that this variant does not have is reported, and not planned', () => {
    const services = { ...sheet.services }
    const change = services['gear-oil-change']
    if (change === undefined) throw new Error('no service')
    services['gear-oil-change'] = { ...change, appliesTo: { variants: ['short'] } }
    const planned = planRequest({ ...request, sheet: { ...sheet, services }, services: ['gear-oil-change'] })
    if (!planned.ok) throw new Error('no plan')
    expect(planned.value.work).toEqual([])
    expect(planned.findings).toMatchObject([
      { code: 'service/service-not-on-machine', severity: 'warning', path: '/services/gear-oil-change' },
    ])
  })

  it('no service named is no work, and no finding', () => {
    const planned = planRequest({ ...request, services: [] })
    expect(planned).toMatchObject({ ok: true, value: { work: [], steps: [], oil: [] } })
  })
})
