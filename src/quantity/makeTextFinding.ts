import { type Finding, type FindingMaker, makeFinding, type Severity } from '../base/index.js'
import type { QuantityCodes } from './codes.js'

const makeQuantityFinding = makeFinding as FindingMaker<QuantityCodes>

/** Makes a finding about a text that is not a document. */
export function makeTextFinding<Code extends keyof QuantityCodes>(
  code: Code,
  params: QuantityCodes[Code],
  severity: Severity = 'error',
): Finding<Pick<QuantityCodes, Code>> {
  return makeQuantityFinding(code, severity, { kind: 'text' }, '', params)
}
