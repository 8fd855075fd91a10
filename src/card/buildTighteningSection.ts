import { showAmount, showQuantity } from '../message/index.js'
import type { PlannedTightening } from '../service/index.js'
import { type CardContext, findEntry, writePart, writeQuantity, writeReasons } from './cardContext.js'
import type { CardCell, CardSection, Line } from './cardParts.js'
import {
  capitalise,
  joinLines,
  makeCell,
  makeListPart,
  quoteOptionalText,
  quoteText,
  writeWords,
} from './spans.js'
import { writeFigure, writeSecondaryFigures } from './writeFigure.js'
import { writePartNote } from './writePartNote.js'

/** Reasons that only repeat other cells of the row. */
const CODES_SHOWN_ELSEWHERE: ReadonlySet<string> = new Set(['torque/setting-chosen', 'torque/not-stated'])

function writeTrueBand(context: CardContext, { trueBand }: PlannedTightening, pointer: string): Line {
  if (trueBand === undefined) return []
  const { marks } = context.catalogue
  const { min, max, unit } = trueBand
  const low = showAmount({ value: min, unit }, marks) ?? ''
  const high = showQuantity({ value: max, unit }, marks) ?? ''
  return quoteText(`${low}–${high}`, `${pointer}/trueBand`, 'computed')
}

function buildWrenchCell(context: CardContext, tightening: PlannedTightening, pointer: string): CardCell {
  const { verdict, reasons } = tightening
  const wrench = quoteOptionalText(tightening.wrench?.name, `${pointer}/wrench/name`)
  if (verdict === 'fits') return makeCell(wrench)
  const verdictLine = quoteText(context.words.tighteningVerdicts[verdict], `${pointer}/verdict`, 'gap')
  if (verdict === 'by turns') return makeCell(wrench, verdictLine)
  return makeCell(
    wrench,
    joinLines(
      [verdictLine, ...writeReasons(context, reasons, `${pointer}/reasons`, CODES_SHOWN_ELSEWHERE)],
      ' · ',
    ),
  )
}

function buildTighteningRow(context: CardContext, tightening: PlannedTightening, index: number): CardCell[] {
  const pointer = `/tightenings/${index}`
  const { drawing, count, setting } = tightening
  const figureEntry = findEntry(context, 'figures', tightening.figure)
  const figureLines = figureEntry && writeFigure(context, figureEntry.entry, figureEntry.pointer)
  const name = capitalise(writePart(tightening.part, `${pointer}/part`))
  const countSuffix =
    count === 1 ? [] : [...writeWords(' × '), ...quoteText(String(count), `${pointer}/count`)]
  return [
    makeCell(
      [...name, ...countSuffix],
      joinLines([...(figureLines?.notes ?? []), writePartNote(context, tightening.part)], ' · '),
    ),
    makeCell(figureLines?.main ?? []),
    makeCell(...(figureLines === undefined ? [] : writeSecondaryFigures(context, figureLines))),
    figureEntry?.entry.resolved.kind === 'not stated'
      ? makeCell()
      : buildWrenchCell(context, tightening, pointer),
    makeCell(writeQuantity(context, setting, `${pointer}/setting`)),
    { ...makeCell(writeTrueBand(context, tightening, pointer)), ...(drawing !== undefined && { drawing }) },
  ]
}

/**
 * Every tightening of the visit: the printed figure, the wrench, its setting, and the actual torque at that setting.
 */
export function buildTighteningSection(context: CardContext): CardSection {
  const { plan, words } = context
  const { part, manual, alsoPrinted, wrench, setting, trueBand } = words.columns
  const rows = plan.tightenings.map((tightening, index) => buildTighteningRow(context, tightening, index))
  const caption = writeWords(words.captions.tightening)
  const usesTorque = plan.tightenings.some(
    ({ verdict, figure }) =>
      verdict !== 'by turns' && findEntry(context, 'figures', figure)?.entry.resolved.kind !== 'not stated',
  )
  const columns = [part, manual, alsoPrinted, wrench, setting, trueBand]
  const advice = makeListPart(writeReasons(context, plan.wrenches.reasons, '/wrenches/reasons'))
  return {
    id: 'tightening',
    heading: words.sections.tightening,
    parts:
      rows.length === 0
        ? advice
        : [
            { kind: 'table', caption, columns, rows },
            ...advice,
            ...(usesTorque ? makeListPart(words.wrenchHabits.map(writeWords)) : []),
          ],
  }
}
