import { describe, expect, it } from 'vitest'
import type { Reason } from '../../src/base/index.js'
import { renderText } from '../../src/card/renderText.js'
import { en } from '../../src/message/en/index.js'
import { renderMessage } from '../../src/message/renderMessage.js'
import type { Toolbox, TorqueWrench } from '../../src/v1/spec.js'
import { patched, replace } from '../support/patched.js'
import { cardOf, planExample } from '../support/planExample.js'

const HUB = '/gearcases/hub/openings/plug'

describe('a socket whose square is not the wrench’s', () => {
  it('is reached through the adaptor, which is listed to be laid ready', () => {
    const plan = planExample('acre-26')
    const adaptors = plan.tools.filter(({ kind }) => kind === 'adaptor')
    expect(adaptors).toMatchObject([
      { have: { id: 'half-to-three-eighths' }, verdict: 'fits', for: [{ path: HUB }] },
    ])
    expect(adaptors[0]?.reasons).toEqual([
      {
        code: 'service/adaptor-between',
        params: { adaptor: '1/2 to 3/8 in drive adaptor', wrenches: ['half-inch click wrench'] },
      },
    ])
    const [reason] = adaptors[0]?.reasons ?? []
    expect(reason && renderMessage(reason, en)).toBe(
      'Put the 1/2 to 3/8 in drive adaptor between the socket and the half-inch click wrench. It is in line, so the setting does not change.',
    )
  })

  it('without the adaptor is a torque that no wrench covers', () => {
    const toolbox = ({ adaptors: _, ...rest }: Toolbox): Toolbox => rest
    const plan = planExample('acre-26', { toolbox })
    expect(plan.tightenings.find(({ part }) => part.path === HUB)?.verdict).toBe('does not fit')
    expect(plan.tools.filter(({ kind }) => kind === 'adaptor')).toEqual([])
    expect(plan.findings.map(({ code }) => code)).toEqual(['service/no-wrench-fits'])
  })
})

describe('a stated torque and one wrench of 40 to 200 lbf·in', () => {
  const FILL = '/gearcases/bevel/openings/fill'
  const plan = (torque: object, wrench: Partial<TorqueWrench> = {}, tolerancePercent?: number) =>
    planExample('kvist-2', {
      sheet: patched(
        replace(`${FILL}/tightening`, {
          kind: 'torque',
          torque,
          threadCondition: 'dry',
          source: { ref: 'manual', page: '12', confidence: 'read' },
        }),
      ),
      toolbox: (toolbox) => ({
        ...toolbox,
        wrenches: {
          inch: {
            name: 'small inch wrench',
            type: 'click',
            drive: '1/2 in',
            scales: [{ unit: 'lbf.in', lowest: 40, highest: 200, graduation: 1 }],
            accuracy: { kind: 'ISO 6789' },
            calibration: { date: '2023-05-04', cyclesSince: 20 },
            ...wrench,
          },
        },
      }),
      request: tolerancePercent === undefined ? {} : { tolerancePercent },
    })
  const rowOf = ({ tightenings }: ReturnType<typeof plan>) =>
    tightenings.find(({ part }) => part.path === FILL)
  const coarse = { scales: [{ unit: 'lbf.in', lowest: 40, highest: 200, graduation: 20 }] } as const
  const say = (reason: Reason) => renderMessage(reason, en).replaceAll('\u00a0', ' ')
  const NOMINAL_TORQUE = { kind: 'nominal', value: '9.3', unit: 'lbf.ft' }

  it('a bare 9.3 lbf·ft gets the nearest mark, says how far it is off, and the wrench comes along', () => {
    const planned = plan(NOMINAL_TORQUE)
    const row = rowOf(planned)
    expect([row?.verdict, row?.setting]).toEqual(['fits with care', { value: 112, unit: 'lbf.in' }])
    expect(planned.wrenches).toEqual({ use: ['inch'], reasons: [] })
    expect(row?.reasons.slice(0, 2).map(say)).toEqual([
      "Set 112 lbf·in: the nearest mark, 0.4 % above the manual's 9.3 lbf·ft.",
      'The manual prints 9.3 lbf·ft without a tolerance.',
    ])
    const card = renderText(cardOf(planned))
    expect(card).toMatch(/112.lbf·in/)
    expect(card.replaceAll(/\s+/g, ' ')).toMatch(/the nearest mark, 0\.4 % above the manual's 9\.3 lbf·ft/)
    expect(planned.missing.map(({ kind }) => kind)).not.toContain('not settled')
    expect(planned.findings.filter(({ severity }) => severity !== 'info')).toEqual([])
  })

  it('with no mark near enough it is a finding, not settled, and a usual wrench is named', () => {
    const planned = plan(NOMINAL_TORQUE, coarse)
    expect(rowOf(planned)?.verdict).toBe('does not fit')
    expect(planned.findings.map(({ code, severity, path }) => [code, severity, path])).toEqual([
      ['service/no-wrench-fits', 'warning', FILL],
    ])
    const unsettled = planned.missing.filter(({ kind }) => kind === 'not settled')
    expect(unsettled.map(({ path, reason }) => [path, reason.code])).toEqual([
      [FILL, 'service/torque-not-settled'],
    ])
    expect(planned.wrenches.reasons.map(say)).toEqual([
      'Get a torque wrench of 40–200 lbf·in, for 1 tightening.',
    ])
    const [finding] = planned.findings
    expect(finding && say(finding)).toMatch(
      /100 lbf·in and 120 lbf·in\. If a larger error is permitted, give it as the tolerance \(tolerancePercent, --tolerance\)/,
    )
    // by hand: 12 % of 111.6 is 13.39, so 120 lies in 98.2 to 125.0
    expect(rowOf(plan(NOMINAL_TORQUE, coarse, 12))?.setting).toEqual({ value: 120, unit: 'lbf.in' })
  })

  it('one that cannot be judged is a finding too, and not settled', () => {
    const limitedPlan = plan({ kind: 'limits', max: '9.3', unit: 'lbf.ft' })
    const unknown = plan(NOMINAL_TORQUE, { type: 'dial' })
    for (const planned of [limitedPlan, unknown]) {
      expect(rowOf(planned)?.verdict).toBe('cannot tell')
      expect(planned.findings.map(({ code }) => code)).toEqual(['service/no-wrench-fits'])
      expect(planned.missing.map(({ kind }) => kind)).toContain('not settled')
    }
  })

  it('a tightening that is not stated or by turns is listed, and is no finding', () => {
    const before = planExample('kvist-2')
    expect(before.missing.filter(({ reason }) => reason.params['role'] === 'tightening')).toHaveLength(2)
    expect(before.missing.map(({ kind }) => kind)).not.toContain('not settled')
    const turns = planExample('kvist-2', {
      sheet: patched(
        replace(`${FILL}/tightening`, { kind: 'turns', min: '2', max: '3', threadCondition: 'sealant' }),
      ),
    })
    expect(turns.tightenings.find(({ part }) => part.path === FILL)?.verdict).toBe('by turns')
    expect(turns.missing.map(({ kind }) => kind)).not.toContain('not settled')
    for (const planned of [before, turns])
      expect(planned.findings.map(({ code }) => code)).not.toContain('service/no-wrench-fits')
  })
})
