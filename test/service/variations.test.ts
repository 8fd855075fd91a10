import { describe, expect, it } from 'vitest'
import { listDue } from '../../src/v1/service.js'
import { add, patched, replace } from '../support/patched.js'
import { planExample, requestExample, TODAY } from '../support/planExample.js'

const codes = (found: readonly { readonly code: string }[]) => found.map(({ code }) => code)

describe('oil spaces that are shared', () => {
  const sharedWith = (owner: string) => ({ kind: 'shared', with: owner })

  it('in a circle: no gearcase owns the oil, nothing is due, and planning ends', () => {
    const plan = planExample('tind-4', {
      sheet: patched(
        replace('/gearcases/front/oilSpace', sharedWith('rear')),
        replace('/gearcases/rear/oilSpace', sharedWith('front')),
      ),
    })
    expect(plan.due).toEqual([])
    expect(plan.work).toEqual([])
  })

  it('with a gearcase that is not there: the rest is planned', () => {
    const plan = planExample('tind-4', {
      sheet: patched(replace('/gearcases/rear/oilSpace', sharedWith('nowhere'))),
    })
    expect(plan.work.map(({ part }) => part.path)).toEqual(['/gearcases/front'])
    expect(plan.oil.map(({ needed }) => needed)).toEqual([{ value: 450, unit: 'mL' }])
  })
})

describe('services and gearcases', () => {
  it('a gearcase that no service names is not listed', () => {
    const plan = planExample('tind-4', {
      sheet: patched(
        replace('/services/gear-oil-change/gearcases', ['front']),
        replace('/services/gear-oil-check/gearcases', ['front']),
      ),
    })
    expect(plan.due.map(({ part }) => part.path)).toEqual(['/gearcases/front', '/gearcases/front'])
  })

  it('an unknown gearcase is passed over, and one named twice is listed once', () => {
    const {
      sheet,
      log,
      due: options,
    } = requestExample('tind-4', {
      sheet: patched(
        replace('/services/gear-oil-change/gearcases', ['nowhere', 'front', 'constructor', 'front']),
        replace('/services/gear-oil-check/gearcases', []),
      ),
    })
    const listed = listDue({ sheet, log, today: TODAY }, options)
    expect(listed.map(({ gearcase }) => gearcase)).toEqual(['front'])
  })

  it('a check beside the change of the same gearcase is left out, and says what covers it', () => {
    const plan = planExample('tind-4')
    const check = plan.due.filter(({ service }) => service === 'gear-oil-check')
    expect(check.map(({ taken }) => taken)).toEqual([false, false])
    expect(check.map(({ coveredBy }) => coveredBy)).toEqual(['gear oil change', 'gear oil change'])
  })

  it('of two services that each count as the other, the first is done', () => {
    const plan = planExample('tind-4', {
      sheet: patched(add('/services/gear-oil-check/satisfies', ['gear-oil-change'])),
      services: ['gear-oil-check', 'gear-oil-change'],
    })
    expect(plan.work.map(({ service, part }) => [service, part.path])).toEqual([
      ['gear-oil-change', '/gearcases/front'],
      ['gear-oil-change', '/gearcases/rear'],
    ])
  })

  it('a check named alone is planned as a check: no oil drained, none needed', () => {
    const plan = planExample('tind-4', { services: ['gear-oil-check'] })
    expect(plan.work.map(({ task }) => task)).toEqual(['check', 'check'])
    expect(plan.oil).toEqual([])
    expect(plan).not.toHaveProperty('pan')
    expect(plan.cautions.map(({ code }) => code)).not.toContain('service/used-oil-rules')
  })

  it('an event after the last service makes it due before next use', () => {
    const plan = planExample('tind-4', {
      sheet: patched(add('/services/gear-oil-change/events', ['submersion'])),
      log: (log) => ({ ...log, events: [{ kind: 'submersion', date: '2023-10-01', gearcases: ['rear'] }] }),
    })
    const rear = plan.due.find(
      ({ service, part }) => service === 'gear-oil-change' && part.path === '/gearcases/rear',
    )
    expect(rear?.lines.find(({ by }) => by === 'event')).toMatchObject({
      verdict: 'due',
      dueOn: '2023-10-01',
    })
    const front = plan.due.find(({ part }) => part.path === '/gearcases/front')
    expect(front?.lines.some(({ by }) => by === 'event')).toBe(false)
  })

  it('a part that this machine may or may not have is cannot tell, with the fact that decides', () => {
    const {
      sheet,
      log,
      due: options,
    } = requestExample('tind-4', {
      sheet: patched(add('/gearcases/rear/appliesTo', { market: ['north'] })),
    })
    const rear = listDue({ sheet, log, today: TODAY }, options).filter(({ gearcase }) => gearcase === 'rear')
    expect(rear.map(({ verdict }) => verdict)).toEqual(['cannot tell', 'cannot tell'])
    expect(rear[0]?.missing).toMatchObject([
      { code: 'service/part-not-known', params: { facts: ['market'] } },
    ])
    const southernLog = { ...log, identity: { ...log.identity, market: 'south' } }
    const dueThere = listDue({ sheet, log: southernLog, today: TODAY }, options)
    expect(dueThere.map(({ gearcase }) => gearcase)).toEqual(['front', 'front'])
  })
})

describe('who the machine is', () => {
  it('facts that contradict the stated variant', () => {
    const plan = planExample('tind-4', {
      log: (log) => ({ ...log, identity: { variant: 'short', serial: 'TL00418' } }),
    })
    expect(codes(plan.findings)).toContain('service/variant-contradicted')
    expect(plan.machine.variant.verdict).toBe('cannot tell')
  })

  it('a stated variant that the sheet does not know', () => {
    const plan = planExample('tind-4', { log: (log) => ({ ...log, identity: { variant: 'wide' } }) })
    expect(plan.machine.variant.verdict).toBe('cannot tell')
    expect(codes(plan.findings)).toContain('service/variant-contradicted')
  })

  it('no facts at all: both variants are candidates', () => {
    const plan = planExample('tind-4', { log: (log) => ({ ...log, identity: {} }) })
    expect(plan.machine.variant).toMatchObject({ candidates: [{ id: 'short' }, { id: 'long' }] })
    expect(codes(plan.missing.map(({ reason }) => reason))).toContain('service/variant-not-known')
  })
})
