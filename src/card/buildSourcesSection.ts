import { joinPointer } from '../base/index.js'
import type { PlannedMachine, VisitPlan } from '../service/index.js'
import type { TextContext } from './cardContext.js'
import type { CardSection, Line } from './cardParts.js'
import { addLabel, joinLines, makeListPart, quoteOptionalText, quoteText, writeWords } from './spans.js'

interface SourcesContext extends TextContext {
  readonly plan: Pick<VisitPlan, 'figures' | 'sources'> & { readonly machine: Pick<PlannedMachine, 'sheet'> }
}

/** The pages of one source that contain figures of this visit. */
function writePages({ plan, words }: SourcesContext, source: string): Line {
  const pages = new Map<string, Line>()
  let confidenceLine: Line = []
  for (const [index, { resolved }] of plan.figures.entries()) {
    const sourceRef = resolved.kind === 'cannot tell' ? undefined : resolved.trace.source
    if (sourceRef?.ref !== source) continue
    const pointer = `/figures/${index}/resolved/trace/source`
    if (sourceRef.page !== undefined && !pages.has(sourceRef.page))
      pages.set(sourceRef.page, quoteText(sourceRef.page, `${pointer}/page`))
    if (sourceRef.confidence !== 'read')
      confidenceLine = quoteText(words.confidences[sourceRef.confidence], `${pointer}/confidence`, 'gap')
  }
  const sortedPages = [...pages].sort(
    ([one], [other]) => Number(one) - Number(other) || (one < other ? -1 : 1),
  )
  const lines = sortedPages.map(([, line]) => line)
  const pageLine =
    lines.length === 0 ? [] : [...writeWords(`${words.labels.page} `), ...joinLines(lines, ', ')]
  return joinLines([pageLine, confidenceLine], ', ')
}

/** The sources of the figures, with editions and pages; then the sheet. */
export function buildSourcesSection(context: SourcesContext): CardSection {
  const { plan, words } = context
  const { labels } = words
  const { id, revision } = plan.machine.sheet
  const lines = Object.entries(plan.sources).map(([name, { title, document, edition, date }]) => {
    const pointer = `/sources${joinPointer([name])}`
    const editionLabel = edition === undefined ? [] : writeWords(`${labels.edition} `)
    return joinLines(
      [
        quoteText(title, `${pointer}/title`),
        quoteText(words.documents[document], `${pointer}/document`),
        [...editionLabel, ...quoteOptionalText(edition, `${pointer}/edition`)],
        quoteOptionalText(date, `${pointer}/date`),
        writePages(context, name),
      ],
      ', ',
    )
  })
  const sheet: Line = [
    ...addLabel(labels.sheet, quoteText(id, '/machine/sheet/id')),
    ...writeWords(`, ${labels.revision} `),
    ...quoteText(revision, '/machine/sheet/revision'),
  ]
  return { id: 'sources', heading: words.sections.sources, parts: makeListPart([...lines, sheet]) }
}
