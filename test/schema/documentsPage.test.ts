import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import {
  MAX_DEPTH,
  MAX_KEYS,
  MAX_STRING_LENGTH,
  MAX_TEXT_LENGTH,
  MAX_VALUES,
} from '../../src/base/documentLimits.js'
import { specTexts } from '../../src/message/en/spec.js'
import { DOCUMENT_NAMES } from '../../src/spec/documents.js'
import { parseDocumentText } from '../../src/v1/spec.js'
import { type JsonSchema, toJsonSchema } from '../support/toJsonSchema.js'

const page = readFileSync('docs/documents.md', 'utf8')

/** Codes that are reasons of verdicts, not findings of reading. */
const REASONS = /^spec\/(variant|fact|model-year|serial|market|part|leaf|override|overrides|candidates)-/

test('the page names every code of reading and no other', () => {
  const reading = Object.keys(specTexts).filter((code) => !REASONS.test(code))
  const named = [...page.matchAll(/`((?:spec|seal|interval)\/[a-z0-9-]+)`/g)].map((match) => match[1])
  expect([...new Set(named)].toSorted()).toEqual(reading.toSorted())
})

test('its example documents can be read', () => {
  const blocks = [...page.matchAll(/```json\n([\s\S]*?)```/g)].map((match) => match[1] ?? '')
  expect(blocks.length).toBeGreaterThan(0)
  for (const block of blocks) expect(parseDocumentText('any', block)).toMatchObject({ ok: true })
})

test('its limits are those of the code', () => {
  expect([MAX_DEPTH, MAX_STRING_LENGTH, MAX_TEXT_LENGTH, MAX_VALUES, MAX_KEYS]).toEqual([
    32, 20_000, 50_000_000, 1_000_000, 5000,
  ])
  expect(page).toContain(
    'Limits: 32 levels (documents need 12), 20,000 characters for one text or key, 50 million characters for a whole text,\none million values, 5000 keys of one object.',
  )
})

test('the deepest place of any document is the 12th level', () => {
  const levels = (schema: JsonSchema, root: JsonSchema): number => {
    const { $ref, properties, additionalProperties, items, oneOf, anyOf, then, else: full } = schema
    if (typeof $ref === 'string')
      return levels((root['$defs'] as JsonSchema)[$ref.replace('#/$defs/', '')] as JsonSchema, root)
    const arms = [oneOf, anyOf, then, full].flatMap((arm) => (arm ?? []) as JsonSchema[])
    const below = [...Object.values(properties ?? {}), additionalProperties, items].filter(
      (inner): inner is JsonSchema => typeof inner === 'object' && inner !== null,
    )
    const ownLevel = below.length > 0 ? 1 + Math.max(...below.map((inner) => levels(inner, root))) : 0
    return Math.max(ownLevel, ...arms.map((arm) => levels(arm, root)))
  }
  const depths = DOCUMENT_NAMES.map((kind) => levels(toJsonSchema(kind), toJsonSchema(kind)))
  // By hand: the sheet, overrides, its entry, set, its entry, to, choices, its entry, additive, volume, printed, its
  // entry.
  expect(Math.max(...depths)).toBe(12)
})
