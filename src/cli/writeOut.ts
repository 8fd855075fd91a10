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
      if (isNew && old !== undefined)
        throw new UsageError(`${path} exists; choose another name, or delete it first`)
      const text = typeof makeText === 'string' ? makeText : await makeText(old)
      if (old !== undefined && text !== undefined && !isCorrection) requireSameDocument(path, old, text)
      return text
    })
  } catch (error) {
    const code: unknown = error instanceof Error && 'code' in error ? error.code : undefined
    if (typeof code !== 'string') throw error
    throw new UsageError(`${path}: cannot be written (${ERROR_TEXTS[code] ?? code})`)
  }
}

const ERROR_TEXTS: Readonly<Record<string, string>> = {
  EACCES: 'no permission',
  EPERM: 'no permission',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'your disk quota is used up',
  EFBIG: 'the file would be too large',
  EIO: 'disk error',
  EISDIR: 'it is a folder',
  ENOTDIR: 'expected a folder, found a file',
  EEXIST: 'expected a folder, found a file',
  ELOOP: 'its links form a cycle',
  ENAMETOOLONG: 'the name is too long',
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
