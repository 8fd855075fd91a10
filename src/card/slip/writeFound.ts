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
import type { ListItem, SlipContext } from './slipContext.js'

/** The findings on each gearcase, first those that need care; then the notes. */
export function writeFound(context: SlipContext): ListItem[] {
  const { slip, catalogue } = context
  const { labels } = catalogue.slip
  const items = slip.work.flatMap((work, index): ListItem[] => {
    const pointer = `/work/${index}`
    const findings = listFindings(context, work, pointer)
    const selectLines = (needsCare: boolean) =>
      findings.filter((finding) => finding.needsCare === needsCare).map(({ line }) => line)
    const [bad, good] = [joinLines(selectLines(true), '; '), joinLines(selectLines(false), '; ')]
    if (findings.length === 0) return []
    const label = capitalise(writePart(work.part, `${pointer}/part`))
    const mainLine = bad.length === 0 ? good : bad
    return [
      {
        line: joinLines([label, mainLine], ': '),
        notes: bad.length === 0 ? [] : dropEmptyLines([capitalise(good)]),
      },
    ]
  })
  const notes = slip.notes.map((note, itemIndex) =>
    addLabel(labels.note, quoteText(note, `/notes/${itemIndex}`)),
  )
  return [...items, ...notes.map((line) => ({ line, notes: [] }))]
}

/** Findings that are normal after a service. */
const NORMAL_FINDINGS: ReadonlySet<string> = new Set([
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
  const describeFinding = <Word extends string>(
    word: Word | undefined,
    names: Readonly<Record<Word, string>>,
    key: string,
    label: Line = [],
  ) => {
    if (word === undefined) return []
    return [
      {
        needsCare: !NORMAL_FINDINGS.has(word),
        line: joinLines([label, quoteText(names[word] ?? word, `${pointer}/${key}`)], ': '),
      },
    ]
  }
  const result = joinLines(
    [writeWords(words.labels.sample), [...quoteOptionalText(sample?.bottle, `${pointer}/sample/bottle`)]],
    ' ',
  )
  return [
    ...describeFinding(magnet, words.magnet, 'magnet'),
    ...filters.flatMap(({ part, found }, itemIndex) =>
      describeFinding(
        found,
        words.filter,
        `filters/${itemIndex}/found`,
        writePart(part, `${pointer}/filters/${itemIndex}/part`, false),
      ),
    ),
    ...describeFinding(oilFinding, words.oil, 'oilFinding'),
    ...describeFinding(leaks, words.leaks, 'leaks'),
    ...describeFinding(level, words.level, 'level'),
    ...(sample?.result === undefined
      ? []
      : [
          {
            needsCare: false,
            line: joinLines([result, quoteText(sample.result, `${pointer}/sample/result`)], ': '),
          },
        ]),
  ]
}
