import { type DocumentReference, dropUndefined, type Finding, type JsonPointer } from '../base/index.js'
import { moveToWritten, type WrittenPlaces } from '../spec/index.js'
import type { Subject } from './listSubjects.js'
import type { AnyRule, DocumentSet } from './rule.js'

/** Runs every rule for this kind of document, in the order of the list. */
export function runRules(
  { input, prefix, inside, places }: Subject,
  rules: readonly AnyRule[],
): readonly Finding[] {
  const { kind, id } = inside.document
  const document = { kind, id, ...(inside.name === undefined ? {} : { name: inside.name }) }
  return rules.flatMap((rule) => {
    if (rule.about !== input.document.kind && !rule.about.includes(input.document.kind)) return []
    return rule.check(input as never).map((found): Finding => {
      const fixes = found.cures?.map((fix) =>
        fix.op === 'move'
          ? { ...fix, from: prefix + fix.from, path: prefix + fix.path }
          : { ...fix, path: prefix + fix.path },
      )
      return {
        code: rule.code,
        severity: found.severity ?? rule.severity,
        document,
        path: locateInLog(found.path, prefix, places),
        params: dropUndefined(found.params),
        ...(found.related === undefined ? {} : { related: found.related }),
        ...(fixes === undefined || fixes.length === 0 ? {} : { cures: fixes }),
      }
    })
  })
}

/** The pointer of a finding in the log as written. Values from a correction are found in the correction. */
function locateInLog(
  path: JsonPointer,
  prefix: JsonPointer,
  places: Subject['places'] = new Map(),
): JsonPointer {
  for (let length = path.length; length > 0; length = path.lastIndexOf('/', length - 1)) {
    const writtenPath = places.get(path.slice(0, length))
    if (writtenPath !== undefined) return `/records${writtenPath}${path.slice(length)}`
  }
  return prefix + path
}

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
    return (candidates.find((candidate) => candidate.name === name) ?? candidates[0])?.places ?? []
  }
}
