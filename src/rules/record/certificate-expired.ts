import { lookUp } from '../lookup/lookUp.js'
import { recordRule } from '../ruleMakers.js'

/**
 * A wrench whose certificate had expired on the day of the work: it proves nothing about these torques.
 * Judges: Every record with `certificates`, except corrections: what they state is judged in the record that they correct. Finds each certificate
 * whose `validTo` is before the date of the record.
 * Place: `/certificates/<place>/validTo`
 * Params: wrench: its name in a toolbox of the set, or its id; certificate: its number; validTo: its last day; date: date of the record
 * Harm: record
 * House rule.
 */
export const rule = recordRule('record/certificate-expired', 'warning', ({ document, set }) => {
  const { certificates = [], date, corrects } = document
  if (corrects !== undefined) return []
  return certificates.flatMap(({ tool, number: certificate, validTo }, place) => {
    if (validTo === undefined || validTo >= date) return []
    const wrenches = set.toolboxes.map((toolbox) => lookUp(toolbox.document.wrenches, tool)?.name)
    const wrench = wrenches.find((name) => name !== undefined) ?? tool
    return [{ path: `/certificates/${place}/validTo`, params: { wrench, certificate, validTo, date } }]
  })
})
