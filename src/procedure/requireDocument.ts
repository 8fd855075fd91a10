import type { ProcedureDocument, SpecSheet } from '../spec/index.js'

/** Refuses what is no spec sheet: a programmer's slip, since documents are parsed before they come here. */
export function requireSheet(sheet: SpecSheet): void {
  const given: unknown = sheet
  if (!isKind(given, 'spec-sheet')) throw new TypeError("sheet: a document of kind 'spec-sheet' is wanted")
  for (const key of ['machine', 'gearcases', 'services'] as const)
    if (typeof given[key] !== 'object' || given[key] === null)
      throw new TypeError(`sheet.${key}: an object is wanted; parse the document first`)
}

/** Refuses what is no procedure. */
export function requireProcedure(procedure: ProcedureDocument, argument = 'procedure'): void {
  const given: unknown = procedure
  if (!isKind(given, 'procedure'))
    throw new TypeError(`${argument}: a document of kind 'procedure' is wanted`)
  const { steps, services, identity } = given
  if (!Array.isArray(steps) || steps.some((step) => typeof step !== 'object' || step === null))
    throw new TypeError(`${argument}.steps: a list of steps is wanted; parse the document first`)
  if (!Array.isArray(services)) throw new TypeError(`${argument}.services: a list of service ids is wanted`)
  if (typeof identity !== 'object' || identity === null)
    throw new TypeError(`${argument}.identity: an object is wanted`)
}

function isKind(given: unknown, kind: string): given is Readonly<Record<string, unknown>> {
  return typeof given === 'object' && given !== null && (given as { kind?: unknown }).kind === kind
}
