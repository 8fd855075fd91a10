import { showAmount, showQuantity } from '../message/index.js'
import type { PlannedTightening } from '../service/index.js'
import { type CardContext, entryAt, partLine, quantityLine, reasonLines } from './cardContext.js'
import type { CardCell, CardSection, Line } from './cardParts.js'
import { figureLines, secondaryLines } from './figureLines.js'
import { capitalise, cell, joinLines, listPart, ownWords, quoteOptional, quoteText } from './spans.js'

/** Reasons that only repeat what is in other cells of the row. */
const CODES_SHOWN_ELSEWHERE: ReadonlySet<string> = new Set(['torque/setting-chosen', 'torque/not-stated'])

function trueBandLine(context: CardContext, { trueBand }: PlannedTightening, from: string): Line {
  if (trueBand === undefined) return []
  const { marks } = context.catalogue
  const { min, max, unit } = trueBand
  const low = showAmount({ value: min, unit }, marks) ?? ''
  const high = showQuantity({ value: max, unit }, marks) ?? ''
  return quoteText(`${low}–${high}`, `${from}/trueBand`, 'computed')
}

function wrenchCell(context: CardContext, tightening: PlannedTightening, from: string): CardCell {
  const { verdict, reasons } = tightening
  const wrench = quoteOptional(tightening.wrench?.name, `${from}/wrench/name`)
  if (verdict === 'fits') return cell(wrench)
  const verdictLine = quoteText(context.words.tighteningVerdicts[verdict], `${from}/verdict`, 'gap')
  if (verdict === 'by turns') return cell(wrench, verdictLine)
  return cell(
    wrench,
    joinLines(
      [verdictLine, ...reasonLines(context, reasons, `${from}/reasons`, CODES_SHOWN_ELSEWHERE)],
      ' · ',
    ),
  )
}

function tighteningRow(context: CardContext, tightening: PlannedTightening, index: number): CardCell[] {
  const from = `/tightenings/${index}`
  const { drawing, count, setting } = tightening
  const found = entryAt(context, 'figures', tightening.figure)
  const lines = found && figureLines(context, found.entry, found.index)
  const name = capitalise(partLine(tightening.part, `${from}/part`))
  const times = count === 1 ? [] : [...ownWords(' × '), ...quoteText(String(count), `${from}/count`)]
  return [
    cell([...name, ...times], ...(lines?.notes ?? [])),
    cell(lines?.main ?? []),
    cell(...(lines === undefined ? [] : secondaryLines(context, lines))),
    found?.entry.resolved.kind === 'not stated' ? cell() : wrenchCell(context, tightening, from),
    cell(quantityLine(context, setting, `${from}/setting`)),
    { ...cell(trueBandLine(context, tightening, from)), ...(drawing !== undefined && { drawing }) },
  ]
}

/** Every tightening of the visit: the printed figure, the wrench, its setting, and the true torque at that setting. */
export function tighteningSection(context: CardContext): CardSection {
  const { plan, words } = context
  const { part, manual, alsoPrinted, wrench, setting, trueBand } = words.columns
  const rows = plan.tightenings.map((tightening, index) => tighteningRow(context, tightening, index))
  const caption = ownWords(words.captions.tightening)
  const usesTorque = plan.tightenings.some(
    ({ verdict, figure }) =>
      verdict !== 'by turns' && entryAt(context, 'figures', figure)?.entry.resolved.kind !== 'not stated',
  )
  const columns = [part, manual, alsoPrinted, wrench, setting, trueBand]
  const advice = listPart(reasonLines(context, plan.wrenches.reasons, '/wrenches/reasons'))
  return {
    id: 'tightening',
    heading: words.sections.tightening,
    parts:
      rows.length === 0
        ? advice
        : [
            { kind: 'table', caption, columns, rows },
            ...advice,
            ...(usesTorque ? listPart(words.wrenchHabits.map(ownWords)) : []),
          ],
  }
}
