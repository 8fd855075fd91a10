import type { RoomRuleCodes } from '../../../rules/index.js'
import type { Texts } from '../../catalogue.js'
import { METER } from '../words.js'
import { meantWords } from './meantWords.js'

/** Rules on what was done. */
export const recordRuleTexts: Texts<RoomRuleCodes<'record'>> = {
  'record/date-in-the-future': ({ date, today }, say) =>
    `The record is dated ${say.date(date)}, after today, ${say.date(today)}. Look for a slip in the year or the month.`,
  'record/leak-left': ({ gearcase, found }) =>
    `${gearcase}: closed while ${found}. Give a washer plug a new washer, never more torque; a taper plug may go up within its turns.`,
  'record/level-not-right': ({ gearcase, level }) =>
    level === 'not checked'
      ? `${gearcase}: the level was not checked. Check it before the machine works.`
      : `${gearcase}: the level was left ${level} its mark. Correct it before the machine works.`,
  'record/machine-not-found': ({ id, ...names }, say) =>
    `No log of the machine “${id}” is in this set.${meantWords(names, say)}`,
  'record/metal-in-the-oil': ({ gearcase, found }) =>
    `${gearcase}: ${found === 'metallic' ? 'metal in the oil' : `${found} on the magnet`}, and it was filled. Stop the machine and have the gearcase opened.`,
  'record/oil-not-permitted': ({ gearcase, oil, permitted }, say) =>
    `${gearcase}: filled with “${oil}”, which is none of the permitted oils (${say.list(permitted)}). Drain it again before the machine works.`,
  'record/part-not-on-machine': ({ part }) =>
    `This machine has no “${part}”, by its variant, serial, model year or market. Look whether the record belongs to another machine.`,
  'record/plug-not-tightened': ({ part }) =>
    `${part}: opened, and nowhere recorded as tightened. Look at the machine before it moves.`,
  'record/reading-against-log': ({ reason }, say) =>
    `This reading does not go with the machine's log. ${say.reason(reason)}`,
  'record/reading-missing': ({ meter }) =>
    `The reading of ${METER[meter] ?? meter} is missing, so the next service by it cannot be counted from here.`,
  'record/refill-not-noted': ({ gearcase }) =>
    `${gearcase}: an oil change without a refilled quantity. Look at the level, then write down what went in.`,
  'record/refill-outside-tolerance': ({ gearcase, reason }, say) => `${gearcase}: ${say.reason(reason)}`,
  'record/seal-not-new': ({ part, seal, usedAgain }) =>
    usedAgain
      ? `${part}: the ${seal} was used again, and it must be new at every opening. Fit a new one.`
      : `${part}: opened, and nothing is noted of the ${seal}, which must be new. Look at the plug; fit a new one if in doubt.`,
  'record/tightened-other-way': ({ part, done, wanted }) =>
    `${part}: recorded by ${done === 'turns' ? 'turns' : 'torque'}, and the sheet states ${wanted === 'turns' ? 'turns' : 'a torque'}.`,
  'record/torque-outside-band': ({ part, set, stated }, say) =>
    `${part}: set to ${say.quantity(set)}, and the sheet states ${say.quantity(stated)}. Slacken it, fit a new washer and set it again.`,
  'record/turns-outside-band': ({ part, turns, min, max }, say) =>
    `${part}: ${say.count(turns, 'turn', 'turns')} past finger tight, and the sheet states ${max === undefined ? `at least ${min}` : `${min} to ${max}`}.`,
  'record/unknown-container': ({ id, ...names }, say) =>
    `No container “${id}” is in this set.${meantWords(names, say)}`,
  'record/unknown-part': ({ id, ...names }, say) => `The sheet has no “${id}” here.${meantWords(names, say)}`,
  'record/unknown-tool': ({ id, ...names }, say) =>
    `No torque wrench “${id}” is in this set.${meantWords(names, say)}`,
  'record/water-in-the-oil': ({ gearcase }) =>
    `${gearcase}: milky oil. Find where the water came in, and change the oil again after a short run.`,
  'record/wrench-cannot-reach': ({ part, wrench, torque, because }, say) =>
    [
      `${part}: the ${wrench} cannot be set to ${say.quantity(torque)}.`,
      ...because.map((reason) => say.reason(reason)),
      'Tighten it again with one that can.',
    ].join(' '),
}
