import { disagreementRule } from '../ruleMakers.js'

/**
 * Two printed figures of one value that differ by the ratio of a common mistake: inch-pounds for foot-pounds
 * (12), kilograms-force for newtons (9.80665), the number of the other unit (1.3558), US for imperial measure
 * (1.2009, fluid ounces 0.9608).
 * Judges: The same pairs as `quantity/second-unit-disagrees`. Finds a pair that agrees if one figure is
 * multiplied or divided by such a ratio.
 * Place: `<value>/printed/<place>`; the value itself if the first is wrong
 * Params: first: the first printed value; second: the value that disagrees; slip: the name of the mistake;
 * ratio: its ratio
 * Harm: machine
 * Source: the ratios follow from legal definitions. That these units are confused: common practice, no source.
 */
export const rule = disagreementRule(
  'quantity/second-unit-slip',
  'error',
  ({ path, first, second, agreement }) => {
    const { slip, reasons } = agreement
    const ratio = reasons.map(({ params }) => params.ratio).find((value) => typeof value === 'string')
    return slip === undefined || ratio === undefined ? [] : [{ path, params: { first, second, slip, ratio } }]
  },
)
