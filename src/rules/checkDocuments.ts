import { type DocumentReference, type Finding, RETIRED_CODES } from '../base/index.js'
import { type MeterCodes, readMeters } from '../interval/index.js'
import { type ProcedureCodes, validateProcedure } from '../procedure/index.js'
import { placeAsWritten, type SpecSheet, type WrittenPlaces } from '../spec/index.js'
import { allRules } from './allRules.js'
import type { DocumentCodes } from './codes.js'
import { comparePlaces } from './comparePlaces.js'
import { requireSet } from './requireSet.js'
import type { AnyRule, Circumstances, DocumentSet, HouseCodes } from './rule.js'
import { runRules } from './runRules.js'
import { type Subject, setSubjects } from './setSubjects.js'
import { rule as waiverWithoutFinding } from './spec/waiver-without-finding.js'

/**
 * Everything that is wrong, or worth knowing, in a closed set of documents: for anyone who writes sheets, keeps logs or
 * takes both over from others. The documents are those that `parse…` of `/v1/spec` gave back; what is wrong in their
 * shape was found there. What `validateProcedure` and `readMeters` find is included, with their codes. To judge one
 * record, use `checkRecord` of the service entry.
 *
 * @param set - the documents, by kind; rules look up partners (a log's sheet) in it and keep silent without them
 * @param circumstances - `today`, `YYYY-MM-DD`: absent, nothing is judged against the calendar
 * @param houseRules - rules of the caller's own, made with {@link defineRule}, run after ours
 * @returns all findings, document by document in the order given, sheets first, inside a document in the order in
 * which it is written. A finding that its sheet waives keeps its place, carries `waived`, and is information.
 * @throws TypeError where `set` lacks a list, a document is in the wrong one or was not parsed, or `circumstances` has
 * an unknown key; RangeError where `today` is not a date
 *
 * Source: house rule; each rule names its own.
 *
 * @example
 * ```ts
 * import { checkDocuments } from 'drivetrain-service/v1/rules'
 * const scale = { unit: 'N.m', lowest: 20, highest: 5, graduation: 1 } as const
 * const wrench = { name: 'small wrench', type: 'click', drive: '1/4 in', scales: [scale], accuracy: { kind: 'ISO 6789' } } as const
 * const toolbox = {
 *   kind: 'toolbox', version: '1.0', id: 'van', name: 'Van', wrenches: { small: wrench }, sockets: {}, vessels: {},
 *   pans: {}, fillers: {}, stands: {},
 * } as const
 * const set = { sheets: [], logs: [], toolboxes: [{ document: toolbox }], stocks: [], procedures: [], records: [] }
 * // A scale from 20 down to 5 N·m: what is found?
 * checkDocuments(set).map(({ code }) => code) // => ['toolbox/scale-wrong']
 * ```
 */
export function checkDocuments<House extends AnyRule = never>(
  set: DocumentSet,
  circumstances: Circumstances = {},
  houseRules: readonly House[] = [],
): readonly (Finding<DocumentCodes> | Finding<HouseCodes<House>>)[] {
  requireSet(set, circumstances)
  const rules = [...allRules, ...houseRules]
  const found = setSubjects(set, circumstances).flatMap((subject) => {
    const all: readonly Finding[] = [...runRules(subject, rules), ...roomFindings(subject)]
    const { document } = subject.inside
    const { findings, unusedWaivers } =
      document.kind === 'spec-sheet' ? applyWaivers(document, all) : { findings: all, unusedWaivers: [] }
    const last = { ...subject, input: { ...subject.input, facts: { ...circumstances, unusedWaivers } } }
    const left = runRules(last, [waiverWithoutFinding])
    return [...findings, ...left].sort((one, other) => comparePlaces(document, one.path, other.path))
  })
  const findings = set.sheets.some(({ places }) => places !== undefined) ? placeInTexts(found, set) : found
  // A list of rules has forgotten which code has which params; each rule was checked where it is defined.
  return findings as readonly (Finding<DocumentCodes> | Finding<HouseCodes<House>>)[]
}

/** The findings at what was written. What is wrong with the source of a section is reported once, not for each text in it. */
function placeInTexts(findings: readonly Finding[], set: DocumentSet): readonly Finding[] {
  const placed = findings.map((finding) => placeAsWritten(finding, (document) => placesIn(set, document)))
  return [...new Map(placed.map((finding) => [JSON.stringify(finding), finding])).values()]
}

/** Where the places of a sheet of the set were written. */
function placesIn({ sheets }: DocumentSet, { kind, id }: DocumentReference): WrittenPlaces {
  if (kind !== 'spec-sheet') return []
  return sheets.find(({ document }) => document.id === id)?.places ?? []
}

/**
 * A waived finding keeps its place, says which waiver and why, and counts as information from then on.
 * `unusedWaivers` are the places of the waivers that waived nothing.
 */
function applyWaivers(sheet: SpecSheet, findings: readonly Finding[]) {
  const waivers = sheet.waivers ?? []
  const used = new Set<number>()
  const waived = findings.map((finding): Finding => {
    const place = waivers.findIndex(
      ({ code, path }) =>
        path === finding.path && (code === finding.code || RETIRED_CODES[code] === finding.code),
    )
    const waiver = waivers[place]
    if (waiver === undefined) return finding
    used.add(place)
    return { ...finding, severity: 'info', waived: { path: `/waivers/${place}`, reason: waiver.reason } }
  })
  return { findings: waived, unusedWaivers: [...waivers.keys()].filter((place) => !used.has(place)) }
}

/**
 * What other rooms find in a document: in a procedure whose sheet is in the set, and in the meters of a log. The codes
 * are theirs, so that `checkDocuments` and `validateProcedure` say the same of a procedure.
 */
function roomFindings({
  input: { document, sheet },
  inside,
}: Subject): readonly Finding<MeterCodes & ProcedureCodes>[] {
  const found: readonly Finding<MeterCodes & ProcedureCodes>[] =
    document.kind === 'machine-log'
      ? readMeters(document).findings
      : document.kind === 'procedure' && sheet !== undefined
        ? validateProcedure(document, sheet.document)
        : []
  const { name } = inside
  const reference = { kind: document.kind, id: document.id, ...(name === undefined ? {} : { name }) }
  return found.map((finding) => ({ ...finding, document: reference }))
}
