import type { DocumentReference, Finding } from '../base/index.js'
import { placeAsWritten, type WrittenPlaces } from '../spec/index.js'
import type { DocumentSet } from './rule.js'

/** Moves findings to the places as written. A mistake in the source of a section is reported only once. */
export function placeInTexts(findings: readonly Finding[], set: DocumentSet): readonly Finding[] {
  const { sheets, logs, toolboxes, stocks, procedures, records } = set
  const written = [...sheets, ...logs, ...toolboxes, ...stocks, ...procedures, ...records].filter(
    ({ places }) => places !== undefined,
  )
  if (written.length === 0) return findings
  const placed = findings.map((finding) => placeAsWritten(finding, placesOf))
  return [...new Map(placed.map((finding) => [JSON.stringify(finding), finding])).values()]

  function placesOf({ kind, id, name }: DocumentReference): WrittenPlaces {
    const named = written.filter(({ document }) => document.kind === kind && document.id === id)
    return (named.find((one) => one.name === name) ?? named[0])?.places ?? []
  }
}
