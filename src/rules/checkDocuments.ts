import type { Finding, JsonPointer } from '../base/index.js'
import { joinPointer, RETIRED_CODES, readPointer, splitPointer } from '../base/index.js'
import { type MeterCodes, readMeters } from '../interval/index.js'
import { type ProcedureCodes, validateProcedure } from '../procedure/index.js'
import { resolveRecords, type SpecSheet } from '../spec/index.js'
import { allRules } from './allRules.js'
import type { DocumentCodes } from './codes.js'
import { listSubjects, type Subject } from './listSubjects.js'
import { requireSet } from './requireSet.js'
import type { AnyRule, CheckFacts, DocumentSet, HouseCodes } from './rule.js'
import { moveFindings, runRules } from './runRules.js'
import { rule as waiverWithoutFinding } from './spec/waiver-without-finding.js'

/**
 * Finds the mistakes in a closed set of documents, and other points to check. It is for people who write
 * sheets, keep logs, or take them over. The documents come from the `parse…` functions of `/v1/spec`, which
 * find mistakes in their shape. The findings of `validateProcedure` and `readMeters` are included, with their
 * codes. To judge one record, use `checkRecord` of the service entry.
 *
 * @param set - the documents, by kind; rules look up related documents in it (the sheet of a log) and report
 * nothing if one is missing
 * @param facts - `today`, `YYYY-MM-DD`; without it, no date counts as future
 * @param houseRules - your own rules, made with {@link defineRule}; they run after the built-in ones
 * @returns all findings, sheets first, then the other documents in the given order; within a document, in the
 * order of its text. A waived finding keeps its position; it has `waived` and the severity `info`.
 * @throws TypeError if `set` lacks a list, a document is in the wrong list or was not parsed, or `facts` has
 * an unknown key; RangeError if `today` is not a date
 *
 * Source: house rule. Each rule names its source.
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
 * // A scale goes from 20 down to 5 N·m. What is found?
 * checkDocuments(set).map(({ code }) => code) // => ['toolbox/scale-wrong']
 * ```
 */
export function checkDocuments<House extends AnyRule = never>(
  set: DocumentSet,
  facts: CheckFacts = {},
  houseRules: readonly House[] = [],
): readonly (Finding<DocumentCodes> | Finding<HouseCodes<House>>)[] {
  requireSet(set, facts)
  const rules = [...allRules, ...houseRules]
  const found = listSubjects(set, facts).flatMap((subject) => {
    const allFindings: readonly Finding[] = [
      ...runRules(subject, rules),
      ...findMeterAndProcedureMistakes(subject),
    ]
    const { document } = subject.inside
    const { findings, unusedWaivers } =
      document.kind === 'spec-sheet'
        ? applyWaivers(document, allFindings)
        : { findings: allFindings, unusedWaivers: [] }
    const waiverSubject = {
      ...subject,
      input: { ...subject.input, facts: { ...facts, unusedWaivers } },
    }
    const waiverFindings = runRules(waiverSubject, [waiverWithoutFinding])
    return [...findings, ...waiverFindings].sort((first, second) =>
      comparePointers(document, first.path, second.path),
    )
  })
  // A list of rules loses the type of each code's params; each rule is type-checked where it is defined.
  return moveFindings(found, set) as readonly (Finding<DocumentCodes> | Finding<HouseCodes<House>>)[]
}

/** Lowers waived findings to `info`, adds the waiver's reason, and lists the indexes of unused waivers. */
function applyWaivers(sheet: SpecSheet, findings: readonly Finding[]) {
  const waivers = sheet.waivers ?? []
  const usedIndexes = new Set<number>()
  const findingsWithWaivers = findings.map((finding): Finding => {
    const index = waivers.findIndex(
      ({ code, path }) =>
        path === finding.path && (code === finding.code || RETIRED_CODES[code] === finding.code),
    )
    const waiver = waivers[index]
    if (waiver === undefined) return finding
    usedIndexes.add(index)
    return {
      ...finding,
      severity: 'info',
      waived: { path: `/waivers/${index}`, reason: waiver.reason },
    }
  })
  return {
    findings: findingsWithWaivers,
    unusedWaivers: [...waivers.keys()].filter((index) => !usedIndexes.has(index)),
  }
}

/**
 * The findings of `validateProcedure` for a procedure with its sheet in the set, and of `readMeters` for a
 * log.
 */
function findMeterAndProcedureMistakes({
  input: { document, sheet },
  inside,
}: Subject): readonly Finding<MeterCodes & ProcedureCodes>[] {
  const found: readonly Finding<MeterCodes & ProcedureCodes>[] =
    document.kind === 'machine-log'
      ? readMeters({ ...document, records: resolveRecords(document.records).map(({ record }) => record) })
          .findings
      : document.kind === 'procedure' && sheet !== undefined
        ? validateProcedure(document, sheet.document)
        : []
  const { name } = inside
  const documentReference = { kind: document.kind, id: document.id, ...(name === undefined ? {} : { name }) }
  return found.map((finding) => ({ ...finding, document: documentReference }))
}

/**
 * Compares two pointers by the order of the document's text, an object before its values. Pointers to nothing
 * come last.
 */
export function comparePointers(document: unknown, first: JsonPointer, second: JsonPointer): number {
  if (first === second) return 0
  const tokens = splitPointer(first) ?? []
  const secondTokens = splitPointer(second) ?? []
  let value = document
  for (const [depth, token] of tokens.entries()) {
    const secondToken = secondTokens[depth]
    if (secondToken === undefined) return 1
    if (token !== secondToken)
      return findKeyIndex(token, value) - findKeyIndex(secondToken, value) || (token < secondToken ? -1 : 1)
    value = readPointer(value, joinPointer([token]))
  }
  return -1
}

/** The index of a key in its object or list. For a missing key: the number of keys. */
function findKeyIndex(key: string, holder: unknown): number {
  if (Array.isArray(holder)) return /^[0-9]+$/.test(key) ? Number(key) : holder.length
  const keys = typeof holder === 'object' && holder !== null ? Object.keys(holder) : []
  const index = keys.indexOf(key)
  return index === -1 ? keys.length : index
}
