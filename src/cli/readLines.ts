import type { Readable } from 'node:stream'
import { StringDecoder } from 'node:string_decoder'

export interface TextLine {
  /** From 1, blank lines included. */
  readonly line: number
  /** Absent if the line is too long. */
  readonly text?: string
  /** In characters. */
  readonly length: number
}

/** In characters; longer than a log of many years. */
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
  const addPiece = (piece: string): void => {
    length += piece.length
    if (length <= maxLength) pieces.push(piece)
    else pieces = []
  }
  const endLine = (): TextLine | undefined => {
    line += 1
    const text = length <= maxLength ? pieces.join('').replace(/^\uFEFF|\r$/g, '') : undefined
    const position = { line, length }
    pieces = []
    length = 0
    return text === undefined ? position : text.trim() === '' ? undefined : { ...position, text }
  }
  for await (const chunk of input) {
    const text: string = typeof chunk === 'string' ? chunk : decoder.write(chunk)
    const parts = text.split('\n')
    for (const [index, part] of parts.entries()) {
      addPiece(part)
      const finishedLine = index < parts.length - 1 ? endLine() : undefined
      if (finishedLine !== undefined) yield finishedLine
    }
  }
  addPiece(decoder.end())
  const lastLine = length > 0 ? endLine() : undefined
  if (lastLine !== undefined) yield lastLine
}
