import type { JsonPointer } from '../base/index.js'
import type { DueLine } from '../interval/index.js'
import { showQuantity } from '../message/index.js'
import type { Quantity } from '../quantity/index.js'
import type { PlannedDue } from '../service/index.js'
import { type CardContext, partLine, quantityLine, reasonLines } from './cardContext.js'
import type { CardCell, CardPart, CardSection, CardTable, Line } from './cardParts.js'
import { periodLine } from './intervalLine.js'
import { capitalise, cell, joinLines, listPart, ownWords, quoteOptional, quoteText } from './spans.js'

function taskLine({ words }: CardContext, due: PlannedDue, from: JsonPointer): Line {
  const name = due.serviceName === '' ? words.tasks[due.task] : due.serviceName
  return joinLines(
    [capitalise(partLine(due.part, `${from}/part`)), quoteText(name, `${from}/serviceName`)],
    ': ',
  )
}

/** A meter reading and a date, if they are known. */
function pointLine(context: CardContext, point: DueLine['from'], from: JsonPointer): Line {
  const meter = quantityLine(context, point?.meter, `${from}/meter`)
  return joinLines([meter, quoteOptional(point?.date, `${from}/date`)], ', ')
}

function leftLine({ catalogue, words }: CardContext, left: Quantity | undefined, from: JsonPointer): Line {
  if (left === undefined) return []
  const shown = showQuantity({ value: Math.abs(left.value), unit: left.unit }, catalogue.marks) ?? ''
  return quoteText(left.value < 0 ? words.past(shown) : words.remaining(shown), from)
}

/** The point up to which a due service may be postponed. */
function windowLine(context: CardContext, { verdict, overdueAfter }: DueLine, from: JsonPointer): Line {
  const until = pointLine(context, overdueAfter, `${from}/overdueAfter`)
  if (verdict !== 'due' || until.length === 0) return []
  return [...ownWords(`${context.words.labels.overdueAfter} `), ...until]
}

function limitRow(context: CardContext, due: PlannedDue, line: DueLine, from: JsonPointer): CardCell[] {
  const { words } = context
  const { limit } = line
  return [
    cell(quoteText(words.dueBy[line.by], `${from}/by`)),
    cell(
      limit !== undefined && 'period' in limit
        ? periodLine(context, limit.period, `${from}/limit/period`)
        : quantityLine(context, limit, `${from}/limit`, 'printed'),
    ),
    cell(pointLine(context, line.from, `${from}/from`)),
    cell(quantityLine(context, line.used, `${from}/used`)),
    cell(leftLine(context, line.left, `${from}/left`)),
    cell(pointLine(context, line.duePoint, `${from}/duePoint`), windowLine(context, line, from)),
    cell(
      quoteText(words.dueStates[line.verdict], `${from}/verdict`),
      due.dueBy === line.by ? ownWords(words.labels.decides) : [],
    ),
  ]
}

function dueTable(context: CardContext, { due, from, names }: DueGroup): CardTable {
  const { by, limit, since, used, left, dueAt, state } = context.words.columns
  return {
    kind: 'table',
    caption: joinLines([joinLines(names, '; '), verdictLine(context, due, from)], ' — '),
    columns: [by, limit, since, used, left, dueAt, state],
    rows: due.lines.map((line, place) => limitRow(context, due, line, `${from}/lines/${place}`)),
  }
}

function verdictLine({ words }: CardContext, { verdict }: PlannedDue, from: JsonPointer): Line {
  return quoteText(words.dueStates[verdict], `${from}/verdict`)
}

/** Reasons that the table already shows. */
const TABLE_VERDICTS: ReadonlySet<string> = new Set([
  'interval/by-meter',
  'interval/by-date',
  'interval/governing-limit',
  'interval/window-left',
  'interval/not-tracked',
])

interface DueGroup {
  readonly due: PlannedDue
  readonly from: JsonPointer
  readonly names: Line[]
}

/** Groups services that differ only in their names. */
function groupDue(context: CardContext, isIncluded: (due: PlannedDue) => boolean): readonly DueGroup[] {
  const groups = new Map<string, DueGroup>()
  for (const [index, due] of context.plan.due.entries()) {
    if (!isIncluded(due)) continue
    const from = `/due/${index}`
    const name = taskLine(context, due, from)
    const key = JSON.stringify([due.verdict, due.lines, due.reasons, due.coveredBy])
    const group = groups.get(key)
    if (group === undefined) groups.set(key, { due, from, names: [name] })
    else group.names.push(name)
  }
  return [...groups.values()]
}

/** The chosen services with their limits, then one line for each other service. */
export function dueSection(context: CardContext): CardSection {
  const { words } = context
  const chosenParts = groupDue(context, (due) => due.taken).flatMap((group): CardPart[] => {
    // Choices behind a verdict: severe use, a changed display, a window, a service that counted.
    const choices = reasonLines(context, group.due.reasons, `${group.from}/reasons`, TABLE_VERDICTS)
    return [dueTable(context, group), ...listPart(choices)]
  })
  const otherServices = groupDue(context, (due) => !due.taken).map(({ due, from, names }) => {
    const coveredBy = due.coveredBy === undefined ? undefined : words.coveredBy(due.coveredBy)
    const verdict = verdictLine(context, due, from)
    return {
      line: joinLines(
        [joinLines(names, '; '), verdict, quoteOptional(coveredBy, `${from}/coveredBy`)],
        ' — ',
      ),
      notes: due.verdict === 'cannot tell' ? reasonLines(context, due.reasons, `${from}/reasons`) : [],
    }
  })
  const parts = chosenParts.length > 0 ? chosenParts : listPart([ownWords(words.labels.noService)])
  return {
    id: 'due',
    heading: words.sections.due,
    parts: [...parts, ...listPart(otherServices, { heading: words.labels.otherServices })],
  }
}
