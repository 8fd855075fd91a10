export const DRIVE_KINDS = [
  'external hex',
  'internal hex',
  'internal square',
  'external square',
  'six-lobe',
  'slot',
  'cross recess',
  'clip',
  'hand',
] as const
export type DriveKind = (typeof DRIVE_KINDS)[number]

/**
 * What turns a plug or bolt. `size` is a designation, matched exactly: `10 mm`, `3/8 in`, `T40`, `PH2`, `JIS 2`. A `clip` or
 * push rivet is pushed in and needs no torque.
 */
export interface Drive {
  readonly kind: DriveKind
  readonly size?: string
}
