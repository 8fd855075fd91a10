import type { MeterName } from '../../spec/index.js'
import { logRule } from '../ruleMakers.js'

/**
 * A meter that ran while the machine was logged as out of use. The dates of the pause are wrong, or the
 * machine was used.
 * Judges: Every entry of `pauses`, for each of the two meters. Finds a pause whose first and last readings
 * differ; readings on its first and last day are included. Skipped for a meter with a swap, reset or rollover
 * in the pause, and for a pause that ends before it starts.
 * Place: `/pauses/<place>`
 * Params: meter: `hours` or `distance`; first: the first reading; last: the last one
 * Harm: record
 * House rule. Information only.
 */
export const rule = logRule('log/meter-through-pause', 'info', ({ document }) =>
  (document.pauses ?? []).flatMap(({ from, to }, place) =>
    METER_NAMES.flatMap((meter) => {
      const isDuringPause = (date: string) => date >= from && date <= to
      const readings = (document.meters[meter]?.readings ?? []).filter(({ date }) => isDuringPause(date))
      const events = (document.events ?? []).filter((event) => 'meter' in event && event.meter === meter)
      const [first, last] = [readings[0], readings.at(-1)]
      if (first === undefined || last === undefined || first.value === last.value) return []
      if (events.some(({ date }) => isDuringPause(date))) return []
      return [{ path: `/pauses/${place}`, params: { meter, first: first.value, last: last.value } }]
    }),
  ),
)

const METER_NAMES: readonly MeterName[] = ['hours', 'distance']
