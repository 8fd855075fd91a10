import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { UNITS_BY_MEASURE } from '../../src/quantity/unit.js'
import { otherTables } from './support/otherTables.js'
import { readingPage, unitsPage } from './support/quantityDocs.js'
import { UNIT_TEXTS } from './support/unitTexts.js'

describe('generated pages', () => {
  it('docs/units.md is what the tables say, with every unit', () => {
    const page = unitsPage()
    expect(readFileSync('docs/units.md', 'utf8')).toBe(page)
    for (const unit of Object.values(UNITS_BY_MEASURE).flat()) expect(page).toContain(`\n| \`${unit}\` |`)
  })

  it('docs/reading.md is what the readers say, with every text', () => {
    const page = readingPage()
    expect(readFileSync('docs/reading.md', 'utf8')).toBe(page)
    expect(page.split('\n').filter((line) => line.startsWith('| ')).length).toBe(UNIT_TEXTS.length + 2)
    // each of the three reads some texts: if a library always refused, that would be our mistake
    expect(page).toMatch(
      /\| 12\.0668 \(kg m\^2\) \/ s\^2 \| 12\.0668 kg\*m2\/s2 \| 12\.0668 kg m\^2 \/ s\^2 \|/,
    )
  })
})

describe('other libraries’ own tables', () => {
  it('have errors no larger than known, and find none of ours', () => {
    for (const { unit, convertUnits, mathjs, jsQuantities } of otherTables()) {
      // known: convert-units 3.0.0-beta.8 to 4e-7 here, mathjs 15.2.0 to 6e-11 (psi), js-quantities 1.8.0 to 4e-7
      expect(convertUnits ?? 0, unit).toBeLessThan(4e-7)
      expect(mathjs ?? 0, unit).toBeLessThan(6e-11)
      expect(jsQuantities ?? 0, unit).toBeLessThan(4e-7)
    }
    const exact = otherTables().filter(({ mathjs }) => mathjs !== null && mathjs < 2e-15)
    expect(exact.length).toBeGreaterThanOrEqual(13)
  })
})
