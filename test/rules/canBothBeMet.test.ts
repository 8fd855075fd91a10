import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { canBothBeMet } from '../../src/rules/lookup/canBothBeMet.js'
import { judgeFacts } from '../../src/spec/judgeFacts.js'
import { findCandidates } from '../../src/spec/resolveVariant.js'
import type { Condition, Identity, SpecSheet } from '../../src/v1/spec.js'
import { law } from '../support/law.js'

const YEARS = [2021, 2022, 2023, 2024]
const NUMBERS = ['01', '02', '03', '04']
const PREFIXES = ['K', 'L']
const MARKETS = ['alpine', 'coast']

const year = fc.constantFrom(...YEARS)
const number = fc.constantFrom(...NUMBERS)
const optional = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined })

/** Conditions that hold for some machine: no empty list, no range that ends before it starts. */
const condition = (variants: readonly string[]): fc.Arbitrary<Condition> =>
  fc
    .record({
      variants: optional(fc.subarray([...variants], { minLength: Math.min(1, variants.length) })),
      years: optional(fc.tuple(year, year)),
      serials: optional(fc.tuple(fc.constantFrom(...PREFIXES), number, number)),
      market: optional(fc.subarray(MARKETS, { minLength: 1 })),
    })
    .map(({ variants: listed, years, serials, market }) => ({
      ...(listed === undefined || variants.length === 0 ? {} : { variants: listed }),
      ...(years === undefined ? {} : { modelYears: { from: Math.min(...years), to: Math.max(...years) } }),
      ...(serials === undefined ? {} : { serials: rangeOf(serials) }),
      ...(market === undefined ? {} : { market }),
    }))

function rangeOf([prefix, one, other]: readonly [string, string, string]) {
  return one <= other ? { prefix, from: one, to: other } : { prefix, from: other, to: one }
}

/** Every machine of the small test world, with its variant stated. */
function everyMachine(variants: readonly string[]): readonly Identity[] {
  const stated = variants.length === 0 ? [undefined] : variants
  return stated.flatMap((variant) =>
    YEARS.flatMap((modelYear) =>
      PREFIXES.flatMap((prefix) =>
        NUMBERS.flatMap((end) =>
          MARKETS.map((market) => ({
            modelYear,
            serial: `${prefix}${end}`,
            market,
            ...(variant === undefined ? {} : { variant }),
          })),
        ),
      ),
    ),
  )
}

describe('canBothBeMet', () => {
  it('says what trying every machine says', () => {
    const machineFacts = fc
      .constantFrom<readonly string[]>([], ['short'], ['short', 'long'])
      .chain((variants) =>
        fc.record({
          variants: fc.constant(variants),
          conditions: fc.tuple(...variants.map(() => optional(condition([])))),
          first: condition(variants),
          second: condition(variants),
        }),
      )
    law(100, machineFacts, ({ variants, conditions, first, second }) => {
      const entries = variants.map((id, place) => {
        const when = conditions[place]
        return [id, { name: id, ...(when === undefined ? {} : { when }) }] as const
      })
      const machine = { variants: Object.fromEntries(entries) }
      const sheet = { machine } as unknown as SpecSheet
      const holds = (condition: Condition, identity: Identity) =>
        judgeFacts(condition, identity, findCandidates(sheet, identity)).verdict === 'yes'
      const whenOf = (variant: string | undefined) => entries.find(([id]) => id === variant)?.[1].when ?? {}
      const found = everyMachine(variants).some(
        (candidate) =>
          holds(whenOf(candidate.variant), candidate) && holds(first, candidate) && holds(second, candidate),
      )
      expect(canBothBeMet(sheet, first, second)).toBe(found)
      expect(canBothBeMet(sheet, second, first)).toBe(found)
    })
  })

  const sheet = { machine: { variants: {} } } as unknown as SpecSheet
  it.each<[string, Condition, Condition, boolean]>([
    [
      'years that share their last and first',
      { modelYears: { to: 2022 } },
      { modelYears: { from: 2022 } },
      true,
    ],
    ['years side by side', { modelYears: { to: 2022 } }, { modelYears: { from: 2023 } }, false],
    ['serials that share an end', { serials: { to: '20' } }, { serials: { from: '20' } }, true],
    ['serials side by side', { serials: { to: '20' } }, { serials: { from: '21' } }, false],
    [
      'serials of different widths, which cannot be compared',
      { serials: { to: '20' } },
      { serials: { from: '021' } },
      true,
    ],
    ['a prefix that goes on in digits', { serials: { prefix: 'K' } }, { serials: { prefix: 'K2' } }, true],
    ['a prefix that goes on in letters', { serials: { prefix: 'K' } }, { serials: { prefix: 'KA' } }, false],
    ['other prefixes', { serials: { prefix: 'K' } }, { serials: { prefix: 'L' } }, false],
    ['nothing asked', {}, {}, true],
  ])('%s', (_name, first, second, expected) => {
    expect(canBothBeMet(sheet, first, second)).toBe(expected)
  })
})
