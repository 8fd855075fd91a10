import type { Param } from '../../base/index.js'
import { type QuantityCodes, unitSymbol } from '../../quantity/index.js'
import type { Texts } from '../catalogue.js'

const listSymbols = (candidates: readonly Parameters<typeof unitSymbol>[0][]): string[] =>
  candidates.map(unitSymbol)

export const quantityTexts: Texts<QuantityCodes> = {
  'quantity/text-is-empty': () => 'Expected a quantity, found nothing.',
  'quantity/text-is-too-long': ({ length, longest }, say) =>
    `The text has ${say.number(length)} characters; the limit is ${say.number(longest)}.`,
  'quantity/number-is-missing': ({ text }) => `Expected a number first, found “${text}”.`,
  'quantity/superscript-digit': ({ text, without }) =>
    `“${text}” has a superscript digit, which is not part of the number. Write “${without}”, and the footnote separately.`,
  'quantity/number-is-unreadable': ({ text }) =>
    `Unreadable number in “${text}”. Write up to nine digits, one decimal mark, up to six decimals, and no leading zero.`,
  'quantity/decimal-mark-is-unclear': ({ text, withPoint, withComma }) =>
    `“${text}” can mean ${withPoint} or ${withComma}. Say whether the comma or the point is the decimal mark.`,
  'quantity/fraction-is-rounded': ({ text, value }) =>
    `The fraction in “${text}” has no exact decimal; ${value} is used.`,
  'quantity/value-is-negative': ({ quantity }, say) =>
    `${say.quantity(quantity)} is negative; only a temperature may be.`,
  'quantity/limits-reversed': ({ min, max }) =>
    `Minimum ${min} exceeds maximum ${max}. Put the smaller one first.`,
  'quantity/unit-is-missing': ({ text }) => `No unit in “${text}”. Write one, such as 20 N·m.`,
  'quantity/unit-is-unknown': ({ text }) => `Unknown unit “${text}”.`,
  'quantity/unit-is-ambiguous': ({ text, candidates }, say) =>
    candidates.length === 1
      ? `“${text}” alone is not a unit. Did you mean ${say.list(listSymbols(candidates))}?`
      : `“${text}” is ambiguous: ${say.list(listSymbols(candidates))}. Write which one you mean.`,
  'quantity/ratio-of-units': ({ text, candidates }, say) =>
    `“${text}” is one unit divided by another; torque is force times length. Did you mean ${say.list(listSymbols(candidates))}?`,
  'quantity/unit-in-wrong-case': ({ text, candidates }, say) =>
    `Upper and lower case change the meaning of “${text}”. Did you mean ${say.list(listSymbols(candidates))}?`,
  'quantity/mass-unit-for-force': ({ text, unit }) =>
    `“${text}” has a unit of mass instead of force; read as ${unitSymbol(unit)}.`,
  'quantity/unit-of-other-measure': ({ unit, measure }) =>
    `${unitSymbol(unit)} is not a unit of ${MEASURE_NAMES[measure]}.`,
  'quantity/text-after-quantity': ({ text }) =>
    `Unexpected text after the quantity: “${text}”. Write one quantity only.`,
  'quantity/printed-figures-differ-slightly': ({ first, second, missPercent }, say) =>
    `${writeBand(first, say)} and ${writeBand(second, say)} differ by ${say.number(missPercent, 2)} %. Check the manual; one of them may be a misprint.`,
  'quantity/printed-figures-slip': ({ first, second, slip, ratio }, say) =>
    `${writeBand(first, say)} and ${writeBand(second, say)} differ by a factor of ${ratio}: ${SLIP_NAMES[slip]}. Find out which is right before use.`,
  'quantity/printed-figures-differ': ({ first, second, missPercent }, say) =>
    `${writeBand(first, say)} and ${writeBand(second, say)} cannot be the same value; they differ by ${say.number(missPercent, 2)} %. Check the manual.`,
  'quantity/printed-figures-not-comparable': ({ first, second }, say) =>
    `${writeBand(first, say)} and ${writeBand(second, say)} are not limits of the same kind, so they cannot be compared.`,
}

const writeBand = (value: Param, say: { quantity(value: Param | undefined): string }): string =>
  say.quantity(value)

const SLIP_NAMES: { readonly [Slip in QuantityCodes['quantity/printed-figures-slip']['slip']]: string } = {
  'foot for inch': 'perhaps pound-inches and pound-feet were mixed up',
  'kilogram-force for newton': 'perhaps kilogram-force and newton were mixed up',
  'number copied between pound-foot and newton metre':
    'perhaps a number in lbf·ft or N·m was copied without conversion, or converted twice',
  'US for imperial measure': 'perhaps US and imperial measures were mixed up',
  'US for imperial fluid ounce': 'perhaps US and imperial fluid ounces were mixed up',
}

const MEASURE_NAMES: {
  readonly [M in QuantityCodes['quantity/unit-of-other-measure']['measure']]: string
} = {
  torque: 'torque',
  volume: 'volume',
  length: 'length',
  distance: 'distance',
  force: 'force',
  pressure: 'pressure',
  temperature: 'temperature',
  temperatureDifference: 'temperature difference',
  mass: 'mass',
  duration: 'time',
  angle: 'angle',
  speed: 'speed',
  kinematicViscosity: 'kinematic viscosity',
  dynamicViscosity: 'dynamic viscosity',
  density: 'density',
}
