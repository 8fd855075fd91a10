import type { TorqueUnit } from '../../src/quantity/unit.js'
import type { Tightening } from '../../src/spec/leaf.js'
import type { StatedValue } from '../../src/spec/specValue.js'
import type { TorqueWrench } from '../../src/spec/toolbox.js'

/** An invented click wrench of ISO 6789 with one N·m scale. */
export function clickWrench(
  lowest: number,
  highest: number,
  graduation = 1,
  more: Partial<TorqueWrench> = {},
): TorqueWrench {
  return {
    name: `${lowest} to ${highest}`,
    type: 'click',
    drive: '1/2 in',
    scales: [{ unit: 'N.m', lowest, highest, graduation }],
    accuracy: { kind: 'ISO 6789' },
    ...more,
  }
}

export function torque(stated: StatedValue<TorqueUnit>, more: object = {}): Tightening {
  return { kind: 'torque', torque: stated, threadCondition: 'dry', ...more }
}

export const limits = (min: string, max: string, unit: TorqueUnit = 'N.m') =>
  torque({ kind: 'limits', min, max, unit })

export const nominal = (value: string, unit: TorqueUnit = 'N.m') => torque({ kind: 'nominal', value, unit })

export const nominalWith = (value: string, minus: string, plus: string, unit: TorqueUnit = 'N.m') =>
  torque({ kind: 'nominal with tolerance', value, minus, plus, unit })
