import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { MANIFEST_FILE, readComment, TABLE_FILE, writeManifest, writeTable } from './support/manifest.js'
import { REGISTRY_FILE, ruleCodes, shapeRuleCodes, writeRegistry } from './support/registry.js'
import { HARMS } from './support/ruleTerms.js'
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

  it('is in the documentation as a table', () => {
    const page = readFileSync(TABLE_FILE, 'utf8')
    expect(page).toContain('| `spec/limits-reversed` | error | machine |')
    expect(writeTable(page)).toBe(page)
  })

  const codes = [...ruleCodes(), ...shapeRuleCodes()]

  it.each(codes)('%s states its purpose, fields, place and basis', (code) => {
    const { catches, judges, place, params, harm, basis } = readComment(code)
    expect(catches.length).toBeGreaterThan(40)
    expect(judges).toMatch(/^[A-Z`].{20,}[.:]/)
    expect(place).toMatch(/\w/)
    expect(HARMS).toContain(harm)
    expect(basis).toMatch(/^(Source:|House rule|Common practice)/)
    for (const meaning of Object.values(params)) expect(meaning).toMatch(/\w/)
  })

  it('marks rules of a shape, and lists their documents', () => {
    const { rules } = JSON.parse(writeManifest()) as { readonly rules: readonly Record<string, unknown>[] }
    expect(
      rules
        .filter((rule) => rule['refusedBy'] === 'schema')
        .map(({ code, severity, about }) => [code, severity, about]),
    ).toEqual([
      ['spec/interval-empty', 'error', ['spec-sheet']],
      ['spec/limits-empty', 'error', ['spec-sheet', 'stock']],
      ['seal/zero-size', 'error', ['spec-sheet', 'stock']],
      ['interval/limit-not-above-zero', 'error', ['spec-sheet']],
    ])
  })

  it.each(readVectors())('explains every param of $file', ({ vector }) => {
    for (const { code, params } of runVector(vector)) {
      const known = codes.includes(code) ? Object.keys(readComment(code).params) : Object.keys(params)
      expect({ code, params: Object.keys(params).filter((key) => !known.includes(key)) }).toEqual({
        code,
        params: [],
      })
    }
  })
})
