import { describe, expect, it } from 'vitest'
import { applyPatch } from '../../src/base/applyPatch.js'
import { renderHtml, renderMarkdown, renderText } from '../../src/v1/card.js'
import { checkDocuments } from '../../src/v1/rules.js'
import { parseSpecSheet, type SpecSheet } from '../../src/v1/spec.js'
import { cardOf, planExample } from '../support/planExample.js'
import { readExample } from '../support/readExample.js'

// Facts that a manual does not state can be omitted from a sheet: nothing is invented, and everything else is still
// planned.

const NOT_STATED = { kind: 'not stated' } as const
const { machine, sources, services, ...head } = readExample('tind-4', 'sheet')

/** The first example with its services, and a rear gearcase for which the manual states only these facts. */
const sheetWith = (gearcase: Partial<SpecSheet['gearcases'][string]>): SpecSheet => {
  const rear = { name: 'rear differential', type: 'differential', access: NOT_STATED, ...gearcase } as const
  const change = { ...services['gear-oil-change'], gearcases: ['rear'] }
  const { satisfies: _satisfies, notes: _notes, ...service } = change as (typeof services)[string]
  const { overrides: _overrides, waivers: _waivers, shields: _shields, ...rest } = head
  const given = { ...rest, machine, sources, gearcases: { rear }, services: { 'gear-oil-change': service } }
  const read = parseSpecSheet(given)
  if (!read.ok) throw new Error(JSON.stringify(read.findings))
  return read.value
}
const space = (refill: object) =>
  ({ kind: 'own', oils: NOT_STATED, fill: { drainAndRefill: refill, method: NOT_STATED } }) as never
const INTERVAL_ONLY = sheetWith({ oilSpace: space(NOT_STATED), openings: {}, emptying: [] })
const THREE_FIGURES = sheetWith({
  oilSpace: space({ kind: 'nominal', value: '300', unit: 'mL' }),
  openings: {
    drain: {
      name: 'drain plug',
      uses: [{ role: 'drain' }],
      drive: NOT_STATED,
      tightening: {
        kind: 'torque',
        torque: { kind: 'nominal', value: '12', unit: 'lbf.ft' },
        threadCondition: 'not stated',
      },
      seals: [NOT_STATED],
      place: NOT_STATED,
    },
  },
  emptying: [{ kind: 'drain plug', opening: 'drain' }],
})

const check = (document: SpecSheet) =>
  checkDocuments({ sheets: [{ document }], logs: [], toolboxes: [], stocks: [], procedures: [], records: [] })
const planOf = (sheet: SpecSheet) =>
  planExample('tind-4', { sheet: () => sheet, services: ['gear-oil-change'] })

describe.each([
  ['intervals alone', INTERVAL_ONLY],
  ['three figures', THREE_FIGURES],
])('a sheet of %s', (_what, sheet) => {
  it('is a valid sheet: omitted facts are information', () => {
    const severities = check(sheet)
      .filter(({ path }) => path.startsWith('/gearcases'))
      .map(({ severity }) => severity)
    expect(severities.length).toBeGreaterThan(0)
    expect(new Set(severities)).toEqual(new Set(['info']))
  })

  it('is planned: due, what is not stated, and no step', () => {
    const plan = planOf(sheet)
    expect(plan.due.map(({ service }) => service)).toContain('gear-oil-change')
    expect(plan.steps).toEqual([])
    expect(plan.missing.map(({ path, kind }) => `${kind} ${path}`)).toEqual(
      expect.arrayContaining([
        'not stated /gearcases/rear/access',
        'not stated /gearcases/rear/oilSpace/fill/method',
      ]),
    )
    expect(plan.findings.filter(({ severity }) => severity === 'error')).toEqual([])
  })

  it.each([
    ['text', renderText],
    ['Markdown', renderMarkdown],
    ['HTML', renderHtml],
  ])('prints a card with its gaps: %s', (_form, render) => {
    const card = render(cardOf(planOf(sheet))).replace(/\s+/g, ' ')
    expect(card).toMatch(/access not stated/i)
    expect(card).toMatch(/how to fill not stated/i)
  })
})

it('three figures give a wrench setting without an order of work', () => {
  const [drain] = planOf(THREE_FIGURES).tightenings
  expect(drain).toMatchObject({ part: { path: '/gearcases/rear/openings/drain' }, count: 1 })
  expect(drain?.setting).toBeDefined()
})

describe('facts that a manual leaves out, one by one, in a whole sheet', () => {
  const replaceWhole = (path: string, value: unknown) =>
    planExample('tind-4', {
      sheet: (sheet) => applyPatch(sheet, [{ op: 'replace', path, value }]) as SpecSheet,
    })
  const FILL = '/gearcases/front/openings/fill'
  const DRAIN = '/gearcases/front/openings/drain'

  it.each([
    ['/gearcases/front/access', NOT_STATED, '/gearcases/front/access'],
    ['/gearcases/front/oilSpace/fill/method', NOT_STATED, '/gearcases/front/oilSpace/fill/method'],
    [`${FILL}/drive`, NOT_STATED, `${FILL}/drive`],
  ])('%s: listed as not stated, and the work is planned', (path, value, at) => {
    const plan = replaceWhole(path, value)
    expect(plan.steps.length).toBeGreaterThan(20)
    expect(plan.missing).toContainEqual(expect.objectContaining({ kind: 'not stated', path: at }))
  })

  it('when to replace a washer: a new one, and the reason says why', () => {
    const seal = replaceWhole(`${DRAIN}/seals/0/replace`, 'not stated').seals.find(({ part }) =>
      part.path.startsWith(DRAIN),
    )
    expect(seal).toMatchObject({
      replace: 'not stated',
      reasons: [{ code: 'service/seal-replace-not-stated' }, {}],
    })
  })

  it('the form of a washer: printed without one', () => {
    const card = renderText(cardOf(replaceWhole(`${DRAIN}/seals/0/form`, 'not stated')))
    expect(card).not.toMatch(/form not stated|undefined/)
  })
})

describe('a drive that differs by variant', () => {
  const path = '/gearcases/rear/openings/drain/drive'
  const to = { kind: 'external hex', size: '17 mm' } as const
  const plan = (variant: string | undefined) =>
    planExample('tind-4', {
      sheet: (sheet) => ({
        ...sheet,
        overrides: [
          ...(sheet.overrides ?? []),
          { when: { variants: ['long'] }, set: [{ kind: 'drive', path, to }] },
        ],
      }),
      log: (log) => ({ ...log, identity: variant === undefined ? {} : { variant } }),
    })
  const sizes = (variant?: string) =>
    plan(variant)
      .tools.filter(({ for: parts }) => parts.some((part) => part.path === '/gearcases/rear/openings/drain'))
      .map(({ drive }) => `${drive?.kind} ${drive?.size}`)

  it('is that of the variant; both are brought along while the variant is not known', () => {
    const [base = ''] = sizes('short')
    expect(sizes('long')).toEqual(['external hex 17 mm'])
    expect(base).not.toBe('external hex 17 mm')
    expect(sizes()).toEqual([base, 'external hex 17 mm'])
  })
})
