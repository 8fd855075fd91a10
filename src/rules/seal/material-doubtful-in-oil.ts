import { normalCategory } from '../../oil/index.js'
import { materialSuits } from '../../seal/index.js'
import type { OilChoice } from '../../spec/index.js'
import { gearcaseValues } from '../lookup/gearcaseValues.js'
import { ringsInOil } from '../lookup/ringsInOil.js'
import { statedRange } from '../lookup/statedRange.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A rubber ring in hypoid EP oil that may not last: at the working temperature of its gearcase its family hardens before
 * its time, or it is silicone, which EP additives attack at any temperature. Check the parts list, or ask the seal's
 * maker about the compound.
 * Judges: Every o-ring and bonded seal of an opening or cover, overrides included, whose gearcase, or the owner of its
 * oil, has a grade oil of category GL-5 on the sheet or in an override. Finds NBR above 80 °C, HNBR above 120 °C and FKM
 * above 150 °C, by the highest figure of the gearcase's own `workingTemperature` in the sheet, first printed, where it is
 * stated; and VMQ, whatever the temperature.
 * Place: `<seal>/material`
 * Params: part: the name of the part (see terms); material: as written; reason: code and params of the judgement
 * Harm: machine
 * Source: a seal maker's chart for hypoid oils, read second hand without its picture, and a table of elastomers, read
 * second hand; that EP additives attack silicone is common practice, no source.
 */
export const rule = sheetRule('seal/material-doubtful-in-oil', 'warning', ({ sheet }) => {
  const working = gearcaseValues(sheet, 'workingTemperature').filter(({ isOverride }) => !isOverride)
  return ringsInOil(sheet, isHypoidOil).flatMap(({ path, ring: { material }, part, gearcase }) => {
    const stated = working.find((one) => one.gearcase === gearcase)
    const silicone = material === 'VMQ'
    const degrees = silicone ? 20 : stated && statedRange(stated.value, 'degC')?.high
    if (degrees === undefined) return []
    const { reasons } = materialSuits(material, 'hypoid EP oil', { value: degrees, unit: 'degC' })
    const doubt = silicone ? 'seal/material-poor' : 'seal/above-continuous-limit'
    const reason = reasons.find(({ code }) => code === doubt)
    if (reason === undefined) return []
    return [{ path: `${path}/material`, params: { part, material, reason: { ...reason } } }]
  })
})

const isHypoidOil = (choice: OilChoice): boolean =>
  choice.kind === 'grade' && normalCategory(choice.category ?? '') === 'GL-5'
