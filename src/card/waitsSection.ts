import type { PlannedWait } from '../service/index.js'
import { type CardContext, durationLine, partLine, reasonLine, reasonLines } from './cardContext.js'
import type { CardCell, CardSection, CardTable } from './cardParts.js'
import { shownSeconds } from './shownSeconds.js'
import { addLabel, capitalise, cell, joinLines, listPart, ownWords, quoteText } from './spans.js'

/** What the first line already says. */
const ESTIMATE_REASONS: ReadonlySet<string> = new Set(['service/time-sum', 'service/time-open'])

function waitRow(context: CardContext, wait: PlannedWait, index: number): CardCell[] {
  const { waits, labels } = context.words
  const from = `/waits/${index}`
  const isKnown = wait.seconds !== undefined
  const notes = isKnown
    ? wait.reasons.flatMap((reason, place) =>
        reason.code === 'service/warm-the-bottle'
          ? [reasonLine(context, reason, `${from}/reasons/${place}`)]
          : [],
      )
    : reasonLines(context, wait.reasons, `${from}/reasons`)
  const time = durationLine(context, shownSeconds(wait), `${from}/seconds`, 'computed')
  const where = partLine(wait.part, `${from}/part`)
  return [
    cell(capitalise(joinLines([where, quoteText(waits[wait.kind], `${from}/kind`)], ': '))),
    cell(isKnown && wait.kind === 'pour' ? [...ownWords(`${labels.about} `), ...time] : time),
    cell(wait.kind === 'pour' ? ownWords(isKnown ? labels.fromPour : labels.untilDry) : [], ...notes),
  ]
}

/** The waiting times for the hose, the drain, the sealant and the oil level. */
export function waitsSection(context: CardContext): CardSection {
  const { plan, words } = context
  const { wait, time, of } = words.columns
  const { workingTime, houseEstimate, ownRecords } = words.labels
  if (plan.steps.length === 0) return { id: 'waits', heading: words.sections.waits, parts: [] }
  const rows = plan.waits.map((entry, index) => waitRow(context, entry, index))
  const caption = ownWords(words.captions.waits)
  const table: CardTable = { kind: 'table', caption, columns: [wait, time, of], rows }
  const minutes = durationLine(context, Math.round(plan.time.minutes) * 60, '/time/minutes', 'computed')
  const basis = plan.time.basis === 'own records' ? ownRecords : houseEstimate
  const working = [...addLabel(workingTime, minutes), ...ownWords(` (${basis})`)]
  const more = reasonLines(context, plan.time.reasons, '/time/reasons', ESTIMATE_REASONS)
  const list = listPart([working, ...more], { picture: 'pour' })
  return { id: 'waits', heading: words.sections.waits, parts: rows.length === 0 ? list : [table, ...list] }
}
