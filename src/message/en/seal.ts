import type { SealCodes } from '../../seal/index.js'
import type { Texts } from '../catalogue.js'

const OPENING_REASONS: Readonly<Record<string, string>> = {
  'cracked loose': 'A plug cracked loose counts as opened.',
  'level check': 'The plug is opened to check the level.',
}

export const sealTexts: Texts<SealCodes> = {
  'seal/crush-washer-every-opening': ({ how }) =>
    `${OPENING_REASONS[how] ?? 'The plug comes out.'} Fit a new crush washer.`,
  'seal/reuse-stated': () =>
    'The manual permits using this washer again if it is still good. If in doubt, fit a new one.',
  'seal/replace-not-stated': ({ kind }) =>
    `The manual does not say when to replace the ${kind}. Fit a new one.`,
  'seal/sheet-says-every-opening': ({ kind }) => `The manual requires a new ${kind} at every opening.`,
  'seal/sheet-says-on-condition': ({ kind }) =>
    `The manual permits using this ${kind} again if it is still good. Inspect it.`,
  'seal/apply-new-sealant': ({ product }) => `Clean off the old sealant and apply ${product}.`,
  'seal/apply-new-liquid-gasket': ({ product }) =>
    `Clean off the old gasket and apply a new bead of ${product}.`,
  'seal/not-stated': () => 'The sheet states no seal. See the manual, and have a seal ready.',
  'seal/look-for-cuts': () => 'No cuts, nicks or tears.',
  'seal/look-for-flattening': () => 'Not flattened.',
  'seal/look-for-hardness': () => 'Not hard, and no cracks when bent.',
  'seal/look-for-swelling': () => 'Not swollen or soft.',
  'seal/look-at-faces': () => 'No scratch across the face.',
  'seal/look-at-bonded-lip': () => 'The rubber lip is undamaged and sits tight in its ring.',
  'seal/thread-unreadable': ({ thread }) => `Unknown thread “${thread}”.`,
  'seal/size-not-stated': () => 'The size of the washer is not stated.',
  'seal/taper-thread-takes-no-washer': ({ thread }) =>
    `${thread} is a taper thread: it seals in the thread. Do not fit a washer.`,
  'seal/pipe-size-not-known': ({ thread }) => `The diameter of ${thread} is not known.`,
  'seal/ring-held-on-plug': ({ thread }) =>
    `The ring is held on the plug, behind its thread ${thread}; ask the plug’s maker for its size.`,
  'seal/washer-in-table': ({ thread, washer }) => `${washer} is a DIN 7603 size for ${thread}.`,
  'seal/washer-plausible': ({ thread, washer }) =>
    `${washer} fits over ${thread}; it is not one of the DIN 7603 sizes in the table.`,
  'seal/washer-bore-too-small': ({ thread, inside, major }, say) =>
    `The washer's inside diameter, ${say.quantity(inside)}, does not fit over ${thread}, diameter ${say.quantity(major)}.`,
  'seal/washer-bore-too-large': ({ thread, inside, largest }, say) =>
    `The washer's inside diameter, ${say.quantity(inside)}, is too large for ${thread}; above ${say.quantity(largest)} it does not stay centred.`,
  'seal/washer-rim-too-narrow': ({ inside, outside, smallest }, say) =>
    `A washer of ${say.quantity(inside)} inside and ${say.quantity(outside)} outside is too narrow to seal. The outside diameter must be at least ${say.quantity(smallest)}.`,
  'seal/washer-thickness-doubtful': ({ thickness, min, max }, say) =>
    `A thickness of ${say.quantity(thickness)} is unusual; ${say.quantity(min)} to ${say.quantity(max)} is usual.`,
  'seal/o-ring-agrees': ({ designation, inside, section }, say) =>
    `${designation}: inside diameter ${say.quantity(inside)}, section ${say.quantity(section)}.`,
  'seal/o-ring-differs': ({ designation, inside, section }, say) =>
    `The size does not match ${designation}: inside diameter ${say.quantity(inside)}, section ${say.quantity(section)}.`,
  'seal/o-ring-found': ({ designation }) => `This is the size of ${designation}.`,
  'seal/o-ring-not-in-table': ({ designation }) =>
    `${designation} is not one of the AS568 and JIS B 2401 sizes in the table. Look it up in the standard.`,
  'seal/o-ring-size-not-in-table': () =>
    'The size is not one of the AS568 and JIS B 2401 sizes in the table.',
  'seal/o-ring-not-described': () => 'Neither the size nor the dash number of the o-ring is stated.',
  'seal/material-not-stated': () => 'The material of the seal is not stated.',
  'seal/material-unsuitable': ({ material, medium }) => `${material} swells in ${medium}. Never fit it.`,
  'seal/material-poor': ({ material, medium }) =>
    `${material} has poor resistance to ${medium}. Ask the seal’s maker.`,
  'seal/material-suitable': ({ material, medium, min, max }, say) =>
    `${material} resists ${medium} from ${say.quantity(min)} to ${say.quantity(max)}.`,
  'seal/above-continuous-limit': ({ material, medium, temperature, max }, say) =>
    `In ${medium}, ${material} lasts up to ${say.quantity(max)} in continuous work; the working temperature, ${say.quantity(temperature)}, is higher. Ask the seal’s maker.`,
  'seal/material-limits-not-known': ({ material }) =>
    `The temperature limits of ${material} are not known. Ask the seal’s maker.`,
  'seal/temperature-needs-special-compound': ({ material, temperature, min, max }, say) =>
    `At ${say.quantity(temperature)} only special compounds of ${material} last; the usual range is ${say.quantity(min)} to ${say.quantity(max)}. Ask the seal’s maker.`,
  'seal/temperature-outside-material': ({ material, temperature, min, max }, say) =>
    `${say.quantity(temperature)} is outside the range of ${material}, ${say.quantity(min)} to ${say.quantity(max)}.`,
  'seal/in-stock': ({ name, count }, say) => `Take ${say.number(count)} × ${name} from stock.`,
  'seal/buy': ({ count }, say) => `Buy ${say.number(count)}.`,
  'seal/keep-spare': ({ count }, say) =>
    `Have ${say.count(count, 'spare', 'spares')} ready in case the old one fails inspection.`,
  'seal/stock-may-match': ({ name }) => `${name} in stock may be the same. Check it.`,
}
