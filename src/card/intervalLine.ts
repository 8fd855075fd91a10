import type { JsonPointer } from '../base/index.js'
import { showQuantity } from '../message/index.js'
import type { IntervalStated } from '../spec/index.js'
import type { CardContext } from './cardContext.js'
import type { Line } from './cardParts.js'
import { joinLines, quoteText } from './spans.js'

/** A period in words: `P6M` becomes `6 months`. A text that is not a period is not changed. */
export function periodLine({ words }: CardContext, period: string, from: JsonPointer): Line {
  const found = /^P(?:([0-9]+)Y)?(?:([0-9]+)M)?(?:([0-9]+)W)?(?:([0-9]+)D)?$/.exec(period)
  if (found === null || period === 'P') return quoteText(period, from)
  const [years, months, weeks, days] = [1, 2, 3, 4].map((part) => Number(found[part] ?? 0))
  return quoteText(
    words.period({ years: years ?? 0, months: months ?? 0, weeks: weeks ?? 0, days: days ?? 0 }),
    from,
  )
}

/** All printed limits of an interval, such as `200 h, 2000 km (1200 mi), 12 months`. */
export function intervalLine(context: CardContext, interval: IntervalStated, from: JsonPointer): Line {
  const { marks } = context.catalogue
  const lines: Line[] = []
  if (interval.hours !== undefined) {
    const shown = showQuantity({ value: interval.hours, unit: 'h' }, marks)
    lines.push(quoteText(shown ?? interval.hours, `${from}/hours`, 'printed'))
  }
  if (interval.distance !== undefined) {
    const { printed = [], ...first } = interval.distance
    const distances = [first, ...printed].map((distance) => showQuantity(distance, marks) ?? distance.value)
    const [firstDistance = '', ...others] = distances
    lines.push(
      quoteText(
        others.length === 0 ? firstDistance : `${firstDistance} (${others.join(', ')})`,
        `${from}/distance`,
        'printed',
      ),
    )
  }
  if (interval.period !== undefined) lines.push(periodLine(context, interval.period, `${from}/period`))
  return joinLines(lines, ', ')
}
