import type { Action } from '../../spec/index.js'
import type { LineText, StepParams } from '../catalogue.js'
import {
  stopLimitText,
  writeHole,
  writeLevelConditions,
  writePart,
  writeSeal,
  writeShortConditions,
  writeShortPart,
  writeShortTightening,
  writeStuckWasher,
} from './stepPhrases.js'

type StepList = readonly (StepParams & { readonly do: Action })[]

/** `crack it loose with the 10 mm hex bit socket` */
const writeLoosening = ({ drive, socket }: StepParams) =>
  drive === 'hand' ? 'unscrew it' : `crack it loose${socket === undefined ? '' : ` with the ${socket}`}`

const writeStuckPlug = ({ beforeDraining, fluid }: StepParams) =>
  beforeDraining === true ? ` If it stays tight, leave the ${fluid ?? 'oil'} in.` : ''

const writeShortStuck = ({ beforeDraining, fluid }: StepParams) =>
  beforeDraining === true ? `; if it stays tight, leave the ${fluid ?? 'oil'} in` : ''

/** `Turn the plug in by hand until it is finger tight. Tighten it to 20–25 N·m: set 22.5 N·m on the small click wrench.` */
function writeTurningIn(
  turnIn: string,
  { torque, turns, setting, wrench, gap, hasStages, drive }: StepParams,
) {
  if (torque === undefined && drive === 'hand') return `${turnIn} and tighten it by hand.`
  const fingerTight = `${turnIn} by hand until it is finger tight.`
  if (turns !== undefined) return `${fingerTight} Then tighten it ${turns} turns more.`
  if (torque === undefined) {
    const state = gap === 'cannot tell' ? 'not known here' : 'not stated here'
    return `${fingerTight} Tighten it as the manual says. The torque is ${state}: see the manual.`
  }
  const set =
    setting && `set ${setting} on the ${wrench ?? 'wrench'}${hasStages === true ? ' for the last stage' : ''}`
  return `${fingerTight} Tighten it to ${torque}${set === undefined ? '' : `: ${set}`}.`
}

/**
 * Whether the seal is a washer or ring between plug and case, not sealant or the seal of a cover or filter.
 */
const isSealRing = ({ seal, cover, filter }: StepParams) =>
  cover === undefined && filter === undefined && seal !== 'thread sealant' && seal !== 'liquid gasket'

function writeLevelLine(check: StepParams, topUp: StepParams): string | undefined {
  const { level, below } = check
  if (level?.method !== 'to level hole' || !level.afterFilling || topUp.stopAt === undefined) return undefined
  const conditions = writeLevelConditions(check)
  const edgeText = `${below === undefined ? 'at' : `${below} below`} the lower edge of the hole`
  return [
    `Check the oil level at ${writePart(check, 'level opening')}: it must be ${edgeText}`,
    conditions.length === 0 ? '.' : `, with ${conditions.join(', ')}.`,
    ' If it is high, let the excess run out. If it is low, top up with the same oil.',
    ` ${stopLimitText(topUp.stopAt)}`,
  ].join('')
}

/** The gearcases of a leak check: `rear gearcase; hub (left)`; empty if the heading names the only one. */
function writeLeakPlaces(checks: StepList): string {
  const places = checks.map(({ gearcase, instance, shield }) => {
    const place =
      gearcase !== undefined && instance !== undefined ? `${gearcase} (${instance})` : (gearcase ?? instance)
    const shieldText = shield && `through the holes and along the edges of the ${shield}`
    return [place, shieldText].filter((text) => text !== undefined).join(', ')
  })
  const namedPlaces = places.filter((place) => place !== '')
  return namedPlaces.length === 0 ? '' : `: ${namedPlaces.join('; ')}`
}

const selectLeakChecks = (steps: StepList) => steps.filter((step) => step.do === 'check for leaks')

