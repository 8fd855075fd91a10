import fc from 'fast-check'
import { UNITS_BY_MEASURE } from '../../../src/quantity/unit.js'
import type { PrintedBand, Unit } from '../../../src/v1/quantity.js'

/** A printed figure above zero, of up to `whole` digits before the point and `decimals` after it. */
export const anyFigure = (whole = 5, decimals = 3): fc.Arbitrary<string> =>
  fc
    .tuple(fc.integer({ min: 0, max: whole }), fc.integer({ min: 0, max: decimals }), fc.nat(999_999_999))
    .map(([before, after, seed]) => {
      const digits = String(seed).padStart(9, '0')
      const first = before === 0 ? '0' : String(Number(digits.slice(0, before)) || 7)
      return after === 0 ? (first === '0' ? '7' : first) : `${first}.${digits.slice(9 - after)}`
    })

const allUnits: readonly Unit[] = Object.values(UNITS_BY_MEASURE).flat()

const signed = (figure: string, unit: Unit, minus: boolean): string =>
  minus && /^(deg[CF]|K_diff)/.test(unit) && !/^[0.]+$/.test(figure) ? `-${figure}` : figure

/** Any printed value in any unit; temperatures may be below zero. */
export const anyBand: fc.Arbitrary<PrintedBand> = fc
  .record({
    unit: fc.constantFrom(...allUnits),
    one: anyFigure(),
    two: anyFigure(),
    three: anyFigure(2, 2),
    minus: fc.boolean(),
    kind: fc.constantFrom('nominal', 'tolerance', 'limits', 'min', 'max'),
  })
  .map(({ unit, one, two, three, minus, kind }): PrintedBand => {
    const first = signed(one, unit, minus)
    if (kind === 'nominal') return { kind, value: first, unit }
    if (kind === 'tolerance')
      return { kind: 'nominal with tolerance', value: first, minus: three, plus: two, unit }
    if (kind === 'min') return { kind: 'limits', min: first, unit }
    if (kind === 'max') return { kind: 'limits', max: first, unit }
    const second = signed(two, unit, minus)
    const upward = Number(first) <= Number(second)
    return { kind: 'limits', min: upward ? first : second, max: upward ? second : first, unit }
  })
