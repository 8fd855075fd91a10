import type { PlugHousing, ThreadCodes } from '../../thread/index.js'
import type { Texts } from '../catalogue.js'
import { nameOf } from '../phrases.js'
import { join, writeDigits } from './words.js'

const HOUSING_NAMES: Readonly<Record<PlugHousing, string>> = {
  steel: 'acero',
  'cast iron': 'fundición',
  aluminium: 'aluminio',
  'not stated': 'no indicado',
}

export const threadTexts: Texts<ThreadCodes> = {
  'thread/unknown-thread': ({ text }) =>
    `“${text}” no es una rosca conocida. Escribirla como M18x1.5, G 1/2, R 1/2, 1/2-14 NPT o 3/8-16 UNC.`,
  'thread/parallel-or-taper': ({ text, candidates }) =>
    `“${text}” puede ser cilíndrica o cónica: ${join(candidates, 'o')}. Averiguar cuál es y escribirla.`,
  'thread/pitch-not-known': ({ text, diameter }) =>
    `“${text}” no indica el paso, y no se conoce paso grueso para M${diameter}. Escribir el paso, como en M18x1.5.`,
  'thread/pitch-too-coarse': ({ text, pitch, diameter }) =>
    `“${text}”: un paso de ${writeDigits(pitch)} mm es demasiado grueso para ${writeDigits(diameter)} mm. Comprobar los dos datos.`,
  'thread/size-not-known': ({ text, size, system }) =>
    `“${text}”: no se conoce la medida ${size} de ${system}. Comprobar la medida en el manual.`,
  'thread/threads-per-inch-differ': ({ text, stated, usual }) =>
    `“${text}” indica ${stated} hilos por pulgada; esta medida tiene ${usual}. Comprobar cuál vale.`,
  'thread/unusual-pitch': ({ text, pitch, diameter }) =>
    `“${text}”: ${writeDigits(pitch)} mm es un paso inusual para ${writeDigits(diameter)} mm. Comprobarlo en el manual.`,
  'thread/too-long': ({ length, max }, say) =>
    `Este texto tiene ${say.number(length)} caracteres; una rosca tiene como máximo ${say.number(max)}.`,
  'thread/plug-band': ({ thread, housing, min, max }, say) =>
    `Los tapones de ${thread} (caja: ${nameOf(HOUSING_NAMES, housing)}) se suelen apretar con ${say.quantity(min)} a ${say.quantity(max)}. Este margen amplio, de tablas publicadas, solo sirve para encontrar unidades equivocadas.`,
  'thread/plug-not-in-table': ({ thread, housing }) =>
    `No se conoce ningún par publicado para un tapón ${thread} (caja: ${nameOf(HOUSING_NAMES, housing)}), así que el par no se compara.`,
  'thread/taper-plug': ({ thread }) =>
    `${thread} es una rosca cónica: se aprieta por vueltas, y la tabla de pares no se aplica.`,
}
