import { showAmount, showQuantity } from '../message/index.js'
import type { PlannedTightening } from '../service/index.js'
import { type CardContext, entryAt, partLine, quantityLine, reasonLine, reasonLines } from './cardContext.js'
import type { CardCell, CardSection, Line } from './cardParts.js'
import { figureLines } from './figureLines.js'
import { capitalised, joined, ownWords, quoted } from './spans.js'

/** Reasons that only repeat what is in other cells of the row. */
const SHOWN_ELSEWHERE: ReadonlySet<string> = new Set(['torque/setting-chosen', 'torque/not-stated'])

const cell = (...lines: Line[]): CardCell => ({ lines: lines.filter((line) => line.length > 0) })

function trueBandLine(context: CardContext, { trueBand }: PlannedTightening, from: string): Line {
  if (trueBand === undefined) return []
  const { marks } = context.catalogue
  const { min, max, unit } = trueBand
  const low = showAmount({ value: min, unit }, marks) ?? ''
  const high = showQuantity({ value: max, unit }, marks) ?? ''
  return quoted(`${low}–${high}`, `${from}/trueBand`, 'computed')
}

function wrenchCell(context: CardContext, tightening: PlannedTightening, from: string): CardCell {
  const { words } = context
  const wrench = tightening.wrench === undefined ? [] : quoted(tightening.wrench.name, `${from}/wrench/name`)
  const verdict =
    tightening.verdict === 'fits'
      ? []
      : quoted(words.tighteningVerdicts[tightening.verdict], `${from}/verdict`, 'gap')
  const why =
    tightening.verdict === 'fits' || tightening.verdict === 'by turns'
      ? []
      : tightening.reasons.flatMap((reason, index) =>
          SHOWN_ELSEWHERE.has(reason.code) ? [] : [reasonLine(context, reason, `${from}/reasons/${index}`)],
        )
  return cell(wrench, joined([verdict, ...why], ' · '))
}

function tighteningRow(context: CardContext, tightening: PlannedTightening, index: number): CardCell[] {
  const from = `/tightenings/${index}`
  const { drawing } = tightening
  const found = entryAt(context.plan.figures, 'figures', tightening.figure)
  const lines = found && figureLines(context, found.entry, found.index)
  const name = capitalised(partLine(tightening.part, `${from}/part`, 'with gearcase'))
  const count =
    tightening.count === 1 ? [] : [...ownWords(' × '), ...quoted(String(tightening.count), `${from}/count`)]
  const computed =
    lines === undefined || lines.computed.length === 0
      ? []
      : [...joined(lines.computed, ' · '), ...ownWords(` ${context.words.computedMark}`)]
  const setting =
    tightening.setting === undefined ? [] : quantityLine(context, tightening.setting, `${from}/setting`)
  return [
    cell([...name, ...count], ...(lines?.notes ?? [])),
    cell(lines?.main ?? []),
    cell(joined(lines?.also ?? [], ' · '), computed),
    found?.entry.resolved.kind === 'not stated' ? cell() : wrenchCell(context, tightening, from),
    cell(setting),
    { ...cell(trueBandLine(context, tightening, from)), ...(drawing !== undefined && { drawing }) },
  ]
}

/** Every tightening of the visit: the manual's figure, the wrench, its setting, and where the true torque then lies. */
export function tighteningSection(context: CardContext): CardSection {
  const { plan, words } = context
  const { part, manual, also, wrench, setting, trueBand } = words.columns
  const rows = plan.tightenings.map((tightening, index) => tighteningRow(context, tightening, index))
  const table = {
    kind: 'table' as const,
    caption: ownWords(words.captions.tightening),
    columns: [part, manual, also, wrench, setting, trueBand],
    rows,
  }
  const habits = words.wrenchHabits.map((habit) => ({ line: ownWords(habit), notes: [] }))
  const advice = reasonLines(context, plan.wrenches.reasons, '/wrenches/reasons').map((line) => ({
    line,
    notes: [],
  }))
  return {
    id: 'tightening',
    heading: words.sections.tightening,
    parts: [
      ...(rows.length > 0 ? [table] : []),
      ...(advice.length > 0 ? [{ kind: 'list' as const, box: false, items: advice }] : []),
      ...(rows.length > 0 ? [{ kind: 'list' as const, box: false, items: habits }] : []),
    ],
  }
}
