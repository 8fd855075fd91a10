import { normalizeCategory } from '../../oil/index.js'
import { judgeSealMaterial } from '../../seal/index.js'
import type { OilChoice } from '../../spec/index.js'
import { listRingsInOil } from '../lookup/listRingsInOil.js'
import { listGearcaseValues, readStatedRange } from '../lookup/statedValues.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A rubber ring that may not last in hypoid EP oil. At the working temperature of its gearcase this kind of
 * rubber hardens too soon, or it is silicone, which EP additives attack at any temperature. Check the parts
 * list, or ask the seal's maker about the compound.
 * Judges: Every o-ring and bonded seal of an opening or cover, including overrides, whose gearcase, or the
 * owner of its oil, has a grade oil of category GL-5 on the sheet or in an override. Finds NBR above 80 °C,
 * HNBR above 120 °C and FKM above 150 °C, by the highest first printed figure of the gearcase's
 * `workingTemperature` on the base sheet, if stated. Finds VMQ at any temperature.
 * Place: `<seal>/material`
 * Params: part: the name of the part (see terms); material: as written; reason: code and params of the judgement
 * Harm: machine
 * Source: a seal maker's chart for hypoid oils, as quoted in a secondary source (chart not seen), and a table of
 * elastomers, from a secondary source. The attack of EP additives on silicone: common practice, no source.
 */
export const rule = sheetRule('seal/material-doubtful-in-oil', 'warning', ({ sheet }) => {
  const workingTemperatures = listGearcaseValues(sheet, 'workingTemperature').filter(
    ({ isOverride }) => !isOverride,
  )
  return listRingsInOil(sheet, isHypoidOil).flatMap(({ path, ring: { material }, part, gearcase }) => {
    const stated = workingTemperatures.find((workingTemperature) => workingTemperature.gearcase === gearcase)
    const isSilicone = material === 'VMQ'
    const degrees = isSilicone ? 20 : stated && readStatedRange(stated.value, 'degC')?.high
    if (degrees === undefined) return []
    const { reasons } = judgeSealMaterial(material, 'hypoid EP oil', { value: degrees, unit: 'degC' })
    const reasonCode = isSilicone ? 'seal/material-poor' : 'seal/above-continuous-limit'
    const reason = reasons.find(({ code }) => code === reasonCode)
    if (reason === undefined) return []
    return [{ path: `${path}/material`, params: { part, material, reason: { ...reason } } }]
  })
})

const isHypoidOil = (choice: OilChoice): boolean =>
  choice.kind === 'grade' && normalizeCategory(choice.category ?? '') === 'GL-5'
