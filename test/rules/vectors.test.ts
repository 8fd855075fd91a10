import { readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { allRules } from '../../src/rules/allRules.js'
import { waiverWithoutFinding } from '../../src/rules/spec/waiver-without-finding.js'
import { parseDocument } from '../../src/schema/parseDocument.js'
import { baseFiles, patchedDocuments, readVectors, runVector, summarise } from './support/vectors.js'

const vectors = readVectors()

describe('vectors', () => {
  it.each(vectors)('$file gives its findings and no others', ({ vector }) => {
    const found = runVector(vector).map(summarise)
    const expected = vector.expect.map(({ why: _why, ...rest }) => rest)
    expect(found).toEqual(expected)
  })

  it.each(vectors)('$file expects its own code, and says why another rule speaks too', ({ file, vector }) => {
    expect(file.startsWith(vector.code)).toBe(true)
    expect(vector.expect.map(({ code }) => code)).toContain(vector.code)
    for (const expected of vector.expect)
      if (expected.code !== vector.code) expect(expected.why).toMatch(/\w/)
    expect(vector.why).toMatch(/\w+ \w+/)
  })

  it.each(vectors)('$file changes a base that is good without it, and leaves it as it was', ({ vector }) => {
    const before = JSON.stringify(baseFiles(vector))
    const after = Object.fromEntries(patchedDocuments(vector).map(({ name, document }) => [name, document]))
    expect(JSON.stringify(after)).not.toBe(before)
    expect(JSON.stringify(baseFiles(vector))).toBe(before)
    expect(Object.keys(baseFiles(vector)).sort()).toEqual([...vector.files].sort())
    expect(runVector({ ...vector, patch: [] })).toEqual([])
  })

  it.each(vectors)(
    '$file holds documents of the right shape, so that rules alone can find the mistake',
    ({ vector }) => {
      for (const { name, document } of patchedDocuments(vector))
        expect({ name, findings: parseDocument('any', document).findings }).toEqual({ name, findings: [] })
    },
  )

  it('stand for every rule', () => {
    const codes = new Set(vectors.map(({ vector }) => vector.code))
    const missing = [...allRules, waiverWithoutFinding]
      .map(({ code }) => code)
      .filter((code) => !codes.has(code))
    expect(missing).toEqual([])
  })
})

describe('the list of rules', () => {
  it('has one rule a file, whose code is the path of the file', () => {
    const files = readdirSync('src/rules', { recursive: true, encoding: 'utf8' })
      .filter((file) => /^(?!lookup\/)[a-z]+\/[a-z-]+\.ts$/.test(file))
      .map((file) => file.slice(0, -3))
    const codes = [...allRules, waiverWithoutFinding].map(({ code }) => code)
    expect([...codes].sort()).toEqual(files.sort())
    expect(new Set(codes).size).toBe(codes.length)
  })
})
