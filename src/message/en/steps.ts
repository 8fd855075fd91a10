import type { StepTexts } from '../catalogue.js'
import {
  takeOffCoverText,
  WHEEL_WORDS,
  writeCoverTightening,
  writeHole,
  writeLevel,
  writePart,
  writeSeal,
  writeShortConditions,
  writeShortPart,
  writeShortTightening,
  writeStuckWasher,
  writeTightening,
  writeTopUp,
} from './stepPhrases.js'

/** The steps in English: short, imperative, one instruction a sentence. */
export const stepTexts: StepTexts = {
  'find the variant': {
    full: () =>
      'Find out which variant this machine is: look at its plate and its parts. Leave out the steps and figures for other variants.',
    short: () => 'Find the variant first',
    show: () => "The machine's plate, close up.",
  },
  'read the manual': {
    full: () => "Read the machine's own manual first. If this card differs from it, follow the manual.",
    short: () => 'Manual first',
    show: () => "The machine's manual, open at the page of the service.",
  },
  'wear protection': {
    full: () => 'Put on gloves and eye protection.',
    short: () => 'Gloves, eye protection',
    show: () => 'Gloved hands, and the eye protection.',
  },
  'park on level ground': {
    full: () => 'Park the machine on level, firm ground.',
    short: () => 'Park level',
    show: () => 'The whole machine from the side, level on firm ground.',
  },
  'carry to level ground': {
    full: () =>
      'Do not start or tow the machine. Push or winch it clear. Carry it to level, firm ground. Set the parking brake. Take out the key.',
    short: () => 'Do not start or tow: winch clear, carry to level ground, brake on, key out',
    show: () => 'The machine on a trailer, engine off.',
  },
  'warm the oil': {
    full: ({ temperature }) =>
      temperature === undefined
        ? 'Run the machine until the oil is warm, not hot.'
        : `Run the machine until the oil is warm, not hot. The manual gives ${temperature}.`,
    short: () => 'Warm the oil, not hot',
    show: () => 'The machine on a short drive.',
  },
  'stop the engine': {
    full: () =>
      'Lower any implement to the ground. Set the parking brake. Stop the engine. Take out the key. Wait until nothing turns.',
    short: () => 'Implements down, brake on, engine off, key out',
    show: () => 'A hand, taking out the key.',
  },
  'chock the wheels': {
    full: ({ part }) =>
      `Chock both sides of each wheel ${part === undefined ? 'or track that stays on the ground' : `of the ${part}`}.`,
    short: ({ part }) => `Chock both sides: ${part ?? 'each wheel or track on the ground'}`,
    show: () => 'The chocks, hard against both sides of each wheel.',
  },
  'secure the machine': {
    full: ({ part, how }) =>
      `Secure ${part === undefined ? 'what the manual names' : `the ${part}`}: ${how ?? 'see the manual'}.`,
    short: ({ part, how }) => `${part ?? 'Secure'}: ${how ?? 'see the manual'}`,
    show: ({ part }) => `${part ?? 'Everything'}, secured.`,
  },
  'raise the machine': {
    full: ({ part, jack }) =>
      jack !== undefined
        ? `Raise the machine with the jack (${jack}). Do not work under a jack.`
        : `Raise the machine${part === undefined ? '' : ` for stands (${part})`}. Find the jacking point in the manual: it is not stated here. Do not work under a jack.`,
    short: ({ part, jack }) =>
      jack !== undefined
        ? `Jack: ${jack}`
        : `Raise${part === undefined ? '' : ` for stands (${part})`} (jacking point: see the manual)`,
    show: () => 'The jack at its lifting point, then the wheel as it lifts off the ground.',
  },
  'set on stands': {
    full: ({ part }) =>
      `Set the machine on rated stands${part === undefined ? '' : ` (${part})`}. Make sure that it is steady.`,
    short: ({ part }) => `Stands${part === undefined ? '' : `: ${part}`}`,
    show: () => 'The stands at their support points, and the lowered jack.',
  },
  'lower the machine': {
    full: () =>
      'Make sure that no person or tool is under the machine. Raise it off the stands. Take the stands out. Lower it slowly to the ground.',
    short: () => 'Clear below; off the stands, stands out, lower the machine',
    show: () => 'The wheels as they touch the ground.',
  },
  'drive onto ramps': {
    full: ({ part }) =>
      `Set rated ramps straight and close in front of ${part === undefined ? 'every wheel' : `the wheels of the ${part}`}. Let one person guide you from the side. Drive up slowly in the lowest gear. Stop with every wheel against the end of its ramp.`,
    short: ({ part }) => `Ramps, ${part ?? 'every wheel'}: drive up slowly, with a guide, to the end stops`,
    show: () => 'The wheels as they climb, the person who guides, and the wheels against the end stops.',
  },
  'drive off ramps': {
    full: () =>
      'Make sure that no person, tool or pan is under the machine. Let one person guide you from the side. Release the brake. Drive off slowly, the same way back. Take the ramps away.',
    short: () => 'Clear below; drive off the ramps slowly, with a guide',
    show: () => 'The wheels as they roll down to the ground.',
  },
  'remove shield': {
    full: (params) => `Take off ${writePart(params, 'shield')}. Keep its fasteners together.`,
    short: (params) => `${writeShortPart(params, 'shield')} off`,
    show: (params) => `${writePart(params, 'shield')} as it comes off, and its fasteners.`,
  },
  'refit shield': {
    full: (params) =>
      `Put ${writePart(params, 'shield')} back with all its fasteners. ${writeTightening(params, 'the fasteners')}`,
    short: (params) =>
      `${writeShortPart(params, 'shield')} back. ${writeShortTightening(params, 'fasteners')}`,
    show: (params) => `${writePart(params, 'shield')} as it goes back.`,
  },
  'turn the wheel': {
    full: (params) =>
      params.wheelMark === undefined
        ? `Turn the wheel as the manual shows for ${writePart(params, 'opening')}.`
        : `Turn ${writePart({ ...params, part: 'wheel' }, 'wheel')} until its mark is ${WHEEL_WORDS[params.wheelMark]}. If a brake or gear holds it, release that as the manual says, with the other axle chocked.`,
    short: (params) =>
      `Turn wheel${params.instance === undefined ? '' : ` (${params.instance})`}: ${params.wheelMark ?? 'as the manual shows'}; if a brake or gear holds it, see the manual`,
    show: () => 'The mark on the wheel, until it is in position.',
  },
  'roll the machine': {
    full: (params) =>
      `Release the brake. Move the machine slowly. Stop when the mark for ${writePart(params, 'plug')} is ${params.wheelMark === undefined ? 'as the manual shows' : WHEEL_WORDS[params.wheelMark]}. Set the brake.`,
    short: (params) =>
      `Move the machine${params.instance === undefined ? '' : ` (${params.instance})`}: ${params.wheelMark ?? 'as the manual shows'}`,
    show: () => 'The mark on the wheel as the machine rolls, and the person at the brake.',
  },
  'clean around': {
    full: (params) => `Clean the area around ${writePart(params, 'opening')}.`,
    short: (params) => `Clean around ${writeShortPart(params, 'opening')}`,
    show: (params) => `${writePart(params, 'opening')}, dirty and then clean.`,
  },
  'crack loose': {
    full: (params) =>
      `${params.drive === 'hand' ? `Unscrew ${writePart(params, 'plug')} a turn by hand.` : `Crack ${writePart(params, 'plug')} loose.`}${params.beforeDraining === true ? ` If it stays tight, leave the ${params.fluid ?? 'oil'} in.` : ''}`,
    short: (params) =>
      params.drive === 'hand'
        ? `Unscrew ${writeShortPart(params, 'plug')}`
        : `Crack ${writeShortPart(params, 'plug')} loose${params.beforeDraining === true ? `; if it stays tight, leave the ${params.fluid ?? 'oil'} in` : ''}`,
    show: (params) =>
      `${params.drive === 'hand' ? 'A hand' : 'The bar'} on ${writePart(params, 'plug')}, and its first small turn.`,
  },
  'nip by hand': {
    full: (params) => `Turn ${writePart(params, 'plug')} back in by hand.`,
    short: (params) => `Nip ${writeShortPart(params, 'plug')} by hand`,
    show: (params) => `Fingers on ${writePart(params, 'plug')}.`,
  },
  'place the pan': {
    full: (params) =>
      params.filter === undefined
        ? `Put the drain pan under ${writePart(params, 'drain opening')}.`
        : `Put a pan under ${writePart(params, 'filter')}. Leave one under the open drain.`,
    short: () => 'Pan in place',
    show: (params) => `The pan, centred under ${writePart(params, 'drain opening')}.`,
  },
  'take out': {
    full: (params) => `Take out ${writePart(params, 'plug')}.`,
    short: (params) => `${writeShortPart(params, 'plug')} out`,
    show: (params) => `${writePart(params, 'plug')} as it comes out.`,
  },
  'take an oil sample': {
    full: (params) =>
      `Let the first oil run out of ${writePart(params, 'drain opening')}. Hold the clean bottle in the middle of the stream. Fill it to three quarters and close it at once. Put the label on. Do not fill it from the pan.`,
    short: () => 'Oil sample: let the first oil run past; bottle from mid-stream, closed, labelled',
    show: () => 'The bottle in the middle of the stream, then its cap and its label.',
  },
  'let drain': {
    full: ({ wait, fluid }) =>
      fluid === 'grease'
        ? 'Let the grease run out. Scrape out the rest.'
        : wait === undefined
          ? 'Let the oil drain until it only drips.'
          : `Let the oil drain until it only drips. Allow at least ${wait}.`,
    short: ({ wait, fluid }) =>
      fluid === 'grease'
        ? 'Grease out: scrape out the rest'
        : `Drain until it only drips${wait === undefined ? '' : ` (at least ${wait})`}`,
    show: () => 'The stream of oil, until it only drips.',
  },
  'suck out the oil': {
    full: (params) => `Extract the oil through ${writePart(params, 'opening')}.`,
    short: (params) => `Extract through ${writeShortPart(params, 'opening')}`,
    show: (params) => `The suction hose in ${writePart(params, 'opening')}.`,
  },
  'take off cover': {
    full: takeOffCoverText,
    short: (params) =>
      params.cover?.carriesBearings === true
        ? `${writeShortPart(params, 'cover')} off: only by the manual`
        : `Break ${writeShortPart(params, 'cover')} loose, then off`,
    show: (params) => `${writePart(params, 'cover')} as it comes away and the oil runs out.`,
  },
  'inspect the oil': {
    full: ({ fluid }) =>
      fluid === 'grease'
        ? 'Inspect the old grease in good light. If it contains chips, flakes or pieces, stop: do not refill. Tag the machine out. If it is milky, stop: find where the water came in. Clean all of it out.'
        : "Inspect the old oil in good light. If it contains chips, flakes or pieces, stop: close the case. Do not refill. Tag the machine out. If it contains only grey paste or some glitter at a first service, go on. If it is milky, stop: find where the water came in. Flush a case that had milky oil before you refill it. Fill it with the manual's oil. Run the machine briefly. Let it cool. Drain the oil.",
    short: () => 'Oil: at chips or pieces stop, close, tag out; if milky, find the water and flush',
    show: () => 'The old oil in the pan, in good light.',
  },
  'inspect the magnet': {
    full: (params) =>
      `Inspect the magnet of ${writePart(params, 'plug')}. If it has chips, flakes or pieces, stop: close the case. Do not refill. Tag the machine out. If it has only grey paste or some glitter at a first service, go on.`,
    short: () => 'Magnet: at chips or pieces stop, close, tag out',
    show: () => 'The magnet, close up.',
  },
  'clean the magnet': {
    full: () => 'Wipe the magnet clean.',
    short: () => 'Wipe the magnet',
    show: () => 'The clean magnet.',
  },
  'take off filter': {
    full: (params) =>
      params.filter?.screwed === true
        ? `Screw ${writePart(params, 'filter')} off slowly. Let its oil run into the pan. Make sure that its old ring comes off with it.`
        : `Take out ${writePart(params, 'filter')}. Let its oil run into the pan.`,
    short: (params) => `${writeShortPart(params, 'filter')} off`,
    show: (params) => `${writePart(params, 'filter')} as it comes off, over the pan.`,
  },
  'inspect the filter': {
    full: (params) =>
      `Inspect ${writePart(params, 'filter')} for metal. If it contains chips, flakes or pieces, stop: close the case. Do not refill. Tag the machine out. If it contains only grey paste or some glitter at a first service, go on.`,
    short: (params) => `${writeShortPart(params, 'filter')}: at chips or pieces stop, close, tag out`,
    show: (params) => `The inside of ${writePart(params, 'filter')}, close up.`,
  },
  'clean the filter': {
    full: (params) =>
      `Clean ${writePart(params, 'strainer')} with solvent. Let it dry. If it is torn or dented, replace it.`,
    short: (params) => `Clean ${writeShortPart(params, 'strainer')}`,
    show: (params) => `${writePart(params, 'strainer')}, clean, against the light.`,
  },
  'fit filter': {
    full: (params) => {
      const filterText = writePart(params, 'filter')
      const isClean = params.filter?.renewed === false
      if (params.filter?.screwed !== true)
        return `${isClean ? `Put ${filterText} back in` : `Put in a new ${writeShortPart(params, 'filter')}`}. Make sure that it seats.`
      const takeText = isClean ? '' : `Take a new ${writeShortPart(params, 'filter')}. `
      return `${takeText}Wipe ${isClean ? `the ring of ${filterText}` : 'its ring'} with new oil. Screw it on by hand until the ring touches.`
    },
    short: (params) => {
      const filterText = `${params.filter?.renewed === false ? 'Clean' : 'New'} ${writeShortPart(params, 'filter')}`
      return params.filter?.screwed === true ? `${filterText}: oil its ring, on by hand` : `${filterText} in`
    },
    show: (params) => `${writePart(params, 'filter')} as it goes on.`,
  },
  'tighten filter': {
    full: (params) =>
      params.turns === undefined
        ? writeTightening(params, writePart(params, 'filter'))
        : `Tighten ${writePart(params, 'filter')} ${params.turns} turns after the ring touches.`,
    short: (params) =>
      params.turns === undefined
        ? writeShortTightening(params, writeShortPart(params, 'filter'))
        : `${writeShortPart(params, 'filter')}: ${params.turns} turns after contact`,
    show: (params) => `Both hands on ${writePart(params, 'filter')}.`,
  },
  'clear the breather': {
    full: ({ place }) => `Make sure that the breather is clear${place === undefined ? '' : `: ${place}`}.`,
    short: () => 'Breather clear',
    show: () => 'The breather.',
  },
  'take off old seal': {
    full: (params) =>
      params.seal === 'thread sealant'
        ? 'Clean the old sealant off both threads.'
        : params.seal === 'liquid gasket'
          ? 'Scrape the old sealant off both faces. Let none of it fall into the case.'
          : params.cover !== undefined
            ? `Remove the old ${writeSeal(params)}. Leave none of it on either face.`
            : `Remove the old ${writeSeal(params)}. Leave none of it on the case.${writeStuckWasher(params)}`,
    short: (params) =>
      params.seal === 'thread sealant' ? 'Clean both threads' : `Old ${writeSeal(params)} off`,
    show: (params) =>
      params.seal === 'thread sealant'
        ? 'Both threads, clean.'
        : `The old ${writeSeal(params)}, and the bare face under it.`,
  },
  'wipe the seal face': {
    full: (params) =>
      params.filter?.screwed === true
        ? `Wipe the face that ${writePart(params, 'filter')} seals on. Make sure that no old ring sticks to it.`
        : params.cover === undefined
          ? `Wipe ${writePart(params, 'plug')} and its seat clean.`
          : `Wipe both seal faces at ${writePart(params, 'cover')} clean and dry.`,
    short: (params) =>
      `Wipe ${writeShortPart(params, 'plug')}${params.cover === undefined ? ' and seat' : ' face'}`,
    show: (params) => `The seat of ${writePart(params, 'plug')}, wiped clean.`,
  },
  'fit new seal': {
    full: (params) => `Fit a new ${writeSeal(params)} to ${writePart(params, 'opening')}.`,
    short: (params) => `New ${writeSeal(params)}: ${writeShortPart(params, 'opening')}`,
    show: (params) => `The new ${writeSeal(params)} as it goes on.`,
  },
  'inspect the seal': {
    full: (params) =>
      `Inspect the ${writeSeal(params)} of ${writePart(params, 'opening')} for cuts and flat spots. If you find any, replace it.`,
    short: (params) => `Inspect ${writeSeal(params)}: ${writeShortPart(params, 'opening')}`,
    show: (params) => `The ${writeSeal(params)}, turned slowly.`,
  },
  'apply sealant': {
    full: (params) =>
      params.cover !== undefined
        ? `Apply ${params.sealant ?? 'the sealant'} to the clean face of ${writePart(params, 'cover')}${params.bead === undefined ? '' : `, ${params.bead} thick`}. Leave no gap in the bead. Go round the inside of each bolt hole.`
        : params.sealant === undefined
          ? `Apply the sealant to ${writePart(params, 'clean thread')}.`
          : `Apply ${params.sealant} to ${writePart(params, 'clean thread')}.`,
    short: (params) =>
      `Sealant: ${writeShortPart(params, 'thread')}${params.bead === undefined ? '' : `, bead ${params.bead}`}`,
    show: (params) => `The sealant on ${writePart(params, 'thread')}.`,
  },
  fit: {
    full: (params) => `Turn ${writePart(params, 'plug')} in by hand until it is finger tight.`,
    short: (params) => `${writeShortPart(params, 'plug')} in by hand`,
    show: (params) => `${writePart(params, 'plug')} as it turns in by hand.`,
  },
  tighten: {
    full: (params) => writeTightening(params, writePart(params, 'plug')),
    short: (params) => writeShortTightening(params, writeShortPart(params, 'plug')),
    show: (params) => `The wrench on ${writePart(params, 'plug')}: one smooth pull, and the first click.`,
  },
  'fit cover': {
    full: (params) =>
      params.cover?.carriesBearings === true
        ? `Fit ${writePart(params, 'cover')} only by the machine's manual: its shims set the bearings.`
        : `Put ${writePart(params, 'cover')} on. Turn all its bolts in by hand.`,
    short: (params) => `${writeShortPart(params, 'cover')} on, bolts by hand`,
    show: (params) => `${writePart(params, 'cover')} as it goes on, and the bolts turned in by hand.`,
  },
  'tighten cover': {
    full: writeCoverTightening,
    short: (params) => {
      const pattern = params.cover?.pattern
      const order = pattern === undefined || pattern === 'not stated' ? '' : `, ${pattern}`
      return writeShortTightening(params, `${writeShortPart(params, 'cover')} bolts${order}`)
    },
    show: (params) => `The wrench on the bolts of ${writePart(params, 'cover')}, in the right order.`,
  },
  'wait for the cure': {
    full: ({ wait }) =>
      `Wait ${wait ?? 'as long as the maker of the sealant says'} for the sealant to cure. Pour no oil before then.`,
    short: ({ wait }) => `Cure before the oil${wait === undefined ? ': see the sealant' : ''}`,
    show: () => 'A clock next to the closed joint.',
  },
  'measure the oil': {
    full: ({ volume, oil, gap, totalVolume, fluid }) =>
      fluid === 'grease' && volume !== undefined
        ? `Measure out ${volume} of ${oil ?? 'the right grease'}.`
        : volume === undefined
          ? `Measure the refill in a clean jug. The quantity ${gap === 'cannot tell' ? 'is not known here' : 'is not stated'}: see the manual.`
          : `Measure ${volume} of ${oil ?? 'the right oil'} in a clean jug.${totalVolume === undefined ? '' : ` Together with the additive this is the refill of ${totalVolume}.`}`,
    short: ({ volume, oil }) =>
      volume === undefined ? 'Measure the refill (see the manual)' : `Measure ${oil ?? 'the right oil'}`,
    show: () => 'The vessel at eye height, and the oil at its mark.',
  },
  'add the additive': {
    full: ({ volume, oil, additive, additiveOrder }) =>
      additive === undefined && oil !== undefined
        ? `${oil} needs no additive here: go on to the next step.`
        : `Pour ${volume === undefined ? 'the stated amount' : volume} of ${additive ?? 'the additive'} in through the fill opening${additiveOrder === 'oil first' ? ', after the oil' : ', before the oil'}.`,
    short: ({ oil, additive }) =>
      additive === undefined && oil !== undefined
        ? 'No additive with this oil'
        : `Add ${additive ?? 'additive'}`,
    show: () => 'The additive as it goes in.',
  },
  'pour the oil': {
    full: (params) => {
      const { volume, level, additiveOrder, fluid } = params
      if (fluid === 'grease')
        return `Press ${volume === undefined ? 'the grease' : `the ${volume} of grease`} in slowly through ${writeHole(params)}.`
      const openingText = `in slowly through ${writeHole(params)}`
      // The last liquid poured can run out at a level hole: it must be oil, not additive.
      if (level?.method === 'to level hole' && additiveOrder === 'additive first')
        return `Pour oil ${openingText} up to the level hole${volume === undefined ? '' : `: about ${volume}`}. Do not go past it.`
      return `Pour ${volume === undefined ? 'the oil' : `the ${volume} of oil`} ${openingText}.`
    },
    short: (params) =>
      `${params.fluid === 'grease' ? 'Press in' : 'Pour'}: ${writeShortPart(params, 'fill opening')}`,
    show: (params) => `The hose in ${writeHole(params)}, and the oil as it sinks in the funnel.`,
  },
  'wait for the hose': {
    full: ({ wait, usualWait, fluid }) =>
      fluid === 'grease'
        ? 'Give the grease time to sink. Let the air out.'
        : wait === undefined
          ? `Wait until nothing drips from the hose.${usualWait === undefined ? '' : ` ${usualWait}`}`
          : `Wait until nothing drips from the hose: about ${wait} from the start of the pour.`,
    short: ({ fluid }) => (fluid === 'grease' ? 'Let the grease sink' : 'Hose empty when nothing drips'),
    show: () => 'The lower end of the hose, until the last drip.',
  },
  'check the level': {
    full: writeLevel,
    short: (params) =>
      `Level: ${writeShortPart(params, 'level opening')}${writeShortConditions(params)}${params.below === undefined ? '' : `, ${params.below} below the edge`}`,
    show: (params) => `The oil at ${writePart(params, 'level opening')}, close up.`,
  },
  'top up': {
    full: writeTopUp,
    short: ({ stopAt, level }) =>
      `Top up if low, same oil${stopAt === undefined || level?.afterFilling !== true ? '' : '; at the maximum, stop'}`,
    show: () => 'A little oil, and the level as it comes up.',
  },
  'clear away': {
    full: ({ how }) =>
      `Take the drain pan, tools and chocks away.${how === undefined ? '' : ` Release what you secured for the work: ${how}.`} Make sure that people are clear of the machine.`,
    short: ({ how }) => `Pan, tools, chocks and people clear${how === undefined ? '' : `; release: ${how}`}`,
    show: () => 'The clear ground around the machine.',
  },
  'short run': {
    full: () => 'Run the machine for a few minutes.',
    short: () => 'Short run',
    show: () => 'The machine on a short drive.',
  },
  'let settle': {
    full: ({ wait }) =>
      wait === undefined
        ? 'Let the oil settle as long as the manual says.'
        : `Let the oil settle for ${wait}.`,
    short: ({ wait }) => `Settle${wait === undefined ? ' as the manual says' : ''}`,
    show: () => 'The machine, still on level ground.',
  },
  'let a leak show': {
    full: () => 'Leave the machine dry on the stands for ten minutes. A leak needs time to show.',
    short: () => 'Leave it dry for ten minutes',
    show: () => 'The dry case, and a clock.',
  },
  'check for leaks': {
    full: ({ shield, instance }) =>
      `Check each plug and joint that you opened${instance === undefined ? '' : ` (${instance})`} for oil${shield === undefined ? '' : `, through the holes and along the edges of the ${shield}`}. If one weeps, replace its seal. Do not turn it past the manual's figure.`,
    short: ({ shield, instance }) =>
      `Leak check${instance === undefined ? '' : ` (${instance})`}${shield === undefined ? '' : ` through the ${shield}`}; if it weeps, a new seal, no more torque`,
    show: () => 'Each plug, dry, with a light on it.',
  },
  'wipe down': {
    full: ({ instance }) => `Wipe off all spilt oil${instance === undefined ? '' : ` (${instance})`}.`,
    short: ({ instance }) => `Wipe down${instance === undefined ? '' : ` (${instance})`}`,
    show: () => 'The clean case.',
  },
  'take used oil away': {
    full: () => 'Put the used oil in a closed can marked “Used oil”. Take it to a collection point.',
    short: () => 'Used oil into the closed can',
    show: () => 'The marked can, and its lid as it closes.',
  },
  record: {
    full: () => 'Record what you did and what you found.',
    short: () => 'Record',
    show: () => 'The completed record.',
  },
}
