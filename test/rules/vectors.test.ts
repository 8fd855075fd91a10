import { readdirSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { allRules } from '../../src/rules/allRules.js'
import { rule as waiverWithoutFinding } from '../../src/rules/spec/waiver-without-finding.js'
import { parseDocument } from '../../src/schema/parseDocument.js'
import { DOCUMENT_NAMES, type DocumentName } from '../../src/spec/index.js'
import { toJsonSchema } from '../support/toJsonSchema.js'
import { readComment } from './support/manifest.js'
import { ruleCodes, shapeRuleCodes } from './support/registry.js'
import {
  baseFiles,
  type ExpectedFinding,
  type NamedVector,
  patchedDocuments,
  readVectors,
  runVector,
  summarise,
  varyVector,
} from './support/vectors.js'

const vectors = readVectors()
const ajv = new Ajv2020({ strict: true, allErrors: false })
const schemas = new Map(DOCUMENT_NAMES.map((kind) => [kind, ajv.compile(toJsonSchema(kind))]))
const schemaAccepts = (document: { readonly kind: DocumentName }): boolean =>
  schemas.get(document.kind)?.(document) === true

const compared = (expected: readonly ExpectedFinding[]) => expected.map(({ why: _why, ...rest }) => rest)

describe('vectors', () => {
  it.each(vectors)('$file gives its findings and no others', ({ vector }) => {
    expect(runVector(vector).map(summarise)).toEqual(compared(vector.expect))
  })

  it.each(vectors)('$file expects its own code, and says why another rule speaks too', ({ file, vector }) => {
    expect(file.startsWith(vector.code)).toBe(true)
    expect(vector.expect.map(({ code }) => code)).toContain(vector.code)
    for (const expected of [vector, ...vector.also].flatMap((item) => item.expect))
      if (expected.code !== vector.code) expect(expected.why).toMatch(/\w/)
    expect(vector.why).toMatch(/\w+ \w+/)
  })

  it.each(vectors)('$file makes a good base bad, and does not modify the base itself', ({ vector }) => {
    const before = JSON.stringify(baseFiles(vector))
    const after = Object.fromEntries(patchedDocuments(vector).map(({ name, document }) => [name, document]))
    expect(JSON.stringify(after)).not.toBe(before)
    expect(JSON.stringify(baseFiles(vector))).toBe(before)
    expect(Object.keys(baseFiles(vector)).sort()).toEqual([...vector.files].sort())
    expect(runVector({ ...vector, patch: [] })).toEqual([])
  })

  it.each(vectors)(
    '$file holds documents of the right shape, so that rules alone can find the mistake; or its schema refuses it',
    ({ vector }) => {
      for (const { name, document } of patchedDocuments(vector)) {
        const isRefused = vector.expect.some(({ file }) => file === name) && vector.refusedBy === 'schema'
        expect({ name, ok: parseDocument('any', document).ok }).toEqual({ name, ok: !isRefused })
        expect({ name, ok: schemaAccepts(document) }).toEqual({ name, ok: !isRefused })
      }
    },
  )

  it.each(vectors)(
    '$file: one change makes it good, brings it to a limit, or shows what a simpler rule would miss',
    ({ vector }) => {
      for (const variation of vector.also) {
        const { change, why, expect: expected } = variation
        const variedVector = varyVector(vector, variation)
        expect({ change, found: runVector(variedVector).map(summarise) }).toEqual({
          change,
          found: compared(expected),
        })
        const ok = vector.refusedBy === undefined || expected.length === 0
        for (const { document } of patchedDocuments(variedVector)) {
          const byParser = parseDocument('any', document).ok
          expect({ change, byParser, bySchema: schemaAccepts(document) }).toEqual({
            change,
            byParser: ok,
            bySchema: ok,
          })
        }
        if (variation.case === 'good') expect(expected).toEqual([])
        else expect(why).toMatch(/\w+ \w+/)
      }
    },
  )

  it('of every rule show a bad set, and a good one that differs from it at one place', () => {
    const of = (code: string) => vectors.filter(({ vector }) => vector.code === code)
    const codes = [...ruleCodes(), ...shapeRuleCodes()]
    expect(codes.length).toBeGreaterThan(shapeRuleCodes().length)
    expect(codes.filter((code) => of(code).length === 0)).toEqual([])
    const isGood = ({ vector }: NamedVector) => vector.also.some((candidate) => candidate.case === 'good')
    expect(codes.filter((code) => !of(code).some(isGood))).toEqual([])
  })

  it('of every rule that compares with a figure or a date show its limit', () => {
    const shownCodes = new Set(
      vectors
        .filter(({ vector }) => vector.also.some((candidate) => candidate.case === 'boundary'))
        .map(({ vector }) => vector.code),
    )
    const limits = [...ruleCodes(), ...shapeRuleCodes()].filter((code) =>
      /\b(above|below|exceeds?|at least|at most|longer|after|earlier|or more|more than)\b/.test(
        readComment(code).judges,
      ),
    )
    expect(limits.filter((code) => !shownCodes.has(code) && !NO_LIMIT.includes(code))).toEqual([])
  })
})

/**
 * Rules whose text mentions an order, a place in a list, or a table of another module; `variants-overlap` shares the
 * limits of `overlapping-overrides`.
 */
const NO_LIMIT: readonly string[] = [
  'spec/id-used-twice',
  'spec/unit-of-other-measure',
  'spec/variants-overlap',
  'torque/fill-and-drain-swapped',
  'seal/none-on-parallel-thread',
]

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
