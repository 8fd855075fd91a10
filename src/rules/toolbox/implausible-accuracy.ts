import { wrenchRule } from '../ruleMakers.js'

/**
 * A torque wrench with an error of a quarter or more. A decimal point is missing, or the figure belongs to
 * another tool. No real torque wrench is that inaccurate.
 * Judges: Every wrench whose accuracy is stated in per cent (kind `of reading` or `of full scale`). Finds `percent`
 * of 25 or more.
 * Place: `/wrenches/<id>/accuracy/percent`
 * Params: wrench: its name; percent: as written
 * Harm: machine
 * Common practice, no source. The quarter is a house rule. ISO 6789 permits small tools at most 6 %, as quoted by
 * tool makers.
 */
export const rule = wrenchRule('toolbox/implausible-accuracy', 'error', ([id, { name, accuracy }]) =>
  accuracy.kind === 'ISO 6789' || accuracy.percent < 25
    ? []
    : [{ path: `/wrenches/${id}/accuracy/percent`, params: { wrench: name, percent: accuracy.percent } }],
)
