import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { en } from '../../src/message/en/index.js'
import type { CardWords } from '../../src/v1/message.js'

const SOURCES = new URL('../../src', import.meta.url).pathname

/** Codes as declared in the `codes.ts` of each module, read from the text, not through the types. */
function declaredCodes(): string[] {
  return readdirSync(SOURCES, { withFileTypes: true }).flatMap((entry) => {
    if (!entry.isDirectory()) return []
    const files = readdirSync(join(SOURCES, entry.name)).filter((name) => name === 'codes.ts')
    return files.flatMap((file) => {
      const text = readFileSync(join(SOURCES, entry.name, file), 'utf8')
      return [...text.matchAll(/^ {2}'([a-z]+\/[a-z0-9-]+)':/gm)].map(([, code]) => code ?? '')
    })
  })
}

describe('the English catalogue', () => {
  it('has a text for every code that any module declares', () => {
    const allCodes = declaredCodes()
    expect(allCodes.length).toBeGreaterThan(100)
    expect(allCodes.filter((code) => !Object.hasOwn(en.texts, code))).toEqual([])
  })

  it('has no text for a code that no module declares', () => {
    const declared = new Set(declaredCodes())
    expect(Object.keys(en.texts).filter((code) => !declared.has(code))).toEqual([])
  })

  it('has no text for a code that nothing gives', () => {
    const files = readdirSync(SOURCES, { recursive: true, encoding: 'utf8' }).filter(
      (file) => file.endsWith('.ts') && !/codes\.ts$|allRules\.ts$|^message|^card/.test(file),
    )
    const source = files.map((file) => readFileSync(join(SOURCES, file), 'utf8')).join('\n')
    // Some codes are built from a module's name, or a longer beginning, and a word that is chosen.
    const codePrefixes = [...source.matchAll(/`([a-z]+\/[a-z-]+)\$\{/g)].map(([, start]) => start ?? '')
    const isGiven = (code: string) =>
      source.includes(`'${code}'`) ||
      source.includes(`'${code.split('/')[1]}'`) ||
      codePrefixes.some((start) => code.startsWith(start))
    expect(declaredCodes().filter((code) => !isGiven(code))).toEqual([])
  })

  it('has no digit in any word of the card, since a figure on a card comes from the plan', () => {
    const withDigits: string[] = []
    const walk = (value: unknown, path: string): void => {
      if (typeof value === 'string' && /[0-9]/.test(value)) withDigits.push(path)
      if (typeof value !== 'object' || value === null) return
      for (const [key, item] of Object.entries(value)) walk(item, `${path}/${key}`)
    }
    walk(en.card satisfies CardWords, '')
    expect(withDigits).toEqual([])
  })

  it('joins lists as English does', () => {
    expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map((items) => en.list(items))).toEqual([
      '',
      'a',
      'a and b',
      'a, b and c',
    ])
  })

  it('writes periods and durations in whole words and loses no second', () => {
    const none = { years: 0, months: 0, weeks: 0, days: 0 }
    expect(en.card.period({ ...none, months: 6 })).toBe('6\u00a0months')
    expect(en.card.period({ years: 1, months: 1, weeks: 2, days: 3 })).toBe(
      '1\u00a0year, 1\u00a0month, 2\u00a0weeks and 3\u00a0days',
    )
    expect(en.card.period(none)).toBe('0\u00a0days')
    // 3725 s = 1 h (3600) + 2 min (120) + 5 s
    expect(en.card.duration(3725)).toBe('1\u00a0h 2\u00a0min 5\u00a0s')
    expect(en.card.duration(60)).toBe('1\u00a0min')
    expect(en.card.duration(59)).toBe('59\u00a0s')
    expect(en.card.duration(0)).toBe('0\u00a0s')
  })

  it('says what is unknown even if no fact is named', () => {
    expect(en.card.cannotTell([])).toBe('not known: see the manual')
    expect(en.card.cannotTell(['serial number', 'model year'])).toBe(
      'not known without the serial number and model year',
    )
  })
})
