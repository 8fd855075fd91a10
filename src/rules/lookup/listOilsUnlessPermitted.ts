import { type OilVerdict, oilMeets, parseGrade } from '../../oil/index.js'
import { type Identity, type OfferedOil, resolveLeaf, type SpecSheet, type Stock } from '../../spec/index.js'
import type { Named } from '../rule.js'
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

const GRADE_SYSTEMS = ['SAE J306', 'SAE J300', 'ISO VG'] as const

const normalizeName = (name: string) => name.trim().replace(/\s+/g, ' ').toUpperCase()

/**
 * An oil by its name in a log: from a stock with a container or oil of this name, else from the grade and
 * categories in the name.
 */
export function findOilByName(name: string, stocks: readonly Named<Stock>[]): OfferedOil {
  const containers = stocks.flatMap(({ document }) => Object.values(document.containers))
  const found = containers.find(
    (container) =>
      normalizeName(container.oil.name) === normalizeName(name) ||
      normalizeName(container.name) === normalizeName(name),
  )
  if (found !== undefined) return found.oil
  const short = name.slice(0, 200)
  const [, viscosity] =
    /\b([0-9]{1,2}W(?:[-–/ ][0-9]{1,3})?|VG ?[0-9]{1,4}|(?<=SAE )[0-9]{2,3})\b/i.exec(short) ?? []
  const system = GRADE_SYSTEMS.find(
    (candidate) => viscosity !== undefined && parseGrade(viscosity, candidate).ok,
  )
  const categories = short
    .match(/\b(?:GL-?[1-6]|MT-?1)\b/gi)
    ?.map((item) => item.toUpperCase().replace(/(?<=[LT])(?=\d)/, '-'))
  return {
    name,
    ...(viscosity !== undefined && system !== undefined && { grade: viscosity, system }),
    ...(categories && { categories }),
  }
}
