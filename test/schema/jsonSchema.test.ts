import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { resolve } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { applyPatch } from '../../src/base/applyPatch.js'
import { joinPointer, readPointer } from '../../src/base/pointers.js'
import { DOCUMENT_NAMES, type DocumentName } from '../../src/spec/documents.js'
import { parseDocument } from '../../src/v1/spec.js'
import { type GoodDocument, readFixture, readGoodDocuments, readShortDocuments } from '../support/fixtures.js'
import { cases, law } from '../support/law.js'
import { printJson } from '../support/printJson.js'
import { toJsonSchema } from '../support/toJsonSchema.js'
import { SHAPE_MISTAKES } from './shapeMistakes.js'
import { describeSchema, type SchemaNode } from './support/describeSchema.js'

interface Case {
  readonly kind: DocumentName
  readonly document: unknown
}

const isDocumentName = (kind: unknown): kind is DocumentName => DOCUMENT_NAMES.some((name) => name === kind)

const asCase = ({ file, value }: GoodDocument): Case => {
  const kind = value['kind']
  if (!isDocumentName(kind)) throw new Error(`no kind: ${file}`)
  return { kind, document: value }
}
const validCases = readGoodDocuments().map(asCase)
const shortCases = readShortDocuments().map(asCase)
const invalidCases: readonly Case[] = SHAPE_MISTAKES.map(({ of, patch }) => {
  const document = readFixture(of)
  if (!isDocumentName(document['kind'])) throw new Error(`no kind: ${of}`)
  return { kind: document['kind'], document: applyPatch(document, patch) }
})

const described = DOCUMENT_NAMES.map((kind) => describeSchema(kind, toJsonSchema(kind)))
const published = new Map(DOCUMENT_NAMES.map((kind, place) => [kind, described[place]?.schema ?? {}]))

const ajv = new Ajv2020({ strict: true, allErrors: false })
const judges = new Map([...published].map(([kind, schema]) => [kind, ajv.compile(schema)]))
const ajvAccepts = ({ kind, document }: Case): boolean => judges.get(kind)?.(document) === true
const parserAccepts = ({ kind, document }: Case): boolean => parseDocument(kind, document).ok
/** A rule that a schema cannot express: a key may be omitted only if one answer is possible. */
const onlyWeRefuse = ({ kind, document }: Case): boolean =>
  parseDocument(kind, document).findings.every(
    ({ code, params }) =>
      code === 'spec/missing-key' &&
      ['opening', 'uses', 'gearcases'].includes(String((params as { key?: string }).key)),
  )

/** The schemas in a schema, except its properties. */
function schemasIn(node: SchemaNode): readonly SchemaNode[] {
  const { additionalProperties: more, items, then, else: other, patternProperties = {} } = node
  return [
    ...[node.oneOf, node.anyOf, node.allOf].flatMap((arms) => arms ?? []),
    ...[typeof more === 'object' ? more : undefined, items, then, other].filter(
      (candidate) => candidate !== undefined,
    ),
    ...Object.values(patternProperties),
  ]
}

