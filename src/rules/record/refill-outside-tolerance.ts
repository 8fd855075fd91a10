import { judgeRefill } from '../../fill/index.js'
import type { VolumeUnit } from '../../quantity/index.js'
import { resolveLeaf, type SpecValue } from '../../spec/index.js'
import { lookUp } from '../lookup/lookUp.js'
import { statedVolume } from '../lookup/statedVolume.js'
import { defineRule } from '../rule.js'

/**
 * A refill outside the band that the sheet states for this machine, or more than a tenth off where a level
 * decides: the machine stood askew, old oil stayed in, or another machine's figure was used. Correct the
 * level before it works. Not judged where one figure stands for several instances. Source: the judgement of
 * `judgeRefill`, a house rule.
 */
export const refillOutsideTolerance = defineRule({
  code: 'record/refill-outside-tolerance',
  severity: 'error',
  about: 'service-record',
  check: ({ record }) =>
    record.entries.flatMap(({ path, entry, sheet, gearcase, identity }) => {
      const { refilled } = entry
      const { oilSpace, instances = {} } = gearcase
      const isChange = lookUp(sheet.document.services, entry.service)?.task === 'change'
      if (refilled === undefined || !isChange || oilSpace.kind === 'shared') return []
      const oneByOne = oilSpace.fill.per === 'instance' && entry.instance !== undefined
      if (Object.keys(instances).length > 1 && !oneByOne) return []
      const refillAt = `/gearcases/${entry.gearcase}/oilSpace/fill/drainAndRefill`
      const stated = resolveLeaf(sheet.document, identity, 'value', refillAt)
      if (stated.kind !== 'stated' || statedVolume(stated.value) === undefined) return []
      const value = stated.value as SpecValue<VolumeUnit>
      const { answer, reasons } = judgeRefill(value, refilled, oilSpace.fill.method)
      const [reason] = reasons
      if ((answer !== 'outside' && answer !== 'stop') || reason === undefined) return []
      const params = { gearcase: gearcase.name, refilled: { ...refilled }, reason: { ...reason } }
      return [{ path: `${path}/refilled`, params }]
    }),
})
