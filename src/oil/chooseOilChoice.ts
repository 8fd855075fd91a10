import { type Reason, requireObject, shown } from '../base/index.js'
import type { Quantity, TemperatureUnit } from '../quantity/index.js'
import type { OilChoice, Oils } from '../spec/index.js'
import { type OilCodes, oilReason } from './codes.js'
import { holdsAtAmbient } from './holdsAtAmbient.js'

export interface JudgedOilChoice {
  /** Place in the sheet's list. */
  readonly index: number
  readonly choice: OilChoice
  readonly verdict: 'yes' | 'no' | 'ask'
  readonly reasons: readonly Reason<keyof OilCodes>[]
}

export interface OilChoiceVerdict {
  /** `yes`: at least one of the oils is right; `no`: none is; `ask`: none certainly, some perhaps, or none stated. */
  readonly verdict: 'yes' | 'no' | 'ask'
  /** Every oil of the sheet in the sheet's order, since makers print the preferred one first. */
  readonly choices: readonly JudgedOilChoice[]
  readonly reasons: readonly Reason<keyof OilCodes>[]
}

/**
 * Which of the oils that a manual permits are right at an ambient temperature, for planning a visit. Whether a
 * container on the shelf is such an oil is {@link oilMeets}'s question.
 *
 * @param oils - the sheet's leaf, also where the manual states none
 * @param ambient - the day's temperature; absent: oils with a band come out as `ask`
 * @returns each oil with `yes`, `no` or `ask` and why, in the sheet's order
 * @throws TypeError or RangeError when `ambient` is no temperature or `oils` no leaf
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { chooseOilChoice } from 'drivetrain-service/v1/oil'
 * // Which of two oils is right at −15 °C?
 * const either = { kind: 'grade', system: 'SAE J306', limitedSlip: 'either' } as const
 * const warm = { ...either, grade: '90', ambient: { kind: 'limits', min: '-10', unit: 'degC' } } as const
 * const cold = { ...either, grade: '75W-90', ambient: { kind: 'limits', max: '30', unit: 'degC' } } as const
 * const answer = chooseOilChoice({ kind: 'oils', choices: [warm, cold] }, { value: -15, unit: 'degC' })
 * answer.choices.map(({ holds }) => holds) // => ['no', 'yes']
 * ```
 */
export function chooseOilChoice(oils: Oils, ambient?: Quantity<TemperatureUnit>): OilChoiceVerdict {
  requireObject('oils', oils)
  if (oils.kind === 'not stated') {
    return { verdict: 'ask', choices: [], reasons: [oilReason('oil/oils-not-stated', {})] }
  }
  if (!Array.isArray(oils.choices))
    throw new TypeError(`oils.choices must be a list, got ${shown(oils.choices)}`)
  for (const [index, choice] of oils.choices.entries()) requireObject(`oils.choices[${index}]`, choice)
  const choices = oils.choices.map((choice, index) => ({
    index,
    choice,
    ...holdsAtAmbient(choice.ambient, ambient),
  }))
  if (choices.some(({ verdict }) => verdict === 'yes')) return { verdict: 'yes', choices, reasons: [] }
  if (ambient === undefined || choices.some(({ verdict }) => verdict === 'ask')) {
    return { verdict: 'ask', choices, reasons: [] }
  }
  return { verdict: 'no', choices, reasons: [oilReason('oil/no-oil-for-ambient', { ambient })] }
}
