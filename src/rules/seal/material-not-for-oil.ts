import { judgeSealMaterial } from '../../seal/index.js'
import { listRingsInOil } from '../lookup/listRingsInOil.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A rubber ring that gear oil destroys: EPDM swells and falls apart in mineral oil at any temperature. A
 * fluid known only by its brand name may have a different base oil, so it is not judged.
 * Judges: Every o-ring and bonded seal of an opening or cover, including overrides, whose gearcase, or the
 * owner of its oil, has an oil of a stated grade on the sheet or in an override. Finds `EPDM`, which mineral
 * gear oil destroys at 20 °C.
 * Place: `<seal>/material`
 * Params: part: the name of the part (see terms); material: as written
 * Harm: machine
 * Source: a seal maker's table of elastomers, from a secondary source.
 */
export const rule = sheetRule('seal/material-not-for-oil', 'error', ({ sheet }) =>
  listRingsInOil(sheet, ({ kind }) => kind === 'grade').flatMap(({ path, ring: { material }, part }) =>
    judgeSealMaterial(material, 'mineral gear oil', ROOM_TEMPERATURE).verdict === 'no'
      ? [{ path: `${path}/material`, params: { part, material } }]
      : [],
  ),
)

const ROOM_TEMPERATURE = { value: 20, unit: 'degC' } as const
