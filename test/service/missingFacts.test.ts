import { describe, expect, it } from 'vitest'
import { applyPatch } from '../../src/base/applyPatch.js'
import { en } from '../../src/message/en/index.js'
import { renderHtml, renderMarkdown, renderText } from '../../src/v1/card.js'
import { renderMessage } from '../../src/v1/message.js'
import type { SpecSheet } from '../../src/v1/spec.js'
import { cardOf, planExample, planRequest, requestExample } from '../support/planExample.js'

const DRAIN = '/gearcases/front/openings/drain/tightening'

/** The main job with an unknown serial number, and a drain plug whose torque the manual does not state. */
const plan = planExample('tind-4', {
  log: (log) => ({ ...log, identity: { modelYear: 2021 } }),
  sheet: (sheet) =>
    applyPatch(sheet, [
      { op: 'replace', path: DRAIN, value: { kind: 'not stated', threadCondition: 'dry' } },
    ]) as SpecSheet,
})

describe('the main job with the variant missing and a torque not stated', () => {
  it('names the variant as missing, with the facts that would decide and both candidates', () => {
    expect(plan.machine.variant).toMatchObject({
      verdict: 'cannot tell',
      missing: ['variant', 'serial'],
      candidates: [{ id: 'short' }, { id: 'long' }],
    })
    expect(plan.missing.map(({ reason }) => reason.code)).toContain('service/variant-not-known')
    expect(plan.findings).toMatchObject([
      { code: 'service/variant-not-known', severity: 'warning', path: '/identity' },
    ])
  })

  it('leaves open what turns on the variant, with the candidates, and guesses nothing', () => {
    const refill = plan.figures.find(({ path }) => path === '/gearcases/rear/oilSpace/fill/drainAndRefill')
    expect(refill?.resolved).toMatchObject({
      kind: 'cannot tell',
      candidates: [{ value: { value: '700' } }, { value: { value: '950' } }],
    })
    const oil = plan.oil.find(({ part }) => part.path === '/gearcases/rear')
    expect(oil).toMatchObject({ choice: 'SAE 80W-90, API GL-5', take: [] })
    expect(oil?.needed).toBeUndefined()
    expect(
      plan.waits.find(({ kind, part }) => kind === 'pour' && part.path === '/gearcases/rear')?.seconds,
    ).toBe(undefined)
  })

  it('still answers everything that does not turn on it', () => {
    expect(plan.work).toHaveLength(2)
    expect(plan.steps.length).toBeGreaterThan(60)
    expect(plan.oil.find(({ part }) => part.path === '/gearcases/front')?.needed).toEqual({
      value: 450,
      unit: 'mL',
    })
    expect(plan.tightenings.filter(({ setting }) => setting !== undefined)).toHaveLength(4)
  })

  it('says that the torque is not stated, and sets no wrench for it', () => {
    const drain = plan.tightenings.find(({ part }) => part.path === '/gearcases/front/openings/drain')
    expect(drain).toMatchObject({ verdict: 'cannot tell' })
    expect(drain?.setting).toBeUndefined()
    expect(plan.missing).toContainEqual(expect.objectContaining({ kind: 'not stated', path: DRAIN }))
  })

  it.each([
    ['text', renderText],
    ['Markdown', renderMarkdown],
    ['HTML', renderHtml],
  ])('the card says both: %s', (_form, render) => {
    const card = render(cardOf(plan)).replace(/\s+/g, ' ')
    expect(card).toMatch(/not stated/i)
    expect(card).toMatch(/see the manual/i)
    expect(card).toContain('Tind 4 S, short bed')
    expect(card).toContain('Tind 4 L, long bed')
    for (const { reason } of plan.missing.filter(({ kind }) => kind !== 'not kept'))
      expect(renderMessage(reason, en)).toMatch(/Find out|See the manual|Find that out|unknown|not known/i)
  })
})

