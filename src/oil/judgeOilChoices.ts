import { type Reason, refuse, requireObject } from '../base/index.js'
import type { Quantity, TemperatureUnit } from '../quantity/index.js'
import type { OilChoice, Oils } from '../spec/index.js'
import { type OilCodes, oilReason } from './codes.js'
import { judgeAmbientBand } from './judgeAmbientBand.js'

interface JudgedOilChoice {
  /** Index in the sheet's list. */
  readonly index: number
  readonly choice: OilChoice
  readonly verdict: 'yes' | 'no' | 'ask' | 'cannot tell'
  readonly reasons: readonly Reason<keyof OilCodes>[]
}

export interface OilChoiceVerdict {
  /**
   * `yes`: at least one oil is right; `no`: no oil is right; `cannot tell`: a fact is missing; `ask`: the
   * sheet does not decide.
   */
  readonly verdict: 'yes' | 'no' | 'ask' | 'cannot tell'
  /** Every oil of the sheet in the sheet's order, since makers print the preferred one first. */
  readonly choices: readonly JudgedOilChoice[]
  readonly reasons: readonly Reason<keyof OilCodes>[]
}

/** Judges each oil that a manual permits, and all of them together, at an ambient temperature. */
export function judgeOilChoices(oils: Oils, ambient?: Quantity<TemperatureUnit>): OilChoiceVerdict {
  requireObject('oils', oils)
  if (oils.kind === 'not stated')
    return { verdict: 'ask', choices: [], reasons: [oilReason('oil/oils-not-stated', {})] }
  if (!Array.isArray(oils.choices)) throw refuse('oils.choices', oils.choices, 'a list')
  for (const [index, choice] of oils.choices.entries()) requireObject(`oils.choices[${index}]`, choice)
  const choices = oils.choices.map((choice, index) => ({
    index,
    choice,
    ...judgeAmbientBand(choice.ambient, ambient),
  }))
  const hasVerdict = (word: JudgedOilChoice['verdict']) => choices.some(({ verdict }) => verdict === word)
  if (hasVerdict('yes')) return { verdict: 'yes', choices, reasons: [] }
  if (hasVerdict('cannot tell') || ambient === undefined)
    return { verdict: 'cannot tell', choices, reasons: [] }
  if (hasVerdict('ask')) return { verdict: 'ask', choices, reasons: [] }
  return { verdict: 'no', choices, reasons: [oilReason('oil/no-oil-for-ambient', { ambient })] }
}
