import type { ToolKind } from '../../procedure/index.js'
import type { PartName, ServiceCodes } from '../../service/index.js'
import type { Say, Texts } from '../catalogue.js'
import { capitalize, join, nameOf } from '../phrases.js'
import { cardWords } from './card.js'
import { METER_NAMES, SIGNAL_WORDS, writeFactNames } from './words.js'

const SUPPLY_NAMES: Readonly<Record<string, string>> = {
  rags: 'rags',
  'gloves and goggles': 'gloves and goggles',
  oil: 'oil',
  additive: 'additive',
  seal: 'new seals',
  sealant: 'sealant',
  'sample bottle': 'a clean, dry sample bottle with its cap for each oil sample',
  solvent: 'solvent, and a tray to wash the strainer in',
  'suction pump': 'a suction pump with a hose that reaches the bottom of the case',
  'used-oil container': 'a closed container marked for used oil',
}

const TOOL_NAMES: Readonly<Record<ToolKind, string>> = {
  chocks: 'chocks',
  jack: 'jack',
  stands: 'stands',
  ramps: 'ramps',
  brush: 'brush',
  'breaker bar': 'breaker bar',
  'socket or key': 'socket or key',
  'drain pan': 'drain pan',
  'suction pump': 'suction pump',
  scraper: 'scraper',
  'measuring vessel': 'measuring vessel',
  'funnel and hose': 'funnel and hose',
  'torque wrench': 'torque wrench',
}

const writeRole = (role: string): string =>
  (cardWords.roles as Readonly<Record<string, string>>)[role]?.toLowerCase() ?? role

/** `rear gearcase, left: drain plug`. */
function writePart({ gearcase, part, instance }: PartName): string {
  const placeText = [gearcase, instance?.name].filter((word) => word !== undefined).join(', ')
  if (part === undefined) return placeText === '' ? 'the machine' : placeText
  return placeText === '' ? part : `${placeText}: ${part}`
}

/** `2019 to 2021`, `from KA004512`. */
function writeRange(from: string | number | undefined, to: string | number | undefined, prefix = ''): string {
  if (from === undefined) return to === undefined ? `that begin with ${prefix}` : `up to ${prefix}${to}`
  return to === undefined ? `from ${prefix}${from}` : `${prefix}${from} to ${prefix}${to}`
}

/** `80 to 95 h`, `at least 80 h`; rounded to two digits after a word such as `about`. */
function writeAmount(
  { min, max, unit }: { readonly min?: number; readonly max?: number; readonly unit: string },
  say: Say,
  about = '',
): string {
  const writeQuantity = (value: number) =>
    say.quantity({ value: about === '' ? value : Number(value.toPrecision(2)), unit })
  if (min === undefined) return max === undefined ? '' : `at most ${writeQuantity(max)}`
  if (max === undefined) return `at least ${writeQuantity(min)}`
  return writeQuantity(min) === writeQuantity(max)
    ? `${about}${writeQuantity(min)}`
    : `${about}${writeQuantity(min)} to ${writeQuantity(max)}`
}

