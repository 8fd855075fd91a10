import { findFastening } from '../lookup/fastenings.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A property class that is in no standard, such as `8,8` for 8.8. The torque of the bolts cannot be checked
 * against it.
 * Judges: Every `propertyClass` of a cover's bolts or a shield's fasteners. Finds a class that is none of
 * 3.6, 4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9 and 12.9 (ISO 898-1), no A1 to A5 followed by a hyphen and 50,
 * 70, 80 or 100 (ISO 3506-1), and no `grade` 1, 2, 4, 5, 5.1, 5.2, 7, 8, 8.1 or 8.2 (SAE J429).
 * Place: `/gearcases/<id>/covers/<id>/bolts/propertyClass`, or `/shields/<id>/fasteners/propertyClass`
 * Params: part: the name of the part (see terms); propertyClass: as written; meant: the class with a point
 * instead of the comma, absent if that is not a class either
 * Harm: job
 * Source: classes of ISO 898-1 and grades of SAE J429 with a proof stress, from a secondary source. The others, and
 * those of ISO 3506-1, from memory.
 */
export const rule = sheetRule('torque/unknown-class', 'warning', ({ sheet }) =>
  sheet.parts.flatMap((on) => {
    const { path: holder, fastening } = findFastening(on)
    if ('uses' in fastening) return []
    const { propertyClass } = fastening
    if (propertyClass === undefined || isPropertyClass(propertyClass)) return []
    const path = `${holder}/propertyClass`
    const withPoint = propertyClass.replace(',', '.')
    const meant = isPropertyClass(withPoint) ? withPoint : undefined
    const fixes = meant === undefined ? [] : [{ op: 'replace' as const, path, value: meant }]
    return [{ path, params: { part: on.name, propertyClass, meant }, cures: fixes }]
  }),
)

const STEEL_CLASS = /^(?:[34]\.6|[45]\.8|5\.6|6\.8|[89]\.8|10\.9|12\.9)$/
const STAINLESS_CLASS = /^A[1-5]-(?:50|70|80|100)$/
const SAE_GRADE = /^grade (?:[12457]|5\.[12]|8(?:\.[12])?)$/

const isPropertyClass = (text: string) =>
  [STEEL_CLASS, STAINLESS_CLASS, SAE_GRADE].some((form) => form.test(text))
