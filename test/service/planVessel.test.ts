import { describe, expect, it } from 'vitest'
import type { PlannedTool } from '../../src/v1/service.js'
import type { MeasuringVessel, Toolbox } from '../../src/v1/spec.js'
import { planExample } from '../support/planExample.js'

const vessel = (size: number, graduation: number): MeasuringVessel => ({
  name: `${size} L with marks every ${graduation} L`,
  size: { value: size, unit: 'L' },
  graduation: { value: graduation, unit: 'L' },
})

const withVessels =
  (vessels: Toolbox['vessels']) =>
  (toolbox: Toolbox): Toolbox => ({ ...toolbox, vessels })

const vesselOf = (folder: string, vessels: Toolbox['vessels']): PlannedTool | undefined =>
  planExample(folder, { toolbox: withVessels(vessels) }).tools.find(({ kind }) => kind === 'vessel')

describe('the vessel of a visit', () => {
  it('at a level, few pours come before fine marks', () => {
    // 9.5 L at a dipstick: ten pours of a litre, or 5 + 4.5 with half a mark of error each: 0.1 L of 0.95 L.
    expect(vesselOf('reach-55', { fine: vessel(1, 0.01), coarse: vessel(5, 0.1) })?.have?.id).toBe('coarse')
  })

  it('at a level, a tenth of the refill is the limit, and it belongs to the good side', () => {
    // 9.5 L with a bucket of 9.5 L: one pour, half a graduation of 0.95 L or more.
    const fineVessel = vessel(1, 0.01)
    expect(vesselOf('reach-55', { fine: fineVessel, bucket: vessel(9.5, 1.9) })?.have?.id).toBe('bucket')
    expect(vesselOf('reach-55', { fine: fineVessel, bucket: vessel(9.5, 9.5) })?.have?.id).toBe('fine')
  })

  it('at a level, one that is coarser still does, since the level decides', () => {
    const plan = planExample('reach-55', { toolbox: withVessels({ bucket: vessel(10, 5) }) })
    expect(plan.tools.find(({ kind }) => kind === 'vessel')).toMatchObject({ verdict: 'fits' })
    expect(plan.findings).toEqual([])
  })

  it('by quantity, without a tolerance in the manual, cannot tell and says why', () => {
    const tool = vesselOf('kvist-2', { jug: vessel(1, 0.01) })
    expect(tool).toMatchObject({ have: { id: 'jug' }, verdict: 'cannot tell' })
    expect(tool?.reasons.map(({ code }) => code)).toContain('fill/tolerance-not-stated')
  })
})
