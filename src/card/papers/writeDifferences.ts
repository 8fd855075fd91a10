import { cleanText } from '../../message/index.js'
import type { VariantDifference } from '../../service/index.js'
import { type TextContext, writePart } from '../cardContext.js'
import type { CardSection } from '../cardParts.js'
import { capitalise, makeCell, makeListPart, writeWords } from '../spans.js'
import { writeFigure, writeSecondaryFigures } from '../writeFigure.js'

/** The figures that differ between variants: one row per figure, one column per variant. */
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
    return [makeCell(name, writeWords(words.roles[role])), ...cells]
  })
  const names = differences[0]?.variants.map(({ name }) => name) ?? []
  const parts =
    rows.length === 0
      ? makeListPart([writeWords(papers.labels.same)])
      : [
          {
            kind: 'table' as const,
            caption: writeWords(heading),
            columns: [papers.columns.figure, ...names.map(cleanText)],
            rows,
          },
        ]
  return [{ id: 'differences', heading, parts }]
}
