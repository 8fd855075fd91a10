import { readdirSync, readFileSync } from 'node:fs'
import type { Patch, PlanChoices } from './baselineLibrary.js'
import type { Change, Json } from './jsonChanges.js'

export const FOLDER = 'test/fixtures/valid-0.1'

/** A set of documents that was valid under 0.1: files of one base, changed by a patch over `{ [file]: document }`. */
export interface BaselineSet {
  /** The base's name, alone for its first set, else followed by what is changed. */
  readonly name: string
  /** What `checkDocuments` is given; a plan also takes the base's sheet, log, toolbox and stock. */
  readonly files: readonly string[]
  /** Absent: the documents are checked without a day, and planned for the scenario's. */
  readonly today?: string
  readonly patch?: Patch
  /** Absent: the 2017 edition, and no tolerance for bare torques. */
  readonly choices?: Pick<PlanChoices, 'edition' | 'tolerancePercent'>
}

/** The results of the first set whole, those of the others as changes of them. */
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

/** The sets of one base, its own first. */
export const readSets = (base: string): readonly BaselineSet[] => readJson(`sets/${base}.json`)

export const readFrozen = (base: string): Frozen => readJson(`frozen/${base}.json`)
