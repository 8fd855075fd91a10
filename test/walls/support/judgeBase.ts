import * as library from './baselineLibrary.js'
import type { BaselineSet } from './baselineSets.js'
import { findChanges, isObject, type Json, type JsonObject, toJson } from './jsonChanges.js'

/** The day of the examples. */
const TODAY = '2023-10-06'
const PLANNED = ['sheet.json', 'log.json', 'toolbox.json', 'stock.json'] as const

type Documents = Readonly<Record<string, Json>>

/** Today's results for every set of one base, by the set's name, in the order of the sets. */
export function judgeBase(
  texts: ReadonlyMap<string, string>,
  sets: readonly BaselineSet[],
): ReadonlyMap<string, JsonObject> {
  const base: Documents = Object.fromEntries([...texts].map(([file, text]) => [file, JSON.parse(text)]))
  const readings = new Map<Json, ReturnType<typeof library.readValue>>()
  for (const [file, text] of texts) readings.set(base[file] as Json, library.readText(text, file))
  const read = (document: Json, file: string) => {
    const known = readings.get(document) ?? library.readValue(document, file)
    readings.set(document, known)
    return known
  }
  const judgedSets = new Map<string, JsonObject>()
  let first:
    | { readonly plan: JsonObject; readonly day: string; readonly files: readonly string[] }
    | undefined
  for (const set of sets) {
    const documents = library.patchFiles(base, set.patch ?? []) as Documents
    const planned = planFiles(set, documents)
    const used = [...new Set([...set.files, ...planned])]
    const reports = Object.fromEntries(
      used.map((file) => [file, reportReading(documents[file] as Json, read(documents[file] as Json, file))]),
    )
    const parse = (file: string): library.Parsed[] => {
      const reading = read(documents[file] as Json, file)
      return reading.ok ? [{ name: file, document: reading.value }] : []
    }
    const day = set.today ?? TODAY
    const again =
      set.choices === undefined && first?.day === day && isAsFirst(first.files, planned, documents, base)
    const plan = again && first !== undefined ? first.plan : planAll(planned.flatMap(parse), day, set.choices)
    first ??= { plan, day, files: planned }
    const parsed = set.files.flatMap(parse)
    judgedSets.set(set.name, {
      read: reports,
      check: attempt(() => library.checkSet(parsed, set.today)),
      records: attempt(() => library.checkRecords(parsed, day)),
      ...plan,
    })
  }
  return judgedSets
}

/** The files that are planned: of each kind the file of the set, otherwise that of the base. */
function planFiles({ files }: BaselineSet, documents: Documents): readonly string[] {
  return PLANNED.flatMap((file) => {
    const start = file.slice(0, -'.json'.length)
    const own = files.find((name) => name.startsWith(start))
    return own ?? (Object.hasOwn(documents, file) ? file : [])
  })
}

const isAsFirst = (
  before: readonly string[],
  after: readonly string[],
  documents: Documents,
  base: Documents,
): boolean => before.join() === after.join() && after.every((file) => documents[file] === base[file])

/**
 * The verdict and findings of reading, and the differences of the value from the document (short notation is expanded).
 */
function reportReading(written: Json, reading: ReturnType<typeof library.readValue>): Json {
  const { ok, findings } = reading
  return toJson({ ok, findings, ...(ok ? { value: findChanges(written, toJson(reading.value)) } : {}) })
}

function planAll(
  documents: readonly library.Parsed[],
  today: string,
  choices: BaselineSet['choices'],
): JsonObject {
  const kinds = documents.map(({ document }) => document.kind)
  if (!kinds.includes('spec-sheet') || !kinds.includes('machine-log')) return {}
  const asked = { today, edition: '2017', ...choices } as const
  const plans: JsonObject = Object.fromEntries(
    (['due', 'all'] as const).map((services) => [
      services,
      attempt(() => library.planVisit(documents, { ...asked, services })),
    ]),
  )
  const kits = Object.entries(plans).flatMap(([name, plan]) => {
    const value = isObject(plan) ? plan['value'] : undefined
    return value === undefined ? [] : [[name, attempt(() => library.kitContents(value))] as const]
  })
  return { due: attempt(() => library.listDue(documents, today)), plans, kits: Object.fromEntries(kits) }
}

/** A call that throws is also a result: neither this nor the type of the error may change unnoticed. */
function attempt(call: () => unknown): Json {
  try {
    return toJson(call())
  } catch (error) {
    return { threw: error instanceof Error ? error.name : 'no error' }
  }
}
