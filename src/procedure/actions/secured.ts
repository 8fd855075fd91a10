import type { NeedName } from '../needs.js'

/** What must hold whenever hands are at the machine. */
export const SECURED = [
  'manual-not-read',
  'no-protection',
  'not-on-level-ground',
  'engine-running',
  'not-chocked',
  'jack-as-support',
] as const satisfies readonly NeedName[]
