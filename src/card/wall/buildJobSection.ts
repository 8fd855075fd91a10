import type { JsonPointer } from '../../base/index.js'
import type { WallJobLine } from '../../service/index.js'
import type { CardSection, Line } from '../cardParts.js'
import { capitalise, joinLines, joinSpans, makeListPart, quoteOptionalText, writeWords } from '../spans.js'
import { type WallContext, writeMark } from './wallContext.js'

type Phrase = WallJobLine['phrases'][number]

/** A line from words with `**strong**` pieces. */
function writeStrong(text: string): Line {
  return text.split('**').flatMap((piece, index): Line => {
    if (piece === '') return []
    return index % 2 === 0 ? writeWords(piece) : [{ text: piece, tone: 'strong' }]
  })
}

/** The job in numbered lines; each phrase has its steps in the procedure. */
export function buildJobSection(context: WallContext): CardSection {
  const lines = context.facts.job.map(({ phrases }, place) => {
    const written = phrases.map((phrase, index) => ({
      names: writeNames(context, phrase, `/job/${place}/phrases/${index}/only`),
      text: writeStrong(context.wall.job[phrase.phrase]),
    }))
    return joinLines(
      written.map(({ names, text }, index) => {
        const isSame = joinSpans(written[index - 1]?.names ?? []) === joinSpans(names)
        // In front, names seem to be for all that follows on the line.
        const isLast = written.slice(index).every(({ names: later }) => later.length > 0)
        if (!isLast || phrases[index]?.only?.some(({ part }) => part !== undefined))
          return appendNames(text, names)
        return isSame ? text : capitalise([...names, ...writeWords(': '), ...text])
      }),
      ' ',
    )
  })
  const [part] = makeListPart(lines)
  return {
    id: 'job',
    heading: context.wall.sections.job,
    parts: part === undefined ? [] : [{ ...part, numbered: true }],
  }
}

/** `Drain plug out (D2).` */
function appendNames(text: Line, names: Line): Line {
  const last = text.at(-1)
  if (names.length === 0 || last === undefined) return text
  const end = { ...last, text: last.text.replace(/\.$/, '') }
  return [...text.slice(0, -1), end, ...writeWords(' ('), ...names, ...writeWords(').')]
}

/** The marks of openings and covers, or the names of gearcases. */
function writeNames(context: WallContext, { only = [] }: Phrase, pointer: JsonPointer): Line {
  return joinLines(
    only.map(({ path, part, gearcase }, index) =>
      part === undefined
        ? quoteOptionalText(gearcase, `${pointer}/${index}/gearcase`)
        : writeMark(context, path),
    ),
    ', ',
  )
}
