import { DOCUMENT_NAMES } from '../spec/index.js'
import { type CliIo, UsageError } from './cliIo.js'
import { readYaml } from './readYaml.js'

/** What to do with an existing file. */
interface WriteOptions {
  /** An existing file is an error. */
  readonly mustBeNew?: boolean
  /** The new text is a correction of the same file, whose kind or id may be wrong. */
  readonly isCorrection?: boolean
}

/**
 * Writes one file; a path that cannot be written is a usage error. A document replaces only the same document
 * (kind and id), no other file.
 */
export async function writeOut(
  path: string,
  makeText: string | ((old: string | undefined) => Promise<string | undefined>),
  io: CliIo,
  { mustBeNew: isNew = false, isCorrection = false }: WriteOptions = {},
): Promise<void> {
  try {
    await io.saveText(path, async (old) => {
      if (isNew && old !== undefined) throw new UsageError('fileExists', { path })
      const text = typeof makeText === 'string' ? makeText : await makeText(old)
      if (old !== undefined && text !== undefined && !isCorrection) requireSameDocument(path, old, text)
      return text
    })
  } catch (error) {
    const code: unknown = error instanceof Error && 'code' in error ? error.code : undefined
    if (typeof code !== 'string') throw error
    throw new UsageError('cannotWrite', { path, code })
  }
}

interface DocumentHead {
  readonly kind: string
  readonly id?: unknown
}

const KINDS: readonly string[] = DOCUMENT_NAMES

/**
 * Throws if a document would replace a different document or another file, or another file would replace a
 * document.
 */
function requireSameDocument(path: string, old: string, text: string): void {
  if (old.trim() === '') return
  const oldHead = readHead(old)
  const newHead = readHead(text)
  if (oldHead?.kind === newHead?.kind && oldHead?.id === newHead?.id) return
  const nameHead = (head: DocumentHead | undefined) =>
    head === undefined ? '' : `${head.kind} ${String(head.id ?? '?')}`
  throw new UsageError('otherDocument', { path, found: nameHead(oldHead), expected: nameHead(newHead) })
}

/** Kind and id of a document, even one with mistakes; undefined if the text is not a document. */
function readHead(text: string): DocumentHead | undefined {
  // A card is not data and is not parsed.
  const [, kind] = new RegExp(`\\bkind["']?\\s*:\\s*["']?(${KINDS.join('|')})\\b`).exec(text) ?? []
  if (kind === undefined) return undefined
  // The first line of a history is the log.
  const [firstLine = ''] = text.trimStart().split('\n', 1)
  const data = readJson(firstLine) ?? readJson(text) ?? readYamlData(text)
  const isDocumentHead =
    typeof data === 'object' && data !== null && 'kind' in data && KINDS.includes(String(data.kind))
  return isDocumentHead ? (data as DocumentHead) : { kind }
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
