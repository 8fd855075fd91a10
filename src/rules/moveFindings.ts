import type { DocumentReference, Finding } from '../base/index.js'
import { moveToWritten, type WrittenPlaces } from '../spec/index.js'
import type { DocumentSet } from './rule.js'

/**
 * Moves the pointers of findings from the full form to the document as written. A mistake in a section's
 * source is reported only once.
 */
export function moveFindings(findings: readonly Finding[], set: DocumentSet): readonly Finding[] {
  const { sheets, logs, toolboxes, stocks, procedures, records } = set
  const shortDocuments = [...sheets, ...logs, ...toolboxes, ...stocks, ...procedures, ...records].filter(
    ({ places }) => places !== undefined,
  )
  if (shortDocuments.length === 0) return findings
  const movedFindings = findings.map((finding) => moveToWritten(finding, findWrittenPlaces))
  return [...new Map(movedFindings.map((finding) => [JSON.stringify(finding), finding])).values()]

  function findWrittenPlaces({ kind, id, name }: DocumentReference): WrittenPlaces {
    const candidates = shortDocuments.filter(({ document }) => document.kind === kind && document.id === id)
    return (candidates.find((one) => one.name === name) ?? candidates[0])?.places ?? []
  }
}
