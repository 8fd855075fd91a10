import type { JsonPointer } from '../../base/index.js'
import type { SlipWork } from '../../service/index.js'
import { writePart } from '../cardContext.js'
import type { Line } from '../cardParts.js'
import {
  addLabel,
  capitalise,
  dropEmptyLines,
  joinLines,
  quoteOptionalText,
  quoteText,
  writeWords,
} from '../spans.js'
import type { Item, SlipContext } from './slipContext.js'

/** What needs care first, the rest below it; then the notes. */
export function writeFound(context: SlipContext): Item[] {
  const { slip, catalogue } = context
  const { labels } = catalogue.slip
  const items = slip.work.flatMap((work, index): Item[] => {
    const pointer = `/work/${index}`
    const findings = listFindings(context, work, pointer)
    const linesOf = (isBad: boolean) => findings.filter((one) => one.isBad === isBad).map(({ line }) => line)
    const [bad, good] = [joinLines(linesOf(true), '; '), joinLines(linesOf(false), '; ')]
    if (findings.length === 0) return []
    const name = capitalise(writePart(work.part, `${pointer}/part`))
    const lead = bad.length === 0 ? good : bad
    return [
      {
        line: joinLines([name, lead], ': '),
        notes: bad.length === 0 ? [] : dropEmptyLines([capitalise(good)]),
      },
    ]
  })
  const notes = slip.notes.map((note, place) => addLabel(labels.note, quoteText(note, `/notes/${place}`)))
  return [...items, ...notes.map((line) => ({ line, notes: [] }))]
}

/** Findings that are normal after a service. */
const GOOD: ReadonlySet<string> = new Set([
  'clear',
  'dark',
  'not judged',
  'no magnet',
  'clean',
  'fine paste',
  'dry',
  'at the mark',
])

function listFindings(context: SlipContext, work: SlipWork, pointer: JsonPointer) {
  const { slip: words } = context.catalogue
  const { oilFinding, magnet, filters, leaks, level, sample } = work
  const find = <Word extends string>(
    word: Word | undefined,
    names: Readonly<Record<Word, string>>,
    at: string,
    name: Line = [],
  ) => {
    if (word === undefined) return []
    return [
      {
        isBad: !GOOD.has(word),
        line: joinLines([name, quoteText(names[word] ?? word, `${pointer}/${at}`)], ': '),
      },
    ]
  }
  const result = joinLines(
    [writeWords(words.labels.sample), [...quoteOptionalText(sample?.bottle, `${pointer}/sample/bottle`)]],
    ' ',
  )
  return [
    ...find(magnet, words.magnet, 'magnet'),
    ...filters.flatMap(({ part, found }, place) =>
      find(
        found,
        words.filter,
        `filters/${place}/found`,
        writePart(part, `${pointer}/filters/${place}/part`, false),
      ),
    ),
    ...find(oilFinding, words.oil, 'oilFinding'),
    ...find(leaks, words.leaks, 'leaks'),
    ...find(level, words.level, 'level'),
    ...(sample?.result === undefined
      ? []
      : [
          {
            isBad: false,
            line: joinLines([result, quoteText(sample.result, `${pointer}/sample/result`)], ': '),
          },
        ]),
  ]
}
