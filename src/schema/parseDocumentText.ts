import type { DocumentReference, Finding } from '../base/index.js'
import { joinPointer, MAX_DEPTH, MAX_TEXT_LENGTH, refuse } from '../base/index.js'
import type { DocumentName, Parsed, ParseOptions, SpecCodes } from '../spec/index.js'
import { expandShort } from './notation/expandShort.js'
import { PLACE_TABLES } from './notation/notationTables.js'
import type { DocumentOf } from './parseDocument.js'
import { readCleanJson } from './readCleanJson.js'
import { readDocument, readName } from './readDocument.js'
import { readTableHead } from './readTableHead.js'
import { createMistakeReporter, type ReportMistake } from './reportMistake.js'
import { scanJsonText } from './scanJsonText.js'
import { chooseShapes } from './shapes/documentShapes.js'

/**
 * Parses JSON text as a document of the given kind, or of the kind that it names. For parsed data, use {@link
 * parseDocument}.
 *
 * Method: the text is scanned once for repeated keys and syntax errors, then read as data.
 * @param kind One of the six kinds, or `any`.
 * @param text JSON text; a leading byte order mark is skipped.
 * @param options `name`: the document's name in findings, such as a file name.
 * @returns The document, or all findings; also `spec/not-json`, `spec/table-instead-of-document` and `spec/duplicate-key`.
 * @throws TypeError if `text` is not a string, `options` is not an object or has an unknown key, or `options.name` is not a
 * string; RangeError for another `kind`.
 *
 * Source: RFC 8259 (2017). House rule: repeated keys are rejected, because JSON readers silently keep only one.
 * @example
 * ```ts
 * import { parseDocumentText } from 'drivetrain-service/v1/spec'
 * // In which column is the error?
 * const [first] = parseDocumentText('stock', '{"kind": "stock",}').findings
 * if (first?.code === 'spec/not-json') console.log(first.params.column) // => 18
 * ```
 */
export function parseDocumentText<const Kind extends DocumentName | 'any'>(
  kind: Kind,
  text: string,
  options: ParseOptions = {},
): Parsed<DocumentOf<Kind>> {
  const shapes = chooseShapes(kind)
  if (typeof text !== 'string') throw refuse('text', text, 'a string')
  const document: DocumentReference = { kind: 'text', ...readName(options) }
  const json = text.startsWith('\uFEFF') ? text.slice(1) : text
  const shortForms = { expand: expandShort, places: PLACE_TABLES }
  const clean = readCleanJson(json)
  if (clean !== undefined)
    return readDocument(clean, shapes, options, shortForms, true) as Parsed<DocumentOf<Kind>>
  const textMistakes = findTextMistakes(json, text.length, createMistakeReporter(document))
  if (textMistakes.stop) return { ok: false, findings: textMistakes.findings }
  const parsed = readDocument(JSON.parse(json), shapes, options, shortForms) as Parsed<DocumentOf<Kind>>
  if (textMistakes.findings.length === 0) return parsed
  const knownDocument =
    parsed.findings[0]?.document ??
    (parsed.ok ? { ...document, kind: parsed.value.kind, id: parsed.value.id } : document)
  const repeatedKeys = textMistakes.findings.map((finding) => ({ ...finding, document: knownDocument }))
  return { ok: false, findings: [...repeatedKeys, ...parsed.findings] }
}

interface TextMistakes {
  readonly findings: readonly Finding<SpecCodes>[]
  /** Whether the text cannot be read at all. */
  readonly stop: boolean
}

function findTextMistakes(json: string, length: number, report: ReportMistake): TextMistakes {
  if (length > MAX_TEXT_LENGTH) {
    const params = { found: '', length, limit: MAX_TEXT_LENGTH }
    return { findings: [report('', 'spec/too-long', params)], stop: true }
  }
  const { syntaxError, repeatedKeys, tooDeep, tooLarge } = scanJsonText(json)
  if (tooLarge !== undefined)
    return { findings: [report('', 'spec/too-large', { limit: tooLarge })], stop: true }
  const columns = syntaxError?.offset === 0 || json.startsWith('"') ? readTableHead(json) : undefined
  if (columns !== undefined)
    return { findings: [report('', 'spec/table-instead-of-document', { columns })], stop: true }
  const findings: Finding<SpecCodes>[] = repeatedKeys.map(({ tokens, key }) =>
    report(joinPointer(tokens), 'spec/duplicate-key', { key }),
  )
  if (syntaxError !== undefined) {
    const textBefore = json.slice(0, syntaxError.offset)
    const found = String.fromCodePoint(json.codePointAt(syntaxError.offset) ?? 0x20).trim()
    const params = {
      line: textBefore.split('\n').length,
      column: syntaxError.offset - textBefore.lastIndexOf('\n'),
      needs: syntaxError.needs,
      found,
    }
    findings.push(report('', 'spec/not-json', params))
  } else if (tooDeep !== undefined)
    findings.push(report(joinPointer(tooDeep.tokens), 'spec/too-deep', { limit: MAX_DEPTH }))
  return { findings, stop: syntaxError !== undefined || tooDeep !== undefined }
}
