import type { Readable } from 'node:stream'
import { StringDecoder } from 'node:string_decoder'

export interface TextLine {
  /** From 1; blank lines count. */
  readonly line: number
  /** Absent: the line is too long. */
  readonly text?: string
  /** In characters. */
  readonly length: number
}

/** In characters; a log of many years is shorter. */
export const MAX_LINE_LENGTH = 10_000_000

/**
 * Reads a stream line by line in constant memory. Blank lines are skipped; a line that is too long has no text.
 */
export async function* readLines(
  input: Readable,
  maxLength: number = MAX_LINE_LENGTH,
): AsyncGenerator<TextLine> {
  const decoder = new StringDecoder('utf8')
  let pieces: string[] = []
  let length = 0
  let line = 0
  const add = (piece: string): void => {
    length += piece.length
    if (length <= maxLength) pieces.push(piece)
    else pieces = []
  }
  const end = (): TextLine | undefined => {
    line += 1
    const text = length <= maxLength ? pieces.join('').replace(/^\uFEFF|\r$/g, '') : undefined
    const about = { line, length }
    pieces = []
    length = 0
    return text === undefined ? about : text.trim() === '' ? undefined : { ...about, text }
  }
  for await (const chunk of input) {
    const text: string = typeof chunk === 'string' ? chunk : decoder.write(chunk)
    const parts = text.split('\n')
    for (const [place, part] of parts.entries()) {
      add(part)
      const done = place < parts.length - 1 ? end() : undefined
      if (done !== undefined) yield done
    }
  }
  add(decoder.end())
  const last = length > 0 ? end() : undefined
  if (last !== undefined) yield last
}
