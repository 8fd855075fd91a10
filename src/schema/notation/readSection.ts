import type { SourceRef } from '../../spec/index.js'
import { completeSource } from './completeSource.js'
import { explainText } from './explainText.js'
import { makeChildPlace } from './makeChildPlace.js'
import type { WrittenSource } from './piece.js'
import type { Expander, Holder, Place, PlaceNode } from './placeTable.js'

/** Reads the source of all texts in a section. Only an override also has one in the full form. */
export function readSection(
  holder: Holder,
  { row: { isOverride } }: PlaceNode,
  place: Place,
  { table, document, readText, findings, report }: Expander,
): Partial<SourceRef> | undefined {
  const { source: text } = holder
  const { source: notation } = table.notations
  const sourcePlace = makeChildPlace(place, 'source')
  if (typeof text === 'number') {
    findings.push(report(sourcePlace.path, 'spec/wrong-type', { expected: 'text', found: 'number' }))
    delete holder['source']
  }
  if (typeof text !== 'string' || notation === undefined) return place.section
  const source = readText(text, notation, sourcePlace) as WrittenSource | null
  const fullSource = source === null ? null : completeSource(source, place.section, document)
  if (fullSource !== null && fullSource.ref === undefined)
    findings.push(
      explainText(notation, text, { at: 0, expected: ['known source'] }, sourcePlace.path, report),
    )
  if (isOverride) holder['source'] = fullSource
  else delete holder['source']
  return fullSource?.ref === undefined ? place.section : fullSource
}
