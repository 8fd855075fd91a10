import type { PartName, ServiceCodes } from '../../service/index.js'
import type { Texts } from '../catalogue.js'
import { METER } from './meterNames.js'

const ROLES: Readonly<Record<string, string>> = {
  refill: 'the refill quantity',
  'dry fill': 'the dry fill',
  oils: 'the oil',
  tightening: 'the tightening',
  seal: 'the seal',
  place: 'the place',
  interval: 'the interval',
  'drain temperature': 'the oil temperature for draining',
  level: 'how the level is checked',
  additive: 'the additive',
  cure: 'the cure time',
  mass: "the machine's mass",
}

const FACTS: Readonly<Record<string, string>> = {
  variant: 'the variant',
  modelYear: 'the model year',
  serial: 'the serial number',
  market: 'the market',
}

const SUPPLIES: Readonly<Record<string, string>> = {
  rags: 'rags',
  'gloves and goggles': 'gloves and goggles',
  oil: 'oil',
  additive: 'additive',
  seal: 'new seals',
  sealant: 'sealant',
  'used-oil container': 'a closed container marked for used oil',
}

const roleText = (role: string): string => ROLES[role] ?? role
const factTexts = (facts: readonly string[]): readonly string[] => facts.map((fact) => FACTS[fact] ?? fact)

