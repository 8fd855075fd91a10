import { requireShape } from '../base/index.js'
import type { DateText } from '../calendar/index.js'
import type { IntervalStated, MachineLog, MeterName } from '../spec/index.js'
import { accumulateMeter } from './accumulateMeter.js'
import { FACTS_SHAPE, judgeService } from './computeDue.js'
import type { DueReaders } from './dueReaders.js'
import type { DueVerdict } from './dueVerdict.js'
import type { DueOptions, IntervalFacts } from './intervalFacts.js'
import { type Limits, readLimits } from './readLimits.js'
import { requireDueOptions } from './requireDueOptions.js'

/**
 * Judges many services of one machine as {@link computeDue} does, but adds up its meters and reads each interval only
 * once. `limitsRead` may be used again for other logs. Logs and intervals must be parsed, and not change meanwhile.
 */
export function createDueJudge(
  log: MachineLog,
  today: DateText,
  options: DueOptions,
  limitsRead: Map<IntervalStated, Limits>,
): (facts: Omit<IntervalFacts, 'log' | 'today'>) => DueVerdict {
  requireDueOptions(options)
  const meters = new Map<MeterName, ReturnType<typeof accumulateMeter>>()
  const readers: DueReaders = {
    meters(ownLog, meter, day) {
      if (!meters.has(meter)) meters.set(meter, accumulateMeter(ownLog, meter, day))
      return meters.get(meter)
    },
    limits(interval, name) {
      const limits = limitsRead.get(interval) ?? readLimits(interval, name)
      limitsRead.set(interval, limits)
      return limits
    },
  }
  return ({ intervals, service, doneBy, gearcase, instance, events }) => {
    // Hot path: no spread.
    const facts = { intervals, log, service, doneBy, gearcase, instance, events, today } as IntervalFacts
    try {
      return judgeService(facts, options, readers)
    } catch (error) {
      requireShape('facts', facts, FACTS_SHAPE)
      throw error
    }
  }
}
