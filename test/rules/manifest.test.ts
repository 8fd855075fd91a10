import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { MANIFEST_FILE, readComment, TABLE_FILE, writeManifest, writeTable } from './support/manifest.js'
import { REGISTRY_FILE, ruleCodes, writeRegistry } from './support/registry.js'
import { readVectors, runVector } from './support/vectors.js'

describe('the registry of rules', () => {
  it('is what the files of the rules say today', () => {
    expect(readFileSync(REGISTRY_FILE, 'utf8')).toBe(writeRegistry())
  })
})

describe('the manifest of rules', () => {
  it('is what the rules and the vectors say today', () => {
    expect(readFileSync(MANIFEST_FILE, 'utf8')).toBe(writeManifest())
  })

  it('stands in the documentation as a table', () => {
    const page = readFileSync(TABLE_FILE, 'utf8')
    expect(page).toContain('| `spec/limits-reversed` | error |')
    expect(writeTable(page)).toBe(page)
  })

  it.each(ruleCodes())('says of %s what it catches, judges, points at and rests on', (code) => {
    const { catches, judges, place, params, basis } = readComment(code)
    expect(catches.length).toBeGreaterThan(40)
    expect(judges).toMatch(/^[A-Z`].{20,}[.:]/)
    expect(place).toMatch(/\w/)
    expect(basis).toMatch(/^(Source:|House rule|Common practice)/)
    for (const meaning of Object.values(params)) expect(meaning).toMatch(/\w/)
  })

  it.each(readVectors())('explains every param of $file', ({ vector }) => {
    for (const { code, params } of runVector(vector)) {
      const known = ruleCodes().includes(code) ? Object.keys(readComment(code).params) : Object.keys(params)
      expect({ code, params: Object.keys(params).filter((key) => !known.includes(key)) }).toEqual({
        code,
        params: [],
      })
    }
  })
})
