import { describe, expect, test } from 'vitest'
import type { Finding, Fix } from '../../../src/base/finding.js'
import { UNITS_BY_MEASURE } from '../../../src/quantity/unit.js'
import { UNIT_CODES } from '../../../src/quantity/unitCodes/index.js'
import { unitSymbol } from '../../../src/quantity/unitSymbol.js'
import { reportUnreadableText } from '../../../src/schema/notation/reportUnreadableText.js'
import { createMistakeReporter } from '../../../src/schema/reportMistake.js'
import type { SpecCodes } from '../../../src/spec/codes.js'
import { parseQuantity } from '../../../src/v1/quantity.js'
import { NOTATIONS, type NotationName, readNotation } from './support/byName.js'

/** The notations whose texts are one value of a measure. */
const MEASURES = {
  volume: 'volume',
  length: 'length',
  mass: 'mass',
  temperature: 'temperature',
  torque: 'tightening',
} as const
const places = Object.entries(MEASURES) as [keyof typeof MEASURES, NotationName][]

function refusal(notation: NotationName, text: string): Finding<Pick<SpecCodes, 'spec/bad-notation'>> {
  const read = readNotation(notation, text)
  if (read.ok) throw new Error(`${text} was read`)
  return reportUnreadableText(
    NOTATIONS[notation],
    text,
    read,
    '/x',
    createMistakeReporter({ kind: 'spec-sheet' }),
  ) as never
}
const listFixes = ({ cures = [] }: { readonly cures?: readonly Fix[] }) =>
  cures.map((cure) => ('value' in cure ? cure.value : undefined))

test.each(places)('every spelling of docs/units.md of a %s is read after one space', (measure, notation) => {
  for (const unit of UNITS_BY_MEASURE[measure])
    for (const spelled of [unit, unitSymbol(unit).replaceAll('\u00a0', ' '), UNIT_CODES[unit].name]) {
      const read = readNotation(notation, `20 ${spelled}`)
      const amount = { kind: 'nominal', value: '20', unit }
      expect([spelled, read]).toMatchObject([
        spelled,
        { ok: true, value: measure === 'torque' ? { torque: amount } : amount },
      ])
      expect(readNotation(notation, `20  ${spelled}`).ok).toBe(false)
      expect(readNotation(notation, `20${spelled}`).ok).toBe(false)
    }
})

describe('what only parseQuantity reads gets the corrected text', () => {
  test.each([
    ['volume', '450ml', '450 mL'],
    ['volume', '450 ml', '450 mL'],
    ['volume', '450 cc', '450 mL'],
    ['volume', '1.4 l', '1.4 L'],
    ['volume', '1.4 litres', '1.4 L'],
    ['volume', '1.4 liter', '1.4 L'],
    ['volume', '½ US qt', '1/2 US qt'],
    ['volume', '7½ US qt', '7 1/2 US qt'],
    ['volume', '7-1/2 US qt', '7 1/2 US qt'],
    ['volume', '0,48 US qt', '0.48 US qt'],
    ['volume', '3 US quarts', '3 US qt'],
    ['volume', '450 +/- 20 mL', '450 ± 20 mL'],
    ['volume', '450±20 mL', '450 ± 20 mL'],
    ['volume', '450 \u2013 500 mL', '450–500 mL'],
    ['volume', '450\u00a0mL', '450 mL'],
    ['torque', '30 Nm', '30 N·m'],
    ['torque', '30 N-m', '30 N·m'],
    ['torque', '30 ft-lbs', '30 lbf·ft'],
    ['torque', '30 ft-lb', '30 lbf·ft'],
    ['torque', '30 lb-ft', '30 lbf·ft'],
    ['torque', '30 ft lb', '30 lbf·ft'],
    ['torque', '106 in-lbs', '106 lbf·in'],
    ['torque', '≥ 20 N·m', 'min. 20 N·m'],
    ['torque', 'max 20 N·m', 'max. 20 N·m'],
    ['torque', '34–44 Nm', '34–44 N·m'],
    ['temperature', '40°C', '40 °C'],
    ['temperature', '40 celsius', '40 °C'],
    ['length', '3mm', '3 mm'],
    ['length', '0.12"', '0.12 in'],
    ['mass', '640 kgs', '640 kg'],
    ['mass', '1411 lbs', '1411 lb'],
  ] as const)('%s %s: %s', (measure, text, corrected) => {
    expect(parseQuantity(text, { measure }).ok).toBe(true)
    expect(listFixes(refusal(MEASURES[measure], text))).toEqual([corrected])
  })

  test.each([
    ['volume', '2,000 mL', ['2000 mL', '2.000 mL'], 'quantity/decimal-mark-is-unclear'],
    ['volume', '1 qt', ['1 US qt', '1 imp qt'], 'quantity/unit-is-ambiguous'],
    ['volume', '10 fl oz', ['10 US fl oz', '10 imp fl oz'], 'quantity/unit-is-ambiguous'],
    ['torque', '30 N/m', ['30 N·m'], 'quantity/ratio-of-units'],
    ['torque', '30 nm', ['30 N·m'], 'quantity/unit-in-wrong-case'],
    ['torque', '3 kg·m', ['3 kgf·m'], 'quantity/mass-unit-for-force'],
    ['torque', '22 lb', [], 'quantity/unit-of-other-measure'],
    ['torque', '30 N·m (22 lb)', [], 'quantity/unit-of-other-measure'],
  ] as const)('%s %s is never accepted without a finding: %j', (measure, text, readings, reason) => {
    const finding = refusal(MEASURES[measure], text)
    expect(listFixes(finding)).toEqual(readings)
    expect(finding.params.reason).toBe(reason)
  })

  test('a second unit that could mean two things is not corrected with the first', () => {
    expect(listFixes(refusal('volume', '450ml (1 qt)'))).toEqual([])
  })
})

