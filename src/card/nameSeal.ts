import type { Catalogue } from '../message/index.js'
import type { Seal } from '../spec/index.js'
import { joinSpans } from './spans.js'
import { writeListedSeal } from './writeFigure.js'

/** A seal as in a parts list, in one language: number, kind, and product or size. */
export function nameSeal(seal: Seal, catalogue: Catalogue): string {
  const line = writeListedSeal({ catalogue, words: catalogue.card, form: 'written' }, seal, '')
  return joinSpans(line).replaceAll('\u00a0', ' ')
}
