import type { judgeSealMaterial, listSealTasks, SealCodes } from '../../seal/index.js'
import type { Texts } from '../catalogue.js'
import { capitalize, nameOf } from '../phrases.js'
import { cardWords } from './card.js'
import { quote } from './words.js'

type Opening = NonNullable<Parameters<typeof listSealTasks>[0][number]['how']>
const OPENING_REASONS: Readonly<Record<Opening, string>> = {
  'taken out': 'El tapón se retira.',
  'cracked loose': 'Un tapón aflojado cuenta como abierto.',
  'level check': 'El tapón se abre para comprobar el nivel.',
}

/** `Arandela de sellado`, to begin a sentence of any gender. */
const writeKind = (kind: string) => capitalize(nameOf(cardWords.seals, kind))

type Medium = Parameters<typeof judgeSealMaterial>[1]
const MEDIUM_NAMES: Readonly<Record<Medium, string>> = {
  'mineral gear oil': 'aceite mineral para engranajes',
  'hypoid EP oil': 'aceite EP para engranajes hipoides',
}
const writeMedium = (medium: string) => nameOf(MEDIUM_NAMES, medium)

export const sealTexts: Texts<SealCodes> = {
  'seal/crush-washer-every-opening': ({ how }) =>
    `${nameOf(OPENING_REASONS, how)} Poner una arandela de sellado nueva.`,
  'seal/reuse-stated': () =>
    'El manual permite volver a usar esta arandela si sigue en buen estado. En caso de duda, poner una nueva.',
  'seal/replace-not-stated': ({ kind }) =>
    `${writeKind(kind)}: el manual no dice cuándo cambiar esta pieza. Poner una nueva.`,
  'seal/sheet-says-every-opening': ({ kind }) =>
    `${writeKind(kind)}: el manual exige una pieza nueva en cada apertura.`,
  'seal/sheet-says-on-condition': ({ kind }) =>
    `${writeKind(kind)}: el manual permite volver a usar la pieza si sigue en buen estado. Inspeccionarla.`,
  'seal/apply-new-sealant': ({ product }) => `Quitar el sellador viejo y aplicar ${quote(product)}.`,
  'seal/apply-new-liquid-gasket': ({ product }) =>
    `Quitar la junta vieja y aplicar un cordón nuevo de ${quote(product)}.`,
  'seal/not-stated': () => 'La hoja de datos no indica ninguna junta. Ver el manual y tener una preparada.',
  'seal/look-for-cuts': () => 'Sin cortes, muescas ni desgarros.',
  'seal/look-for-flattening': () => 'Sin aplastamiento.',
  'seal/look-for-hardness': () => 'Sin endurecimiento, y sin grietas al doblarla.',
  'seal/look-for-swelling': () => 'Sin hinchazón ni reblandecimiento.',
  'seal/look-at-faces': () => 'Ninguna raya que cruce la cara.',
  'seal/look-at-bonded-lip': () => 'El labio de caucho está intacto y firme en su anillo.',
  'seal/thread-unreadable': ({ thread }) => `Rosca desconocida “${thread}”.`,
  'seal/size-not-stated': () => 'La medida de la arandela no se indica.',
  'seal/taper-thread-takes-no-washer': ({ thread }) =>
    `${thread} es una rosca cónica: sella en la rosca. No poner arandela.`,
  'seal/pipe-size-not-known': ({ thread }) => `No se conoce el diámetro de ${thread}.`,
  'seal/ring-held-on-plug': ({ thread }) =>
    `El anillo va sujeto al tapón, detrás de su rosca ${thread}; preguntar su medida al fabricante del tapón.`,
  'seal/washer-in-table': ({ thread, washer }) => `${washer} es una medida de DIN 7603 para ${thread}.`,
  'seal/washer-plausible': ({ thread, washer }) =>
    `${washer} entra en ${thread}; no es una de las medidas de DIN 7603 de la tabla.`,
  'seal/washer-bore-too-small': ({ thread, inside, major }, say) =>
    `El diámetro interior de la arandela, ${say.quantity(inside)}, no entra en ${thread}, diámetro ${say.quantity(major)}.`,
  'seal/washer-bore-too-large': ({ thread, inside, largest }, say) =>
    `El diámetro interior de la arandela, ${say.quantity(inside)}, es demasiado grande para ${thread}; por encima de ${say.quantity(largest)} no queda centrada.`,
  'seal/washer-rim-too-narrow': ({ inside, outside, smallest }, say) =>
    `Una arandela de ${say.quantity(inside)} interior y ${say.quantity(outside)} exterior es demasiado estrecha para sellar. El diámetro exterior debe ser de al menos ${say.quantity(smallest)}.`,
  'seal/washer-thickness-doubtful': ({ thickness, min, max }, say) =>
    `Un grueso de ${say.quantity(thickness)} es inusual; lo usual es ${say.quantity(min)} a ${say.quantity(max)}.`,
  'seal/o-ring-agrees': ({ designation, inside, section }, say) =>
    `${designation}: diámetro interior ${say.quantity(inside)}, sección ${say.quantity(section)}.`,
  'seal/o-ring-differs': ({ designation, inside, section }, say) =>
    `La medida no coincide con ${designation}: diámetro interior ${say.quantity(inside)}, sección ${say.quantity(section)}.`,
  'seal/o-ring-found': ({ designation }) => `Esta es la medida de ${designation}.`,
  'seal/o-ring-not-in-table': ({ designation }) =>
    `${designation} no es una de las medidas de AS568 y JIS B 2401 de la tabla. Buscarla en la norma.`,
  'seal/o-ring-size-not-in-table': () => 'La medida no es una de las de AS568 y JIS B 2401 de la tabla.',
  'seal/o-ring-not-described': () => 'No se indica ni la medida ni el número normalizado de la junta tórica.',
  'seal/material-not-stated': () => 'El material de la junta no se indica.',
  'seal/material-unsuitable': ({ material, medium }) =>
    `${material} se hincha en ${writeMedium(medium)}. No montarlo nunca.`,
  'seal/material-poor': ({ material, medium }) =>
    `${material} resiste mal ${writeMedium(medium)}. Preguntar al fabricante de la junta.`,
  'seal/material-suitable': ({ material, medium, min, max }, say) =>
    `${material} resiste ${writeMedium(medium)} de ${say.quantity(min)} a ${say.quantity(max)}.`,
  'seal/above-continuous-limit': ({ material, medium, temperature, max }, say) =>
    `En ${writeMedium(medium)}, ${material} aguanta hasta ${say.quantity(max)} en trabajo continuo; la temperatura de trabajo, ${say.quantity(temperature)}, es mayor. Preguntar al fabricante de la junta.`,
  'seal/material-limits-not-known': ({ material }) =>
    `No se conocen los límites de temperatura de ${material}. Preguntar al fabricante de la junta.`,
  'seal/temperature-needs-special-compound': ({ material, temperature, min, max }, say) =>
    `A ${say.quantity(temperature)} solo aguantan compuestos especiales de ${material}; el margen usual es ${say.quantity(min)} a ${say.quantity(max)}. Preguntar al fabricante de la junta.`,
  'seal/temperature-outside-material': ({ material, temperature, min, max }, say) =>
    `${say.quantity(temperature)} está fuera del margen de ${material}, ${say.quantity(min)} a ${say.quantity(max)}.`,
  'seal/in-stock': ({ name, count }, say) => `Tomar ${say.number(count)} × ${name} de las existencias.`,
  'seal/buy': ({ count }, say) => `Comprar ${say.number(count)}.`,
  'seal/keep-spare': ({ count }, say) =>
    `Tener ${say.count(count, 'repuesto preparado', 'repuestos preparados')} por si la vieja no pasa la inspección.`,
  'seal/stock-may-match': ({ name }) => `${quote(name)}, en existencias, puede ser la misma. Comprobarlo.`,
}