describe('published schemas', () => {
  test.each(DOCUMENT_NAMES)('%s is committed as generated', (kind) => {
    const committed = readFileSync(`schemas/v1/${kind}.json`, 'utf8')
    expect(committed).toBe(printJson(published.get(kind)))
  })

  test('patterns use nothing that other languages read otherwise', () => {
    const patterns = new Set<string>()
    const walk = (value: unknown): void => {
      if (typeof value !== 'object' || value === null) return
      for (const [key, inner] of Object.entries(value))
        if (key === 'pattern' && typeof inner === 'string') patterns.add(inner)
        else walk(inner)
    }
    for (const schema of published.values()) walk(schema)
    expect(patterns.size).toBeGreaterThan(8)
    for (const pattern of patterns) expect(pattern).not.toMatch(/\(\?|\\[a-zA-Z]|\\p/)
  })

  test('every property and every union says what it is, in at most 200 characters', () => {
    expect(described.flatMap(({ missing }) => missing)).toEqual([])
    const undescribed: string[] = []
    let texts = 0
    const walk = (node: SchemaNode, place: string): void => {
      const { properties = {}, oneOf, anyOf } = node
      for (const [key, child] of Object.entries(properties)) say(child, `${place}/${key}`)
      if ((oneOf ?? anyOf) !== undefined) say(node, place)
      for (const child of schemasIn(node)) walk(child, place)
      for (const [key, child] of Object.entries(properties)) walk(child, `${place}/${key}`)
    }
    const say = ({ description = '' }: SchemaNode, place: string): void => {
      texts += 1
      if (description === '' || description.length > 200) undescribed.push(place)
    }
    for (const [kind, { $defs = {}, ...schema }] of published) {
      walk(schema, kind)
      for (const [name, def] of Object.entries($defs)) walk(def, `${kind}#${name}`)
    }
    expect(undescribed).toEqual([])
    expect(texts).toBeGreaterThan(700)
  })

  test('the examples of a leaf are good: each text and each full form', () => {
    let examples = 0
    for (const [kind, schema] of published) {
      const judgedFiles = new Set<string>()
      const visit = (node: SchemaNode): void => {
        if (node.examples !== undefined && !judgedFiles.has(JSON.stringify(node))) {
          judgedFiles.add(JSON.stringify(node))
          const judge = ajv.compile({ $defs: schema.$defs, ...node })
          for (const example of node.examples) expect([example, judge(example)]).toEqual([example, true])
        }
        examples += node.examples?.length ?? 0
        for (const child of [...Object.values(node.properties ?? {}), ...schemasIn(node)]) visit(child)
      }
      visit(schema)
      for (const def of Object.values(schema.$defs ?? {})) visit(def)
      if (kind === 'spec-sheet') expect(examples).toBeGreaterThan(60)
    }
  })

  test('`$id` is where the package has the file, and nothing in it points elsewhere', () => {
    for (const [kind, schema] of published) {
      const file = String(schema['$id']).replace('https://unpkg.com/', '')
      expect(createRequire(import.meta.url).resolve(file)).toBe(resolve(`schemas/v1/${kind}.json`))
      const references = JSON.stringify(schema).match(/"\$ref":"[^"]*"/g) ?? []
      expect(references.filter((text) => !text.startsWith('"$ref":"#/'))).toEqual([])
    }
  })

  test('`$schema` is a key of every document, and is kept', () => {
    const $schema = './node_modules/drivetrain-service/schemas/v1/some.json'
    for (const { kind, document } of validCases) {
      const example = { kind, document: { $schema, ...(document as object) } }
      const read = parseDocument(kind, example.document)
      expect([read.findings, ajvAccepts(example)]).toEqual([[], true])
      if (read.ok) expect(read.value.$schema).toBe($schema)
      expect(parserAccepts({ kind, document: { ...example.document, $schema: 1 } })).toBe(false)
    }
  })

  test('a kind that is none throws, and the caller owns what he gets', () => {
    expect(() => toJsonSchema('invoice' as never)).toThrow(RangeError)
    const first = toJsonSchema('stock') as { title: string }
    first.title = 'changed'
    expect(toJsonSchema('stock')['title']).toBe('Oil and seals in stock')
  })
})

describe('ajv in strict mode says the same as the parse functions', () => {
  test('good documents', () => {
    expect(Math.min(validCases.length, shortCases.length)).toBeGreaterThanOrEqual(13)
    for (const candidate of [...validCases, ...shortCases])
      expect([candidate.document, ajvAccepts(candidate), parserAccepts(candidate)]).toEqual([
        candidate.document,
        true,
        true,
      ])
  })

  test('the list of mistakes', () => {
    expect(invalidCases.length).toBeGreaterThanOrEqual(60)
    for (const candidate of invalidCases) expect(ajvAccepts(candidate)).toBe(false)
  })

  test('random changes of good documents', () => {
    let accepted = 0
    let refusedCount = 0
    law(400, mutated, (candidate) => {
      const isAccepted = parserAccepts(candidate)
      if (isAccepted) accepted += 1
      else refusedCount += 1
      expect(ajvAccepts(candidate)).toBe(isAccepted || onlyWeRefuse(candidate))
    })
    // The law proves little unless both answers are common.
    expect(Math.min(accepted, refusedCount)).toBeGreaterThan(cases(400) / 20)
  })
})

test("Debian's jsonschema says the same", (ctx) => {
  const python = '/usr/bin/python3'
  const pythonCheck = spawnSync(python, ['-c', 'import jsonschema'])
  if (pythonCheck.status !== 0) {
    if (process.env['DRIVETRAIN_REQUIRE_TOOLS'] === '1') throw new Error('python3-jsonschema is missing')
    console.log('outside tool skipped: python3-jsonschema')
    return ctx.skip()
  }
  const random = fc.sample(mutated, { numRuns: 400, seed: 20 })
  const cases = [...validCases, ...invalidCases, ...random]
  const schemas = Object.fromEntries(published)
  const script = [
    'import json, sys, jsonschema',
    'given = json.load(sys.stdin)',
    'for schema in given["schemas"].values(): jsonschema.Draft202012Validator.check_schema(schema)',
    'judges = {kind: jsonschema.Draft202012Validator(schema) for kind, schema in given["schemas"].items()}',
    'print(json.dumps([judges[one["kind"]].is_valid(one["document"]) for one in given["cases"]]))',
  ].join('\n')
  const run = spawnSync(python, ['-c', script], {
    input: JSON.stringify({ schemas, cases }),
    encoding: 'utf8',
    maxBuffer: 1e8,
  })
  expect(run.stderr).toBe('')
  const answers: unknown = JSON.parse(run.stdout)
  expect(answers).toEqual(cases.map((example) => parserAccepts(example) || onlyWeRefuse(example)))
})

/** A good document with one to three values changed, omitted, renamed or replaced. */
const mutated: fc.Arbitrary<Case> = fc
  .tuple(
    fc.constantFrom(...validCases),
    fc.array(
      fc.record({
        where: fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }),
        change: fc.oneof(
          fc.constantFrom({ kind: 'remove' } as const, { kind: 'neighbour' } as const),
          fc.record({ kind: fc.constant('replace' as const), value: fc.jsonValue({ maxDepth: 2 }) }),
          fc.record({ kind: fc.constant('replace' as const), value: likelyValue() }),
          fc.record({
            kind: fc.constant('add' as const),
            key: fc.oneof(
              fc.string(),
              fc.constantFrom('source', 'note', 'name', '__proto__', 'constructor', 'new-id'),
            ),
            value: likelyValue(),
          }),
        ),
      }),
      { minLength: 1, maxLength: 3 },
    ),
  )
  .map(([{ kind, document }, changes]) => ({
    kind,
    document: changes.reduce((current, change) => mutate(current, change.where, change.change), document),
  }))