export const serviceTexts: Texts<ServiceCodes> = {
  'service/part-not-known': ({ part, facts }, say) =>
    `Unknown whether this machine has this part (${writePart(part)}). Find out the ${say.list(writeFactNames(facts))}.`,
  'service/variant-not-known': ({ facts, candidates }, say) =>
    `The variant is not known: ${candidates.join(' or ')}. Find out the ${say.list(writeFactNames(facts))}.`,
  'service/variant-contradicted': ({ candidates }) =>
    candidates.length === 0
      ? 'The facts in the log fit no variant of the sheet. Check the plate.'
      : `The log contradicts itself: its other facts fit ${candidates.join(' or ')}, not the variant that it names. Check the plate.`,
  'service/figure-not-stated': ({ part, role }) =>
    role === 'fasteners'
      ? `${capitalize(writePart(part))}: number of fasteners not stated. Count them.`
      : `${capitalize(writePart(part))}: ${writeRole(role)} not stated. See the manual.`,
  'service/figure-not-known': ({ part, role, facts }, say) =>
    `${capitalize(writePart(part))}: ${writeRole(role)} depends on ${say.list(writeFactNames(facts))}. Find that out first.`,
  'service/torque-not-settled': ({ part }) =>
    `${capitalize(writePart(part))}: the torque is stated, but no wrench setting was found. See “${cardWords.sections.tightening}”.`,
  'service/settings-need-toolbox': ({ parts }) =>
    `No toolbox given, so the stated torques have no wrench setting (${parts.map(writePart).join('; ')}). Give a toolbox.`,
  'service/due-not-known': ({ parts, service, reason }, say) =>
    `Unknown whether the ${service} is due (${parts.map(writePart).join('; ')}). ${say.reason(reason)}`,
  'service/ambient-not-given': ({ part }) =>
    `No ambient temperature given; oil not matched to temperature (${writePart(part)}).`,
  'service/no-toolbox': () => 'No toolbox given: wrenches, vessel and pan not checked.',
  'service/no-stock': () => 'No stock given: everything is listed to buy.',
  'service/viscosity-not-known': ({ oil }) =>
    `The viscosity of ${oil} at this temperature is not known, so no pouring time is calculated.`,
  'service/oil-for-ambient': ({ oil, ambient }, say) =>
    `At ${say.quantity(ambient)} the sheet permits ${oil}.`,
  'service/several-suitable-oils': ({ part, oils, chosen }, say) =>
    `Several oils in stock meet the manual (${writePart(part)}): ${say.list(oils)}. This plan uses ${chosen}; record the oil that you fill in.`,
  'service/oil-only-choice': ({ oil }) => `The sheet permits ${oil} and no other.`,
  'service/no-oil-for-ambient': ({ part, ambient }, say) =>
    `No oil in the sheet is permitted at ${say.quantity(ambient)} (${writePart(part)}).`,
  'service/oil-does-not-meet': ({ container, oil, reason }, say) =>
    `The ${container} is not ${oil}. ${say.reason(reason)}`,
  'service/ask-oil-maker': ({ container, oil, reason }, say) =>
    `Ask the oil's maker whether the ${container} may replace ${oil}. ${say.reason(reason)}`,
  'service/no-suitable-oil': ({ part, oil, offered, reasons }, say) =>
    [
      `No suitable oil in stock for the ${writePart(part)}: required ${oil}, in stock ${say.list(offered)}.`,
      ...reasons.map((reason) => say.reason(reason)),
    ].join(' '),
  'service/no-wrench-fits': ({ part, reasons }, say) =>
    [
      `No wrench in the toolbox can be set for the ${writePart(part)}.`,
      ...reasons.map((reason) => say.reason(reason)),
    ].join(' '),
  'service/wrench-required': ({ from, to, count }, say) =>
    `Get a torque wrench of ${say.quantity({ kind: 'limits', min: String(from.value), max: String(to.value), unit: to.unit })}, for ${say.count(count, 'tightening', 'tightenings')}.`,
  'service/calibration-expired': ({ wrench, dueOn }, say) =>
    `The calibration of the ${wrench} expired on ${say.date(dueOn)}. Have it calibrated before use.`,
  'service/calibration-cycles-used-up': ({ wrench, cycles, limit }, say) =>
    `The ${wrench} has done ${say.number(cycles)} cycles since its calibration (limit ${say.number(limit)}). Have it calibrated.`,
  'service/scale-reversed': ({ wrench, lowest, highest }, say) =>
    `Scale of the ${wrench}: the lowest mark, ${say.quantity(lowest)}, exceeds the highest, ${say.quantity(highest)}. The wrench is not used; correct the toolbox.`,
  'service/calibration-not-recorded': ({ wrench }) =>
    `The toolbox does not give the last calibration of the ${wrench}.`,
  'service/socket-found': ({ tool, size }) =>
    size === '' ? `${capitalize(tool)}.` : `${capitalize(tool)} fits ${size}.`,
  'service/adaptor-between': ({ adaptor, wrenches }, say) =>
    `Put the ${adaptor} between the socket and the ${say.list(wrenches)}. It is in line, so the setting does not change.`,
  'service/socket-missing': ({ part, drive, size }) =>
    `The toolbox has no tool for ${size === '' ? drive : `${drive} ${size}`} (${writePart(part)}).`,
  'service/turned-by-hand': ({ part }) => `By hand (${writePart(part)}).`,
  'service/drive-not-stated': ({ part }) =>
    `The sheet states no tool size (${writePart(part)}). Find out the size before you leave.`,
  'service/vessel-too-coarse': ({ vessel, part, reason }, say) =>
    `The ${vessel} is not accurate enough for the ${writePart(part)}. ${say.reason(reason)}`,
  'service/no-vessel': ({ part }) => `The toolbox has no measuring jug (${writePart(part)}).`,
  'service/pan-too-small': ({ pan, size, volume }, say) =>
    `The ${pan} (${say.quantity(size)}) is too small for the ${say.quantity(volume)} of this visit. Bring a larger one, or empty it between drains.`,
  'service/no-pan': ({ volume }, say) =>
    `The toolbox has no drain pan; this visit drains ${say.quantity(volume)}.`,
  'service/stands-too-few': ({ have, need }, say) =>
    `Stands required: ${say.number(need)}; in the toolbox: ${say.number(have)}.`,
  'service/stands-too-weak': ({ stands, rating, mass }, say) =>
    `The ${stands} are rated ${say.quantity(rating)} each; the machine weighs ${say.quantity(mass)}. Do not use them.`,
  'service/stands-strong-enough': ({ stands, rating, mass }, say) =>
    `The ${stands} are rated ${say.quantity(rating)} each; the whole machine weighs ${say.quantity(mass)}.`,
  'service/stands-missing': ({ need }, say) =>
    `Stands required: ${say.number(need)}; none in the toolbox. Never rely on a jack alone.`,
  'service/ramps-too-few': ({ have, need }, say) =>
    `Ramps required: ${say.number(need)}; in the toolbox: ${say.number(have)}.`,
  'service/ramps-too-weak': ({ ramps, rating, mass }, say) =>
    `The ${ramps} are rated ${say.quantity(rating)} each; the machine weighs ${say.quantity(mass)}. Do not use them.`,
  'service/ramps-strong-enough': ({ ramps, rating, mass }, say) =>
    `The ${ramps} are rated ${say.quantity(rating)} each; the whole machine weighs ${say.quantity(mass)}.`,
  'service/ramps-missing': ({ need }, say) => `Ramps required: ${say.number(need)}; none in the toolbox.`,
  'service/mass-not-stated': () =>
    "The sheet does not state the machine's mass: compare the rating of stands or ramps with its plate.",
  'service/seal-every-opening': ({ count }, say) => `${say.number(count)} new: replace at every opening.`,
  'service/seal-replace-not-stated': ({ count }, say) =>
    `${say.number(count)} new: the manual does not say when to replace it.`,
  'service/access-not-stated': ({ part }) =>
    `${capitalize(writePart(part))}: access not stated. See the manual. If the machine must be raised, use the manual's lifting points and rated stands. Never work under a machine that only a jack holds.`,
  'service/seal-on-condition': ({ count }, say) =>
    `Inspect it and use it again only if it is good; have ${say.count(count, 'spare', 'spares')} ready.`,
  'service/seal-not-known': ({ part }) => `The seal is not known (${writePart(part)}). See the manual.`,
  'service/pour-through': ({ filler, oil, temperature }, say) =>
    `${capitalize(oil)} at ${say.quantity(temperature)} through the ${filler}.`,
  'service/hose-bore-not-known': ({ filler }) =>
    `Bore of the hose not known (${filler}), so no pouring time is calculated. The hose is empty when nothing drips.`,
  'service/usual-hoses': ({ from, to, fastest, slowest }, say) =>
    `About ${say.number(Number(fastest.value))} to ${say.quantity(slowest)} for usual hoses (bore ${say.number(Number(from.value))} to ${say.quantity(to)}).`,
  'service/warm-the-bottle': ({ temperature }, say) =>
    `At ${say.quantity(temperature)} oil is thick: keep the bottle indoors before the visit, or stand the bottle, with its cap on, in warm water. Never heat it over a flame.`,
  'service/no-filler': ({ part }) => `The toolbox has no funnel with a hose (${writePart(part)}).`,
  'service/no-oil-to-pour': ({ part }) =>
    `The oil is not known, so no pouring time is calculated (${writePart(part)}).`,
  'service/pour-volume-not-known': ({ part }) =>
    `The quantity is not known, so no pouring time is calculated (${writePart(part)}).`,
  'service/drain-until-drips': () => 'Drain until it only drips.',
  'service/settle-stated': ({ minutes }, say) =>
    `The sheet gives a settling time of ${say.quantity(minutes)}.`,
  'service/settle-not-stated': () => 'The sheet states no settling time. See the manual.',
  'service/cure-stated': ({ product, time }, say) =>
    `Let the ${product} cure for ${say.quantity(time)} before oil touches it.`,
  'service/cure-not-stated': ({ product }) =>
    `The sheet states no cure time of the ${product}. See the manual and the label.`,
  'service/reading-stale': ({ meter, date, days, staleAfter }, say) =>
    `The last reading of ${METER_NAMES[meter] ?? meter} is ${say.count(days, 'day', 'days')} old (${say.date(date)}; limit ${say.count(staleAfter, 'day', 'days')}). Read the meter again before you rely on “not due”.`,
  'service/time-sum': ({ steps, minutes, waitMinutes }, say) =>
    `${say.count(steps, 'step', 'steps')}: ${say.count(minutes, 'minute', 'minutes')} of work and ${say.count(waitMinutes, 'minute', 'minutes')} of waiting (our own estimate).`,
  'service/time-from-records': ({ count, min, max, estimate }, say) =>
    `Median of ${say.count(count, 'visit', 'visits')} with the same work, ${say.number(min)} to ${say.number(max)} min; our own estimate is ${say.number(estimate)} min.`,
  'service/time-few-visits': ({ count, required }, say) =>
    `${say.count(count, 'visit', 'visits')} with the same work on record; from ${say.number(required)} visits on, their median replaces the estimate.`,
  'service/labour': ({ rate, cost }, say) =>
    `Labour: ${say.number(cost.amount)} ${cost.currency} at ${say.number(rate.amount)} ${rate.currency} an hour.`,
  'service/waiting-time-not-known': ({ count }, say) =>
    `${say.count(count, 'wait', 'waits')} of unknown length ${count === 1 ? 'is' : 'are'} not included.`,
  'service/only-if-low': () => 'Only if the level is low',
  'service/only-on-some-machines': ({ variants, modelYears, serials, market }) => {
    const prefix = serials?.prefix ?? ''
    const facts = [
      variants && join(variants, 'or'),
      modelYears && `model years ${writeRange(modelYears.from, modelYears.to)}`,
      serials && `serial numbers ${writeRange(serials.from, serials.to, prefix)}`,
      market && `the market ${join(market, 'or')}`,
    ]
    return `Only on ${join(
      facts.filter((fact) => fact !== undefined),
      'and',
    )}`
  },
  'service/supply': ({ supply }) =>
    `${capitalize((Object.hasOwn(SUPPLY_NAMES, supply) ? SUPPLY_NAMES[supply] : undefined) ?? supply)}.`,
  'service/sample-label': ({ machine, part, date, hours, oil, hoursOnOil }, say) =>
    `Label of the sample: ${[
      machine,
      writePart(part),
      date,
      hours && say.quantity(hours),
      oil ?? 'oil not known',
      hoursOnOil === undefined ? 'hours on the oil not known' : `${say.quantity(hoursOnOil)} on the oil`,
    ]
      .filter(Boolean)
      .join(', ')}; bottle number ____.`,
  'service/hand-tools': ({ tools }, say) =>
    `Hand tools: ${say.list(tools.map((tool) => nameOf(TOOL_NAMES, tool)))}.`,
  'service/used-oil': ({ volume }, say) =>
    `Bring a closed, marked container for up to ${say.quantity(volume)} of used oil.`,
  'service/drain-limit-from-dry-fill': ({ part, volume }, say) =>
    `The sheet states no refill; up to the dry fill of ${say.quantity(volume)} may drain (${writePart(part)}).`,
  'service/used-oil-not-known': ({ part }) => `The quantity of used oil is not known (${writePart(part)}).`,
  'service/manual-first': () => "The machine's own manual and the local codes come before this card.",
  'service/licensed-work': () => 'Leave work that needs a licence to people who hold one.',
  'service/record-not-counted': ({ date, reason }, say) =>
    `The record of ${say.date(date)} does not count. ${say.reason(reason)}`,
  'service/not-to-be-used': ({ signal, date, fault }, say) =>
    `${SIGNAL_WORDS[signal]}: Do not use this machine. A fault has been open since ${say.date(date)}. ${say.reason(fault)}`,
  'service/no-oil-added': ({ part, since }, say) =>
    `${capitalize(writePart(part))}: no oil added since ${say.date(since)}.`,
  'service/oil-start-not-known': ({ part }) =>
    `No oil change and no day of first use on record (${writePart(part)}): enter them to see how fast oil is lost.`,
  'service/oil-added': ({ part, added, count, since, days, hours, per100Hours, percentOfFill }, say) => {
    const topUpsText = count === 1 ? '' : ` in ${say.number(count)} top-ups`
    const durationText = hours
      ? `, ${writeAmount(hours, say)}`
      : days === undefined
        ? ''
        : `, ${say.count(days, 'day', 'days')}`
    const startText = since === undefined ? '' : ` since ${say.date(since)}`
    const rateText = per100Hours ? `, ${writeAmount(per100Hours, say, 'about ')} per 100 h` : ''
    const shareText = percentOfFill === undefined ? '' : `, ${say.number(percentOfFill, 0)} % of the fill`
    return `${capitalize(writePart(part))}: ${say.quantity(added)} added${topUpsText}${startText}${durationText}${rateText}${shareText}.`
  },
  'service/top-up-instance-missing': ({ part }) =>
    `The top-ups do not name the instance (${writePart(part)}): look for leaks at each.`,
  'service/oil-may-have-settled': () =>
    'A small quantity soon after an oil change: the oil may have settled. Check the level again after 10 h.',
  'service/look-for-leaks': () =>
    'A closed gearcase uses no oil. Look for leaks, and check the level again after 10 h.',
  'service/find-the-leak': () => 'Find the leak before you top up the oil.',
  'service/loses-oil': ({ signal, reasons }, say) =>
    `${SIGNAL_WORDS[signal]}: ${reasons.map((reason) => say.reason(reason)).join(' ')}`,
  'service/used-oil-rules': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Take used oil to a collection point in a sound, closed container marked as used oil.`,
  'service/wrong-sheet': ({ required, revision, given, givenRevision }) =>
    `Expected sheet ${required} revision ${revision}, found ${given} revision ${givenRevision}.`,
  'service/service-not-on-sheet': ({ service, known }, say) =>
    `The sheet has no service ${service}; it has ${say.list(known)}.`,
  'service/procedure-errors': ({ count, signal }, say) =>
    `${SIGNAL_WORDS[signal]}: The steps of this card come from a writer's procedure with ${say.count(count, 'error', 'errors')}, listed under “Errors in the documents”. Do not follow them until they are corrected.`,
  'service/procedure-of-other-services': ({ services, asked }, say) =>
    `The procedure is for ${say.list(services)}, not for ${say.list(asked)}. Choose its services, or another procedure.`,
  'service/service-not-on-machine': ({ service }) =>
    `The ${service} does not apply to this machine (by its variant, serial number, model year and market). Choose another service.`,
}
