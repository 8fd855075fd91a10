import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { allRules } from '../../src/rules/allRules.js'
import { MANIFEST_FILE, readComment, TABLE_FILE, writeManifest, writeTable } from './support/manifest.js'

describe('the manifest of rules', () => {
  it('is what the rules and the vectors say today', () => {
    expect(readFileSync(MANIFEST_FILE, 'utf8')).toBe(writeManifest())
  })

  it('stands in the documentation as a table', () => {
    const page = readFileSync(TABLE_FILE, 'utf8')
    expect(page).toContain('| `spec/limits-reversed` | error |')
    expect(writeTable(page)).toBe(page)
  })

  it.each(allRules.map(({ code }) => code))('says of %s what it catches and what it rests on', (code) => {
    const { catches, basis } = readComment({ code })
    expect(catches.length).toBeGreaterThan(40)
    expect(basis).toMatch(/^(Source:|House rule|Common practice, no source)/)
  })
})
