import type { FindingOf, Params, Severity } from '../base/index.js'
import type { QuantityCodes } from './codes.js'

/** A finding about a text that is not a document. */
export function textFinding<Code extends keyof QuantityCodes>(
  code: Code,
  params: QuantityCodes[Code] & Params,
  severity: Severity = 'error',
): FindingOf {
  return { code, severity, document: { kind: 'text' }, path: '', params }
}
