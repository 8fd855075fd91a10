import type { JsonPointer } from '../base/index.js'
import type { DueLine as PlannedDueLine } from '../interval/index.js'
import { showQuantity } from '../message/index.js'
import type { Quantity } from '../quantity/index.js'
import type { PlannedDue } from '../service/index.js'
import { type CardContext, partLine, quantityLine, reasonLine, reasonLines } from './cardContext.js'
import type { CardCell, CardList, CardPart, CardSection, CardTable, Line } from './cardParts.js'
import { periodLine } from './intervalLine.js'
import { capitalised, joined, ownWords, quoted } from './spans.js'

const cell = (...lines: Line[]): CardCell => ({ lines: lines.filter((line) => line.length > 0) })

function taskLine({ words }: CardContext, due: PlannedDue, from: JsonPointer): Line {
  const name = due.serviceName === '' ? words.tasks[due.task] : due.serviceName
  return joined(
    [capitalised(partLine(due.part, `${from}/part`, 'with gearcase')), quoted(name, `${from}/serviceName`)],
    ': ',
  )
}

/** A meter and a date, as far as each is known. */
function pointLine(
  context: CardContext,
  point: { readonly date?: string; readonly meter?: Quantity } | undefined,
  from: JsonPointer,
): Line {
  const lines: Line[] = []
  if (point?.meter !== undefined) lines.push(quantityLine(context, point.meter, `${from}/meter`))
  if (point?.date !== undefined) lines.push(quoted(point.date, `${from}/date`))
  return joined(lines, ', ')
}

function leftLine({ catalogue, words }: CardContext, left: Quantity | undefined, from: JsonPointer): Line {
  if (left === undefined) return []
  const shown = showQuantity({ value: Math.abs(left.value), unit: left.unit }, catalogue.marks) ?? ''
  return quoted(left.value < 0 ? words.past(shown) : words.remaining(shown), from)
}

/** How long a service that is due may still be put off. */
function windowLine(
  context: CardContext,
  { verdict, overdueAfter }: PlannedDueLine,
  from: JsonPointer,
): Line {
  const until = pointLine(context, overdueAfter, `${from}/overdueAfter`)
  if (verdict !== 'due' || until.length === 0) return []
  return [...ownWords(`${context.words.labels.overdueAfter} `), ...until]
}

function limitRow(
  context: CardContext,
  due: PlannedDue,
  line: PlannedDueLine,
  dueFrom: JsonPointer,
  index: number,
) {
  const { words } = context
  const from = `${dueFrom}/lines/${index}`
  const limit =
    line.limit === undefined
      ? []
      : 'period' in line.limit
        ? periodLine(context, line.limit.period, `${from}/limit/period`)
        : quantityLine(context, line.limit, `${from}/limit`, 'printed')
  const decides = due.dueBy === line.by
  return [
    cell(quoted(words.dueBy[line.by], `${from}/by`)),
    cell(limit),
    cell(pointLine(context, line.from, `${from}/from`)),
    cell(line.used === undefined ? [] : quantityLine(context, line.used, `${from}/used`)),
    cell(leftLine(context, line.left, `${from}/left`)),
    cell(pointLine(context, line.duePoint, `${from}/duePoint`), windowLine(context, line, from)),
    cell(
      quoted(words.dueStates[line.verdict], `${from}/verdict`),
      decides ? ownWords(words.labels.decides) : [],
    ),
  ]
}

function dueTable(context: CardContext, due: PlannedDue, index: number, names: readonly Line[]): CardTable {
  const { words } = context
  const from = `/due/${index}`
  const { by, limit, since, used, left, dueAt, state } = words.columns
  return {
    kind: 'table',
    caption: joined([joined(names, '; '), quoted(words.dueStates[due.verdict], `${from}/verdict`)], ' — '),
    columns: [by, limit, since, used, left, dueAt, state],
    rows: due.lines.map((line, place) => limitRow(context, due, line, from, place)),
  }
}

/** Reasons that the rows of the table say already. */
const IN_TABLE: ReadonlySet<string> = new Set([
  'interval/by-meter',
  'interval/by-date',
  'interval/which-first',
  'interval/window-left',
  'interval/not-tracked',
])

/** What was chosen on the way to a verdict: severe use, a display that was changed, a window, a service that counted. */
function choicesOf(context: CardContext, due: PlannedDue, index: number): CardList['items'] {
  return due.reasons.flatMap((reason, place) =>
    IN_TABLE.has(reason.code)
      ? []
      : [{ line: reasonLine(context, reason, `/due/${index}/reasons/${place}`), notes: [] }],
  )
}

interface DueGroup {
  readonly due: PlannedDue
  readonly index: number
  readonly names: Line[]
}

/** Services on parts with the same limits, counts and reasons are shown once: only their names differ. */
function groupDue(context: CardContext, isMeant: (due: PlannedDue) => boolean): readonly DueGroup[] {
  const groups = new Map<string, DueGroup>()
  for (const [index, due] of context.plan.due.entries()) {
    if (!isMeant(due)) continue
    const name = taskLine(context, due, `/due/${index}`)
    const { verdict, lines, reasons, coveredBy } = due
    const key = JSON.stringify([verdict, lines, reasons, coveredBy])
    const group = groups.get(key)
    if (group === undefined) groups.set(key, { due, index, names: [name] })
    else group.names.push(name)
  }
  return [...groups.values()]
}

/** What is due and by what; then, in one line each, what is left for another day. */
export function dueSection(context: CardContext): CardSection {
  const { words } = context
  const parts: CardPart[] = groupDue(context, (due) => due.taken).flatMap(({ due, index, names }) => {
    const choices = choicesOf(context, due, index)
    const table = dueTable(context, due, index, names)
    return choices.length === 0 ? [table] : [table, { kind: 'list', box: false, items: choices }]
  })
  if (parts.length === 0)
    parts.push({
      kind: 'list',
      box: false,
      items: [{ line: ownWords(words.labels.nothingTaken), notes: [] }],
    })
  const later = groupDue(context, (due) => !due.taken).map(({ due, index, names }) => {
    const from = `/due/${index}`
    const line = joined(
      [
        joined(names, '; '),
        quoted(words.dueStates[due.verdict], `${from}/verdict`),
        due.coveredBy === undefined ? [] : quoted(words.coveredBy(due.coveredBy), `${from}/coveredBy`),
      ],
      ' — ',
    )
    const notes = due.verdict === 'cannot tell' ? reasonLines(context, due.reasons, `${from}/reasons`) : []
    return { line, notes }
  })
  if (later.length > 0) parts.push({ kind: 'list', heading: words.labels.notTaken, box: false, items: later })
  return { id: 'due', heading: words.sections.due, parts }
}
