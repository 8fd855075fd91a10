import type { SourceRef } from '../../spec/index.js'
import { completeSource } from './completeSource.js'
import { explainText } from './explainText.js'
import type { WrittenSource } from './piece.js'
import { placeBelow } from './placeBelow.js'
import type { Expander, Holder, Place, PlaceNode } from './placeTable.js'

/** The source of all texts in a section. Only an override has one in the full form too. */
export function readSection(
  holder: Holder,
  { row: { isOverride } }: PlaceNode,
  place: Place,
  { table, document, readText, findings, report }: Expander,
): Partial<SourceRef> | undefined {
  const { source: text } = holder
  const { source: notation } = table.notations
  const here = placeBelow(place, 'source')
  if (typeof text === 'number') {
    findings.push(report(here.path, 'spec/wrong-type', { expected: 'text', found: 'number' }))
    delete holder['source']
  }
  if (typeof text !== 'string' || notation === undefined) return place.section
  const source = readText(text, notation, here) as WrittenSource | null
  const whole = source === null ? null : completeSource(source, place.section, document)
  if (whole !== null && whole.ref === undefined)
    findings.push(explainText(notation, text, { at: 0, expected: ['known source'] }, here.path, report))
  if (isOverride) holder['source'] = whole
  else delete holder['source']
  return whole?.ref === undefined ? place.section : whole
}
