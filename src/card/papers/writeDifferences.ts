import { cleanText } from '../../message/index.js'
import type { VariantDifference } from '../../service/index.js'
import { type TextContext, writePart } from '../cardContext.js'
import type { CardSection } from '../cardParts.js'
import { capitalise, joinSpans, makeCell, makeListPart, writeWords } from '../spans.js'
import { writeFigure, writeSecondaryFigures } from '../writeFigure.js'

/**
 * The figures that differ between variants: one row per figure, one column per variant. Variants that have the same
 * figures share a column, so that only what differs is compared.
 */
export function writeDifferences(
  context: TextContext,
  differences: readonly VariantDifference[],
): readonly CardSection[] {
  const { card: words, papers } = context.catalogue
  const heading = papers.sections.differences
  const rows = differences.map(({ part, role, path, variants }, index) => {
    const pointer = `/differences/${index}`
    const name = capitalise(writePart(part, `${pointer}/part`))
    const cells = variants.map(({ resolved }, variantIndex) => {
      const lines = writeFigure(context, { path, resolved }, `${pointer}/variants/${variantIndex}`)
      return makeCell(lines.main, ...writeSecondaryFigures(context, lines), ...lines.notes)
    })
    return { head: makeCell(name, writeWords(words.roles[role])), cells }
  })
  const columns = new Map<string, { readonly place: number; readonly names: string[] }>()
  for (const [place, { name }] of (differences[0]?.variants ?? []).entries()) {
    const figures = JSON.stringify(rows.map(({ cells }) => cells[place]?.lines.map(joinSpans)))
    const column = columns.get(figures) ?? { place, names: [] }
    column.names.push(cleanText(name))
    columns.set(figures, column)
  }
  const shown = [...columns.values()]
  const parts =
    rows.length === 0
      ? makeListPart([writeWords(papers.labels.same)])
      : [
          {
            kind: 'table' as const,
            caption: writeWords(heading),
            columns: [papers.columns.figure, ...shown.map(({ names }) => names.join(' / '))],
            rows: rows.map(({ head, cells }) => [head, ...shown.flatMap(({ place }) => cells[place] ?? [])]),
          },
        ]
  return [{ id: 'differences', heading, parts }]
}
