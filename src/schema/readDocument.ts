import type * as z from 'zod/v4/core'
import type { DocumentReference, Finding } from '../base/index.js'
import { cutText, MAX_MISTAKES, readPointer, refuse, requireKnownKeys, suggestName } from '../base/index.js'
import type { DocumentName, Documents, Parsed, ParseOptions, SpecCodes } from '../spec/index.js'
import { DOCUMENT_NAMES, READABLE_VERSIONS } from '../spec/index.js'
import { getTypeName } from './convertIssue.js'
import { copyPlainData } from './copyPlainData.js'
import { findShapeMistakes } from './findShapeMistakes.js'
import type { expandShort } from './notation/expandShort.js'
import type { Holder, PlaceTable } from './notation/placeTable.js'
import { createMistakeReporter, type ReportMistake } from './reportMistake.js'
import { ID_PATTERN } from './shapes/textShapes.js'

/** The possible shapes of a document, by kind. */
export type DocumentShapes = { readonly [Kind in DocumentName]?: () => z.$ZodType<Documents[Kind]> }

/** The expansion of short notation, and the places where each kind uses it. */
export interface ShortForms {
  readonly expand: typeof expandShort
  readonly places: { readonly [Kind in DocumentName]?: () => PlaceTable }
}

/**
 * Reads foreign data as a document of one of the given kinds. Data from {@link readCleanJson} is not copied again; short
 * notation is expanded in it.
 */
export function readDocument<const Shapes extends DocumentShapes>(
  input: unknown,
  shapes: Shapes,
  options: ParseOptions,
  shortForms?: ShortForms,
  isClean = false,
): Parsed<Documents[keyof Shapes & DocumentName]> {
  const name = readName(options)
  const expected = DOCUMENT_NAMES.filter((kind) => shapes[kind] !== undefined)
  const plainCopy = isClean
    ? { value: input, findings: [], refused: new Set<string>() }
    : copyPlainData(input, createMistakeReporter({ kind: 'text', ...name }))
  const kind = readPointer(plainCopy.value, '/kind')
  const intendedKind = typeof kind === 'string' ? (suggestName(kind, expected) ?? kind) : kind
  const documentKind =
    expected.find((expectedKind) => expectedKind === intendedKind) ??
    (expected.length === 1 ? expected[0] : undefined)
  const id = readPointer(plainCopy.value, '/id')
  const document: DocumentReference = {
    kind: documentKind ?? 'text',
    ...(typeof id === 'string' && ID_PATTERN.test(id) ? { id } : {}),
    ...name,
  }
  const findings: Finding<SpecCodes>[] = plainCopy.findings.map((finding) => ({ ...finding, document }))
  const refused = new Set(plainCopy.refused)
  const report = createMistakeReporter(document)
  const makeFailure = (): { ok: false; findings: readonly Finding<SpecCodes>[] } => ({ ok: false, findings })
  const headCheck = checkHead(plainCopy.value, expected, refused, report)
  findings.push(...headCheck.findings)
  const buildShape = documentKind && shapes[documentKind]
  if (headCheck.stop || buildShape === undefined || refused.has('')) return makeFailure()
  for (const path of headCheck.judged) refused.add(path)
  const table = documentKind && shortForms?.places[documentKind]?.()
  const expansion = table && shortForms?.expand(table, plainCopy.value as Holder, report)
  const notRead = new Set([...refused, ...(expansion?.unreadPointers ?? [])])
  const shape = findShapeMistakes(buildShape(), plainCopy.value, notRead, report, expansion?.isMoved)
  const shapeFindings =
    expansion === undefined
      ? shape.findings
      : shape.findings.map(expansion.moveToWritten).filter(({ path }) => !refused.has(path))
  for (const finding of [...(expansion?.findings ?? []), ...shapeFindings]) findings.push(finding)
  if (shape.hasMore || findings.length > MAX_MISTAKES)
    findings.push(report('', 'spec/more-mistakes', { shown: findings.length }))
  if (findings.length > 0 || shape.value === undefined) return makeFailure()
  const value = shape.value as Documents[keyof Shapes & DocumentName]
  return { ok: true, value, findings, ...(expansion?.places.length && { places: expansion.places }) }
}

/** Checks the options and returns the document's name. */
export function readName(options: ParseOptions): ParseOptions {
  requireKnownKeys('options', options, ['name'])
  const { name } = options
  if (name === undefined) return {}
  if (typeof name !== 'string') throw refuse('options.name', name, 'a string')
  return { name }
}

interface HeadCheck {
  readonly findings: readonly Finding<SpecCodes>[]
  /** Pointers that the shape need not check again. */
  readonly judged: readonly string[]
  /** Whether the shape does not apply, because the document has another kind or version. */
  readonly stop: boolean
}

/** Checks kind and version first: a document of another kind or version is one mistake, not a hundred. */
function checkHead(
  data: unknown,
  expected: readonly DocumentName[],
  refused: ReadonlySet<string>,
  report: ReportMistake,
): HeadCheck {
  const findings: Finding<SpecCodes>[] = []
  const judged: string[] = []
  if (getTypeName(data) !== 'object') {
    const value = typeof data === 'object' ? undefined : cutText(String(data))
    const params = { expected: 'object', found: getTypeName(data), value } as const
    return { findings: refused.has('') ? [] : [report('', 'spec/wrong-type', params)], judged, stop: true }
  }
  let stop = false
  const kind = readPointer(data, '/kind')
  if (typeof kind === 'string' && !expected.some((name) => name === kind)) {
    // Another known kind means that files were mixed up, even if its name is similar.
    const isOtherKind = DOCUMENT_NAMES.some((name) => name === kind)
    const value = isOtherKind ? undefined : suggestName(kind, expected)
    const fix = value === undefined ? undefined : ({ op: 'replace', path: '/kind', value } as const)
    const params = { found: cutText(kind), expected, didYouMean: value }
    findings.push(report('/kind', 'spec/wrong-kind', params, fix))
    judged.push('/kind')
    stop = value === undefined
  } else if (typeof kind !== 'string' && expected.length > 1 && !refused.has('/kind'))
    findings.push(
      kind === undefined
        ? report('', 'spec/missing-key', { key: 'kind', allowed: expected })
        : report('/kind', 'spec/wrong-type', { expected: 'text', found: getTypeName(kind) }),
    )
  const version = readPointer(data, '/version')
  const isNumber = typeof version === 'number'
  if (
    (typeof version === 'string' || isNumber) &&
    !READABLE_VERSIONS.some((readable) => readable === version)
  ) {
    const quotes = version === 1
    const fix = { op: 'replace', path: '/version', value: READABLE_VERSIONS[0] } as const
    const params = { found: cutText(String(version)), readable: READABLE_VERSIONS, quotes }
    findings.push(report('/version', 'spec/wrong-version', params, quotes ? fix : undefined))
    judged.push('/version')
    stop ||= !quotes
  }
  return { findings, judged, stop }
}
