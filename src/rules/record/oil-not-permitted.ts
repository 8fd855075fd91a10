import { listOilsUnlessPermitted } from '../lookup/listOilsUnlessPermitted.js'
import { lookUp } from '../lookup/lookUp.js'
import { entryRule } from '../ruleMakers.js'

/**
 * A gearcase filled from a container whose label meets none of the permitted oils. Drain it again before the
 * machine works.
 * Judges: Every judged entry whose `oil/container` is in a stock of the set, on a gearcase with its own oil whose
 * `oils` are stated for this machine. Finds an entry whose oil meets none of the permitted oils (every answer is
 * `no`). If the label does not decide, the oil is allowed, and the plan asks about it.
 * Place: `/entries/<place>/oil/container`
 * Params: gearcase: its name; oil: the name on the label; permitted: grade and category, or name, of each permitted
 * oil
 * Harm: machine
 * Source: the judgement of `oilMeets`.
 */
export const rule = entryRule(
  'record/oil-not-permitted',
  'error',
  ({ path, entry, sheet, gearcase, identity }, { set }) => {
    const container = set.stocks
      .map(({ document }) => lookUp(document.containers, entry.oil?.container ?? ''))
      .find((found) => found !== undefined)
    const permitted =
      container && listOilsUnlessPermitted(sheet.document, entry.gearcase, identity, container.oil)
    if (container === undefined || permitted === undefined) return []
    const params = { gearcase: gearcase.name, oil: container.oil.name, permitted }
    return [{ path: `${path}/oil/container`, params }]
  },
)
