import type { RoomRuleCodes } from '../../../rules/index.js'
import type { Texts } from '../../catalogue.js'
import { METER } from '../words.js'
import { meantWords } from './meantWords.js'

/** Rules on what was done. */
export const recordRuleTexts: Texts<RoomRuleCodes<'record'>> = {
  'record/date-in-the-future': ({ date, today }, say) =>
    `The record is dated ${say.date(date)}, after today, ${say.date(today)}. Check year and month.`,
  'record/leak-left': ({ gearcase, found }) =>
    `${gearcase}: closed while ${found}. A washer plug needs a new washer, never more torque; a taper plug may be tightened within its turns.`,
  'record/level-not-right': ({ gearcase, level }) =>
    level === 'not checked'
      ? `${gearcase}: level not checked. Check it before the machine works.`
      : `${gearcase}: level ${level} the mark. Correct it before the machine works.`,
  'record/machine-not-found': ({ id, ...names }, say) =>
    `No log of the machine “${id}” is in this set.${meantWords(names, say)}`,
  'record/metal-in-the-oil': ({ gearcase, found }) =>
    `${gearcase}: ${found === 'metallic' ? 'metal in the oil' : `${found} on the magnet`}, and it was filled. Stop the machine and have the gearcase opened.`,
  'record/oil-not-permitted': ({ gearcase, oil, permitted }, say) =>
    `${gearcase}: filled with “${oil}”, not a permitted oil (${say.list(permitted)}). Drain it before the machine works.`,
  'record/part-not-on-machine': ({ part }) =>
    `This machine has no “${part}”, by its variant, serial, model year or market. Check whether the record belongs to another machine.`,
  'record/plug-not-tightened': ({ part }) =>
    `${part}: opened, but not recorded as tightened. Check the plug before the machine moves.`,
  'record/reading-against-log': ({ reason }, say) =>
    `This reading contradicts the machine's log. ${say.reason(reason)}`,
  'record/reading-missing': ({ meter }) =>
    `The reading of ${METER[meter] ?? meter} is missing; the next service by it cannot be counted from this record.`,
  'record/refill-not-noted': ({ gearcase }) =>
    `${gearcase}: oil change without a refilled quantity. Check the level, then record the quantity.`,
  'record/refill-outside-tolerance': ({ gearcase, reason }, say) => `${gearcase}: ${say.reason(reason)}`,
  'record/seal-not-new': ({ part, seal, usedAgain }) =>
    usedAgain
      ? `${part}: the ${seal} was reused. It must be new at every opening; fit a new one.`
      : `${part}: opened, but no new ${seal} is recorded. Check the plug; fit a new one if in doubt.`,
  'record/tightened-other-way': ({ part, done, wanted }) =>
    `${part}: tightened by ${done === 'turns' ? 'turns' : 'torque'}; the sheet states ${wanted === 'turns' ? 'turns' : 'a torque'}.`,
  'record/torque-outside-band': ({ part, set, stated }, say) =>
    `${part}: set to ${say.quantity(set)}; the sheet states ${say.quantity(stated)}. Slacken it, fit a new washer and tighten it again.`,
  'record/turns-outside-band': ({ part, turns, min, max }, say) =>
    `${part}: ${say.count(turns, 'turn', 'turns')} past finger tight; the sheet states ${max === undefined ? `at least ${min}` : `${min} to ${max}`}.`,
  'record/unknown-container': ({ id, ...names }, say) =>
    `No container “${id}” is in this set.${meantWords(names, say)}`,
  'record/unknown-part': ({ id, ...names }, say) => `The sheet has no “${id}” here.${meantWords(names, say)}`,
  'record/unknown-tool': ({ id, ...names }, say) =>
    `No torque wrench “${id}” is in this set.${meantWords(names, say)}`,
  'record/water-in-the-oil': ({ gearcase }) =>
    `${gearcase}: milky oil. Find where the water enters, then change the oil again after a short run.`,
  'record/wrench-cannot-reach': ({ part, wrench, torque, because }, say) =>
    [
      `${part}: the ${wrench} cannot be set to ${say.quantity(torque)}.`,
      ...because.map((reason) => say.reason(reason)),
      'Tighten it again with one that can.',
    ].join(' '),
}
