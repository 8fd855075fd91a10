import type * as z from 'zod/v4/core'
import {
  cutText,
  type DocumentReference,
  type Finding,
  type Result,
  readPointer,
  refuse,
  requireKnownKeys,
  suggestName,
} from '../base/index.js'
import {
  DOCUMENT_NAMES,
  type DocumentName,
  type Documents,
  type ParseOptions,
  READABLE_VERSIONS,
  type SpecCodes,
} from '../spec/index.js'
import { copyPlainData } from './copyPlainData.js'
import { findShapeMistakes } from './findShapeMistakes.js'
import { reportMistake } from './reportMistake.js'
import { ID_PATTERN } from './shapes/textShapes.js'

/** The shapes that a document may have, by kind. */
export type DocumentShapes = { readonly [Kind in DocumentName]?: () => z.$ZodType<Documents[Kind]> }

/** Reads foreign data as a document of one of the kinds whose shapes are given. */
export function readDocument<const Shapes extends DocumentShapes>(
  input: unknown,
  shapes: Shapes,
  options: ParseOptions,
): Result<Documents[keyof Shapes & DocumentName], SpecCodes> {
  const name = readName(options)
  const expected = DOCUMENT_NAMES.filter((kind) => shapes[kind] !== undefined)
  const plain = copyPlainData(input, { kind: 'text', ...name })
  const kind = readPointer(plain.value, '/kind')
  const kindMeant = typeof kind === 'string' ? (suggestName(kind, expected) ?? kind) : kind
  const known = expected.find((one) => one === kindMeant) ?? (expected.length === 1 ? expected[0] : undefined)
  const id = readPointer(plain.value, '/id')
  const document: DocumentReference = {
    kind: known ?? 'text',
    ...(typeof id === 'string' && ID_PATTERN.test(id) ? { id } : {}),
    ...name,
  }
  const findings: Finding<SpecCodes>[] = plain.findings.map((finding) => ({ ...finding, document }))
  const refused = new Set(plain.refused)
  const fail = (): { ok: false; findings: readonly Finding<SpecCodes>[] } => ({ ok: false, findings })

  const head = checkHead(plain.value, expected, refused, document)
  findings.push(...head.findings)
  const buildShape = known && shapes[known]
  if (head.stop || buildShape === undefined || refused.has('')) return fail()
  for (const path of head.judged) refused.add(path)
  const read = findShapeMistakes(buildShape(), plain.value, refused, document)
  findings.push(...read.findings)
  if (findings.length > 0 || read.value === undefined) return fail()
  return { ok: true, value: read.value as Documents[keyof Shapes & DocumentName], findings }
}

/** The caller's name for the document, once the options are checked. */
export function readName(options: ParseOptions): ParseOptions {
  requireKnownKeys('options', options, ['name'])
  const { name } = options
  if (name === undefined) return {}
  if (typeof name !== 'string') throw refuse('options.name', name, 'a string')
  return { name }
}

interface Head {
  readonly findings: readonly Finding<SpecCodes>[]
  /** Places that the shape need not judge again. */
  readonly judged: readonly string[]
  /** The rest would be read against a shape that it was not written for. */
  readonly stop: boolean
}

/** Kind and version come first: a document of another kind or version is one mistake, not a hundred. */
function checkHead(
  data: unknown,
  expected: readonly DocumentName[],
  refused: ReadonlySet<string>,
  document: DocumentReference,
): Head {
  const findings: Finding<SpecCodes>[] = []
  const judged: string[] = []
  if (typeof data !== 'object' || data === null || Array.isArray(data)) {
    if (refused.has('')) return { findings, judged, stop: true }
    const found = Array.isArray(data) ? 'list' : data === null ? 'null' : TYPE_NAMES[typeof data]
    const value = typeof data === 'object' ? {} : { value: cutText(String(data)) }
    return {
      findings: [
        reportMistake(document, '', 'spec/wrong-type', {
          expected: 'object',
          found: found ?? 'null',
          ...value,
        }),
      ],
      judged,
      stop: true,
    }
  }
  let stop = false
  const kind = readPointer(data, '/kind')
  if (typeof kind === 'string' && !expected.some((one) => one === kind)) {
    // Another kind that can be read is a mix-up of files, however near its name.
    const isOtherKind = DOCUMENT_NAMES.some((one) => one === kind)
    const didYouMean = isOtherKind ? undefined : suggestName(kind, expected)
    findings.push(
      reportMistake(
        document,
        '/kind',
        'spec/wrong-kind',
        { found: cutText(kind), expected: expected, ...(didYouMean === undefined ? {} : { didYouMean }) },
        didYouMean === undefined ? [] : [{ op: 'replace', path: '/kind', value: didYouMean }],
      ),
    )
    judged.push('/kind')
    stop = didYouMean === undefined
  } else if (typeof kind !== 'string' && expected.length > 1 && !refused.has('/kind')) {
    findings.push(
      kind === undefined
        ? reportMistake(document, '', 'spec/missing-key', { key: 'kind', allowed: expected })
        : reportMistake(document, '/kind', 'spec/wrong-type', {
            expected: 'text',
            found:
              kind === null ? 'null' : Array.isArray(kind) ? 'list' : (TYPE_NAMES[typeof kind] ?? 'object'),
          }),
    )
  }
  const version = readPointer(data, '/version')
  const isNumber = typeof version === 'number'
  if ((typeof version === 'string' || isNumber) && !READABLE_VERSIONS.some((one) => one === version)) {
    const quotes = version === 1
    findings.push(
      reportMistake(
        document,
        '/version',
        'spec/wrong-version',
        { found: cutText(String(version)), readable: READABLE_VERSIONS, quotes },
        quotes ? [{ op: 'replace', path: '/version', value: READABLE_VERSIONS[0] }] : [],
      ),
    )
    judged.push('/version')
    stop ||= !quotes
  }
  return { findings, judged, stop }
}

const TYPE_NAMES = {
  string: 'text',
  number: 'number',
  boolean: 'true-or-false',
  object: 'object',
} as Readonly<Record<string, 'text' | 'number' | 'true-or-false' | 'object'>>
