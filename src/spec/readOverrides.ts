import { requireShape, type Shape } from '../base/index.js'
import type { Override, SpecSheet } from './specSheet.js'

const OVERRIDES_SHAPE: Shape = [{ when: {}, set: [{ kind: 'string', path: 'string', to: {} }] }]

/** The overrides of a sheet in order, or an empty list. */
export function readOverrides({ overrides = [] }: SpecSheet): readonly Override[] {
  requireShape('sheet.overrides', overrides, OVERRIDES_SHAPE)
  return overrides
}
