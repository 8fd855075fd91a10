import { type Finding, type FindingMaker, makeFinding, type Severity } from '../base/index.js'
import type { QuantityCodes } from './codes.js'

const quantityFinding = makeFinding as FindingMaker<QuantityCodes>

/** A finding about a text that is not a document. */
export function textFinding<Code extends keyof QuantityCodes>(
  code: Code,
  params: QuantityCodes[Code],
  severity: Severity = 'error',
): Finding<Pick<QuantityCodes, Code>> {
  return quantityFinding(code, severity, { kind: 'text' }, '', params)
}
