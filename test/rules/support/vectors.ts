import { readdirSync, readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { applyPatch, type PatchOperation } from '../../../src/base/applyPatch.js'
import type { Finding, Params, Severity } from '../../../src/base/finding.js'
import { parseDocument } from '../../../src/schema/parseDocument.js'
import { checkDocuments } from '../../../src/v1/rules.js'
import { type ReadDocument, readFolder, setOf } from './goodSets.js'

/**
 * One bad set: a JSON Patch on a good one (one object with the names of its files as keys), and the exact findings that
 * it must give, in this order.
 */
export interface Vector {
  readonly code: string
  readonly why: string
  /** The folder of the good set, beside the folders of the rules. */
  readonly base: string
  /** The files of the base that are in the set. */
  readonly files: readonly string[]
  readonly today?: string
  readonly patch: readonly PatchOperation[]
  readonly expect: readonly ExpectedFinding[]
  /**
   * `schema`: the documents are refused by their parser, or by a JSON Schema, and `expect` is what the parser finds.
   */
  readonly refusedBy?: 'schema'
  /** The same set with one place changed. */
  readonly also: readonly Variation[]
}

export interface Variation {
  /**
   * `good`: nothing is found; `boundary`: at a limit of the rule, or a case that a simpler rule would judge
   * differently.
   */
  readonly case: 'good' | 'boundary'
  readonly why?: string
  /** One operation, after those of `patch`. */
  readonly change: PatchOperation
  readonly expect: readonly ExpectedFinding[]
}

export interface ExpectedFinding {
  readonly code: string
  readonly severity: Severity
  readonly file: string
  readonly path: string
  readonly params: Params
  /** Why another rule than that of the vector must report a finding. */
  readonly why?: string
}

const FOLDER = 'schemas/v1/vectors'

export interface NamedVector {
  readonly file: string
  readonly vector: Vector
}

export function readVectors(): readonly NamedVector[] {
  return (
    readdirSync(FOLDER, { recursive: true, encoding: 'utf8' })
      // A file directly in the folder has texts in short notation.
      .filter((file) => /[\\/].*\.json$/.test(file) && !file.startsWith('bases'))
      .sort()
      .map((file) => ({ file, vector: JSON.parse(readFileSync(`${FOLDER}/${file}`, 'utf8')) }))
  )
}

/** The documents of a vector's base, by file. */
export function baseFiles({
  base,
  files,
}: Pick<Vector, 'base' | 'files'>): Readonly<Record<string, ReadDocument['document']>> {
  const named = readFolder(`${FOLDER}/${base}`).map(
    ({ name, document }) => [basename(name), document] as const,
  )
  return Object.fromEntries(named.filter(([file]) => files.includes(file)))
}

/** The patched set of a vector, each document named after its file. */
export function patchedDocuments(vector: Vector): readonly ReadDocument[] {
  const patched = applyPatch(baseFiles(vector), vector.patch) as ReturnType<typeof baseFiles>
  return Object.entries(patched).map(([name, document]) => ({ name, document }))
}

export function runVector(vector: Vector): readonly Finding[] {
  const documents = patchedDocuments(vector)
  if (vector.refusedBy === 'schema')
    return documents.flatMap(({ name, document }) => parseDocument('any', document, { name }).findings)
  const { today } = vector
  return checkDocuments(setOf(documents), today === undefined ? {} : { today })
}

/** A variation as a separate vector. */
export function varyVector(vector: Vector, { change, expect }: Variation): Vector {
  return { ...vector, patch: [...vector.patch, change], expect }
}

/** The parts of a finding that a vector's `expect` compares. */
export function summarise({ code, severity, path, document, params }: Finding): ExpectedFinding {
  return { code, severity, file: document.name ?? '', path, params }
}
