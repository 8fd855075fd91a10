import type { Finding } from '../../src/base/index.js'
import { findTextRange, makeLocator } from '../../src/cli/makeLocator.js'
import { readJsonDocument, readYamlDocument, replaceTabs } from '../../src/cli/readDocumentText.js'
import { type Catalogue, renderMessage } from '../../src/v1/message.js'
import { checkDocuments, type DocumentSet, type Named } from '../../src/v1/rules.js'
import type { AnyDocument, MachineLog, SpecCodes, SpecSheet, Toolbox } from '../../src/v1/spec.js'
import type { PageLabels } from './labels/labels.js'

/** The texts of the page, by name. An empty text is a missing document. */
export type TextName = 'sheet' | 'log' | 'toolbox'
export type Texts = { readonly [Name in TextName]: string }
export const TEXT_NAMES: readonly TextName[] = ['sheet', 'log', 'toolbox']

/** The kind of document in each text. */
export const KINDS = { sheet: 'spec-sheet', log: 'machine-log', toolbox: 'toolbox' } as const

/** A finding at its characters. */
export interface TextFinding {
  readonly name: TextName
  readonly from: number
  readonly to: number
  /** From 1. */
  readonly line: number
  readonly severity: Finding['severity']
  readonly message: string
  /** Texts that are probably meant instead of the whole value. */
  readonly fixes: readonly string[]
}

export interface ReadTexts {
  readonly texts: Texts
  readonly sheet?: SpecSheet
  readonly log?: MachineLog
  readonly toolbox?: Toolbox
  readonly set: DocumentSet
  /** What the reader found. */
  readonly findings: readonly Finding[]
  readonly tooLong: readonly TextName[]
}

/** In characters. A longer text would take seconds each time a key is pressed. */
export const MAX_TEXT_LENGTH = 200_000

/** Reads the texts as the command line reads files. */
export function readTexts(texts: Texts): ReadTexts {
  const findings: Finding[] = []
  const tooLong: TextName[] = []
  const documents: Named<AnyDocument>[] = []
  for (const name of TEXT_NAMES) {
    const text = texts[name]
    if (text.trim() === '') continue
    if (text.length > MAX_TEXT_LENGTH) {
      tooLong.push(name)
      continue
    }
    const read = isJson(text) ? readJsonDocument(text, name) : readYamlDocument(text, name)
    findings.push(...read.findings)
    if (!read.ok) continue
    if (read.value.kind === KINDS[name])
      documents.push({ name, document: read.value, ...(read.places && { places: read.places }) })
    else findings.push(makeKindFinding(name, read.value.kind))
  }
  const listOfKind = <Kind extends AnyDocument['kind']>(kind: Kind) =>
    documents.filter(
      (named): named is Named<Extract<AnyDocument, { kind: Kind }>> => named.document.kind === kind,
    )
  const [sheets, logs, toolboxes] = [
    listOfKind('spec-sheet'),
    listOfKind('machine-log'),
    listOfKind('toolbox'),
  ]
  const [sheet, log, toolbox] = [sheets[0]?.document, logs[0]?.document, toolboxes[0]?.document]
  return {
    texts,
    ...(sheet && { sheet }),
    ...(log && { log }),
    ...(toolbox && { toolbox }),
    set: { sheets, logs, toolboxes, stocks: [], procedures: [], records: [] },
    findings,
    tooLong,
  }
}

/** All findings at their characters, in the order of the texts: those of the reader, and those of the rules. */
export function checkTexts(
  { texts, set, findings, tooLong }: ReadTexts,
  today: string,
  catalogue: Catalogue,
  labels: Pick<PageLabels, 'tooLong'>,
): readonly TextFinding[] {
  const open = [...findings, ...checkDocuments(set, { today })].filter(({ waived }) => waived === undefined)
  const refused = tooLong.map((name): TextFinding => {
    const message = labels.tooLong(texts[name].length, MAX_TEXT_LENGTH)
    return { name, from: 0, to: 1, line: 1, severity: 'error', message, fixes: [] }
  })
  const placed = [...refused, ...open.map(makePlacer(texts, catalogue))]
  const rank = (finding: TextFinding) => TEXT_NAMES.indexOf(finding.name) * MAX_TEXT_LENGTH + finding.from
  return placed.sort((first, second) => rank(first) - rank(second))
}

const isJson = (text: string): boolean => /^[\s\uFEFF]*[[{]/.test(text)

/** A document under the wrong heading of the page. */
function makeKindFinding(name: TextName, found: AnyDocument['kind']): Finding {
  const params: SpecCodes['spec/wrong-kind'] = { found, expected: [KINDS[name]] }
  return {
    code: 'spec/wrong-kind',
    severity: 'error',
    document: { kind: 'text', name },
    path: '/kind',
    params,
  }
}

/** Finds the characters of each finding. A text is read once for all its findings. */
function makePlacer(texts: Texts, catalogue: Catalogue): (finding: Finding) => TextFinding {
  const placers = new Map<TextName, (finding: Finding) => { from: number; to: number; line: number }>()
  return (finding) => {
    const name = TEXT_NAMES.find((candidate) => candidate === finding.document.name) ?? 'sheet'
    const placeFinding = placers.get(name) ?? placeInText(texts[name])
    placers.set(name, placeFinding)
    return {
      name,
      ...placeFinding(finding),
      severity: finding.severity,
      message: renderMessage(finding, catalogue),
      fixes: (finding.cures ?? []).flatMap((fix) =>
        fix.op === 'replace' && typeof fix.value === 'string' ? [fix.value] : [],
      ),
    }
  }
}

function placeInText(text: string): (finding: Finding) => { from: number; to: number; line: number } {
  const locate = makeLocator(isJson(text) ? text : replaceTabs(text))
  const lineStarts = [0, ...[...text.matchAll(/\n/g)].map(({ index }) => index + 1)]
  const offsetOf = ({ line, column }: { readonly line: number; readonly column: number }): number =>
    Math.min(Math.max((lineStarts[line - 1] ?? text.length) + column - 1, 0), text.length)
  return (finding) => {
    if (finding.code === 'spec/not-yaml' || finding.code === 'spec/not-json') {
      const position = finding.params as SpecCodes['spec/not-yaml']
      const from = offsetOf(position)
      const lineEnd = text.indexOf('\n', from)
      return { from, to: lineEnd === -1 ? text.length : lineEnd, line: position.line }
    }
    const position = locate(finding.path)
    if (position === undefined) return { from: 0, to: Math.min(1, text.length), line: 1 }
    const from = offsetOf(position)
    const to = Math.max(position.end ? offsetOf(position.end) : from, from)
    const range = findTextRange(finding)
    const value = position.text ?? ''
    // The value ends what was found, with or without a quote. A text over several lines is marked whole.
    const start = [to, to - 1]
      .map((end) => end - value.length)
      .find((candidate) => candidate >= from && text.startsWith(value, candidate))
    if (range === undefined || value === '' || start === undefined) return { from, to, line: position.line }
    return { from: start + range[0], to: start + Math.max(range[1], range[0] + 1), line: position.line }
  }
}
