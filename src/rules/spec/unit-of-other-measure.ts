import { splitPointer } from '../../base/index.js'
import { measureOf } from '../../quantity/index.js'
import { findLeafRow } from '../../spec/index.js'
import { sheetRule } from '../ruleMakers.js'

/**
 * A quantity with a unit of the wrong measure, such as a refill in newton metres. An override may contain any
 * value, and a second printed figure any unit, so this rule checks them.
 * Judges: Every leaf of kind `value`, including overrides. `machine/mass` needs mass; `portion`,
 * `drainAndRefill` and `dryFill` volume; `drainTemperature`, `workingTemperature` and `level/temperature`
 * temperature; `method/below` length; `minutesAfterStop` duration. Finds a unit of another measure; else each
 * entry of `printed` whose measure is not that of the value.
 * Place: `<value>/unit`, or `<value>/printed/<place>/unit`
 * Params: unit: as written; measure: the measure of that unit; required: the required measure
 * Harm: machine
 * House rule: units of different measures are never converted into each other.
 */
export const rule = sheetRule('spec/unit-of-other-measure', 'error', ({ sheet }) =>
  sheet.leaves.flatMap(({ kind, leaf, path, replaces }) => {
    if (kind !== 'value' || leaf.kind === 'not stated') return []
    const measure = measureOf(leaf.unit)
    const requiredMeasure = findLeafRow(splitPointer(replaces ?? path) ?? [])?.measure
    if (requiredMeasure !== undefined && requiredMeasure !== measure)
      return [{ path: `${path}/unit`, params: { unit: leaf.unit, measure, required: requiredMeasure } }]
    return (leaf.printed ?? []).flatMap((printed, place) => {
      const printedMeasure = measureOf(printed.unit)
      if (printedMeasure === measure) return []
      const params = { unit: printed.unit, measure: printedMeasure, required: measure }
      return [{ path: `${path}/printed/${place}/unit`, params }]
    })
  }),
)