describe('a fact after the other taken away', () => {
  it('no toolbox: no settings, no pan, and the plan says so', () => {
    const { toolbox: _toolbox, ...request } = requestExample('tind-4')
    const planned = planRequest(request)
    if (!planned.ok) throw new Error('no plan')
    const plan = planned.value
    expect(plan.tightenings.every(({ setting }) => setting === undefined)).toBe(true)
    expect(plan.pan?.verdict).toBe('cannot tell')
    expect(plan.pan?.volume).toEqual({ value: 1400, unit: 'mL' })
    expect(plan.tools).toEqual([])
    expect(plan.missing).toContainEqual({
      kind: 'not kept',
      reason: { code: 'service/no-toolbox', params: {} },
    })
    const unsettled = plan.missing.filter(({ kind }) => kind === 'not settled')
    expect(unsettled.map(({ reason }) => reason.code)).toEqual(['service/settings-need-toolbox'])
    expect(unsettled[0]?.reason.params['parts']).toHaveLength(5)
    expect(planned.findings.map(({ code, severity }) => [code, severity])).toEqual([
      ['service/settings-need-toolbox', 'warning'],
    ])
  })

  it('no toolbox, and no torque in the visit: nothing is left without a setting', () => {
    const { toolbox: _toolbox, ...request } = requestExample('bud-3', { services: ['none'] })
    const planned = planRequest({ ...request, services: [] })
    if (!planned.ok) throw new Error('no plan')
    expect(planned.value.missing.filter(({ kind }) => kind === 'not settled')).toEqual([])
    expect(planned.findings).toEqual([])
  })

  it('no stock: all oil and new seals are to be bought, and no seal that is only inspected', () => {
    const { stock: _stock, ...request } = requestExample('tind-4')
    const planned = planRequest(request)
    if (!planned.ok) throw new Error('no plan')
    expect(planned.value.oil.map(({ buy }) => buy?.volume)).toEqual([
      { value: 450, unit: 'mL' },
      { value: 950, unit: 'mL' },
    ])
    const isSpare = ({ seal }: (typeof planned.value.seals)[number]) =>
      'replace' in seal && seal.replace === 'on condition'
    expect(planned.value.seals.map(({ buy }) => buy)).toEqual(
      planned.value.seals.map((line) => (isSpare(line) ? 0 : line.count)),
    )
    expect(planned.value.seals.filter(isSpare).length).toBeGreaterThan(0)
    expect(planned.value.seals.every(isSpare)).toBe(false)
  })

  it('no ambient temperature: no pour time, and the oil is chosen without it', () => {
    const { ambient: _ambient, ...request } = requestExample('tind-4')
    const planned = planRequest(request)
    if (!planned.ok) throw new Error('no plan')
    const pours = planned.value.waits.filter(({ kind }) => kind === 'pour')
    expect(pours).toHaveLength(2)
    expect(pours.every(({ seconds }) => seconds === undefined)).toBe(true)
    expect(planned.value.missing.map(({ reason }) => reason.code)).toContain('service/ambient-not-given')
  })

  it('too warm for every oil of the sheet: a finding, and no oil is chosen', () => {
    const hotPlan = planExample('tind-4', { request: { ambient: { value: 46, unit: 'degC' } } })
    expect(hotPlan.oil.map(({ choice }) => choice)).toEqual([undefined, undefined])
    expect(hotPlan.findings.map(({ code }) => code)).toEqual([
      'service/no-oil-for-ambient',
      'service/no-oil-for-ambient',
    ])
  })

  it.each([
    [45, 'SAE 80W-90, API GL-5'],
    [-10, 'SAE 80W-90, API GL-5'],
    [-10.1, 'SAE 75W-90, API GL-5'],
    [0.1, 'SAE 80W-90, API GL-5'],
  ])('the ambient band belongs to its ends: %s °C takes %s', (value, oil) => {
    const coldPlan = planExample('tind-4', { request: { ambient: { value, unit: 'degC' } } })
    expect(coldPlan.oil.map(({ choice }) => choice)).toEqual([oil, oil])
  })
})