/** English texts for steps done together; the longest that fits is used. */
export const lineTexts: readonly LineText[] = [
  {
    actions: ['park on level ground', 'stop the engine'],
    full: () =>
      'Park the machine on level, firm ground. Lower any implement, set the parking brake, stop the engine and take out the key. Wait until nothing turns.',
    short: () => 'Park level; implements down, brake on, engine off, key out',
  },
  {
    actions: ['raise the machine', 'set on stands'],
    full: ({ jack }, standsStep) =>
      [
        `Raise the machine${jack === undefined ? '' : ` with the jack (${jack})`} and set it on rated stands`,
        standsStep.part === undefined ? '. ' : ` (${standsStep.part}). `,
        jack === undefined ? 'Find the jacking point in the manual: it is not stated here. ' : '',
        'Do not work under a jack. Make sure that it is steady on the stands.',
      ].join(''),
    short: ({ jack }, { part }) =>
      `Jack${jack === undefined ? ' (point: see the manual)' : `: ${jack}`}; stands${part === undefined ? '' : `: ${part}`}`,
  },
  {
    actions: ['lower the machine', 'clear away'],
    full: (_lowerStep, { how }) =>
      [
        'Make sure that no person or tool is under the machine.',
        'Raise it off the stands, take them out and lower it slowly to the ground.',
        'Take the drain pan, tools and chocks away.',
        ...(how === undefined ? [] : [`Release what you secured for the work: ${how}.`]),
        'Make sure that people are clear of the machine.',
      ].join(' '),
    short: (_lowerStep, { how }) =>
      `Clear below; off the stands, lower; pan, tools, chocks and people clear${how === undefined ? '' : `; release: ${how}`}`,
  },
  {
    actions: ['clean around', 'crack loose', 'nip by hand'],
    full: (cleanStep, crackStep) =>
      `Clean around ${writePart(cleanStep, 'opening')}, ${writeLoosening(crackStep)} and turn it back in by hand.${writeStuckPlug(crackStep)}`,
    short: (cleanStep, crackStep) =>
      `${writeShortPart(cleanStep, 'opening')}: clean, crack loose, nip by hand${writeShortStuck(crackStep)}`,
  },
  {
    actions: ['clean around', 'crack loose'],
    full: (cleanStep, crackStep) =>
      `Clean around ${writePart(cleanStep, 'opening')} and ${writeLoosening(crackStep)}.${writeStuckPlug(crackStep)}`,
    short: (cleanStep, crackStep) =>
      `${writeShortPart(cleanStep, 'opening')}: clean, crack loose${writeShortStuck(crackStep)}`,
  },
  {
    actions: ['place the pan', 'clean around', 'crack loose', 'take out'],
    full: (panStep, _cleanStep, crackStep) =>
      `Put the drain pan in place. Clean around ${writePart(panStep, 'drain plug')}, ${writeLoosening(crackStep)} and take it out.`,
    short: (panStep) => `Pan in place; ${writeShortPart(panStep, 'drain opening')}: clean, crack loose, out`,
  },
  {
    actions: ['clean around', 'crack loose', 'take out'],
    full: (cleanStep, crackStep) =>
      `Clean around ${writePart(cleanStep, 'opening')}, ${writeLoosening(crackStep)} and take it out.${writeStuckPlug(crackStep)}`,
    short: (cleanStep, crackStep) =>
      `${writeShortPart(cleanStep, 'opening')}: clean, crack loose, out${writeShortStuck(crackStep)}`,
  },
  {
    actions: ['take out', 'let drain'],
    full: (outStep, { wait, fluid }) =>
      outStep.isOther !== true || fluid === 'grease'
        ? undefined
        : `Take out ${writePart(outStep, 'fill plug')} to let air in. Let the oil drain until it only drips${wait === undefined ? '' : `, at least ${wait}`}.`,
    short: (outStep, { wait, fluid }) =>
      outStep.isOther !== true || fluid === 'grease'
        ? undefined
        : `${writeShortPart(outStep, 'fill plug')} out for air; drain until it only drips${wait === undefined ? '' : ` (at least ${wait})`}`,
  },
  {
    actions: ['inspect the oil', 'inspect the magnet', 'clean the magnet'],
    full: ({ fluid }, magnetStep) =>
      fluid === 'grease'
        ? undefined
        : `Inspect the old oil in good light, and the magnet of ${writePart(magnetStep, 'plug')}. If either has chips, flakes or pieces, stop: close the case. Do not refill. Tag the machine out. If there is only grey paste or some glitter at a first service, go on. Wipe the magnet clean. If the oil is milky, stop: find where the water came in. Flush a case that had milky oil before you refill it. Fill it with the manual's oil. Run the machine briefly. Let it cool. Drain the oil.`,
    short: ({ fluid }) =>
      fluid === 'grease'
        ? undefined
        : 'Oil and magnet: at chips or pieces stop, close, tag out; if milky, find the water and flush; wipe the magnet',
  },
  {
    actions: ['take off old seal', 'wipe the seal face'],
    full: (sealStep, faceStep) =>
      isSealRing(sealStep)
        ? `Remove the old ${writeSeal(sealStep)}: leave none of it on the case.${writeStuckWasher(sealStep)} Wipe ${writePart(faceStep, 'plug')} and its seat clean.`
        : undefined,
    short: (sealStep, faceStep) =>
      isSealRing(sealStep)
        ? `Old ${writeSeal(sealStep)} off, none left on the case; wipe ${writeShortPart(faceStep, 'plug')} and seat`
        : undefined,
  },
  {
    actions: ['wipe the seal face', 'inspect the seal'],
    full: (faceStep, sealStep) =>
      isSealRing(sealStep)
        ? `Wipe ${writePart(faceStep, 'plug')} and its seat clean. Inspect its ${writeSeal(sealStep)} for cuts and flat spots. If you find any, replace it.`
        : undefined,
    short: (faceStep, sealStep) =>
      isSealRing(sealStep)
        ? `Wipe ${writeShortPart(faceStep, 'plug')} and seat, inspect its ${writeSeal(sealStep)}`
        : undefined,
  },
  {
    actions: ['fit new seal', 'fit', 'tighten'],
    full: (sealStep, plugStep, tightenStep) =>
      isSealRing(sealStep)
        ? writeTurningIn(
            `Fit ${writePart(plugStep, 'plug')} with a new ${writeSeal(sealStep)} and turn it in`,
            tightenStep,
          )
        : undefined,
    short: (sealStep, _plugStep, tightenStep) =>
      isSealRing(sealStep)
        ? `New ${writeSeal(sealStep)}; ${writeShortTightening(tightenStep, writeShortPart(tightenStep, 'plug'))}`
        : undefined,
  },
  {
    actions: ['fit', 'tighten'],
    full: (plugStep, tightenStep) => writeTurningIn(`Turn ${writePart(plugStep, 'plug')} in`, tightenStep),
    short: (_plugStep, tightenStep) => writeShortTightening(tightenStep, writeShortPart(tightenStep, 'plug')),
  },
  {
    actions: ['measure the oil', 'pour the oil', 'wait for the hose'],
    full: ({ volume, oil, totalVolume }, pourStep, { wait, fluid, usualWait }) =>
      volume === undefined || totalVolume !== undefined || fluid === 'grease'
        ? undefined
        : [
            `Measure ${volume} of ${oil ?? 'the right oil'} in a clean jug and pour it in slowly through ${writeHole(pourStep)}.`,
            `Wait until nothing drips from the hose${wait === undefined ? '' : `: about ${wait} from the start of the pour`}.`,
            ...(wait === undefined && usualWait !== undefined ? [usualWait] : []),
          ].join(' '),
    short: ({ volume, oil, totalVolume }, pourStep, { fluid }) =>
      volume === undefined || totalVolume !== undefined || fluid === 'grease'
        ? undefined
        : `Measure and pour ${oil ?? 'the right oil'}: ${writeShortPart(pourStep, 'fill opening')}; hose empty when nothing drips`,
  },
  {
    actions: ['check the level', 'top up'],
    full: writeLevelLine,
    short: (check, { stopAt }) =>
      stopAt === undefined
        ? undefined
        : `Level: ${writeShortPart(check, 'level opening')}${writeShortConditions(check)}${check.below === undefined ? '' : `, ${check.below} below the edge`}; if low, top up; at the maximum, stop`,
  },
  {
    actions: ['wipe down', 'check for leaks'],
    anyOrder: true,
    full: (...steps) =>
      [
        steps.some((step) => step.do === 'wipe down') ? 'Wipe off all spilt oil. ' : '',
        `Check each plug and joint that you opened for oil${writeLeakPlaces(selectLeakChecks(steps))}.`,
        " If one weeps, replace its seal. Do not turn it past the manual's figure.",
      ].join(''),
    short: (...steps) =>
      `${steps.some((step) => step.do === 'wipe down') ? 'Wipe down; leak check' : 'Leak check'}${writeLeakPlaces(selectLeakChecks(steps))}; if it weeps, a new seal, no more torque`,
  },
]
