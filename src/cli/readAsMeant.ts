import { type Finding, joinPointer, type Result, readPointer, splitPointer } from '../base/index.js'
import { parseDocument } from '../schema/index.js'
import type { AnyDocument, DocumentName, Parsed } from '../spec/index.js'

export type ReadDocument = Result<AnyDocument> & Pick<Parsed<unknown>, 'places'>

/** Keys by which a document without a kind is known; all others are sheets. */
const KEYS_OF_KINDS: readonly (readonly [DocumentName, readonly string[]])[] = [
  ['toolbox', ['wrenches', 'sockets', 'vessels']],
  ['stock', ['containers']],
  ['machine-log', ['meters', 'records', 'identity']],
  ['procedure', ['steps']],
  ['service-record', ['entries']],
]

/** Lists in lists are found one level at a time. */
const MAX_ROUNDS = 4

/**
 * Reads a document on after mistakes that hide others: without a usable kind it is read as what it looks like, and a list in
 * place of a map as a map by place. So one run shows all mistakes.
 */
export function readAsMeant(data: unknown, read: ReadDocument, name: string): ReadDocument {
  if (read.ok || typeof data !== 'object' || data === null || Array.isArray(data)) return read
  const copy = structuredClone(data) as Record<string, unknown>
  const findings = [...read.findings]
  const known = new Set(findings.map(keyOf))
  const lists: string[] = []
  let meant: DocumentName | undefined
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const found = findings.filter((one) => isListForMap(one) && !lists.includes(one.path))
    for (const { path } of found) replaceList(copy, path)
    lists.push(...found.map(({ path }) => path))
    const kind = lacksKind(findings) ? guessKind(copy) : undefined
    meant ??= kind
    if (found.length === 0 && (kind === undefined || round > 0)) break
    const again = parseDocument('any', kind === undefined ? copy : { ...copy, kind }, { name })
    for (const finding of again.findings) {
      if (known.has(keyOf(finding)) || isPlaceInList(finding, lists)) continue
      known.add(keyOf(finding))
      findings.push(finding)
    }
  }
  if (meant === undefined) return { ok: false, findings }
  const kind = meant
  return { ok: false, findings: findings.map((one) => ({ ...one, document: { ...one.document, kind } })) }
}

const keyOf = ({ code, path, params }: Finding): string => JSON.stringify([code, path, params])

function lacksKind(findings: readonly Finding[]): boolean {
  return findings.some(
    ({ code, path, params }) =>
      (code === 'spec/missing-key' && path === '' && params['key'] === 'kind') ||
      (code === 'spec/wrong-type' && path === '/kind') ||
      (code === 'spec/wrong-kind' && params['didYouMean'] === undefined),
  )
}

function guessKind(data: object): DocumentName {
  return KEYS_OF_KINDS.find(([, keys]) => keys.some((key) => Object.hasOwn(data, key)))?.[0] ?? 'spec-sheet'
}

function isListForMap({ code, params }: Finding): boolean {
  return code === 'spec/wrong-type' && params['expected'] === 'object' && params['found'] === 'list'
}

/** A list inside a part is one value, unless it has parts itself. */
function replaceList(data: object, path: string): void {
  const tokens = splitPointer(path) ?? []
  const holder: unknown = readPointer(data, joinPointer(tokens.slice(0, -1)))
  const list: unknown = readPointer(data, path)
  const hasParts = Array.isArray(list) && (tokens.length === 1 || list.some((one) => typeof one === 'object'))
  if (hasParts) Object.assign(holder as object, { [tokens.at(-1) ?? '']: { ...list } })
}

/** The key of an entry is its place in the list, which is not an id. */
function isPlaceInList({ code, path }: Finding, lists: readonly string[]): boolean {
  return code === 'spec/bad-id' && lists.includes(path.slice(0, path.lastIndexOf('/')))
}
