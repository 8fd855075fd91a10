import { DOCUMENT_NAMES } from '../spec/index.js'
import { UsageError } from './cliIo.js'
import { readYaml } from './readYaml.js'

interface DocumentHead {
  readonly kind: string
  readonly id?: unknown
}

const KINDS: readonly string[] = DOCUMENT_NAMES

/**
 * Throws if a document would replace a different document or another file, or another file would replace a
 * document.
 */
export function requireSameDocument(path: string, old: string, text: string): void {
  if (old.trim() === '') return
  const oldHead = readHead(old)
  const newHead = readHead(text)
  if (oldHead?.kind === newHead?.kind && oldHead?.id === newHead?.id) return
  const names = [oldHead, newHead].map(
    (head) => head && `the ${head.kind} ${String(head.id ?? 'without an id')}`,
  )
  const [found = 'another file', expected = 'an earlier output'] = names
  throw new UsageError(`${path} is ${found}, not ${expected}: choose another name; nothing was written`)
}

/** Kind and id of a document, even one with mistakes; undefined if the text is not a document. */
function readHead(text: string): DocumentHead | undefined {
  // A card is not data and is not parsed.
  const [, kind] = new RegExp(`\\bkind["']?\\s*:\\s*["']?(${KINDS.join('|')})\\b`).exec(text) ?? []
  if (kind === undefined) return undefined
  // The first line of a history is the log.
  const [firstLine = ''] = text.trimStart().split('\n', 1)
  const data = readJson(firstLine) ?? readJson(text) ?? readYamlData(text)
  const isHead =
    typeof data === 'object' && data !== null && 'kind' in data && KINDS.includes(String(data.kind))
  return isHead ? (data as DocumentHead) : { kind }
}

function readJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

function readYamlData(text: string): unknown {
  const parsed = readYaml(text, 'output')
  return parsed.ok ? parsed.value : undefined
}
