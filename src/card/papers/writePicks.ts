import type { JsonPointer } from '../../base/index.js'
import { type Kit, pickList } from '../../service/index.js'
import { type TextContext, writeQuantity } from '../cardContext.js'
import type { CardList, CardSection, Line } from '../cardParts.js'
import { capitalise, joinLines, makeListPart, quoteText, writeWords } from '../spans.js'
import { writeListedSeal } from '../writeFigure.js'

/** The pick list of a day: sums with boxes to tick, each with its share for every machine; then the tools. */
export function writePicks(context: TextContext, kits: readonly Kit[]): readonly CardSection[] {
  const { card: words, papers } = context.catalogue
  const { labels } = words
  const sums = pickList(kits)
  const box = true
  const writeCount = (count: number, from: JsonPointer): Line => [
    ...quoteText(String(count), from),
    ...writeWords('\u00a0× '),
  ]
  /** `Station 2: 950 mL; Station 5: 700 mL`, if there are several machines. */
  const writeShares = (writeShare: (kit: Kit, pointer: JsonPointer) => Line): readonly Line[] => {
    if (kits.length < 2) return []
    const shares = kits.flatMap((kit, index): Line[] => {
      const share = writeShare(kit, `/kits/${index}`)
      return share.length === 0
        ? []
        : [[...quoteText(kit.machine.name, `/kits/${index}/machine/name`), ...writeWords(': '), ...share]]
    })
    return [joinLines(shares, '; ')]
  }
  const shareOf = (list: 'seals' | 'filters', name: string) =>
    writeShares((kit, pointer) => {
      const counts = (list === 'seals' ? (['seals', 'spares'] as const) : [list]).map((part): Line => {
        const index = (kit[part] ?? []).findIndex((piece) => piece.name === name)
        const count = kit[part]?.[index]?.count
        return count === undefined ? [] : quoteText(String(count), `${pointer}/${part}/${index}/count`)
      })
      return joinLines(counts, ' + ')
    })
  const oil = sums.oil.map(({ oil: name, volume }, index) => ({
    line: [
      ...writeQuantity(context, volume, `/sums/oil/${index}/volume`),
      ...writeWords(' '),
      ...quoteText(name, `/sums/oil/${index}/oil`),
    ],
    notes: writeShares((kit, pointer) => {
      const own = kit.oil.findIndex((candidate) => candidate.oil === name)
      return writeQuantity(context, kit.oil[own]?.volume, `${pointer}/oil/${own}/volume`)
    }),
  }))
  const seals: CardList['items'] = sums.seals.map(({ seal, name, count }, index) => ({
    line: [
      ...writeCount(count, `/sums/seals/${index}/count`),
      ...writeListedSeal(context, seal, `/sums/seals/${index}/seal`),
    ],
    notes: shareOf('seals', name),
  }))
  const filters: CardList['items'] = sums.filters.map(({ part, kind, name, count }, index) => ({
    line: [
      ...writeCount(count, `/sums/filters/${index}/count`),
      ...quoteText(part, `/sums/filters/${index}/part`),
      ...writeWords(' '),
      ...quoteText(words.filters[kind], `/sums/filters/${index}/kind`),
    ],
    notes: shareOf('filters', name),
  }))
  const supplies = [
    ...(sums.sampleBottles === 0
      ? []
      : [[...writeCount(sums.sampleBottles, '/sums/sampleBottles'), ...writeWords(papers.labels.bottle)]]),
    ...sums.supplies.map((supply, index) => capitalise(quoteText(supply, `/sums/supplies/${index}`))),
    ...kits.flatMap((kit, index) =>
      (kit.toCount ?? []).map(
        (part, partIndex): Line => [
          ...writeWords(`${papers.labels.count}: `),
          ...quoteText(part, `/kits/${index}/toCount/${partIndex}`),
        ],
      ),
    ),
  ]
  const tools = sums.tools.map(({ name }, index) => capitalise(quoteText(name, `/sums/tools/${index}/name`)))
  const parts = [
    ...makeListPart(oil, { heading: labels.oil, box }),
    ...makeListPart(seals, { heading: labels.seals, box }),
    ...makeListPart(filters, { heading: labels.filters, box }),
    ...makeListPart(supplies, { heading: labels.consumables, box }),
  ]
  return [
    {
      id: 'picks',
      heading: papers.sections.picks,
      parts: parts.length === 0 ? makeListPart([writeWords(papers.labels.nothing)]) : parts,
    },
    { id: 'tools', heading: papers.sections.tools, parts: makeListPart(tools, { box }) },
  ]
}
