import type { JsonPointer } from '../base/index.js'
import type { DueLine } from '../interval/index.js'
import { showQuantity } from '../message/index.js'
import type { Quantity } from '../quantity/index.js'
import type { PlannedDue } from '../service/index.js'
import { type CardContext, writePart, writeQuantity, writeReasons } from './cardContext.js'
import type { CardCell, CardPart, CardSection, CardTable, Line } from './cardParts.js'
import {
  addLabel,
  capitalise,
  joinLines,
  joinSpans,
  makeCell,
  makeListPart,
  quoteOptionalText,
  quoteText,
  writeWords,
} from './spans.js'
import { writePeriod } from './writeInterval.js'

function writeTask({ words }: CardContext, due: PlannedDue, pointer: JsonPointer): Line {
  const name = due.serviceName === '' ? words.tasks[due.task] : due.serviceName
  return joinLines(
    [capitalise(writePart(due.part, `${pointer}/part`)), quoteText(name, `${pointer}/serviceName`)],
    ': ',
  )
}

/** A meter reading and a date, if they are known. */
function writePoint(context: CardContext, point: DueLine['from'], pointer: JsonPointer): Line {
  const meter = writeQuantity(context, point?.meter, `${pointer}/meter`)
  return joinLines([meter, quoteOptionalText(point?.date, `${pointer}/date`)], ', ')
}

function writeRemaining(
  { catalogue, words }: CardContext,
  remaining: Quantity | undefined,
  pointer: JsonPointer,
): Line {
  if (remaining === undefined) return []
  const amount =
    showQuantity({ value: Math.abs(remaining.value), unit: remaining.unit }, catalogue.marks) ?? ''
  return quoteText(remaining.value < 0 ? words.past(amount) : words.remaining(amount), pointer)
}

/** The last meter reading or date to which a due service may be postponed. */
function writeWindow(context: CardContext, { verdict, overdueAfter }: DueLine, pointer: JsonPointer): Line {
  const lastPoint = writePoint(context, overdueAfter, `${pointer}/overdueAfter`)
  if (verdict !== 'due' || lastPoint.length === 0) return []
  return [...writeWords(`${context.words.labels.overdueAfter} `), ...lastPoint]
}

function buildLimitRow(
  context: CardContext,
  due: PlannedDue,
  line: DueLine,
  pointer: JsonPointer,
): CardCell[] {
  const { words } = context
  const { limit, fraction } = line
  const name = quoteText(words.dueBy[line.by], `${pointer}/by`)
  const limitText =
    limit !== undefined && 'period' in limit
      ? writePeriod(context, limit.period, `${pointer}/limit/period`)
      : writeQuantity(context, limit, `${pointer}/limit`, 'printed')
  const used = writeQuantity(context, line.used, `${pointer}/used`)
  const left = writeRemaining(context, line.left, `${pointer}/left`)
  const { columns } = words
  const values = [
    addLabel(columns.used, used),
    addLabel(columns.limit, limitText),
    addLabel(columns.left, left),
  ]
  const text = joinSpans(joinLines([name, ...values], '; '))
  return [
    makeCell(name),
    makeCell(limitText),
    makeCell(writePoint(context, line.from, `${pointer}/from`)),
    { ...makeCell(used), ...(fraction !== undefined && { bar: { fraction, text } }) },
    makeCell(left),
    makeCell(writePoint(context, line.duePoint, `${pointer}/duePoint`), writeWindow(context, line, pointer)),
    makeCell(
      quoteText(words.dueStates[line.verdict], `${pointer}/verdict`),
      due.dueBy === line.by ? writeWords(words.labels.decides) : [],
    ),
  ]
}

function buildDueTable(context: CardContext, { due, pointer, names }: DueGroup): CardTable {
  const { by, limit, since, used, left, dueAt, state } = context.words.columns
  return {
    kind: 'table',
    caption: joinLines([joinLines(names, '; '), writeVerdict(context, due, pointer)], ' — '),
    columns: [by, limit, since, used, left, dueAt, state],
    rows: due.lines.map((line, lineIndex) =>
      buildLimitRow(context, due, line, `${pointer}/lines/${lineIndex}`),
    ),
  }
}

function writeVerdict({ words }: CardContext, { verdict }: PlannedDue, pointer: JsonPointer): Line {
  return quoteText(words.dueStates[verdict], `${pointer}/verdict`)
}

/** Reasons that the table already shows. */
const CODES_IN_TABLE: ReadonlySet<string> = new Set([
  'interval/by-meter',
  'interval/by-date',
  'interval/governing-limit',
  'interval/window-left',
  'interval/not-tracked',
])

interface DueGroup {
  readonly due: PlannedDue
  readonly pointer: JsonPointer
  readonly names: Line[]
}

/** Groups services that differ only in their names. */
function groupServices(context: CardContext, isIncluded: (due: PlannedDue) => boolean): readonly DueGroup[] {
  const groups = new Map<string, DueGroup>()
  for (const [index, due] of context.plan.due.entries()) {
    if (!isIncluded(due)) continue
    const pointer = `/due/${index}`
    const name = writeTask(context, due, pointer)
    const key = JSON.stringify([due.verdict, due.lines, due.reasons, due.coveredBy])
    const group = groups.get(key)
    if (group === undefined) groups.set(key, { due, pointer, names: [name] })
    else group.names.push(name)
  }
  return [...groups.values()]
}

/** The chosen services with their limits, then one line for each other service. */
export function buildDueSection(context: CardContext): CardSection {
  const { words } = context
  const chosenTables = groupServices(context, (due) => due.taken).flatMap((group): CardPart[] => {
    // Reasons for the verdict that are not in the table: severe use, a changed display, a window.
    const choices = writeReasons(context, group.due.reasons, `${group.pointer}/reasons`, CODES_IN_TABLE)
    return [buildDueTable(context, group), ...makeListPart(choices)]
  })
  const otherServices = groupServices(context, (due) => !due.taken).map(({ due, pointer, names }) => {
    const coveredBy = due.coveredBy === undefined ? undefined : words.coveredBy(due.coveredBy)
    const verdict = writeVerdict(context, due, pointer)
    return {
      line: joinLines(
        [joinLines(names, '; '), verdict, quoteOptionalText(coveredBy, `${pointer}/coveredBy`)],
        ' — ',
      ),
      notes: due.verdict === 'cannot tell' ? writeReasons(context, due.reasons, `${pointer}/reasons`) : [],
    }
  })
  const parts = chosenTables.length > 0 ? chosenTables : makeListPart([writeWords(words.labels.noService)])
  return {
    id: 'due',
    heading: words.sections.due,
    parts: [...parts, ...makeListPart(otherServices, { heading: words.labels.otherServices })],
  }
}
