import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { en } from '../../src/message/en/index.js'
import { explain } from '../../src/v1/message.js'
import { law } from '../support/law.js'

const reason = (text: string) => ({ code: 'calendar/not-a-date', params: { text } })
const line = (text: string) => `“${text}” is not a calendar date. Write year, month and day as in 2031-01-12.`

describe('explain', () => {
  it('gives every reason once, in the order in which it stands', () => {
    const result = { lines: [{ reasons: [reason('a'), reason('b')] }], reasons: [reason('a'), reason('c')] }
    expect(explain(result, en)).toEqual([line('a'), line('b'), line('c')])
  })

  it('gives every reason once and in order, however deep it is (law)', () => {
    const texts = fc.array(fc.record({ text: fc.stringMatching(/^[a-z]{1,4}$/), depth: fc.nat({ max: 4 }) }))
    law(100, texts, (drawn) => {
      const nest = (value: unknown, depth: number): unknown =>
        depth === 0 ? value : nest(depth % 2 === 0 ? { inner: value } : [value], depth - 1)
      const result = drawn.map(({ text, depth }) => nest({ reasons: [reason(text)] }, depth))
      expect(explain(result, en)).toEqual([...new Set(drawn.map(({ text }) => line(text)))])
    })
  })

  it('takes a list, findings, and nothing', () => {
    expect(explain([reason('x')], en)).toEqual([line('x')])
    expect(explain({ ok: false, findings: [{ ...reason('y'), severity: 'error', path: '' }] }, en)).toEqual([
      line('y'),
    ])
    expect(explain({ value: 3, deep: [[{}]] }, en)).toEqual([])
  })

  it('does not take a reason inside the params of another for one of its own', () => {
    const outerReason = { code: 'future/outer', params: { inner: reason('z') } }
    expect(explain({ reasons: [outerReason] }, en)).toHaveLength(1)
  })

  it('survives cycles and 9,000-deep nesting', () => {
    const cycle: Record<string, unknown> = { reasons: [reason('q')] }
    cycle['self'] = cycle
    expect(explain(cycle, en)).toEqual([line('q')])
    let deepReason: unknown = reason('deep')
    for (let level = 0; level < 9000; level++) deepReason = [deepReason]
    expect(explain(deepReason, en)).toEqual([line('deep')])
  })

  it('throws for an invalid result', () => {
    expect(() => explain(null, en)).toThrow('result must be an object, not null')
    expect(() => explain('text', en)).toThrow(TypeError)
  })

  it('throws for what is no catalogue, and says where one is', () => {
    for (const catalogue of [undefined, 5, {}, { ...en, texts: null }])
      expect(() => explain({}, catalogue as never)).toThrow(/^catalogue must be .*message\/en/)
  })

  it('takes a list of 300,000 entries', () => {
    expect(explain([Array.from({ length: 300_000 }, () => 1), reason('w')], en)).toEqual([line('w')])
  })
})
