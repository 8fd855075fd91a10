import { applyPatch, type PatchOperation } from '../../../src/base/applyPatch.js'
import * as library from '../../../src/index.js'
import type { Json } from './jsonChanges.js'

/**
 * The only connection from the frozen baseline of 0.1 to the library. If a public function moves, or its arguments or
 * options change, adapt the call here. Its result is compared unchanged.
 */

export type Patch = readonly PatchOperation[]

/** A document as returned by its parse function. */
export interface Parsed {
  readonly name: string
  readonly document: library.AnyDocument
}

/** The facts and options of the frozen plans besides the documents, with the names of the baseline. */
export interface PlanChoices {
  readonly services: 'due' | 'all'
  readonly today: string
  readonly edition: '2017' | '2003'
  readonly tolerancePercent?: number
}

const DUE = {
  soon: { hours: 10, distance: { value: 100, unit: 'km' }, days: 14 },
  staleAfter: { days: 30 },
  severity: 'normal',
} as const

const firstOf = <Kind extends library.AnyDocument['kind']>(documents: readonly Parsed[], kind: Kind) =>
  documents.map(({ document }) => document).find((document) => document.kind === kind) as
    | Extract<library.AnyDocument, { kind: Kind }>
    | undefined

const sheetAndLog = (documents: readonly Parsed[]) => {
  const sheet = firstOf(documents, 'spec-sheet')
  const log = firstOf(documents, 'machine-log')
  return sheet === undefined || log === undefined ? undefined : { sheet, log }
}

function documentSet(documents: readonly Parsed[]): library.DocumentSet {
  const ofKind = (kind: library.AnyDocument['kind']) =>
    documents.filter(({ document }) => document.kind === kind)
  return {
    sheets: ofKind('spec-sheet'),
    logs: ofKind('machine-log'),
    toolboxes: ofKind('toolbox'),
    stocks: ofKind('stock'),
    procedures: ofKind('procedure'),
    records: ofKind('service-record'),
  } as unknown as library.DocumentSet
}

export const patchFiles = (files: unknown, patch: Patch): unknown => applyPatch(files, patch)

export const readText = (text: string, name: string) => library.parseDocumentText('any', text, { name })

export const readValue = (value: unknown, name: string) => library.parseDocument('any', value, { name })

export const checkSet = (documents: readonly Parsed[], today: string | undefined) =>
  library.checkDocuments(documentSet(documents), today === undefined ? {} : { today })

/** By the name of the record's file. */
export function checkRecords(documents: readonly Parsed[], today: string): Record<string, unknown> {
  const set = documentSet(documents)
  return Object.fromEntries(
    set.records.map((record) => [record.name, library.checkRecord(record, set, { today })]),
  )
}

export function listDue(documents: readonly Parsed[], today: string): unknown {
  const sheetWithLog = sheetAndLog(documents)
  return sheetWithLog && library.listDue({ ...sheetWithLog, today }, DUE)
}

export function planVisit(
  documents: readonly Parsed[],
  { services, today, edition, tolerancePercent }: PlanChoices,
) {
  const sheetWithLog = sheetAndLog(documents)
  if (sheetWithLog === undefined) throw new Error('no plan without sheet and log')
  const toolbox = firstOf(documents, 'toolbox')
  const stock = firstOf(documents, 'stock')
  return library.planVisit(
    {
      ...sheetWithLog,
      ...(toolbox === undefined ? {} : { toolbox }),
      ...(stock === undefined ? {} : { stock }),
      today,
      ambient: { value: 6, unit: 'degC' },
    },
    {
      services: services === 'due' ? 'due' : Object.keys(sheetWithLog.sheet.services),
      due: DUE,
      iso6789: edition,
      ...(tolerancePercent === undefined ? {} : { tolerancePercent }),
    },
  )
}

export const kitContents = (plan: Json): unknown => library.kitContents(plan as unknown as library.VisitPlan)
