import type { CueWords } from '../../message/index.js'
import type { CardContext } from '../cardContext.js'
import { writeDuration } from '../cardContext.js'
import type { CardList, CardScene, CardSection, Line } from '../cardParts.js'
import type { Cue, CueShot } from '../cueParts.js'
import { joinLines, joinSpans, makeListPart, writeWords } from '../spans.js'

const PIECES_TO_CAMERA: ReadonlySet<Cue['kind']> = new Set(['opening', 'interval', 'tools', 'variants'])

const writeMarks = ({ once, isCut }: CueShot, words: CueWords): string[] => [
  ...(once === undefined ? [] : [words.once[once]]),
  ...(isCut ? [words.cut] : []),
]

/** The scenes in the order of the film, then the shots in the order of filming. */
export function buildCueSections(context: CardContext, cues: readonly Cue[]): readonly CardSection[] {
  const { cues: words } = context.catalogue
  const { labels, headings } = words
  const scenes = cues.map((cue, index): CardScene => {
    const { title, shots, say, screen, hold, seconds } = cue
    return {
      number: index + 1,
      title,
      time: joinSpans(writeDuration(context, seconds, cue.from)),
      shots: shots.map((shot) => ({ text: shot.text, marks: writeMarks(shot, words) })),
      say: say.map(({ text, kind }) => ({ text, isCaution: kind === 'caution' })),
      screen,
      hold,
    }
  })
  const { show, say, screen, hold } = labels
  return [
    {
      id: 'scenes',
      heading: headings.scenes,
      parts: [{ kind: 'scenes', columns: { show, say, screen, hold }, scenes }],
    },
    { id: 'filming', heading: headings.filming, parts: listFilmingOrder(cues, words) },
  ]
}

/**
 * First the shots that can be filmed at any time while the machine is clean, then the work in its fixed order, then the
 * end. Shots that cannot be repeated are under their scene.
 */
function listFilmingOrder(cues: readonly Cue[], words: CueWords): readonly CardList[] {
  const { anyTime, inOrder, afterwards } = words.headings
  const groupOf = ({ kind }: Cue) =>
    PIECES_TO_CAMERA.has(kind) ? anyTime : kind === 'closing' ? afterwards : inOrder
  return [anyTime, inOrder, afterwards].flatMap((heading) => {
    const items = cues.flatMap((cue, index) => {
      if (groupOf(cue) !== heading) return []
      const line: Line = joinLines([writeWords(`${words.labels.scene} ${index + 1}`), cue.title], ': ')
      const notes = cue.shots
        .filter(({ once }) => once !== undefined)
        .map(({ text, once }) => writeWords(`${text} ${once === undefined ? '' : `(${words.once[once]})`}`))
      return [{ line, notes }]
    })
    return makeListPart(items, { heading, box: true })
  })
}
