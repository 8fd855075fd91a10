import type { JsonPointer } from '../../base/index.js'
import { formatNumber } from '../../quantity/index.js'
import type { SlipWork } from '../../service/index.js'
import { writePart, writeQuantity } from '../cardContext.js'
import type { Line } from '../cardParts.js'
import {
  addLabel,
  capitalise,
  dropEmptyLines,
  joinLines,
  quoteOptionalText,
  quoteText,
  writeWords,
} from '../spans.js'
import { type ListItem, type SlipContext, writeWork } from './slipContext.js'

/** The work that counts as done, with oil, torques, seals and filters; then the shields. */
export function writeDone(context: SlipContext): ListItem[] {
  const { slip, catalogue } = context
  const { labels } = catalogue.slip
  const items = slip.work.flatMap((work, index): ListItem[] => {
    if (work.notDone !== undefined) return []
    const pointer = `/work/${index}`
    const { refilled, oil } = work
    const amount = writeQuantity(context, refilled, `${pointer}/refilled`)
    const name = quoteOptionalText(oil?.name, `${pointer}/oil/name`)
    const writeSeals = (done: SlipWork['seals'][number]['done']) =>
      joinLines(
        work.seals.map((seal, itemIndex) =>
          seal.done === done ? writeRenewed(context, seal, `${pointer}/seals/${itemIndex}`) : [],
        ),
        '; ',
      )
    return [
      {
        line: joinLines([writeWork(work, pointer), joinLines([amount, name], labels.oilOf)], ', '),
        notes: dropEmptyLines([
          addLabel(labels.tightened, writeTightened(context, work.tightened, `${pointer}/tightened`)),
          addLabel(labels.newSeals, writeSeals('new')),
          addLabel(labels.sameSeals, writeSeals('inspected and used again')),
          ...work.filters.map((filter, itemIndex) =>
            writeFilter(context, filter, `${pointer}/filters/${itemIndex}`),
          ),
        ]),
      },
    ]
  })
  const shields = addLabel(labels.shields, writeTightened(context, slip.shields, '/shields'))
  return shields.length === 0 ? items : [...items, { line: shields, notes: [] }]
}

/** `drain plug 22.5 N·m; fill plug 30 N·m` */
function writeTightened(context: SlipContext, tightenings: SlipWork['tightened'], listPointer: string): Line {
  const { labels, tightened } = context.catalogue.slip
  const lines = tightenings.map((tightening, itemIndex) => {
    const pointer = `${listPointer}/${itemIndex}`
    const value =
      tightening.kind === 'torque set'
        ? writeQuantity(context, tightening.torque, `${pointer}/torque`)
        : tightening.kind === 'turns'
          ? [
              ...quoteText(formatNumber(tightening.turns, context.catalogue.marks), `${pointer}/turns`),
              ...writeWords(labels.turns),
            ]
          : quoteText(tightened[tightening.kind] ?? '', `${pointer}/kind`)
    return joinLines([writePart(tightening.part, `${pointer}/part`, false), value], ' ')
  })
  return joinLines(lines, '; ')
}

/** A new part with its number. */
function writeRenewed(
  { catalogue }: SlipContext,
  { part, partNumber }: { readonly part: SlipWork['part']; readonly partNumber?: string },
  pointer: JsonPointer,
): Line {
  const numberLine = quoteOptionalText(partNumber, `${pointer}/partNumber`)
  const { part: label } = catalogue.slip.labels
  return joinLines(
    [
      writePart(part, `${pointer}/part`, false),
      numberLine.length === 0 ? [] : [...writeWords(`${label} `), ...numberLine],
    ],
    ', ',
  )
}

function writeFilter(context: SlipContext, filter: SlipWork['filters'][number], pointer: JsonPointer): Line {
  const { newFilter, cleanedFilter } = context.catalogue.slip.labels
  const done = quoteText(filter.done === 'new' ? newFilter : cleanedFilter, `${pointer}/done`)
  return joinLines([capitalise(writeRenewed(context, filter, pointer)), done], ': ')
}
