import { readdirSync, readFileSync } from 'node:fs'
import type { Patch, PlanChoices } from './baselineLibrary.js'
import type { Change, Json } from './jsonChanges.js'

export const FOLDER = 'test/fixtures/valid-0.1'

/** A set of documents that was valid under 0.1: files of one base, changed by a patch over `{ [file]: document }`. */
export interface BaselineSet {
  /** The name of the base, followed by the change; for the first set, only the name. */
  readonly name: string
  /** The documents for `checkDocuments`; a plan also uses the sheet, log, toolbox and stock of the base. */
  readonly files: readonly string[]
  /** Absent: the documents are checked without a day, and planned for the day of the examples. */
  readonly today?: string
  readonly patch?: Patch
  /** Absent: the 2017 edition, and no tolerance for nominal torques without one. */
  readonly choices?: Pick<PlanChoices, 'edition' | 'tolerancePercent'>
}

/** The complete results of the first set; those of the others as changes to them. */
export interface Frozen {
  readonly first: Json
  readonly others: Readonly<Record<string, readonly Change[]>>
}

const readJson = <T>(file: string): T => JSON.parse(readFileSync(`${FOLDER}/${file}`, 'utf8'))

export const baseNames = (): readonly string[] => readdirSync(`${FOLDER}/documents`).sort()

/** The texts of a base's documents, by file. */
export const readBase = (base: string): ReadonlyMap<string, string> =>
  new Map(
    readdirSync(`${FOLDER}/documents/${base}`)
      .sort()
      .map((file) => [file, readFileSync(`${FOLDER}/documents/${base}/${file}`, 'utf8')]),
  )

/** The sets of one base, the unchanged one first. */
export const readSets = (base: string): readonly BaselineSet[] => readJson(`sets/${base}.json`)

export const readFrozen = (base: string): Frozen => readJson(`frozen/${base}.json`)
