import { addToDay, type DateText, FIRST_DAY, LAST_DAY, readDay } from '../calendar/index.js'
import { type DueColumns, type DueColumnVerdicts, NO_DAY, requireDueColumns } from './dueColumns.js'
import type { DueOptions } from './intervalFacts.js'
import { fractionOfCounts, MAX_PER_DAY, meterCount } from './meterCount.js'
import { requireDueOptions } from './requireDueOptions.js'

const OVERDUE = 0
const DUE = 1
const CANNOT_TELL = 2
const DUE_SOON = 3
const NOT_DUE = 4
const NOT_COUNTED = 5

/**
 * Decides for a fleet of any size whether one service is due, fast enough for millions of rows. Each row gets the
 * verdict of {@link computeDue} for a count from completion, with the readings of the last service and one later
 * reading. For lines and reasons, call {@link computeDue} for single rows.
 *
 * due if start + limit ≤ now; overdue if start + limit + window < now; the first limit as in `computeDue`, from the average use
 * since the last service
 *
 * @param columns - rows as `writeDueRow` fills them; not changed. A reading older than the last service, or dated after
 *   `today`, makes its limit `cannot tell`
 * @param today - a date
 * @param options - when a service is due soon and how old a reading may be; the limits in the rows already
 *   include severe use
 * @returns for each row the verdict, the limit that comes first and its day, as numbers (`DUE_STATES`, `DUE_LIMITS`)
 * @throws TypeError, RangeError if `columns` is not a set of columns, or `today` or an option is out of range
 *
 * Source: house rule. Months as in ECMAScript test262 (see {@link addPeriod}).
 *
 * @example
 * ```ts
 * // Serviced on 31 August, due every six months: is it due on 29 February?
 * import { computeDueColumns, createDueColumns, DUE_STATES, writeDueRow } from 'drivetrain-service/v1/interval/fleet'
 * const columns = createDueColumns(1)
 * writeDueRow(columns, 0, { lastDate: '2023-08-31', everyMonths: 6 })
 * const verdicts = computeDueColumns(columns, '2024-02-29', { soon: {}, staleAfter: { days: 30 } })
 * DUE_STATES[verdicts.verdict[0] ?? 2] // => 'due'
 * ```
 */
