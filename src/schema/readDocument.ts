import {
  cutText,
  type DocumentReference,
  type Finding,
  type Result,
  readPointer,
  suggestName,
} from '../base/index.js'
import {
  type AnyDocument,
  DOCUMENT_NAMES,
  type DocumentName,
  type ParseOptions,
  READABLE_VERSIONS,
} from '../spec/index.js'
import { copyPlainData } from './copyPlainData.js'
import { findShapeMistakes } from './findShapeMistakes.js'
import { reportMistake } from './reportMistake.js'
import { readShapes } from './shapes/readShapes.js'
import { ID_PATTERN } from './shapes/textShapes.js'

/** Reads foreign data as one of the wanted kinds of document. */
export function readDocument(
  input: unknown,
  wanted: readonly DocumentName[],
  options: ParseOptions,
): Result<AnyDocument> {
  const name = readName(options)
  const plain = copyPlainData(input, { kind: 'text', ...name })
  const kind = readPointer(plain.value, '/kind')
  const kindMeant = typeof kind === 'string' ? (suggestName(kind, wanted) ?? kind) : kind
  const known = wanted.find((one) => one === kindMeant) ?? (wanted.length === 1 ? wanted[0] : undefined)
  const id = readPointer(plain.value, '/id')
  const document: DocumentReference = {
    kind: known ?? 'text',
    ...(typeof id === 'string' && ID_PATTERN.test(id) ? { id } : {}),
    ...name,
  }
  const findings: Finding[] = plain.findings.map((finding) => ({ ...finding, document }))
  const refused = new Set(plain.refused)
  const fail = (): Result<AnyDocument> => ({ ok: false, findings })

  const head = checkHead(plain.value, wanted, refused, document)
  findings.push(...head.findings)
  if (head.stop || known === undefined || refused.has('')) return fail()
  for (const path of head.judged) refused.add(path)
  const read = findShapeMistakes(readShapes().documents[known], plain.value, refused, document)
  findings.push(...read.findings)
  if (findings.length > 0 || read.value === undefined) return fail()
  return { ok: true, value: read.value as AnyDocument, findings }
}

function readName(options: ParseOptions): ParseOptions {
  if (typeof options !== 'object' || options === null)
    throw new TypeError('options: an object is wanted, such as { name: "sheet.json" }')
  const { name } = options
  if (name === undefined) return {}
  if (typeof name !== 'string') throw new TypeError(`options.name: a string is wanted, not ${typeof name}`)
  return { name }
}

interface Head {
  readonly findings: readonly Finding[]
  /** Places that the shape need not judge again. */
  readonly judged: readonly string[]
  /** The rest would be read against a shape that it was not written for. */
  readonly stop: boolean
}

/** Kind and version come first: a document of another kind or version is one mistake, not a hundred. */
function checkHead(
  data: unknown,
  wanted: readonly DocumentName[],
  refused: ReadonlySet<string>,
  document: DocumentReference,
): Head {
  const findings: Finding[] = []
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
  if (typeof kind === 'string' && !wanted.some((one) => one === kind)) {
    // Another kind that can be read is a mix-up of files, however near its name.
    const isOtherKind = DOCUMENT_NAMES.some((one) => one === kind)
    const didYouMean = isOtherKind ? undefined : suggestName(kind, wanted)
    findings.push(
      reportMistake(
        document,
        '/kind',
        'spec/wrong-kind',
        { found: cutText(kind), expected: wanted, ...(didYouMean === undefined ? {} : { didYouMean }) },
        didYouMean === undefined ? [] : [{ op: 'replace', path: '/kind', value: didYouMean }],
      ),
    )
    judged.push('/kind')
    stop = didYouMean === undefined
  } else if (typeof kind !== 'string' && wanted.length > 1 && !refused.has('/kind')) {
    findings.push(
      kind === undefined
        ? reportMistake(document, '', 'spec/missing-key', { key: 'kind', allowed: wanted })
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
