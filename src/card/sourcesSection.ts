import type { CardContext } from './cardContext.js'
import type { CardList, CardSection, Line } from './cardParts.js'
import { joined, ownWords, quoted } from './spans.js'

/** The pages that the figures of this visit were read on, for one source: each page once, with the figure that named it. */
function pagesOf({ plan, words }: CardContext, source: string): Line {
  const pages = new Map<string, Line>()
  let doubtful: Line = []
  for (const [index, { resolved }] of plan.figures.entries()) {
    if (resolved.kind === 'cannot tell') continue
    const ref = resolved.trace.source
    if (ref?.ref !== source) continue
    const from = `/figures/${index}/resolved/trace/source`
    if (ref.page !== undefined && !pages.has(ref.page)) pages.set(ref.page, quoted(ref.page, `${from}/page`))
    if (ref.confidence !== 'read')
      doubtful = quoted(words.confidences[ref.confidence], `${from}/confidence`, 'gap')
  }
  const sorted = [...pages].sort(([one], [other]) => Number(one) - Number(other) || (one < other ? -1 : 1))
  const list = joined(
    sorted.map(([, line]) => line),
    ', ',
  )
  return joined([list.length === 0 ? [] : [...ownWords(`${words.labels.page} `), ...list], doubtful], ', ')
}

/** Where the figures come from, with editions and pages, and which sheet holds them. */
export function sourcesSection(context: CardContext): CardSection {
  const { plan, words } = context
  const { labels } = words
  const items = Object.entries(plan.sources).map(([id, source]) => {
    const from = `/sources/${id.replace(/~/g, '~0').replace(/\//g, '~1')}`
    const edition =
      source.edition === undefined
        ? []
        : [...ownWords(`${labels.edition} `), ...quoted(source.edition, `${from}/edition`)]
    const date = source.date === undefined ? [] : quoted(source.date, `${from}/date`)
    const title = quoted(source.title, `${from}/title`)
    const kind = quoted(words.documents[source.document], `${from}/document`)
    return { line: joined([title, kind, edition, date, pagesOf(context, id)], ', '), notes: [] }
  })
  const sheet: Line = [
    ...ownWords(`${labels.sheet}: `),
    ...quoted(plan.machine.sheet.id, '/machine/sheet/id'),
    ...ownWords(`, ${labels.revision} `),
    ...quoted(plan.machine.sheet.revision, '/machine/sheet/revision'),
  ]
  const parts: CardList[] = [{ kind: 'list', box: false, items: [...items, { line: sheet, notes: [] }] }]
  return { id: 'sources', heading: words.sections.sources, parts }
}