function likelyValue(): fc.Arbitrary<unknown> {
  return fc.constantFrom<unknown>(
    '0',
    '10.0',
    '10\n',
    '-4',
    '1,5',
    'P6M',
    'P0D',
    'P1Y2M3W4D',
    '2028-02-29',
    '2027-02-29',
    'front',
    'N.m',
    'mL',
    'not stated',
    { kind: 'not stated' },
    { kind: 'nominal', value: '5', unit: 'mm' },
    { kind: 'limits', unit: 'mm' },
    { kind: 'interval' },
    { kind: 'interval', hours: '0' },
    { ref: 'manual', confidence: 'read' },
    [],
    {},
    '',
    ' ',
    'é',
    0,
    1,
    1.5,
    -1,
    1e21,
    true,
    null,
  )
}

type Change =
  | { readonly kind: 'remove' | 'neighbour' }
  | { readonly kind: 'replace'; readonly value: unknown }
  | { readonly kind: 'add'; readonly key: string; readonly value: unknown }

function mutate(document: unknown, position: number, change: Change): unknown {
  const places = listPlaces(document, [])
  const tokens = places[Math.floor(position * places.length)] ?? []
  const path = joinPointer(tokens)
  const value = readPointer(document, path)
  switch (change.kind) {
    case 'remove':
      return tokens.length === 0 ? document : applyPatch(document, [{ op: 'remove', path }])
    case 'neighbour': {
      // A value from another place of the document, often with the right shape in the wrong place.
      const otherPlace = places[Math.floor(position * 7919) % places.length] ?? []
      return applyPatch(document, [
        { op: 'replace', path, value: readPointer(document, joinPointer(otherPlace)) },
      ])
    }
    case 'replace':
      return applyPatch(document, [{ op: 'replace', path, value: change.value }])
    case 'add':
      return typeof value === 'object' && value !== null && !Array.isArray(value)
        ? applyPatch(document, [
            { op: 'add', path: joinPointer([...tokens, change.key]), value: change.value },
          ])
        : document
  }
}

function listPlaces(value: unknown, tokens: readonly string[]): readonly (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [tokens]
  return [tokens, ...Object.entries(value).flatMap(([key, inner]) => listPlaces(inner, [...tokens, key]))]
}

test('parseDocument and the parse function of a kind agree on every good document', () => {
  for (const { document } of validCases) expect(parseDocument('any', document).ok).toBe(true)
})

describe('the longest text is the same for schema and parse function', () => {
  const procedure = readFixture('full.procedure.json')
  const steps = procedure['steps'] as readonly object[]
  const withHeader = (header: string) => ({ ...procedure, header })
  const withStep = (change: object) => ({
    ...procedure,
    steps: [{ ...steps[0], ...change }, ...steps.slice(1)],
  })
  const longText = 'a'.repeat(20_000)
  test.each([
    ['a header of 20,000 characters', withHeader(longText), true],
    ['a header of 20,001 characters', withHeader(`${longText}a`), false],
    ['a header of 20,000 characters outside the basic plane', withHeader('😀'.repeat(20_000)), true],
    ['a header of 20,001 characters outside the basic plane', withHeader('😀'.repeat(20_001)), false],
    ['a name of a value of 20,001 characters', withStep({ values: { [`${longText}a`]: '/id' } }), false],
    ['a pointer of 20,001 characters', withStep({ on: `/${longText}` }), false],
  ])('%s', (_what, document, isAccepted) => {
    expect(parserAccepts({ kind: 'procedure', document })).toBe(isAccepted)
    expect(ajvAccepts({ kind: 'procedure', document })).toBe(isAccepted)
  })
})
