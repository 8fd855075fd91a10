import {
  type DocumentReference,
  type Finding,
  joinPointer,
  MAX_DEPTH,
  MAX_TEXT_LENGTH,
  type Result,
} from '../base/index.js'
import type { AnyDocument, DocumentName, ParseOptions } from '../spec/index.js'
import { readDocument } from './readDocument.js'
import { reportMistake } from './reportMistake.js'
import { scanJsonText } from './scanJsonText.js'

/** Reads a JSON text as one of the wanted kinds of document; a byte order mark before it is passed over. */
export function readDocumentText(
  text: string,
  wanted: readonly DocumentName[],
  options: ParseOptions,
): Result<AnyDocument> {
  if (typeof text !== 'string') throw new TypeError(`text: a string is wanted, not ${typeof text}`)
  const document: DocumentReference = {
    kind: 'text',
    ...(options?.name === undefined ? {} : { name: options.name }),
  }
  const refuse = (finding: Finding, before: readonly Finding[] = []): Result<AnyDocument> => ({
    ok: false,
    findings: [...before, finding],
  })
  if (text.length > MAX_TEXT_LENGTH)
    return refuse(
      reportMistake(document, '', 'spec/too-long', {
        found: '',
        length: text.length,
        limit: MAX_TEXT_LENGTH,
      }),
    )
  const json = text.startsWith('\uFEFF') ? text.slice(1) : text
  const scan = scanJsonText(json)
  const repeated = scan.repeated.map(({ tokens, key }) =>
    reportMistake(document, joinPointer(tokens), 'spec/duplicate-key', { key }),
  )
  if (scan.broken !== undefined) {
    const { offset, needs } = scan.broken
    const before = json.slice(0, offset)
    const column = offset - (before.lastIndexOf('\n') + 1) + 1
    const found = String.fromCodePoint(json.codePointAt(offset) ?? 0x20).trim()
    const place = { line: before.split('\n').length, column, needs, found }
    return refuse(reportMistake(document, '', 'spec/not-json', place), repeated)
  }
  if (scan.tooDeep !== undefined)
    return refuse(
      reportMistake(document, joinPointer(scan.tooDeep.tokens), 'spec/too-deep', { limit: MAX_DEPTH }),
      repeated,
    )
  const read = readDocument(JSON.parse(json), wanted, options)
  if (repeated.length === 0) return read
  const known = read.findings[0]?.document ?? (read.ok ? referTo(read.value, document) : document)
  return {
    ok: false,
    findings: [...repeated.map((finding) => ({ ...finding, document: known })), ...read.findings],
  }
}

function referTo(value: AnyDocument, document: DocumentReference): DocumentReference {
  return { ...document, kind: value.kind, id: value.id }
}
