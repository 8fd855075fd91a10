import type { Need } from './need.js'
import { CLOSING_NEEDS } from './needs/closing.js'
import { FILLING_NEEDS } from './needs/filling.js'
import { OPENING_NEEDS } from './needs/opening.js'
import { SEALING_NEEDS } from './needs/sealing.js'
import { SECURING_NEEDS } from './needs/securing.js'

export type NeedName =
  | keyof typeof SECURING_NEEDS
  | keyof typeof OPENING_NEEDS
  | keyof typeof SEALING_NEEDS
  | keyof typeof FILLING_NEEDS
  | keyof typeof CLOSING_NEEDS

/** The need of that name; its code is `procedure/` and the name. */
export function findNeed(name: NeedName): Need {
  if (name in SECURING_NEEDS) return SECURING_NEEDS[name as keyof typeof SECURING_NEEDS]
  if (name in OPENING_NEEDS) return OPENING_NEEDS[name as keyof typeof OPENING_NEEDS]
  if (name in SEALING_NEEDS) return SEALING_NEEDS[name as keyof typeof SEALING_NEEDS]
  if (name in FILLING_NEEDS) return FILLING_NEEDS[name as keyof typeof FILLING_NEEDS]
  return CLOSING_NEEDS[name as keyof typeof CLOSING_NEEDS]
}
