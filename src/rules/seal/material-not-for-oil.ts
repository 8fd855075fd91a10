import { materialSuits } from '../../seal/index.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A ring of a rubber that gear oil destroys: EPDM swells and falls apart in mineral oil at any temperature. A maker's
 * fluid may be of another base and is left to its maker.
 * Judges: Every o-ring and bonded seal of an opening or cover, overrides included, whose gearcase, or the owner of
 * its oil, has an oil of a stated grade on the sheet or in an override. Finds a material that mineral gear oil at 20
 * °C destroys: `EPDM`.
 * Place: `<seal>/material`
 * Params: part: the name of the part (see terms); material: as written
 * Harm: machine
 * Source: a seal maker's table of elastomers, read second hand.
 */
export const rule = sheetRule('seal/material-not-for-oil', 'error', ({ sheet }) => {
  const oils = sheet.leaves.flatMap((found) =>
    found.kind === 'oils' &&
    found.leaf.kind === 'oils' &&
    found.leaf.choices.some(({ kind }) => kind === 'grade')
      ? [(found.replaces ?? found.path).split('/')[2]]
      : [],
  )
  return sheet.seals.flatMap(({ path, seal, on }) => {
    if ((seal.kind !== 'o-ring' && seal.kind !== 'bonded seal') || on.kind === 'shield') return []
    const id = on.path.split('/')[2]
    const owner = on.gearcase.oilSpace.kind === 'shared' ? on.gearcase.oilSpace.with : id
    const { verdict } = materialSuits(seal.material, 'mineral gear oil', ROOM_TEMPERATURE)
    if (!oils.includes(owner) || verdict !== 'no') return []
    return [{ path: `${path}/material`, params: { part: on.name, material: seal.material } }]
  })
})

const ROOM_TEMPERATURE = { value: 20, unit: 'degC' } as const
