import type { OilCodes } from '../../oil/index.js'
import type { LimitedSlip } from '../../spec/index.js'
import type { Say, Texts } from '../catalogue.js'
import { nameOf } from '../phrases.js'

type Limits = OilCodes['oil/ambient-in-range'] | OilCodes['oil/ambient-not-given']

/** A band in words: `de −10 °C a 30 °C`, `desde −10 °C`, `hasta 30 °C`. */
function writeRange({ min, max }: Limits, say: Say): string {
  if (min === undefined) return max === undefined ? 'cualquier temperatura' : `hasta ${say.quantity(max)}`
  return max === undefined ? `desde ${say.quantity(min)}` : `de ${say.quantity(min)} a ${say.quantity(max)}`
}

/** What the manual says of a limited-slip additive. */
const LIMITED_SLIP_RULES: Readonly<Record<LimitedSlip, string>> = {
  required: 'exigido',
  'not permitted': 'no permitido',
  either: 'con o sin él',
  'not stated': 'no indicado',
}

export const oilTexts: Texts<OilCodes> = {
  'oil/grade-not-known': ({ grade, system, known }, say) =>
    `${system} no tiene el grado “${grade}”. Grados conocidos: ${say.list(known)}.`,
  'oil/grade-not-in-edition': ({ grade, system, edition }) =>
    `${grade} no está en la edición ${edition} de ${system}.`,
  'oil/grade-impossible': ({ grade, system }) =>
    `Ningún aceite puede ser ${grade}: las dos partes se contradicen en ${system}.`,
  'oil/edition-not-known': ({ edition, system, known }, say) =>
    `Edición desconocida “${edition}” de ${system}. Ediciones conocidas: ${say.list(known)}; se tuvieron en cuenta todas.`,
  'oil/grade-same': ({ grade }) => `La etiqueta dice ${grade}, como exige el manual.`,
  'oil/multigrade-covers': ({ permitted, offered }) =>
    `${offered} cumple todos los límites de ${permitted} y además los de otro grado.`,
  'oil/grade-differs': ({ permitted, offered }) =>
    `El manual exige ${permitted}; la etiqueta dice ${offered}.`,
  'oil/hot-grade-thicker': ({ permitted, offered }) =>
    `El manual exige ${permitted}, sin grado para aceite caliente; la etiqueta dice ${offered}, que es mucho más espeso en caliente. Preguntar al fabricante de la máquina.`,
  'oil/grade-renamed': ({ permitted, offered, system }) =>
    `El manual exige ${permitted}; la etiqueta dice ${offered}. Las ediciones de ${system} dividen estos grados de forma distinta: averiguar a qué edición se refiere el manual.`,
  'oil/winter-grade-missing': ({ permitted, offered }) =>
    `El manual exige ${permitted}; la etiqueta dice ${offered}, sin grado de invierno.`,
  'oil/winter-grade-colder': ({ permitted, offered }) =>
    `${offered} es más fluido en frío que ${permitted}, que exige el manual. Preguntar si está permitido.`,
  'oil/winter-grade-warmer': ({ permitted, offered }) =>
    `${offered} es demasiado espeso en frío: el manual exige ${permitted}.`,
  'oil/grade-not-on-label': ({ permitted }) =>
    `La etiqueta no da ningún grado; el manual exige ${permitted}. Comprobar la ficha técnica.`,
  'oil/systems-differ': ({ permitted, offered }) =>
    `${permitted} y ${offered} son grados de sistemas distintos; ninguno sustituye al otro.`,
  'oil/viscosity-inside-band': ({ grade, viscosity, at }, say) =>
    `${say.quantity(viscosity)} a ${say.quantity(at)} está dentro de los límites de ${grade}. La viscosidad sola no basta para ese grado: preguntar al fabricante del aceite.`,
  'oil/viscosity-outside-band': ({ grade, viscosity, at }, say) =>
    `${say.quantity(viscosity)} a ${say.quantity(at)} está fuera de los límites de ${grade}.`,
  'oil/label-contradicts-viscosity': ({ grade, viscosity, at }, say) =>
    `La etiqueta dice ${grade}, pero ${say.quantity(viscosity)} a ${say.quantity(at)} está fuera de ese grado. Uno de los dos está equivocado.`,
  'oil/maker-fluid-named': ({ name }) => `La etiqueta nombra ${name}.`,
  'oil/maker-fluid-not-named': ({ name, offered }) =>
    `El manual permite solo ${name}, y la etiqueta de ${offered} no lo nombra. No basta con la misma viscosidad.`,
  'oil/category-not-stated': () => 'El manual no indica ninguna categoría de servicio.',
  'oil/category-on-label': ({ category }) => `La etiqueta dice ${category}, como exige el manual.`,
  'oil/category-not-on-label': ({ category }) =>
    `La etiqueta no da ninguna categoría de servicio; el manual exige ${category}. Comprobar la ficha técnica.`,
  'oil/category-differs': ({ permitted, offered }, say) =>
    `El manual exige ${permitted}; la etiqueta dice ${say.list(offered)}.`,
  'oil/category-doubtful': ({ permitted, offered }, say) =>
    `El manual exige ${permitted}; la etiqueta dice ${say.list(offered)}. No se sabe si una cubre a la otra: preguntar al fabricante del aceite.`,
  'oil/category-harms-yellow-metal': ({ permitted, offered }, say) =>
    `En este aceite trabajan piezas de bronce o latón. El manual exige ${permitted}; los aditivos de ${say.list(offered)} pueden atacarlas. Usar aceite ${permitted}.`,
  'oil/category-yellow-metal-unknown': ({ permitted, offered }, say) =>
    `El manual exige ${permitted}; la etiqueta dice ${say.list(offered)}. La hoja de datos no indica si en este aceite trabajan piezas de bronce o latón. Preguntar al fabricante de la máquina.`,
  'oil/category-higher-no-yellow-metal': ({ permitted, offered }, say) =>
    `${say.list(offered)} es para un servicio más duro que ${permitted}, y en este aceite no trabajan piezas de bronce ni latón.`,
  'oil/category-dual-rated': ({ permitted, offered }, say) =>
    `La etiqueta dice ${say.list(offered)} a la vez. Preguntar al fabricante del aceite si se puede usar donde el manual exige ${permitted}.`,
  'oil/limited-slip-not-stated': () => 'El manual no menciona ningún aditivo de deslizamiento limitado.',
  'oil/limited-slip-fits': ({ limitedSlip }) =>
    limitedSlip === 'either'
      ? 'El aceite puede llevar o no aditivo de deslizamiento limitado.'
      : limitedSlip === 'required'
        ? 'El aceite lleva el aditivo de deslizamiento limitado que exige el manual.'
        : 'El aceite no lleva aditivo de deslizamiento limitado, como exige el manual.',
  'oil/limited-slip-additive-missing': () =>
    'El manual exige un aditivo de deslizamiento limitado, y este aceite no lo lleva.',
  'oil/limited-slip-additive-separate': ({ name }) =>
    `El aceite no lleva aditivo de deslizamiento limitado; “${name}” se añade aparte, como dice el manual.`,
  'oil/limited-slip-additive-twice': ({ name }) =>
    `El aceite ya lleva un aditivo de deslizamiento limitado, y el manual añade “${name}”. Preguntar al fabricante de la máquina antes de usar los dos.`,
  'oil/limited-slip-not-permitted': () =>
    'El aceite lleva un aditivo de deslizamiento limitado, y el manual no lo permite.',
  'oil/limited-slip-not-mentioned': () =>
    'El aceite lleva un aditivo de deslizamiento limitado, y el manual no lo menciona. Preguntar al fabricante de la máquina.',
  'oil/limited-slip-not-on-label': ({ limitedSlip }) =>
    `La etiqueta no dice si el aceite lleva aditivo de deslizamiento limitado; según el manual: ${nameOf(LIMITED_SLIP_RULES, limitedSlip)}. Comprobar la ficha técnica.`,
  'oil/ambient-in-range': (params, say) =>
    `${say.quantity(params.ambient)} está dentro del margen del manual para este aceite: ${writeRange(params, say)}.`,
  'oil/ambient-out-of-range': (params, say) =>
    `${say.quantity(params.ambient)} está fuera del margen del manual para este aceite: ${writeRange(params, say)}.`,
  'oil/ambient-not-given': (params, say) =>
    `El margen del manual para este aceite: ${writeRange(params, say)}. Indicar la temperatura ambiente.`,
  'oil/ambient-not-a-range': ({ printed }, say) =>
    `La hoja de datos da ${say.quantity(printed)} para este aceite, no un margen. Comprobar el manual.`,
  'oil/ambient-not-limited': () => 'El manual no da margen de temperatura para este aceite.',
  'oil/oils-not-stated': () => 'La hoja de datos no indica ningún aceite. Ver el manual.',
  'oil/no-oil-for-ambient': ({ ambient }, say) =>
    `El manual no permite ninguno de sus aceites a ${say.quantity(ambient)}.`,
  'oil/viscosities-missing': ({ missing }, say) => {
    const names = missing.map((name) => (name === 'kv40' ? '40 °C' : '100 °C'))
    return `No se conoce la viscosidad a ${say.list(names)}. Ver la ficha técnica.`
  },
  'oil/viscosities-reversed': ({ kv40, kv100 }, say) =>
    `${say.quantity(kv40)} a 40 °C y ${say.quantity(kv100)} a 100 °C no pueden ser del mismo aceite: al calentarse, el aceite se hace más fluido.`,
  'oil/below-pour-point': ({ temperature, pourPoint }, say) =>
    `A ${say.quantity(temperature)} el aceite está por debajo de su punto de fluidez, ${say.quantity(pourPoint)}. Entibiarlo primero.`,
  'oil/pour-point-not-stated': () => 'No se conoce el punto de fluidez, así que no se comprobó.',
  'oil/temperature-outside-range': ({ temperature, min, max }, say) =>
    `${say.quantity(temperature)} está fuera del margen de la fórmula, ${say.quantity(min)} a ${say.quantity(max)}.`,
  'oil/viscosity-outside-range': ({ viscosity, temperature, min, max }, say) =>
    viscosity === undefined
      ? `A ${say.quantity(temperature)} la viscosidad está fuera del margen de la fórmula, ${say.quantity(min)} a ${say.quantity(max)}.`
      : `${say.quantity(viscosity)} está fuera del margen de la fórmula, ${say.quantity(min)} a ${say.quantity(max)}.`,
  'oil/viscosity-by-d341': ({ kv40, kv100, temperature }, say) =>
    `Viscosidad a ${say.quantity(temperature)} según ASTM D341, a partir de ${say.quantity(kv40)} a 40 °C y ${say.quantity(kv100)} a 100 °C.`,
  'oil/viscosity-index-undefined': ({ kv100, min }, say) =>
    `No hay índice de viscosidad por debajo de ${say.quantity(min)} a 100 °C; este aceite tiene ${say.quantity(kv100)}.`,
  'oil/viscosity-index-by-d2270': ({ procedure, kv40, kv100 }, say) =>
    `Índice de viscosidad según ASTM D2270, procedimiento ${procedure}, a partir de ${say.quantity(kv40)} a 40 °C y ${say.quantity(kv100)} a 100 °C.`,
  'oil/density-missing': () => 'No se conoce la densidad a 15 °C. Ver la ficha técnica.',
  'oil/density-outside-range': ({ density, min, max }, say) =>
    `${say.quantity(density)} no es la densidad de un aceite lubricante; la tabla abarca ${say.quantity(min)} a ${say.quantity(max)}.`,
  'oil/density-by-d1250': ({ density15, temperature }, say) =>
    `Densidad a ${say.quantity(temperature)} según ASTM D1250, aceites lubricantes, a partir de ${say.quantity(density15)} a 15 °C.`,
}
