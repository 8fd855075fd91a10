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
  for await (const lines of readLineGroups(input, maxLength)) yield* lines
}

/** The lines of {@link readLines} that end in each chunk of the stream: waiting for each line would take longer than reading it. */
export async function* readLineGroups(
  input: Readable,
  maxLength: number = MAX_LINE_LENGTH,
): AsyncGenerator<readonly TextLine[]> {
  const decoder = new StringDecoder('utf8')
  let pieces: string[] = []
  let length = 0
  let line = 0
  const addPiece = (piece: string): void => {
    length += piece.length
    if (length <= maxLength) pieces.push(piece)
    else pieces = []
  }
  const endLine = (lines: TextLine[]): void => {
    line += 1
    const [first = ''] = pieces
    // Hot path: most lines are in one piece, and end without a carriage return.
    let text = pieces.length > 1 ? pieces.join('') : first
    if (text.startsWith('\uFEFF')) text = text.slice(1)
    if (text.endsWith('\r')) text = text.slice(0, -1)
    if (length > maxLength) lines.push({ line, length })
    else if (text.trim() !== '') lines.push({ line, length, text })
    pieces = []
    length = 0
  }
  for await (const chunk of input) {
    const lines: TextLine[] = []
    const text: string = typeof chunk === 'string' ? chunk : decoder.write(chunk)
    let start = 0
    for (let end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', start)) {
      addPiece(text.slice(start, end))
      endLine(lines)
      start = end + 1
    }
    addPiece(text.slice(start))
    if (lines.length > 0) yield lines
  }
  addPiece(decoder.end())
  const lastLines: TextLine[] = []
  if (length > 0) endLine(lastLines)
  if (lastLines.length > 0) yield lastLines
}
