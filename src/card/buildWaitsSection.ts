import type { PlannedWait } from '../service/index.js'
import { type CardContext, writeDuration, writePart, writeReason, writeReasons } from './cardContext.js'
import type { CardList, CardSection } from './cardParts.js'
import { roundWaitSeconds } from './roundWaitSeconds.js'
import { addLabel, capitalise, joinLines, makeListPart, quoteText, writeWords } from './spans.js'

/** Reasons that only repeat the first line, or the lines of the work. */
const CODES_SHOWN_ELSEWHERE: ReadonlySet<string> = new Set([
  'service/time-sum',
  'service/waiting-time-not-known',
  'service/drain-until-drips',
])

function buildWaitItem(context: CardContext, wait: PlannedWait, index: number): CardList['items'][number] {
  const { waits, labels } = context.words
  const pointer = `/waits/${index}`
  const isKnown = wait.seconds !== undefined
  const notes = isKnown
    ? wait.reasons.flatMap((reason, reasonIndex) =>
        reason.code === 'service/warm-the-bottle'
          ? [writeReason(context, reason, `${pointer}/reasons/${reasonIndex}`)]
          : [],
      )
    : writeReasons(context, wait.reasons, `${pointer}/reasons`, CODES_SHOWN_ELSEWHERE)
  const duration = writeDuration(context, roundWaitSeconds(wait), `${pointer}/seconds`, 'computed')
  const part = writePart(wait.part, `${pointer}/part`)
  const name = capitalise(joinLines([part, quoteText(waits[wait.kind], `${pointer}/kind`)], ': '))
  const time =
    wait.kind !== 'pour'
      ? duration
      : isKnown
        ? [...writeWords(`${labels.about} `), ...duration, ...writeWords(` ${labels.fromPour}`)]
        : writeWords(labels.untilDry)
  return { line: joinLines([name, time], ', '), notes }
}

/** Waiting times for the hose, the drain, the sealant and the oil level. */
export function buildWaitsSection(context: CardContext): CardSection {
  const { plan, words } = context
  const { workingTime, houseEstimate, ownRecords } = words.labels
  if (plan.steps.length === 0) return { id: 'waits', heading: words.sections.waits, parts: [] }
  const items = plan.waits.map((entry, index) => buildWaitItem(context, entry, index))
  const workingMinutes = writeDuration(
    context,
    Math.round(plan.time.minutes) * 60,
    '/time/minutes',
    'computed',
  )
  const basis = plan.time.basis === 'own records' ? ownRecords : houseEstimate
  const timeLine = [...addLabel(workingTime, workingMinutes), ...writeWords(` (${basis})`)]
  const otherReasons = writeReasons(context, plan.time.reasons, '/time/reasons', CODES_SHOWN_ELSEWHERE)
  const parts = makeListPart([...items, timeLine, ...otherReasons], { picture: 'pour' })
  return { id: 'waits', heading: words.sections.waits, parts }
}
