import type { JsonPointer } from '../base/index.js'
import { showQuantity } from '../message/index.js'
import type { IntervalStated } from '../spec/index.js'
import type { TextContext } from './cardContext.js'
import type { Line } from './cardParts.js'
import { joinLines, quoteText } from './spans.js'

/** A period in words: `P6M` becomes `6 months`. Other text is unchanged. */
export function writePeriod({ words }: TextContext, period: string, pointer: JsonPointer): Line {
  const match = /^P(?:([0-9]+)Y)?(?:([0-9]+)M)?(?:([0-9]+)W)?(?:([0-9]+)D)?$/.exec(period)
  if (match === null || period === 'P') return quoteText(period, pointer)
  const [years, months, weeks, days] = [1, 2, 3, 4].map((part) => Number(match[part] ?? 0))
  return quoteText(
    words.period({ years: years ?? 0, months: months ?? 0, weeks: weeks ?? 0, days: days ?? 0 }),
    pointer,
  )
}

/** All printed limits of an interval, such as `200 h, 2000 km (1200 mi), 12 months`. */
export function writeInterval(context: TextContext, interval: IntervalStated, pointer: JsonPointer): Line {
  const { marks } = context.catalogue
  const limits: Line[] = []
  if (interval.hours !== undefined) {
    const text = showQuantity({ value: interval.hours, unit: 'h' }, marks)
    limits.push(quoteText(text ?? interval.hours, `${pointer}/hours`, 'printed'))
  }
  if (interval.distance !== undefined) {
    const { printed = [], ...first } = interval.distance
    const distances = [first, ...printed].map((distance) => showQuantity(distance, marks) ?? distance.value)
    const [firstDistance = '', ...others] = distances
    limits.push(
      quoteText(
        others.length === 0 ? firstDistance : `${firstDistance} (${others.join(', ')})`,
        `${pointer}/distance`,
        'printed',
      ),
    )
  }
  if (interval.period !== undefined) limits.push(writePeriod(context, interval.period, `${pointer}/period`))
  return joinLines(limits, ', ')
}

/** An interval that was multiplied by the manual's factor: calculated, not printed. */
export const writeScaledInterval = (
  context: TextContext,
  interval: IntervalStated,
  pointer: JsonPointer,
): Line =>
  writeInterval(context, interval, pointer).map((span) =>
    span.from === undefined ? span : { ...span, tone: 'computed' },
  )
