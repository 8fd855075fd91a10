import type { JsonPointer } from '../../base/index.js'
import { findLeaves, type OilChoice, type OwnOilSpace, type SpecSheet } from '../../spec/index.js'
import { lookUp } from './lookUp.js'

/** The oils of one gearcase as written, on the sheet or in an override. */
export interface OilsAt {
  readonly path: JsonPointer
  readonly choices: readonly OilChoice[]
  readonly oilSpace: OwnOilSpace
}

/** Every list of oils of a sheet, those of overrides too, each with the oil space that it is for. */
export function sheetOils(sheet: SpecSheet): readonly OilsAt[] {
  return findLeaves(sheet).flatMap((found) => {
    if (found.kind !== 'oils' || found.leaf.kind === 'not stated') return []
    const id = (found.replaces ?? found.path).split('/')[2] ?? ''
    const oilSpace = lookUp(sheet.gearcases, id)?.oilSpace
    return oilSpace?.kind === 'own' ? [{ path: found.path, choices: found.leaf.choices, oilSpace }] : []
  })
}
