import type { Id, Source, SpecSheet } from '../spec/index.js'
import type { CollectedFigures } from './collectFigures.js'

/** The sources that the figures of a visit were read in, in the order of the sheet. */
export function collectSources(sheet: SpecSheet, figures: CollectedFigures): Readonly<Record<Id, Source>> {
  const used = new Set(
    figures.figures.flatMap(({ resolved }) => {
      const traces =
        resolved.kind === 'cannot tell' ? resolved.candidates.map(({ trace }) => trace) : [resolved.trace]
      return traces.flatMap(({ source }) => (source === undefined ? [] : [source.ref]))
    }),
  )
  return Object.fromEntries(Object.entries(sheet.sources).filter(([id]) => used.has(id)))
}
