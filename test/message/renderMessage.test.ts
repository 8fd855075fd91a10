import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Params } from '../../src/base/finding.js'
import { cleanText } from '../../src/message/cleanText.js'
import { en } from '../../src/message/en/index.js'
import { renderMessage } from '../../src/v1/message.js'
import { law } from '../support/law.js'

const CODES = Object.keys(en.texts)
/** Characters that no reader may get: controls, direction marks and overrides, invisible and private characters. */
const FORBIDDEN =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the test looks for control characters
  /[\u0000-\u001f\u007f-\u009f\u061c\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ue000-\uf8ff]|\p{Cs}/u
const HOSTILE = [
  '<script>alert(1)</script>',
  'left\u202egub\u202c',
  'two\nlines\r\nand\ttabs',
  '\u0000\u001b[31mred',
  '\ud800 alone',
  '__proto__',
  'x'.repeat(10_000),
]

describe('renderMessage', () => {
  it('writes the text of a code with its params', () => {
    expect(renderMessage({ code: 'calendar/not-a-date', params: { text: '2031-02-30' } }, en)).toBe(
      '“2031-02-30” is not a calendar date. Write year, month and day as in 2031-01-12.',
    )
  })

  it('shows a code that it does not know, with its params', () => {
    expect(renderMessage({ code: 'future/unheard-of', params: { part: 'plug', count: 2 } }, en)).toBe(
      'future/unheard-of (part: plug, count: 2)',
    )
    expect(renderMessage({ code: 'future/bare', params: {} }, en)).toBe('future/bare')
  })

  it('looks codes up as own properties only', () => {
    for (const code of ['constructor', '__proto__', 'toString']) {
      expect(renderMessage({ code, params: {} }, en)).toBe(code)
    }
  })

  it('falls back on code and params where the params are of another shape', () => {
    const params = { candidates: 3, text: null, list: [1, 'a'], nested: { a: true } } as Params
    const written = renderMessage({ code: 'quantity/unit-is-ambiguous', params }, en)
    expect(written).toBe(
      'quantity/unit-is-ambiguous (candidates: 3, text: –, list: [1,"a"], nested: {"a":true})',
    )
  })

  it('survives cycles, deep nesting and values that are not JSON', () => {
    const cycle: Record<string, unknown> = { text: 'a' }
    cycle['self'] = cycle
    cycle['again'] = cycle
    let deepValue: unknown = 'end'
    for (let level = 0; level < 9000; level++) deepValue = { deep: deepValue }
    const oddParams = {
      cycle,
      deep: deepValue,
      big: 10n,
      call: () => 1,
      sign: Symbol('s'),
    } as unknown as Params
    const written = renderMessage({ code: 'future/odd', params: oddParams }, en)
    expect(written).toContain('big: (bigint)')
    expect(written).toContain('call: (function)')
    expect(written).not.toMatch(FORBIDDEN)
  })

  it('renders a reason that carries itself as a param', () => {
    const inner: { code: string; params: Record<string, unknown> } = {
      code: 'torque/stage',
      params: { stage: 1 },
    }
    inner.params['reason'] = inner
    expect(renderMessage(inner as never, en)).not.toMatch(FORBIDDEN)
  })

  it('throws for an invalid catalogue', () => {
    for (const catalogue of [undefined, 5, { ...en, texts: undefined }])
      expect(() => renderMessage({ code: 'a/b', params: {} }, catalogue as never)).toThrow(
        /^catalogue must be .*message\/en/,
      )
  })

  it('throws where the code is no string', () => {
    expect(() => renderMessage({ code: 3, params: {} } as never, en)).toThrow(TypeError)
    expect(() => renderMessage(null as never, en)).toThrow('message.code must be a string')
  })

  it('gives one clean line for any params of any code', () => {
    const anyParams = fc.dictionary(
      fc.constantFrom(
        'text',
        'part',
        'value',
        'reason',
        'band',
        'required',
        'unit',
        'path',
        '__proto__',
        'stage',
      ),
      fc.oneof(
        fc.constantFrom<unknown>(...HOSTILE),
        fc.jsonValue(),
        fc.record({ value: fc.double(), unit: fc.constantFrom('N.m', 'mL', '', 'constructor') }),
      ),
    )
    law(200, fc.constantFrom(...CODES), anyParams, (code, params) => {
      const written = renderMessage({ code, params: params as Params }, en)
      expect(written.length).toBeGreaterThan(0)
      expect(written).not.toMatch(FORBIDDEN)
    })
  })

  /** The param names that a code's text reads, recorded by a proxy. */
  function namesRead(code: string): string[] {
    const names: string[] = []
    const recorder: ProxyHandler<object> = {
      get: (_target, name) => {
        if (typeof name === 'string') names.push(name)
        return 'x'
      },
      has: () => true,
    }
    const text = (en.texts as unknown as Record<string, (params: object, say: object) => string>)[code]
    const say = new Proxy({}, { get: () => () => 'x' })
    try {
      text?.(new Proxy({}, recorder), say)
    } catch {
      // If a text fails because it expects another shape, its first names are already recorded.
    }
    return names
  }

  it.each(CODES)('%s: hostile strings under every name that its text reads', (code) => {
    const names = namesRead(code)
    for (const text of HOSTILE) {
      const params = Object.fromEntries(names.map((name) => [name, text]))
      const written = renderMessage({ code, params }, en)
      expect(written.length).toBeGreaterThan(0)
      expect(written).not.toMatch(FORBIDDEN)
    }
  })
})

describe('cleanText', () => {
  it('shows what would break a line or turn its direction', () => {
    expect(cleanText('a\nb')).toBe('a\\u{a}b')
    expect(cleanText('gear\u202erab')).toBe('gear\\u{202e}rab')
    expect(cleanText('\ud83d')).toBe('\\u{d83d}')
    expect(cleanText('\u{e0041}')).toBe('\\u{e0041}')
  })

  it('leaves letters of every script, no-break spaces and signs alone', () => {
    const plainText = 'Größe 4×4, Öl №\u00a05, 変速機, трансмиссия, ½ N·m 🔧'
    expect(cleanText(plainText)).toBe(plainText)
  })

  it('cuts at 400 characters: not at 400, at 401', () => {
    expect(cleanText('a'.repeat(400))).toBe('a'.repeat(400))
    expect(cleanText('a'.repeat(401))).toBe(`${'a'.repeat(400)}…`)
  })

  it('throws for an invalid string', () => {
    expect(() => cleanText(5 as never)).toThrow('text must be a string, got 5')
  })

  it('is clean, and cleaning again changes nothing', () => {
    law(200, fc.string({ unit: 'binary', maxLength: 600 }), (text) => {
      const cleanedText = cleanText(text)
      expect(cleanedText).not.toMatch(FORBIDDEN)
      expect(cleanedText.length > 400 || cleanText(cleanedText) === cleanedText).toBe(true)
    })
  })
})
