import type { JsonPointer } from '../../base/index.js'
import type { DueLine } from '../../interval/index.js'
import type { ServiceDue } from '../../service/index.js'
import { writePart, writeQuantity, writeReason, writeReasons } from '../cardContext.js'
import type { Line } from '../cardParts.js'
import { capitalise, joinLines, quoteOptionalText, quoteText, writeWords } from '../spans.js'
import type { ListItem, SlipContext } from './slipContext.js'

/** Each service once. Gearcases with the same limits share a line. */
export function writeNext(context: SlipContext): ListItem[] {
  const groups = new Map<
    string,
    { readonly due: ServiceDue; readonly pointer: JsonPointer; readonly parts: Line[] }
  >()
  for (const [index, due] of context.slip.due.entries()) {
    const pointer = `/due/${index}`
    const part = writePart(due.part, `${pointer}/part`)
    const { service, verdict, lines, dueOn, missing } = due
    const key = JSON.stringify([service, verdict, lines, dueOn, missing])
    const group = groups.get(key)
    if (group === undefined) groups.set(key, { due, pointer, parts: [part] })
    else group.parts.push(part)
  }
  return [...groups.values()].map(({ due, pointer, parts }) => {
    const name = capitalise(quoteText(due.serviceName, `${pointer}/serviceName`))
    const serviceLine = joinLines([name, joinLines(parts, '; ')], ': ')
    const events = due.reasons.flatMap((reason, itemIndex): Line[] =>
      reason.code === 'interval/by-event'
        ? [writeReason(context, reason, `${pointer}/reasons/${itemIndex}`)]
        : [],
    )
    const missing =
      due.verdict === 'cannot tell' ? writeReasons(context, due.missing, `${pointer}/missing`) : []
    const notes = [...events, ...missing]
    return { line: joinLines([serviceLine, writeLimits(context, due, pointer)], ' — '), notes }
  })
}

const isDueNow = (verdict: DueLine['verdict']) => verdict === 'overdue' || verdict === 'due'

/**
 * `due soon, at 801.4 h or on 2024-11-20, whichever comes first`. A due service shows only the limits that were
 * reached.
 */
function writeLimits(context: SlipContext, due: ServiceDue, pointer: JsonPointer): Line {
  const { words, catalogue } = context
  const { at, on, expected, first, wasDue } = catalogue.slip.labels
  const { verdict, dueBy, dueOn } = due
  const points = due.lines.flatMap(({ by, verdict: reached, duePoint }, itemIndex): Line[] => {
    if (by === 'event' || (isDueNow(verdict) && !isDueNow(reached))) return []
    const point = `${pointer}/lines/${itemIndex}/duePoint`
    if (duePoint?.meter !== undefined)
      return [[...writeWords(at), ...writeQuantity(context, duePoint.meter, `${point}/meter`)]]
    return duePoint?.date === undefined
      ? []
      : [[...writeWords(on), ...quoteText(duePoint.date, `${point}/date`)]]
  })
  const pointsLine = joinLines(points, ` ${words.labels.or} `)
  // If the verdict is `cannot tell`, the limits replace it and the note gives the reason.
  const isVerdictOmitted = verdict === 'not due' || (verdict === 'cannot tell' && points.length > 0)
  const isInFuture = verdict === 'not due' || verdict === 'due soon'
  const day = isInFuture && dueBy !== 'period' ? quoteOptionalText(dueOn, `${pointer}/dueOn`) : []
  return joinLines(
    [
      isVerdictOmitted ? [] : quoteText(words.dueStates[verdict] ?? verdict, `${pointer}/verdict`),
      isDueNow(verdict) && pointsLine.length > 0 ? [...writeWords(wasDue), ...pointsLine] : pointsLine,
      points.length > 1 && !isDueNow(verdict) ? writeWords(first) : [],
      day.length === 0 ? [] : [...writeWords(expected), ...day],
    ],
    ', ',
  )
}
