import type { CardSection, Line } from '../cardParts.js'
import { capitalise, joinLines, makeListPart, quoteOptionalText, writeWords } from '../spans.js'
import type { WallContext } from './wallContext.js'

/** A line from words with `**strong**` pieces. */
function writeStrong(text: string): Line {
  return text.split('**').flatMap((piece, index): Line => {
    if (piece === '') return []
    return index % 2 === 0 ? writeWords(piece) : [{ text: piece, tone: 'strong' }]
  })
}

/** The job in numbered lines; each phrase has its steps in the procedure. */
export function buildJobSection({ facts, wall }: WallContext): CardSection {
  const lines = facts.job.map(({ phrases, only = [] }, place) => {
    const line = joinLines(
      phrases.map(({ phrase }) => writeStrong(wall.job[phrase])),
      ' ',
    )
    const parts = joinLines(
      only.map(({ gearcase }, index) => quoteOptionalText(gearcase, `/job/${place}/only/${index}/gearcase`)),
      ', ',
    )
    return parts.length === 0 ? line : capitalise([...parts, ...writeWords(': '), ...line])
  })
  const [part] = makeListPart(lines)
  return {
    id: 'job',
    heading: wall.sections.job,
    parts: part === undefined ? [] : [{ ...part, numbered: true }],
  }
}
