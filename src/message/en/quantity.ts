import type { Param } from '../../base/index.js'
import { type QuantityCodes, unitSymbol } from '../../quantity/index.js'
import type { Texts } from '../catalogue.js'

const symbols = (candidates: readonly Parameters<typeof unitSymbol>[0][]): string[] =>
  candidates.map(unitSymbol)

export const quantityTexts: Texts<QuantityCodes> = {
  'quantity/text-is-empty': () => 'Nothing is written where a quantity is expected.',
  'quantity/text-is-too-long': ({ length, longest }, say) =>
    `The text has ${say.number(length)} characters; a quantity has at most ${say.number(longest)}.`,
  'quantity/number-is-missing': ({ text }) => `“${text}” does not begin with a number.`,
  'quantity/number-is-no-figure': ({ text }) =>
    `A number in “${text}” cannot be read: up to nine digits, one decimal mark, up to six decimals, and no zero in front.`,
  'quantity/decimal-mark-is-unclear': ({ text, withPoint, withComma }) =>
    `“${text}” can mean ${withPoint} or ${withComma}. Say which decimal mark the text uses.`,
  'quantity/fraction-does-not-end': ({ text, value }) =>
    `The fraction in “${text}” has no end as a decimal; ${value} is used.`,
  'quantity/value-is-negative': ({ quantity }, say) =>
    `${say.quantity(quantity)} is below zero; only temperatures may be.`,
  'quantity/band-is-upside-down': ({ min, max }) =>
    `The lower limit ${min} is above the upper limit ${max}. Put the smaller one first.`,
  'quantity/unit-is-missing': ({ text }) => `“${text}” names no unit. Write one, such as 20 N·m.`,
  'quantity/unit-is-unknown': ({ text }) => `“${text}” is not a unit that is known here.`,
  'quantity/unit-is-ambiguous': ({ text, candidates }, say) =>
    candidates.length === 1
      ? `“${text}” alone is no unit. Write ${say.list(symbols(candidates))}, if that is meant.`
      : `“${text}” can mean any of ${say.list(symbols(candidates))}. Write out the one that is meant.`,
  'quantity/unit-is-a-ratio': ({ text, candidates }, say) =>
    `“${text}” is one unit divided by another, and a torque is force times length. Write ${say.list(symbols(candidates))}, if that is meant.`,
  'quantity/unit-is-another-case': ({ text, candidates }, say) =>
    `Capital and small letters change the meaning of “${text}”. Write ${say.list(symbols(candidates))}, if that is meant.`,
  'quantity/unit-is-mass-for-force': ({ text, unit }) =>
    `“${text}” names a mass where a force belongs. It is read as ${unitSymbol(unit)}.`,
  'quantity/unit-is-of-another-measure': ({ unit, measure }) =>
    `${unitSymbol(unit)} is not a unit of ${MEASURE_NAMES[measure]}.`,
  'quantity/text-is-left-over': ({ text }) =>
    `“${text}” is left over after the quantity. Write one quantity alone.`,
  'quantity/printed-figures-miss': ({ first, second, missPercent }, say) =>
    `${band(first, say)} and ${band(second, say)} miss each other by ${say.number(missPercent, 2)} %. Look at the manual again; one of them may be misprinted.`,
  'quantity/printed-figures-slip': ({ first, second, slip, ratio }, say) =>
    `${band(first, say)} and ${band(second, say)} are apart by a factor of ${ratio}: ${SLIP_NAMES[slip]}. Find out which of them is right before anyone works to it.`,
  'quantity/printed-figures-differ': ({ first, second, missPercent }, say) =>
    `${band(first, say)} and ${band(second, say)} cannot be the same value; they miss each other by ${say.number(missPercent, 2)} %. Look at the manual again.`,
  'quantity/printed-figures-not-comparable': ({ first, second }, say) =>
    `${band(first, say)} and ${band(second, say)} do not state the same kind of limits, so they cannot be compared.`,
}

const band = (value: Param, say: { quantity(value: Param | undefined): string }): string =>
  say.quantity(value)

const SLIP_NAMES: { readonly [Slip in QuantityCodes['quantity/printed-figures-slip']['slip']]: string } = {
  'foot for inch': 'pound-inches and pound-feet have been mixed up',
  'kilogram-force for newton': 'kilogram-force and newton have been mixed up',
  'number copied between pound-foot and newton metre':
    'the number has been copied between lbf·ft and N·m without being converted, or converted twice',
  'US for imperial measure': 'US and imperial measures have been mixed up',
  'US for imperial fluid ounce': 'US and imperial fluid ounces have been mixed up',
}

const MEASURE_NAMES: {
  readonly [M in QuantityCodes['quantity/unit-is-of-another-measure']['measure']]: string
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
