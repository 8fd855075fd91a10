import type { SealCodes } from '../../seal/index.js'
import type { Texts } from '../catalogue.js'

const OPENED: Readonly<Record<string, string>> = {
  'cracked loose': 'The plug is cracked loose, and that counts as opening.',
  'level check': 'The level check opens the plug.',
}

export const sealTexts: Texts<SealCodes> = {
  'seal/crush-washer-every-opening': ({ how }) =>
    `${OPENED[how] ?? 'The plug comes out.'} Fit a new crush washer.`,
  'seal/reuse-stated': () =>
    'The manual lets this washer be used again if it is still good. If in doubt, fit a new one.',
  'seal/sheet-says-every-opening': ({ kind }) => `The manual asks for a new ${kind} at every opening.`,
  'seal/sheet-says-on-condition': ({ kind }) =>
    `The manual lets this ${kind} be used again if it is still good. Look at it.`,
  'seal/sealant-fresh': ({ product }) => `Clean off the old sealant and apply ${product}.`,
  'seal/liquid-gasket-fresh': ({ product }) => `Clean off the old gasket and lay a fresh bead of ${product}.`,
  'seal/not-stated': () => 'The manual does not state the seal: see the manual, and have one ready.',
  'seal/look-for-cuts': () => 'No cuts, nicks or tears.',
  'seal/look-for-flattening': () => 'Not squashed flat.',
  'seal/look-for-hardness': () => 'Not hard, and no cracks when bent.',
  'seal/look-for-swelling': () => 'Not swollen or soft.',
  'seal/look-at-faces': () => 'No scratch across the face.',
  'seal/look-at-bonded-lip': () => 'The rubber lip is whole and sits tight in its ring.',
  'seal/thread-not-read': ({ thread }) => `“${thread}” is no thread that is known here.`,
  'seal/size-not-stated': () => 'The washer’s size is not stated.',
  'seal/taper-thread-takes-no-washer': ({ thread }) =>
    `${thread} is a taper thread: it seals in the thread and takes no washer.`,
  'seal/pipe-size-not-held': ({ thread }) => `The diameter of ${thread} is not held here.`,
  'seal/washer-in-table': ({ thread, washer }) => `${washer} mm is a size of DIN 7603 for ${thread}.`,
  'seal/washer-plausible': ({ thread, washer }) =>
    `${washer} mm goes over ${thread}; it is none of the sizes of DIN 7603 held here.`,
  'seal/washer-too-small': ({ thread, inside, major }, say) =>
    `A washer of ${say.quantity(inside)} inside does not go over ${thread}, which is ${say.quantity(major)} across.`,
  'seal/washer-too-wide': ({ thread, inside, most }, say) =>
    `A washer of ${say.quantity(inside)} inside is too wide for ${thread}; at most ${say.quantity(most)} sits centred.`,
  'seal/washer-rim-too-narrow': ({ inside, outside, least }, say) =>
    `From ${say.quantity(inside)} inside to ${say.quantity(outside)} outside leaves no sealing face; at least ${say.quantity(least)} outside would.`,
  'seal/washer-thickness-doubtful': ({ thickness, min, max }, say) =>
    `${say.quantity(thickness)} is an unusual thickness; usual are ${say.quantity(min)} to ${say.quantity(max)}.`,
  'seal/o-ring-agrees': ({ designation, inside, section }, say) =>
    `${designation} is ${say.quantity(inside)} inside with a section of ${say.quantity(section)}.`,
  'seal/o-ring-differs': ({ designation, inside, section }, say) =>
    `The size does not go with ${designation}, which is ${say.quantity(inside)} inside with a section of ${say.quantity(section)}.`,
  'seal/o-ring-found': ({ designation }) => `This is the size of ${designation}.`,
  'seal/o-ring-not-in-table': ({ designation }) =>
    `${designation} is none of the AS568 sizes held here. Look it up in AS568.`,
  'seal/o-ring-size-not-in-table': () => 'The size is none of the AS568 sizes held here.',
  'seal/o-ring-not-described': () => 'Neither a size nor a dash number is stated for the o-ring.',
  'seal/material-not-stated': () => 'The material of the seal is not stated.',
  'seal/material-never': ({ material, medium }) => `${material} swells in ${medium}. Never fit it.`,
  'seal/material-poor': ({ material, medium }) =>
    `${material} stands ${medium} poorly. Ask the seal’s maker.`,
  'seal/material-suits': ({ material, medium, min, max }, say) =>
    `${material} stands ${medium} from ${say.quantity(min)} to ${say.quantity(max)}.`,
  'seal/material-limits-not-read': ({ material }) =>
    `Temperature limits of ${material} are not held here. Ask the seal’s maker.`,
  'seal/temperature-needs-special-compound': ({ material, temperature, min, max }, say) =>
    `At ${say.quantity(temperature)} only special compounds of ${material} last; the usual ones go from ${say.quantity(min)} to ${say.quantity(max)}. Ask the seal’s maker.`,
  'seal/temperature-outside-material': ({ material, temperature, min, max }, say) =>
    `${say.quantity(temperature)} is outside what ${material} stands, ${say.quantity(min)} to ${say.quantity(max)}.`,
  'seal/in-stock': ({ name, count }, say) =>
    `Take ${say.count(count, 'piece', 'pieces')} of ${name} from the shelf.`,
  'seal/buy': ({ count }, say) => `Buy ${say.count(count, 'piece', 'pieces')}.`,
  'seal/have-ready': ({ count }, say) =>
    `Have ${say.count(count, 'piece', 'pieces')} ready in case the old one does not pass.`,
  'seal/stock-perhaps': ({ name }) => `${name} on the shelf may be the same. Look whether it is.`,
}