/** `rear gearcase, left: drain plug`. */
function partText({ gearcase, part, instance }: PartName): string {
  const where = [gearcase, instance?.name].filter((word) => word !== undefined).join(', ')
  if (part === undefined) return where === '' ? 'the machine' : where
  return where === '' ? part : `${where}: ${part}`
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

export const serviceTexts: Texts<ServiceCodes> = {
  'service/part-open': ({ part, facts }, say) =>
    `Whether this machine has it cannot be told (${partText(part)}). Find out ${say.list(factTexts(facts))}.`,
  'service/variant-open': ({ facts, candidates }, say) =>
    `Which variant this is cannot be told: ${candidates.join(' or ')}. Find out ${say.list(factTexts(facts))}.`,
  'service/variant-contradicted': ({ candidates }) =>
    candidates.length === 0
      ? 'What the log says of this machine fits no variant of its sheet. Read the plate again.'
      : `What the log says of this machine contradicts itself: the other facts fit ${candidates.join(' or ')}. Read the plate again.`,
  'service/figure-not-stated': ({ part, role }) =>
    `${capital(partText(part))}: the sheet does not state ${roleText(role)}. See the manual.`,
  'service/figure-open': ({ part, role, facts }, say) =>
    `${capital(partText(part))}: ${roleText(role)} depends on ${say.list(factTexts(facts))}. Find that out first.`,
  'service/due-open': ({ parts, service, reason }, say) =>
    `Whether the ${service} is due cannot be told (${parts.map(partText).join('; ')}). ${say.reason({ code: reason.code, params: { ...reason.params } })}`,
  'service/ambient-not-given': ({ part }) =>
    `The day's temperature was not given, so the oil for it was not chosen by it (${partText(part)}).`,
  'service/no-toolbox': () => 'No toolbox was given: wrenches, vessel and pan are not judged.',
  'service/no-stock': () => 'No stock was given: everything is listed as if the shelf were empty.',
  'service/viscosity-not-known': ({ oil }) =>
    `How thick ${oil} is at this temperature is not known, so its time through the hose cannot be told.`,
  'service/oil-for-ambient': ({ oil, ambient }, say) =>
    `At ${say.quantity(ambient)} the sheet permits ${oil}.`,
  'service/oil-only-choice': ({ oil }) => `The sheet permits ${oil} and no other.`,
  'service/oil-first-choice': ({ oil }) => `${oil} stands first on the sheet.`,
  'service/no-oil-for-ambient': ({ part, ambient }, say) =>
    `No oil of the sheet holds at ${say.quantity(ambient)} (${partText(part)}).`,
  'service/oil-from-shelf': ({ container, volume }, say) => `${say.quantity(volume)} from the ${container}.`,
  'service/oil-short': ({ oil, volume }, say) => `The shelf lacks ${say.quantity(volume)} of ${oil}.`,
  'service/oil-does-not-meet': ({ container, oil, reason }, say) =>
    `The ${container} is not ${oil}. ${say.reason({ code: reason.code, params: { ...reason.params } })}`,
  'service/oil-ask': ({ container, oil, reason }, say) =>
    `Whether the ${container} may stand for ${oil} is for its maker to say. ${say.reason({ code: reason.code, params: { ...reason.params } })}`,
  'service/no-suitable-oil': ({ part, oil, offered, reasons }, say) =>
    [
      `Nothing on the shelf may go into the ${partText(part)}: it takes ${oil}, and there is ${say.list(offered)}.`,
      ...reasons.map(({ code, params }) => say.reason({ code, params: { ...params } })),
    ].join(' '),
  'service/wrench-misses': ({ part, reasons }, say) =>
    [
      `No wrench of the toolbox covers the ${partText(part)}.`,
      ...reasons.map(({ code, params }) => say.reason({ code, params: { ...params } })),
    ].join(' '),
  'service/wrench-to-get': ({ from, to, count }, say) =>
    `Get a wrench whose range covers ${say.quantity(from)} to ${say.quantity(to)}, for ${say.count(count, 'tightening', 'tightenings')}.`,
  'service/calibration-run-out': ({ wrench, dueOn }, say) =>
    `The calibration of the ${wrench} ran out on ${say.date(dueOn)}. Have it calibrated before it decides a torque.`,
  'service/calibration-cycles-run-out': ({ wrench, cycles, limit }, say) =>
    `The ${wrench} has made ${say.number(cycles)} cycles since its calibration; after ${say.number(limit)} it is due.`,
  'service/scale-reversed': ({ wrench, lowest, highest }, say) =>
    `The scale of the ${wrench} goes from ${say.quantity(lowest)} down to ${say.quantity(highest)}: it is left out until that is put right.`,
  'service/calibration-not-kept': ({ wrench }) =>
    `When the ${wrench} was last calibrated is not kept in the toolbox.`,
  'service/socket-found': ({ tool, size }) =>
    size === '' ? `${capital(tool)}.` : `${capital(tool)} fits ${size}.`,
  'service/adaptor-between': ({ adaptor, wrenches }, say) =>
    `${capital(adaptor)}: goes between the socket and the ${say.list(wrenches)}. It sits in line and changes no setting.`,
  'service/socket-missing': ({ part, drive, size }) =>
    `The toolbox has no tool for ${size === '' ? drive : `${drive} ${size}`} (${partText(part)}).`,
  'service/hand-only': ({ part }) => `By hand (${partText(part)}).`,
  'service/drive-not-stated': ({ part }) =>
    `What turns it is not stated (${partText(part)}). Look before you go.`,
  'service/vessel-too-coarse': ({ vessel, part, reason }, say) =>
    `The ${vessel} is not fine enough for the ${partText(part)}. ${say.reason({ code: reason.code, params: { ...reason.params } })}`,
  'service/no-vessel': ({ part }) => `The toolbox has no measuring vessel (${partText(part)}).`,
  'service/pan-too-small': ({ pan, size, volume }, say) =>
    `The ${pan} (${say.quantity(size)}) does not hold the ${say.quantity(volume)} of this visit. Bring a larger one, or empty it in between.`,
  'service/no-pan': ({ volume }, say) =>
    `The toolbox has no drain pan; this visit drains ${say.quantity(volume)}.`,
  'service/stands-too-few': ({ have, need }, say) =>
    `${say.count(need, 'stand is', 'stands are')} needed, and there are ${say.number(have)}.`,
  'service/stands-too-weak': ({ stands, rating, mass }, say) =>
    `The ${stands} are rated ${say.quantity(rating)} each; the machine weighs ${say.quantity(mass)}. Do not use them.`,
  'service/stands-hold': ({ stands, rating, mass }, say) =>
    `The ${stands} are rated ${say.quantity(rating)} each; the whole machine weighs ${say.quantity(mass)}.`,
  'service/stands-missing': ({ need }, say) =>
    `The toolbox has no stands, and ${say.count(need, 'is', 'are')} needed. A jack alone never holds a machine.`,
  'service/mass-not-stated': () =>
    "The sheet does not state the machine's mass: compare the stands' rating with its plate.",
  'service/seal-every-opening': ({ count }, say) =>
    `${say.count(count, 'new one goes in', 'new ones go in')}: a new one at every opening.`,
  'service/seal-on-condition': ({ count }, say) =>
    `Look at it and use it again only if it is good; have ${say.count(count, 'spare', 'spares')} at hand.`,
  'service/seal-open': ({ part }) =>
    `Which seal belongs there cannot be told (${partText(part)}). See the manual.`,
  'service/pour-through': ({ filler, oil, temperature }, say) =>
    `${capital(oil)} at ${say.quantity(temperature)} through the ${filler}.`,
  'service/no-filler': ({ part }) => `The toolbox has no funnel with a hose (${partText(part)}).`,
  'service/no-oil-to-pour': ({ part }) =>
    `Which oil will be poured is not known, so its time through the hose cannot be told (${partText(part)}).`,
  'service/pour-volume-open': ({ part }) =>
    `How long the oil runs cannot be told, since its quantity is not known (${partText(part)}).`,
  'service/drain-until-drips': () => 'Until only single drips fall.',
  'service/settle-stated': ({ minutes }, say) => `The sheet gives ${say.quantity(minutes)}.`,
  'service/settle-not-stated': () => 'How long the oil settles is not stated: see the manual.',
  'service/cure-stated': ({ product, time }, say) =>
    `The ${product} cures ${say.quantity(time)} before oil may touch it.`,
  'service/cure-not-stated': ({ product }) =>
    `How long the ${product} cures is not stated: see the manual and its label.`,
  'service/reading-stale': ({ meter, date, days, staleAfter }, say) =>
    `The last reading of ${METER[meter] ?? meter} is ${say.count(days, 'day', 'days')} old (${say.date(date)}); one older than ${say.count(staleAfter, 'day', 'days')} never supports “not due”. Read it again.`,
  'service/time-sum': ({ steps, minutes, waitMinutes }, say) =>
    `${say.count(steps, 'step', 'steps')}: ${say.count(minutes, 'minute', 'minutes')} of work and ${say.count(waitMinutes, 'minute', 'minutes')} of waiting, a house estimate.`,
  'service/time-open': ({ count }, say) =>
    `${say.count(count, 'wait is', 'waits are')} not counted: nobody can say how long.`,
  'service/supply': ({ supply }) => `${capital(SUPPLIES[supply] ?? supply)}.`,
  'service/used-oil': ({ volume }, say) =>
    `${say.quantity(volume)} of used oil at most goes into a closed, marked container.`,
  'service/used-oil-open': ({ part }) => `How much oil there will be is not known (${partText(part)}).`,
  'service/manual-first': () => "The machine's own manual and the local codes come before this card.",
  'service/licensed-work': () => 'Work that the law keeps for licensed people stays with them.',
  'service/used-oil-rules': () =>
    'Used oil goes to a collection point, in a sound, closed container marked as used oil.',
  'service/sheet-not-the-logs': ({ wanted, revision, given, givenRevision }) =>
    `The log belongs to sheet ${wanted} revision ${revision}; this is ${given} revision ${givenRevision}.`,
  'service/service-not-on-sheet': ({ service, known }, say) =>
    `The sheet has no service ${service}; it has ${say.list(known)}.`,
  'service/service-not-on-machine': ({ service }) =>
    `This machine has nothing that the ${service} is for, by its variant and the other facts of its log. Choose another service.`,
}
