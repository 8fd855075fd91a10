import { refuse } from '../base/index.js'

/** Throws where a confidence is none. */
export function checkConfidence(confidence: number, name: string): void {
  if (typeof confidence !== 'number' || !(confidence > 0 && confidence < 1))
    throw refuse(name, confidence, 'a number above 0 and below 1', 'number')
}
