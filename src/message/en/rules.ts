import type { RuleCodes } from '../../rules/index.js'
import type { Texts } from '../catalogue.js'
import { figureRuleTexts } from './rules/figures.js'
import { partRuleTexts } from './rules/parts.js'
import { recordRuleTexts } from './rules/record.js'
import { specRuleTexts } from './rules/spec.js'
import { workshopRuleTexts } from './rules/workshop.js'

export const rulesTexts: Texts<RuleCodes> = {
  ...specRuleTexts,
  ...figureRuleTexts,
  ...partRuleTexts,
  ...workshopRuleTexts,
  ...recordRuleTexts,
}
