import { describe, expect, it } from 'vitest'
import { applyPatch } from '../../src/base/applyPatch.js'
import { checkDocuments } from '../../src/v1/rules.js'
import { setOf } from './support/goodSets.js'
import { patchedDocuments, readVectors, runVector } from './support/vectors.js'

const vectorsWithCures = readVectors().filter(({ vector }) =>
  runVector(vector).some(({ cures }) => cures !== undefined),
)

describe('cures', () => {
  it('are given for at least twenty vectors', () => {
    expect(vectorsWithCures.length).toBeGreaterThanOrEqual(20)
  })

  it.each(vectorsWithCures)('of $file take the finding away and bring no new one', ({ vector }) => {
    const before = runVector(vector)
    for (const { code, path, document, cures } of before) {
      if (cures === undefined) continue
      const repairedDocuments = patchedDocuments(vector).map((named) =>
        named.name === document.name
          ? { ...named, document: applyPatch(named.document, cures) as typeof named.document }
          : named,
      )
      const { today } = vector
      const after = checkDocuments(setOf(repairedDocuments), today === undefined ? {} : { today })
      const key = (finding: { code: string; path: string }) => `${finding.code} ${finding.path}`
      expect(after.map(key)).not.toContain(key({ code, path }))
      expect(before.map(key)).toEqual(expect.arrayContaining(after.map(key)))
    }
  })
})
