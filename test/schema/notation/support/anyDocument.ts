import fc from 'fast-check'
import { applyPatch, type PatchOperation } from '../../../../src/base/applyPatch.js'
import { joinPointer } from '../../../../src/base/pointers.js'
import { measureOf, UNITS_BY_MEASURE, type Unit } from '../../../../src/quantity/index.js'
import type { AnyDocument } from '../../../../src/spec/documents.js'

// Full logs, toolboxes, stocks and records: good ones with numbers, units, words and days changed at random, also to
// values that no text can express.

/** Keys with free text, or almost free text. */
const FREE = [
  'name',
  'oil',
  'note',
  'header',
  'partNumber',
  'revision',
  'drive',
  'size',
  'from',
  'to',
  'by',
  'source',
]
const words = fc.constantFrom(
  'gear oil',
  'oil from the shelf',
  'A-1',
  'a, b; c',
  '80W-90',
  '80W-90 GL-5',
  'ISO VG 220',
  'x [p. 3]',
  'not judged',
  'none',
  'unknown',
  '1/4 in',
  '2023-10-06',
  ' two  spaces ',
  'x'.repeat(301),
  '½ L',
)
const number = fc.oneof(
  fc.constantFrom(
    0,
    0.1,
    1,
    7.5,
    12,
    512.6,
    0.3,
    1e-7,
    0.1 + 0.2,
    1e9,
    999_999_999.999999,
    123_456_789.1234567,
    -27,
  ),
  fc.integer({ min: 0, max: 99_999 }).map((thousandths) => thousandths / 1000),
)
const day = fc.constantFrom('2021-04-18', '2022-11-20', '2023-10-06', '2024-02-29')

interface Leaf {
  readonly path: string
  readonly key: string
  readonly value: unknown
}

/** One of these documents with up to eight leaves changed, and list entries or optional keys removed or doubled. */
export function anyDocument(documents: readonly AnyDocument[]): fc.Arbitrary<unknown> {
  const seen = new Map<string, Set<unknown>>()
  for (const document of documents)
    for (const { key, value } of leavesOf(document)) seen.set(key, (seen.get(key) ?? new Set()).add(value))
  return fc.constantFrom(...documents).chain((document) => {
    const leaves = leavesOf(document)
    const change = fc.constantFrom(...leaves).chain((leaf): fc.Arbitrary<PatchOperation> => {
      const { path, key } = leaf
      const otherValue = valueFor(leaf, [...(seen.get(key) ?? [])])
      return fc.oneof(
        {
          weight: 12,
          arbitrary: otherValue.map((value): PatchOperation => ({ op: 'replace', path, value })),
        },
        { weight: 1, arbitrary: fc.constant<PatchOperation>({ op: 'remove', path }) },
      )
    })
    return fc
      .uniqueArray(change, { maxLength: 8, selector: ({ path }) => path })
      .map((changes) => changes.reduce<unknown>((data, patch) => tryPatch(data, patch), document))
  })
}

function valueFor({ key, value }: Leaf, others: readonly unknown[]): fc.Arbitrary<unknown> {
  if (typeof value === 'number') return number
  if (key === 'unit')
    return fc.constantFrom(...(UNITS_BY_MEASURE[measureOf(value as Unit)] as readonly Unit[]))
  if (/^\d{4}-/.test(String(value))) return day
  const known = fc.constantFrom(...others)
  return FREE.includes(key) ? fc.oneof(known, words) : known
}

function tryPatch(data: unknown, operation: PatchOperation): unknown {
  try {
    return applyPatch(data, [operation])
  } catch {
    // Another change removed the entry that it names.
    return data
  }
}

function leavesOf(value: unknown, tokens: readonly string[] = []): readonly Leaf[] {
  if (typeof value === 'object' && value !== null)
    return Object.entries(value).flatMap(([key, child]) => leavesOf(child, [...tokens, key]))
  const key = tokens.findLast((token) => !/^\d+$/.test(token)) ?? ''
  return ['kind', 'version', '$schema'].includes(key) && tokens.length === 1
    ? []
    : [{ path: joinPointer(tokens), key, value }]
}
