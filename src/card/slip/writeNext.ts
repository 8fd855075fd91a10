import type { JsonPointer } from '../../base/index.js'
import type { DueLine } from '../../interval/index.js'
import type { ServiceDue } from '../../service/index.js'
import { writePart, writeQuantity, writeReason, writeReasons } from '../cardContext.js'
import type { Line } from '../cardParts.js'
import { capitalise, joinLines, quoteOptionalText, quoteText, writeWords } from '../spans.js'
import type { Item, SlipContext } from './slipContext.js'

/** Every service once; the gearcases that have one for the same limits are on one line. */
export function writeNext(context: SlipContext): Item[] {
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
    const lead = joinLines([name, joinLines(parts, '; ')], ': ')
    const events = due.reasons.flatMap((reason, place): Line[] =>
      reason.code === 'interval/by-event'
        ? [writeReason(context, reason, `${pointer}/reasons/${place}`)]
        : [],
    )
    const missing =
      due.verdict === 'cannot tell' ? writeReasons(context, due.missing, `${pointer}/missing`) : []
    const notes = [...events, ...missing]
    return { line: joinLines([lead, writeLimits(context, due, pointer)], ' — '), notes }
  })
}

const isNow = (verdict: DueLine['verdict']) => verdict === 'overdue' || verdict === 'due'

/** `due soon, at 801.4 h or on 2024-11-20, whichever comes first`; of what is due now, the limits that were reached. */
function writeLimits(context: SlipContext, due: ServiceDue, pointer: JsonPointer): Line {
  const { words, catalogue } = context
  const { at, on, expected, first, wasDue } = catalogue.slip.labels
  const { verdict, dueBy, dueOn } = due
  const points = due.lines.flatMap(({ by, verdict: reached, duePoint }, place): Line[] => {
    if (by === 'event' || (isNow(verdict) && !isNow(reached))) return []
    const point = `${pointer}/lines/${place}/duePoint`
    if (duePoint?.meter !== undefined)
      return [[...writeWords(at), ...writeQuantity(context, duePoint.meter, `${point}/meter`)]]
    return duePoint?.date === undefined
      ? []
      : [[...writeWords(on), ...quoteText(duePoint.date, `${point}/date`)]]
  })
  const all = joinLines(points, ` ${words.labels.or} `)
  // Of what cannot be told, the limits say more than `not known`; the note says why.
  const isSilent = verdict === 'not due' || (verdict === 'cannot tell' && points.length > 0)
  const isAhead = verdict === 'not due' || verdict === 'due soon'
  const day = isAhead && dueBy !== 'period' ? quoteOptionalText(dueOn, `${pointer}/dueOn`) : []
  return joinLines(
    [
      isSilent ? [] : quoteText(words.dueStates[verdict] ?? verdict, `${pointer}/verdict`),
      isNow(verdict) && all.length > 0 ? [...writeWords(wasDue), ...all] : all,
      points.length > 1 && !isNow(verdict) ? writeWords(first) : [],
      day.length === 0 ? [] : [...writeWords(expected), ...day],
    ],
    ', ',
  )
}
