import { compareExact, exactOfText, minus, plus, times } from '../../quantity/index.js'
import { exactNewtonMetres, statedBand } from '../../torque/index.js'
import { defineRule } from '../rule.js'
import { firstPrinted } from '../walk/firstPrinted.js'
import { hasFigure } from '../walk/hasFigure.js'
import { recordTightenings } from '../walk/recordTightenings.js'

/**
 * A torque that was set outside the band that the sheet states for this machine. Limits belong to the band. A
 * bare nominal has no band: there a setting more than a tenth off is a warning. Slacken the plug, give it a
 * new washer, and set it again. House rule; the tenth is the assembly tolerance of an engine maker's works
 * standard (MTN 5183-1, read second hand).
 */
export const torqueOutsideBand = defineRule({
  code: 'record/torque-outside-band',
  severity: 'error',
  about: 'service-record',
  check: (record, set) =>
    recordTightenings(record, set).flatMap(({ path, done, part, wanted }) => {
      if (done.kind !== 'torque set' || wanted?.kind !== 'torque' || !hasFigure(wanted.torque)) return []
      const set = exactNewtonMetres(done.torque.value, done.torque.unit)
      const band = statedBand(wanted.torque)
      const stated = firstPrinted(wanted.torque)
      const params = { part, set: { ...done.torque }, stated }
      const at = `${path}/torque`
      if (band.kind === 'band')
        return compareExact(set, band.low) < 0 || compareExact(set, band.high) > 0
          ? [{ path: at, params }]
          : []
      if (band.kind === 'one limit') {
        const order = compareExact(set, band.limit)
        return (band.which === 'least' ? order < 0 : order > 0) ? [{ path: at, params }] : []
      }
      const tenth = times(band.aim, exactOfText('0.1'))
      const near =
        compareExact(set, minus(band.aim, tenth)) >= 0 && compareExact(set, plus(band.aim, tenth)) <= 0
      return near ? [] : [{ path: at, params, severity: 'warning' as const }]
    }),
})
