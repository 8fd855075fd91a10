import { type Finding, joinPointer, type Result, readPointer, splitPointer } from '../base/index.js'
import { parseDocument } from '../schema/index.js'
import type { AnyDocument, DocumentName, Parsed } from '../spec/index.js'

export type ParsedDocument = Result<AnyDocument> & Pick<Parsed<unknown>, 'places'>

/** Keys that show the kind of a document without one; all others are sheets. */
const KEYS_BY_KIND: readonly (readonly [DocumentName, readonly string[]])[] = [
  ['toolbox', ['wrenches', 'sockets', 'vessels']],
  ['stock', ['containers']],
  ['machine-log', ['meters', 'records', 'identity']],
  ['procedure', ['steps']],
  ['service-record', ['entries']],
]

/** Nested lists are found one level at a time. */
const MAX_ROUNDS = 4

/**
 * Finds mistakes hidden by others, so that one run shows all: a document without a usable kind is read as the
 * kind that it looks like, and a list instead of a map as a map by index.
 */
export function findHiddenMistakes(data: unknown, parsed: ParsedDocument, name: string): ParsedDocument {
  if (parsed.ok || typeof data !== 'object' || data === null || Array.isArray(data)) return parsed
  const correctedCopy = structuredClone(data) as Record<string, unknown>
  const findings = [...parsed.findings]
  const known = new Set(findings.map(makeFindingKey))
  const listPaths: string[] = []
  let guessedKind: DocumentName | undefined
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const found = findings.filter(
      (finding) => isListInsteadOfMap(finding) && !listPaths.includes(finding.path),
    )
    for (const { path } of found) replaceList(correctedCopy, path)
    listPaths.push(...found.map(({ path }) => path))
    const kind = lacksKind(findings) ? guessKind(correctedCopy) : undefined
    guessedKind ??= kind
    if (found.length === 0 && (kind === undefined || round > 0)) break
    const reparsedDocument = parseDocument(
      'any',
      kind === undefined ? correctedCopy : { ...correctedCopy, kind },
      {
        name,
      },
    )
    for (const finding of reparsedDocument.findings) {
      if (known.has(makeFindingKey(finding)) || isIndexAsId(finding, listPaths)) continue
      known.add(makeFindingKey(finding))
      findings.push(finding)
    }
  }
  if (guessedKind === undefined) return { ok: false, findings }
  const kind = guessedKind
  return {
    ok: false,
    findings: findings.map((finding) => ({ ...finding, document: { ...finding.document, kind } })),
  }
}

const makeFindingKey = ({ code, path, params }: Finding): string => JSON.stringify([code, path, params])

function lacksKind(findings: readonly Finding[]): boolean {
  return findings.some(
    ({ code, path, params }) =>
      (code === 'spec/missing-key' && path === '' && params['key'] === 'kind') ||
      (code === 'spec/wrong-type' && path === '/kind') ||
      (code === 'spec/wrong-kind' && params['didYouMean'] === undefined),
  )
}

function guessKind(data: object): DocumentName {
  return KEYS_BY_KIND.find(([, keys]) => keys.some((key) => Object.hasOwn(data, key)))?.[0] ?? 'spec-sheet'
}

function isListInsteadOfMap({ code, params }: Finding): boolean {
  return code === 'spec/wrong-type' && params['expected'] === 'object' && params['found'] === 'list'
}

/** A list inside a part is one value, unless its items are parts. */
function replaceList(data: object, path: string): void {
  const tokens = splitPointer(path) ?? []
  const parent: unknown = readPointer(data, joinPointer(tokens.slice(0, -1)))
  const list: unknown = readPointer(data, path)
  const isListOfParts =
    Array.isArray(list) && (tokens.length === 1 || list.some((item) => typeof item === 'object'))
  if (isListOfParts) Object.assign(parent as object, { [tokens.at(-1) ?? '']: { ...list } })
}

/** The key is an index in the list, not an id. */
function isIndexAsId({ code, path }: Finding, listPaths: readonly string[]): boolean {
  return code === 'spec/bad-id' && listPaths.includes(path.slice(0, path.lastIndexOf('/')))
}