describe('the other refusals', () => {
  test.each([
    ['condition', 'TS00001–TS09999', ['serial TS 00001 to 09999']],
    ['oils', '80W-90 GL-5', ['SAE 80W-90 GL-5']],
    ['oils', 'SAE 80W-90 API GL-5', ['SAE 80W-90 GL-5']],
    ['oils', 'VG 220', ['ISO VG 220']],
    ['oils', '80W90', ['SAE 80W-90']],
    ['oils', '80W90 GL5', ['SAE 80W-90 GL-5']],
    ['temperature', '-10–45 °C', ['-10 to 45 °C']],
    ['tightening', '20 N·m + 90°', ['20 N·m then 90°']],
    ['tightening', '30 N·m [22 lbf·ft]', ['30 N·m (22 lbf·ft)']],
    ['tightening', '30 N·m = 22 lbf·ft', ['30 N·m (22 lbf·ft)']],
    ['tightening', '30 N·m / 22 lbf·ft', ['30 N·m (22 lbf·ft)']],
    ['tightening', '30 N·m dry', ['30 N·m, dry']],
    ['tightening', 'hand tight', ['not stated']],
    ['volume', 'approx. 450 mL', ['450 mL']],
    ['volume', 'none', ['not stated']],
    ['place', 'TBD', ['not stated']],
    ['interval', '2 000 km', ['2000 km']],
    ['interval', '200 h,12 months', ['200 h, 12 months']],
    ['interval', 'every 200 h or 12 months', ['200 h, 12 months']],
    ['interval', '200 h or 1 year, whichever comes first', ['200 h, 1 year']],
    ['seal', 'flat copper crush washer 20x24x1.5 mm', ['flat copper crush washer 20 x 24 x 1.5 mm']],
    ['tightening', '1-1/2 turns', []],
    ['tightening', '30 N·m, dry [p. 60, doubtfull]', []],
  ] as const)('%s %s', (notation, text, cures) => {
    expect(listFixes(refusal(notation, text))).toEqual(cures)
  })

  test('the range is that of the part that cannot be read', () => {
    const finding = refusal('tightening', '30 N·m (3.1 kgf·m, 22 lb), dry')
    expect(finding.params).toEqual({
      text: '30 N·m (3.1 kgf·m, 22 lb), dry',
      range: [19, 24],
      found: '22 lb',
      expected: ['torque'],
      reason: 'quantity/unit-of-other-measure',
    })
  })
})
