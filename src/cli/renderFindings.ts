import { dropUndefined, type Finding, type Severity } from '../base/index.js'
import { renderMessage } from '../message/index.js'
import type { SpecCodes } from '../spec/index.js'
import type { CommandIo, ExitCode } from './cliIo.js'
import { findTextRange, type LocatedFinding, makeLocator, type TextPosition } from './makeLocator.js'
import { findYamlProblem } from './message/yamlProblem.js'
import type { FileSet } from './readDocuments.js'
import { type Language, renderReport } from './renderReport.js'
import { renderSarif } from './renderSarif.js'

/** Output formats of all commands; findings are text, JSON or SARIF. */
export type Format = 'text' | 'json' | 'sarif' | 'vtt' | 'csv' | 'summary' | 'markdown' | 'html'

const SEVERITY_RANK: Readonly<Record<Severity, number>> = { error: 0, warning: 1, info: 2 }

/** Whether a finding is at or above a level; a waived finding or one of the baseline never is. */
export function isAtLevel(finding: Finding | LocatedFinding, level: Severity): boolean {
  if ('accepted' in finding) return false
  return finding.waived === undefined && SEVERITY_RANK[finding.severity] <= SEVERITY_RANK[level]
}

/** 1 if a finding is at or above the level, else 0. */
export function chooseExitCode(findings: readonly Finding[], level: Severity): ExitCode {
  return findings.some((finding) => isAtLevel(finding, level)) ? 1 : 0
}

/** Prints the findings of the parser; true if a document has an error and the command must stop. */
export function reportReadErrors(sets: readonly FileSet[], io: CommandIo): boolean {
  const findings = sets.flatMap((fileSet) => fileSet.findings)
  if (findings.length > 0) io.printError(renderFindings(locateFindings(findings, sets, io), 'text', io))
  return findings.some(({ severity }) => severity === 'error')
}

/** Adds text, line and column to findings, in the order of {@link sortFindings}. */
export function locateFindings(
  findings: readonly Finding[],
  sets: readonly FileSet[],
  language: Language,
): readonly LocatedFinding[] {
  const locators = new Map<string, ReturnType<typeof makeLocator>>()
  for (const { texts } of sets) for (const [name, text] of texts) locators.set(name, makeLocator(text))
  const located = findings.map((finding): LocatedFinding => {
    const place = findTextPosition(finding) ?? locators.get(finding.document.name ?? '')?.(finding.path)
    const position = place && { line: place.line, column: place.column }
    const text = findTextRange(finding) && place?.text
    return dropUndefined({
      ...finding,
      message: writeMessage(finding, language),
      position,
      end: place?.end,
      text,
    })
  })
  return sortFindings(located)
}

/** The text of a finding; what the YAML reader says in English is translated if it is known. */
function writeMessage(finding: Finding, { words, catalogue }: Language): string {
  const { yamlProblems } = words
  if (finding.code !== 'spec/not-yaml' || yamlProblems === 'as written')
    return renderMessage(finding, catalogue)
  const { problem, ...place } = finding.params as SpecCodes['spec/not-yaml']
  const known = findYamlProblem(problem)
  const text = known === undefined ? problem : yamlProblems[known]
  return renderMessage({ code: finding.code, params: { ...place, problem: text } }, catalogue)
}

/** Findings by file, line and severity. */
export function sortFindings(findings: readonly LocatedFinding[]): readonly LocatedFinding[] {
  return findings.toSorted(
    (first, second) =>
      compareTexts(first.document.name ?? '', second.document.name ?? '') ||
      (first.position?.line ?? 0) - (second.position?.line ?? 0) ||
      SEVERITY_RANK[first.severity] - SEVERITY_RANK[second.severity] ||
      compareTexts(first.path, second.path) ||
      compareTexts(first.code, second.code),
  )
}

/** The position of an error in the JSON or YAML text. */
function findTextPosition({ code, params }: Finding): TextPosition | undefined {
  if (code !== 'spec/not-json' && code !== 'spec/not-yaml') return undefined
  const { line, column } = params as SpecCodes[typeof code]
  return { line, column }
}

function compareTexts(first: string, second: string): number {
  return first < second ? -1 : first > second ? 1 : 0
}

/** Writes findings in an output format. */
export function renderFindings(
  findings: readonly LocatedFinding[],
  format: Format,
  language: Language,
): string {
  if (format !== 'json' && format !== 'sarif') return renderReport(findings, language)
  const report = format === 'sarif' ? renderSarif(findings) : { kind: 'findings', version: '1.0', findings }
  return `${JSON.stringify(report, null, 2)}\n`
}