export function computeDueColumns(
  columns: DueColumns,
  today: DateText,
  options: Omit<DueOptions, 'severity'>,
): DueColumnVerdicts {
  requireDueColumns(columns)
  const todayDay = readDay(today, 'today')
  requireDueOptions({ ...options, severity: 'normal' })
  const { soon, staleAfter } = options
  const fraction = soon.fraction ?? Number.POSITIVE_INFINITY
  const soonHours = soon.hours === undefined ? Number.NEGATIVE_INFINITY : meterCount(soon.hours, 'h')
  const soonDistance =
    soon.distance === undefined
      ? Number.NEGATIVE_INFINITY
      : meterCount(soon.distance.value, soon.distance.unit)
  const soonDays = soon.days ?? Number.NEGATIVE_INFINITY
  const staleDays = staleAfter.days
  const { length, lastDay, lastHours, hours, hoursDay, everyHours, windowHours, eventDay, untracked } =
    columns
  const { lastDistance, distance, distanceDay, everyDistance, windowDistance } = columns
  const { everyMonths, everyDays, windowMonths, windowDays } = columns
  const verdict = new Uint8Array(length)
  const dueBy = new Uint8Array(length)
  const dueDay = new Int32Array(length)

  // The last line, in plain variables: making an object for each row would take longer than the judgement.
  let lineState = NOT_COUNTED
  let lineFraction = 0
  let lineDay = NO_DAY
  const judgeMeter = (
    startReading: number,
    currentReading: number,
    startDay: number,
    readingDay: number,
    interval: number,
    window: number,
    soonLead: number,
    maxPerDay: number,
  ): void => {
    lineState = CANNOT_TELL
    lineFraction = -1
    lineDay = NO_DAY
    const daysOfUse = readingDay - startDay
    const rise = currentReading - startReading
    // No comparison with NaN is true, so an unknown start or reading returns here too.
    if (
      !(interval > 0 && rise >= 0 && rise <= (daysOfUse + 1) * maxPerDay) ||
      startDay === NO_DAY ||
      daysOfUse < 0 ||
      readingDay > todayDay
    )
      return
    const due = startReading + interval
    lineFraction = rise / interval
    if (daysOfUse > 0 && rise > 0) {
      const reachedDay = readingDay + Math.ceil(((due - currentReading) * daysOfUse) / rise)
      if (reachedDay >= FIRST_DAY && reachedDay <= LAST_DAY) lineDay = reachedDay
    } else if (currentReading >= due) lineDay = readingDay
    if (currentReading > due + window) lineState = OVERDUE
    else if (currentReading >= due) lineState = DUE
    else if (
      currentReading >= due - soonLead ||
      currentReading >= startReading + fractionOfCounts(interval, fraction)
    )
      lineState = DUE_SOON
    else lineState = todayDay - readingDay > staleDays ? CANNOT_TELL : NOT_DUE
  }

  for (let row = 0; row < length; row++) {
    const missingFlags = untracked[row] as number
    let worstState = (missingFlags & 4) === 0 ? NOT_COUNTED : CANNOT_TELL
    let areAllDaysKnown = true
    let earliestDay = LAST_DAY + 1
    let earliestLimit = 0
    let highestFraction = -1
    let highestFractionLimit = 0
    let highestFractionDay = NO_DAY
    const from = lastDay[row] as number
    const hoursInterval = everyHours[row] as number
    if (!Number.isNaN(hoursInterval) && (missingFlags & 1) === 0) {
      judgeMeter(
        lastHours[row] as number,
        hours[row] as number,
        from,
        hoursDay[row] as number,
        hoursInterval,
        windowHours[row] as number,
        soonHours,
        MAX_PER_DAY.hours,
      )
      if (lineState < worstState) worstState = lineState
      if (lineFraction >= 0) {
        highestFraction = lineFraction
        highestFractionLimit = 1
        highestFractionDay = lineDay
        if (lineDay === NO_DAY) areAllDaysKnown = false
        else {
          earliestDay = lineDay
          earliestLimit = 1
        }
      }
    }
    const distanceInterval = everyDistance[row] as number
    if (!Number.isNaN(distanceInterval) && (missingFlags & 2) === 0) {
      judgeMeter(
        lastDistance[row] as number,
        distance[row] as number,
        from,
        distanceDay[row] as number,
        distanceInterval,
        windowDistance[row] as number,
        soonDistance,
        MAX_PER_DAY.distance,
      )
      if (lineState < worstState) worstState = lineState
      if (lineFraction >= 0) {
        if (lineFraction > highestFraction) {
          highestFraction = lineFraction
          highestFractionLimit = 2
          highestFractionDay = lineDay
        }
        if (lineDay === NO_DAY) areAllDaysKnown = false
        else if (lineDay < earliestDay) {
          earliestDay = lineDay
          earliestLimit = 2
        }
      }
    }
    const months = everyMonths[row] as number
    if (months >= 0) {
      const extraDays = everyDays[row] as number
      const due =
        from === NO_DAY || from > todayDay || months + extraDays === 0
          ? NaN
          : addToDay(from, months, extraDays)
      if (Number.isNaN(due)) {
        if (CANNOT_TELL < worstState) worstState = CANNOT_TELL
      } else {
        const usedDays = todayDay - from
        const usedFraction = usedDays / (due - from)
        if (usedFraction > highestFraction) {
          highestFraction = usedFraction
          highestFractionLimit = 3
          highestFractionDay = due
        }
        if (due < earliestDay) {
          earliestDay = due
          earliestLimit = 3
        }
        let dateState = NOT_DUE
        if (todayDay >= due) {
          const windowMonthCount = windowMonths[row] as number
          const windowDayCount = windowDays[row] as number
          // A window past the calendar's end gives NaN, and nothing is later than NaN.
          const overdueAfter =
            windowMonthCount === 0 && windowDayCount === 0
              ? due
              : addToDay(due, windowMonthCount, windowDayCount)
          dateState = todayDay > overdueAfter ? OVERDUE : DUE
        } else if (due - todayDay <= soonDays || usedDays >= fractionOfCounts(due - from, fraction)) {
          dateState = DUE_SOON
        }
        if (dateState < worstState) worstState = dateState
      }
    }
    const event = eventDay[row] as number
    if (event !== NO_DAY && event > from && event <= todayDay) {
      if (DUE < worstState) worstState = DUE
      dueBy[row] = 4
      dueDay[row] = event
    } else if (areAllDaysKnown && earliestLimit > 0) {
      dueBy[row] = earliestLimit
      dueDay[row] = earliestDay
    } else {
      dueBy[row] = highestFractionLimit
      dueDay[row] = highestFractionDay
    }
    verdict[row] = worstState === NOT_COUNTED ? CANNOT_TELL : worstState
  }
  return { verdict, dueBy, dueDay }
}
