import type { BondedSeal, Gearcase, OilChoice, ORing } from '../../spec/index.js'
import type { SheetIndex } from './indexSheet.js'

/** A rubber ring of an opening or cover. */
interface RingInOil {
  readonly path: string
  readonly ring: ORing | BondedSeal
  readonly part: string
  readonly gearcase: Gearcase
}

/**
 * The rubber rings of gearcases with an oil for which `isOilInQuestion` is true; shared oil is looked up at
 * its owner.
 */
export function listRingsInOil(
  sheet: SheetIndex,
  isOilInQuestion: (choice: OilChoice) => boolean,
): readonly RingInOil[] {
  const ownerIds = sheet.leaves.flatMap(({ kind, leaf, path, replaces }) =>
    kind === 'oils' && leaf.kind === 'oils' && leaf.choices.some(isOilInQuestion)
      ? [(replaces ?? path).split('/')[2]]
      : [],
  )
  return sheet.seals.flatMap(({ path, seal, on }) => {
    if ((seal.kind !== 'o-ring' && seal.kind !== 'bonded seal') || on.kind === 'shield') return []
    const { gearcase, name } = on
    const ownerId = gearcase.oilSpace.kind === 'shared' ? gearcase.oilSpace.with : on.path.split('/')[2]
    return ownerIds.includes(ownerId) ? [{ path, ring: seal, part: name, gearcase }] : []
  })
}
