import { applyPatch, type Fix } from '../base/index.js'
import type { ProcedureDocument, SpecSheet } from '../spec/index.js'
import { findTroubles } from './findTroubles.js'
import { REFERENCE_CODES } from './rankHarm.js'
import type { ProcedureContext } from './stepContext.js'

/** Corrects ids, figures and instances of steps where only one answer is possible. */
export function fillReferences(
  sheet: SpecSheet,
  context: ProcedureContext,
  procedure: ProcedureDocument,
): { readonly procedure: ProcedureDocument; readonly applied: readonly Fix[] } {
  const applied: Fix[] = []
  let current = procedure
  while (true) {
    // Two missing figures of one step have the same fix.
    const fixes = new Map<string, Fix>()
    for (const { finding } of findTroubles(sheet, context, current).troubles) {
      const [only, ...others] = finding.cures ?? []
      if (only !== undefined && others.length === 0 && REFERENCE_CODES.includes(finding.code))
        fixes.set(JSON.stringify(only), only)
    }
    if (fixes.size === 0) return { procedure: current, applied }
    applied.push(...fixes.values())
    current = applyPatch(current, [...fixes.values()]) as ProcedureDocument
  }
}
