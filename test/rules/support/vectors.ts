import { readdirSync, readFileSync } from 'node:fs'
import type { Finding, Severity } from '../../../src/finding.js'
import { checkDocuments } from '../../../src/rules/index.js'
import { applyPatch, type PatchOperation } from '../../../src/spec/applyPatch.js'
import { type ReadDocument, readFolder, setOf } from './goodSets.js'

/** One bad set: a patch on one document of a good one, and the findings that it must give, those and no others. */
export interface Vector {
  readonly code: string
  readonly why: string
  readonly base: string
  readonly document: { readonly kind: string; readonly id: string }
  readonly today?: string
  readonly patch: readonly PatchOperation[]
  readonly expect: readonly ExpectedFinding[]
}

export interface ExpectedFinding {
  readonly code: string
  readonly severity: Severity
  readonly path: string
  /** Where the finding stands in another document than the patched one. */
  readonly document?: { readonly kind: string; readonly id: string }
  /** Why a rule other than the vector's own must speak. */
  readonly why?: string
}

const FOLDER = 'schemas/v1/vectors'

export interface NamedVector {
  readonly file: string
  readonly vector: Vector
}

export function readVectors(): readonly NamedVector[] {
  return readdirSync(FOLDER, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.json'))
    .sort()
    .map((file) => ({ file, vector: JSON.parse(readFileSync(`${FOLDER}/${file}`, 'utf8')) }))
}

/** The patched set of a vector. */
export function patchedDocuments(vector: Vector): readonly ReadDocument[] {
  return readFolder(vector.base).map((named) =>
    named.document.kind === vector.document.kind && named.document.id === vector.document.id
      ? { ...named, document: applyPatch(named.document, vector.patch) as ReadDocument['document'] }
      : named,
  )
}

export function runVector(vector: Vector): readonly Finding[] {
  const { today } = vector
  return checkDocuments(setOf(patchedDocuments(vector)), today === undefined ? {} : { today })
}

/** What a vector's `expect` compares of a finding. */
export function summarise(finding: Finding, vector: Vector): ExpectedFinding {
  const { code, severity, path, document } = finding
  const elsewhere = document.kind !== vector.document.kind
  return {
    code,
    severity,
    path,
    ...(elsewhere ? { document: { kind: document.kind, id: document.id ?? '' } } : {}),
  }
}
