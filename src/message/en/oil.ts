import type { OilCodes } from '../../oil/index.js'
import type { Say, Texts } from '../catalogue.js'

type Limits = OilCodes['oil/ambient-in-range'] | OilCodes['oil/ambient-not-given']

/** A band in words: `from −10 °C to 30 °C`, `from −10 °C`, `up to 30 °C`. */
function writeRange({ min, max }: Limits, say: Say): string {
  if (min === undefined) return max === undefined ? 'any temperature' : `up to ${say.quantity(max)}`
  return max === undefined ? `from ${say.quantity(min)}` : `from ${say.quantity(min)} to ${say.quantity(max)}`
}

export const oilTexts: Texts<OilCodes> = {
  'oil/grade-not-known': ({ grade, system, known }, say) =>
    `${system} has no grade “${grade}”. Known grades: ${say.list(known)}.`,
  'oil/grade-not-in-edition': ({ grade, system, edition }) =>
    `${grade} is not in the ${edition} edition of ${system}.`,
  'oil/grade-impossible': ({ grade, system }) =>
    `No oil can be ${grade}: the two parts contradict each other in ${system}.`,
  'oil/edition-not-known': ({ edition, system, known }, say) =>
    `Unknown edition “${edition}” of ${system}. Known editions: ${say.list(known)}; all were considered.`,
  'oil/grade-same': ({ grade }) => `The label says ${grade}, as the manual requires.`,
  'oil/multigrade-covers': ({ permitted, offered }) =>
    `${offered} meets all limits of ${permitted} and also those of another grade.`,
  'oil/grade-differs': ({ permitted, offered }) =>
    `The manual requires ${permitted}; the label says ${offered}.`,
  'oil/hot-grade-thicker': ({ permitted, offered }) =>
    `The manual requires ${permitted}, with no grade for hot oil; the label says ${offered}, which is much thicker when hot. Ask the machine’s maker.`,
  'oil/grade-renamed': ({ permitted, offered, system }) =>
    `The manual requires ${permitted}; the label says ${offered}. Editions of ${system} divide these grades differently: find out which edition the manual means.`,
  'oil/winter-grade-missing': ({ permitted, offered }) =>
    `The manual requires ${permitted}; the label says ${offered}, without a winter grade.`,
  'oil/winter-grade-colder': ({ permitted, offered }) =>
    `${offered} is thinner in the cold than the ${permitted} of the manual. Ask whether it is permitted.`,
  'oil/winter-grade-warmer': ({ permitted, offered }) =>
    `${offered} is too thick in the cold: the manual requires ${permitted}.`,
  'oil/grade-not-on-label': ({ permitted }) =>
    `The label gives no grade; the manual requires ${permitted}. Check the data sheet.`,
  'oil/systems-differ': ({ permitted, offered }) =>
    `${permitted} and ${offered} are grades of different systems; neither replaces the other.`,
  'oil/viscosity-inside-band': ({ grade, viscosity, at }, say) =>
    `${say.quantity(viscosity)} at ${say.quantity(at)} is within the limits of ${grade}. Viscosity alone does not make it that grade: ask the oil’s maker.`,
  'oil/viscosity-outside-band': ({ grade, viscosity, at }, say) =>
    `${say.quantity(viscosity)} at ${say.quantity(at)} is outside the limits of ${grade}.`,
  'oil/label-contradicts-viscosity': ({ grade, viscosity, at }, say) =>
    `The label says ${grade}, but ${say.quantity(viscosity)} at ${say.quantity(at)} is outside that grade. One of the two is wrong.`,
  'oil/maker-fluid-named': ({ name }) => `The label names ${name}.`,
  'oil/maker-fluid-not-named': ({ name, offered }) =>
    `The manual permits only ${name}, and the label of ${offered} does not name it. The same viscosity is not enough.`,
  'oil/category-not-stated': () => 'The manual states no service category.',
  'oil/category-on-label': ({ category }) => `The label says ${category}, as the manual requires.`,
  'oil/category-not-on-label': ({ category }) =>
    `The label gives no service category; the manual requires ${category}. Check the data sheet.`,
  'oil/category-differs': ({ permitted, offered }, say) =>
    `The manual requires ${permitted}; the label says ${say.list(offered)}.`,
  'oil/category-doubtful': ({ permitted, offered }, say) =>
    `The manual requires ${permitted}; the label says ${say.list(offered)}. Whether one covers the other is not known: ask the oil’s maker.`,
  'oil/category-harms-yellow-metal': ({ permitted, offered }, say) =>
    `Bronze or brass parts run in this oil. The manual requires ${permitted}; the additives of ${say.list(offered)} may attack them. Use ${permitted} oil.`,
  'oil/category-yellow-metal-unknown': ({ permitted, offered }, say) =>
    `The manual requires ${permitted}; the label says ${say.list(offered)}. The sheet does not state whether bronze or brass parts run in this oil. Ask the machine’s maker.`,
  'oil/category-higher-no-yellow-metal': ({ permitted, offered }, say) =>
    `${say.list(offered)} is for heavier duty than ${permitted}, and no bronze or brass parts run in this oil.`,
  'oil/category-dual-rated': ({ permitted, offered }, say) =>
    `The label says ${say.list(offered)} together. Ask the oil’s maker whether it may be used where the manual requires ${permitted}.`,
  'oil/limited-slip-not-stated': () => 'The manual does not mention a limited-slip additive.',
  'oil/limited-slip-fits': ({ limitedSlip }) =>
    limitedSlip === 'either'
      ? 'The oil may or may not contain a limited-slip additive.'
      : limitedSlip === 'required'
        ? 'The oil contains the limited-slip additive that the manual requires.'
        : 'The oil is without a limited-slip additive, as the manual requires.',
  'oil/limited-slip-additive-missing': () =>
    'The manual requires a limited-slip additive, and this oil has none.',
  'oil/limited-slip-additive-separate': ({ name }) =>
    `The oil has no limited-slip additive; ${name} is added separately, as the manual says.`,
  'oil/limited-slip-additive-twice': ({ name }) =>
    `The oil already contains a limited-slip additive, and the manual adds ${name}. Ask the machine’s maker before you use both.`,
  'oil/limited-slip-not-permitted': () =>
    'The oil contains a limited-slip additive, and the manual does not permit one.',
  'oil/limited-slip-not-mentioned': () =>
    'The oil contains a limited-slip additive, and the manual does not mention one. Ask the machine’s maker.',
  'oil/limited-slip-not-on-label': ({ limitedSlip }) =>
    `The label does not say whether the oil contains a limited-slip additive; the manual says: ${limitedSlip}. Check the data sheet.`,
  'oil/ambient-in-range': (params, say) =>
    `${say.quantity(params.ambient)} is within the manual’s range for this oil: ${writeRange(params, say)}.`,
  'oil/ambient-out-of-range': (params, say) =>
    `${say.quantity(params.ambient)} is outside the manual’s range for this oil: ${writeRange(params, say)}.`,
  'oil/ambient-not-given': (params, say) =>
    `The manual’s range for this oil: ${writeRange(params, say)}. Give the ambient temperature.`,
  'oil/ambient-not-a-range': ({ printed }, say) =>
    `The sheet gives ${say.quantity(printed)} for this oil, not a range. Check the manual.`,
  'oil/ambient-not-limited': () => 'The manual gives no temperature range for this oil.',
  'oil/oils-not-stated': () => 'The sheet states no oil. See the manual.',
  'oil/no-oil-for-ambient': ({ ambient }, say) =>
    `The manual permits none of its oils at ${say.quantity(ambient)}.`,
  'oil/viscosities-missing': ({ missing }, say) => {
    const names = missing.map((name) => (name === 'kv40' ? '40 °C' : '100 °C'))
    return `The viscosity at ${say.list(names)} is not known. See the data sheet.`
  },
  'oil/viscosities-reversed': ({ kv40, kv100 }, say) =>
    `${say.quantity(kv40)} at 40 °C and ${say.quantity(kv100)} at 100 °C cannot be the same oil: oil thins as it warms.`,
  'oil/below-pour-point': ({ temperature, pourPoint }, say) =>
    `At ${say.quantity(temperature)} the oil is below its pour point of ${say.quantity(pourPoint)}. Warm it first.`,
  'oil/pour-point-not-stated': () => 'The pour point is not known, so it was not checked.',
  'oil/temperature-outside-range': ({ temperature, min, max }, say) =>
    `${say.quantity(temperature)} is outside the range of the formula, ${say.quantity(min)} to ${say.quantity(max)}.`,
  'oil/viscosity-outside-range': ({ viscosity, temperature, min, max }, say) =>
    viscosity === undefined
      ? `At ${say.quantity(temperature)} the viscosity is outside the range of the formula, ${say.quantity(min)} to ${say.quantity(max)}.`
      : `${say.quantity(viscosity)} is outside the range of the formula, ${say.quantity(min)} to ${say.quantity(max)}.`,
  'oil/viscosity-by-d341': ({ kv40, kv100, temperature }, say) =>
    `Viscosity at ${say.quantity(temperature)} by ASTM D341 from ${say.quantity(kv40)} at 40 °C and ${say.quantity(kv100)} at 100 °C.`,
  'oil/viscosity-index-undefined': ({ kv100, min }, say) =>
    `There is no viscosity index below ${say.quantity(min)} at 100 °C; this oil has ${say.quantity(kv100)}.`,
  'oil/viscosity-index-by-d2270': ({ procedure, kv40, kv100 }, say) =>
    `Viscosity index by ASTM D2270, procedure ${procedure}, from ${say.quantity(kv40)} at 40 °C and ${say.quantity(kv100)} at 100 °C.`,
  'oil/density-missing': () => 'The density at 15 °C is not known. See the data sheet.',
  'oil/density-outside-range': ({ density, min, max }, say) =>
    `${say.quantity(density)} is not a density of a lubricating oil; the table covers ${say.quantity(min)} to ${say.quantity(max)}.`,
  'oil/density-by-d1250': ({ density15, temperature }, say) =>
    `Density at ${say.quantity(temperature)} by ASTM D1250, lubricating oils, from ${say.quantity(density15)} at 15 °C.`,
}
