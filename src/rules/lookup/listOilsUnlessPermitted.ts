import { type OilVerdict, oilMeets } from '../../oil/index.js'
import { type Identity, type OfferedOil, resolveLeaf, type SpecSheet } from '../../spec/index.js'
import { lookUp } from './lookUp.js'

/** The oils that the sheet permits in a gearcase; undefined if this oil is one of them, or may be. */
export function listOilsUnlessPermitted(
  sheet: SpecSheet,
  id: string,
  identity: Identity,
  oil: OfferedOil,
): readonly string[] | undefined {
  const gearcase = lookUp(sheet.gearcases, id)
  if (gearcase === undefined || gearcase.oilSpace.kind === 'shared') return undefined
  const oils = resolveLeaf(sheet, identity, 'oils', `/gearcases/${id}/oilSpace/oils`)
  if (oils.kind !== 'stated') return undefined
  const yellowMetal = gearcase.yellowMetal ?? 'not stated'
  const verdicts: readonly OilVerdict[] = oils.value.choices.map((choice) =>
    oilMeets(choice, oil, { yellowMetal }),
  )
  if (verdicts.some(({ verdict }) => verdict !== 'no')) return undefined
  return oils.value.choices.map((choice) =>
    choice.kind === 'grade' ? [choice.grade, choice.category].filter(Boolean).join(' ') : choice.name,
  )
}
