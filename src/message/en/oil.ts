import type { OilCodes } from '../../oil/index.js'
import type { Say, Texts } from '../catalogue.js'

type Limits = OilCodes['oil/ambient-inside'] | OilCodes['oil/ambient-not-given']

/** A band in words: `from −10 °C to 30 °C`, `from −10 °C`, `up to 30 °C`. */
function band({ min, max }: Limits, say: Say): string {
  if (min === undefined) return max === undefined ? 'any temperature' : `up to ${say.quantity(max)}`
  return max === undefined ? `from ${say.quantity(min)}` : `from ${say.quantity(min)} to ${say.quantity(max)}`
}

export const oilTexts: Texts<OilCodes> = {
  'oil/grade-not-known': ({ grade, system, known }, say) =>
    `“${grade}” is no grade of ${system}. Its grades are ${say.list(known)}.`,
  'oil/grade-not-in-edition': ({ grade, system, edition }) =>
    `${grade} is not in the ${edition} edition of ${system} as held here.`,
  'oil/grade-impossible': ({ grade, system }) =>
    `No oil can be ${grade}: the two parts contradict each other in ${system}.`,
  'oil/edition-not-known': ({ edition, system, known }, say) =>
    `The sheet names the edition “${edition}” of ${system}. Held are ${say.list(known)}; all of them were considered.`,
  'oil/grade-same': ({ grade }) => `The label says ${grade}, as the manual asks.`,
  'oil/multigrade-covers': ({ permitted, offered }) =>
    `${offered} keeps all limits of ${permitted}, and the limits of another grade besides.`,
  'oil/grade-differs': ({ permitted, offered }) =>
    `The manual asks for ${permitted}; the label says ${offered}.`,
  'oil/grade-renamed': ({ permitted, offered, system }) =>
    `The manual asks for ${permitted} and the label says ${offered}. Editions of ${system} draw the line between them differently: find out which edition the manual means.`,
  'oil/winter-grade-missing': ({ permitted, offered }) =>
    `The manual asks for ${permitted}; the label says ${offered} and promises nothing in the cold.`,
  'oil/winter-grade-colder': ({ permitted, offered }) =>
    `${offered} is thinner in the cold than the ${permitted} that the manual names. Ask whether it is permitted.`,
  'oil/winter-grade-warmer': ({ permitted, offered }) =>
    `${offered} is too thick in the cold: the manual asks for ${permitted}.`,
  'oil/grade-not-on-label': ({ permitted }) =>
    `The label names no grade, and the manual asks for ${permitted}. Look at the data sheet.`,
  'oil/systems-differ': ({ permitted, offered }) =>
    `${permitted} and ${offered} belong to different systems, and neither stands for the other.`,
  'oil/viscosity-inside-band': ({ grade, viscosity, at }, say) =>
    `${say.quantity(viscosity)} at ${say.quantity(at)} lies in the band of ${grade}. The viscosity alone does not make it that grade: ask.`,
  'oil/viscosity-outside-band': ({ grade, viscosity, at }, say) =>
    `${say.quantity(viscosity)} at ${say.quantity(at)} lies outside the band of ${grade}.`,
  'oil/label-contradicts-viscosity': ({ grade, viscosity, at }, say) =>
    `The label says ${grade}, but ${say.quantity(viscosity)} at ${say.quantity(at)} is not in that grade. One of the two is wrong.`,
  'oil/maker-fluid-named': ({ name }) => `The label names ${name}.`,
  'oil/maker-fluid-not-named': ({ name, offered }) =>
    `The manual permits only ${name}, and the label of ${offered} does not name it. Viscosity does not make it that fluid.`,
  'oil/category-not-stated': () => 'The manual names no service category.',
  'oil/category-on-label': ({ category }) => `The label says ${category}, as the manual asks.`,
  'oil/category-not-on-label': ({ category }) =>
    `The label names no service category, and the manual asks for ${category}. Look at the data sheet.`,
  'oil/category-differs': ({ permitted, offered }, say) =>
    `The manual asks for ${permitted}; the label says ${say.list(offered)}.`,
  'oil/category-doubtful': ({ permitted, offered }, say) =>
    `The manual asks for ${permitted}; the label says ${say.list(offered)}. Whether the one covers the other is not known here: ask the oil’s maker.`,
  'oil/category-harms-yellow-metal': ({ permitted, offered }, say) =>
    `Bronze or brass runs in this oil. The manual asks for ${permitted}, and the additives of ${say.list(offered)} may attack it. Take a ${permitted} oil.`,
  'oil/category-yellow-metal-unknown': ({ permitted, offered }, say) =>
    `The manual asks for ${permitted} and the label says ${say.list(offered)}. Whether bronze or brass runs in this oil is not stated: ask.`,
  'oil/category-higher-no-yellow-metal': ({ permitted, offered }, say) =>
    `${say.list(offered)} is made for heavier duty than ${permitted}, and no bronze or brass runs in this oil.`,
  'oil/category-dual-rated': ({ permitted, offered }, say) =>
    `The label says ${say.list(offered)} at once. Ask the oil’s maker whether it may go where the manual asks for ${permitted}.`,
  'oil/limited-slip-not-stated': () => 'The manual does not speak of a limited-slip additive.',
  'oil/limited-slip-fits': ({ limitedSlip }) =>
    limitedSlip === 'either'
      ? 'The oil may be with or without a limited-slip additive.'
      : limitedSlip === 'required'
        ? 'The oil contains the limited-slip additive that the manual asks for.'
        : 'The oil is without a limited-slip additive, as the manual asks.',
  'oil/limited-slip-additive-missing': () =>
    'The manual asks for a limited-slip additive, and this oil has none.',
  'oil/limited-slip-additive-apart': ({ name }) =>
    `The oil has no limited-slip additive; ${name} is added apart, as the manual says.`,
  'oil/limited-slip-additive-twice': ({ name }) =>
    `The oil contains an additive already, and the manual adds ${name}. Ask before both go in.`,
  'oil/limited-slip-not-permitted': () =>
    'The oil contains a limited-slip additive, and the manual does not permit one.',
  'oil/limited-slip-unasked': () =>
    'The oil contains a limited-slip additive, and the manual says nothing about one. Ask.',
  'oil/limited-slip-not-on-label': ({ limitedSlip }) =>
    `The label does not say whether a limited-slip additive is in it, and here it is ${limitedSlip}. Look at the data sheet.`,
  'oil/ambient-inside': (params, say) =>
    `${say.quantity(params.ambient)} lies in the range that the manual gives for this oil: ${band(params, say)}.`,
  'oil/ambient-outside': (params, say) =>
    `${say.quantity(params.ambient)} lies outside the range that the manual gives for this oil: ${band(params, say)}.`,
  'oil/ambient-not-given': (params, say) =>
    `The manual permits this oil ${band(params, say)}. Say how warm or cold it will be.`,
  'oil/ambient-not-a-band': ({ printed }, say) =>
    `The sheet prints ${say.quantity(printed)} for this oil and no range. Look at the manual.`,
  'oil/ambient-not-limited': () => 'The manual sets no temperature range for this oil.',
  'oil/oils-not-stated': () => 'The manual does not state an oil: see the manual.',
  'oil/no-oil-for-ambient': ({ ambient }, say) =>
    `None of the oils that the manual names is meant for ${say.quantity(ambient)}.`,
  'oil/viscosities-missing': ({ missing }, say) => {
    const names = missing.map((name) => (name === 'kv40' ? '40 °C' : '100 °C'))
    return `How thick the oil is cannot be told: its viscosity at ${say.list(names)} is not known. It stands in the data sheet.`
  },
  'oil/viscosities-reversed': ({ kv40, kv100 }, say) =>
    `${say.quantity(kv40)} at 40 °C and ${say.quantity(kv100)} at 100 °C cannot be one oil: it must be thinner when hot.`,
  'oil/below-pour-point': ({ temperature, pourPoint }, say) =>
    `At ${say.quantity(temperature)} the oil is below its pour point of ${say.quantity(pourPoint)}. Warm it first.`,
  'oil/pour-point-not-stated': () => 'The pour point is not known, so it was not looked at.',
  'oil/temperature-outside-range': ({ temperature, min, max }, say) =>
    `${say.quantity(temperature)} is outside the range of the formula, ${say.quantity(min)} to ${say.quantity(max)}.`,
  'oil/viscosity-outside-range': ({ viscosity, temperature, min, max }, say) =>
    viscosity === undefined
      ? `At ${say.quantity(temperature)} the viscosity leaves the range of the formula, ${say.quantity(min)} to ${say.quantity(max)}.`
      : `${say.quantity(viscosity)} is outside the range of the formula, ${say.quantity(min)} to ${say.quantity(max)}.`,
  'oil/viscosity-by-d341': ({ kv40, kv100, temperature }, say) =>
    `Viscosity at ${say.quantity(temperature)} by ASTM D341 from ${say.quantity(kv40)} at 40 °C and ${say.quantity(kv100)} at 100 °C.`,
  'oil/viscosity-index-undefined': ({ kv100, min }, say) =>
    `There is no viscosity index below ${say.quantity(min)} at 100 °C; this oil has ${say.quantity(kv100)}.`,
  'oil/viscosity-index-by-d2270': ({ procedure, kv40, kv100 }, say) =>
    `Viscosity index by ASTM D2270, procedure ${procedure}, from ${say.quantity(kv40)} at 40 °C and ${say.quantity(kv100)} at 100 °C.`,
  'oil/density-missing': () => 'The oil’s density at 15 °C is not known. It stands in the data sheet.',
  'oil/density-outside-range': ({ density, min, max }, say) =>
    `${say.quantity(density)} is no density of a lubricating oil; the table goes from ${say.quantity(min)} to ${say.quantity(max)}.`,
  'oil/density-by-d1250': ({ density15, temperature }, say) =>
    `Density at ${say.quantity(temperature)} by ASTM D1250, lubricating oils, from ${say.quantity(density15)} at 15 °C.`,
}
