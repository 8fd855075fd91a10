import type { PlannedWait } from '../service/index.js'
import { type CardContext, durationLine, partLine, reasonLines } from './cardContext.js'
import type { CardCell, CardSection, Line } from './cardParts.js'
import { capitalised, joined, ownWords, quoted } from './spans.js'

const cell = (...lines: Line[]): CardCell => ({ lines: lines.filter((line) => line.length > 0) })

function waitRow(context: CardContext, wait: PlannedWait, index: number): CardCell[] {
  const { words } = context
  const from = `/waits/${index}`
  const why = wait.seconds === undefined ? reasonLines(context, wait.reasons, `${from}/reasons`) : []
  const time =
    wait.seconds === undefined ? [] : durationLine(context, wait.seconds, `${from}/seconds`, 'computed')
  const parts = (wait.parts ?? []).map(({ name, seconds }, place) => [
    ...quoted(
      Object.hasOwn(words.waitParts, name) ? (words.waitParts[name] ?? name) : name,
      `${from}/parts/${place}/name`,
    ),
    ...ownWords(' '),
    ...durationLine(context, Math.round(seconds), `${from}/parts/${place}/seconds`),
  ])
  const where = partLine(wait.part, `${from}/part`, 'with gearcase')
  return [
    cell(capitalised(joined([where, quoted(words.waits[wait.kind], `${from}/kind`)], ': '))),
    cell(time),
    cell(joined(parts, ', '), ...why),
  ]
}

/** How long the hose, the drain, the sealant and the oil level need. */
export function waitsSection(context: CardContext): CardSection {
  const { plan, words } = context
  const { wait, time, of } = words.columns
  if (plan.steps.length === 0) return { id: 'waits', heading: words.sections.waits, parts: [] }
  const rows = plan.waits.map((entry, index) => waitRow(context, entry, index))
  const table = {
    kind: 'table' as const,
    caption: ownWords(words.captions.waits),
    columns: [wait, time, of],
    rows,
  }
  const working = [
    ...ownWords(`${words.labels.workingTime}: `),
    ...durationLine(context, Math.round(plan.time.minutes) * 60, '/time/minutes', 'computed'),
    ...ownWords(` (${words.labels.houseEstimate})`),
  ]
  const list = {
    kind: 'list' as const,
    box: false,
    items: [{ line: working, notes: [] }],
    picture: 'pour' as const,
  }
  return { id: 'waits', heading: words.sections.waits, parts: rows.length === 0 ? [list] : [table, list] }
}
