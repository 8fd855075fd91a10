import { pickFirstPrinted } from '../lookup/printedValues.js'
import { hasDisagreement, listGearcaseValues, readStatedRange } from '../lookup/statedValues.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A drain temperature above 80 °C. Such hot oil burns the hand that removes the plug; the figure may be 86 to
 * 122 °F, entered as °C. The temperature for a level check is often higher, and is not judged here.
 * Judges: Every stated `drainTemperature` of a gearcase, including overrides, by its first printed figure.
 * Finds one whose highest figure is above 80 °C. Skipped if a second printed figure disagrees with the first.
 * Place: the value
 * Params: gearcase: its name; temperature: as first printed
 * Harm: injury
 * Common practice, no source: gear oil is drained warm, at 30 to 60 °C. The limit of 80 °C is our own estimate.
 */
export const rule = sheetRule('spec/implausible-drain-temperature', 'warning', ({ sheet }) =>
  listGearcaseValues(sheet, 'drainTemperature').flatMap(({ path, value, gearcase }) => {
    if ((readStatedRange(value, 'degC')?.high ?? 0) <= MAX_DRAIN_CELSIUS || hasDisagreement(sheet, path))
      return []
    return [{ path, params: { gearcase: gearcase.name, temperature: pickFirstPrinted(value) } }]
  }),
)

const MAX_DRAIN_CELSIUS = 80
