import { makeReason, type ReasonMaker } from '../base/index.js'
import type { Quantity } from '../quantity/index.js'

type Amount = Readonly<Pick<Quantity, 'unit'> & { value: number | string }>
type NoParams = Record<never, never>

/** Codes of the seal functions with their params. */
export interface SealCodes {
  'seal/crush-washer-every-opening': { how: string }
  'seal/reuse-stated': NoParams
  'seal/sheet-says-every-opening': { kind: string }
  'seal/replace-not-stated': { kind: string }
  'seal/sheet-says-on-condition': { kind: string }
  'seal/apply-new-sealant': { product: string }
  'seal/apply-new-liquid-gasket': { product: string }
  'seal/not-stated': NoParams
  'seal/look-for-cuts': NoParams
  'seal/look-for-flattening': NoParams
  'seal/look-for-hardness': NoParams
  'seal/look-for-swelling': NoParams
  'seal/look-at-faces': NoParams
  'seal/look-at-bonded-lip': NoParams
  'seal/thread-unreadable': { thread: string }
  'seal/size-not-stated': NoParams
  'seal/taper-thread-takes-no-washer': { thread: string }
  'seal/pipe-size-not-known': { thread: string }
  'seal/ring-held-on-plug': { thread: string }
  'seal/washer-in-table': { thread: string; washer: string }
  'seal/washer-plausible': { thread: string; washer: string }
  'seal/washer-bore-too-small': { thread: string; inside: Amount; major: Amount }
  'seal/washer-bore-too-large': { thread: string; inside: Amount; major: Amount; largest: Amount }
  'seal/washer-rim-too-narrow': { inside: Amount; outside: Amount; smallest: Amount }
  'seal/washer-thickness-doubtful': { thickness: Amount; min: Amount; max: Amount }
  'seal/o-ring-agrees': { designation: string; inside: Amount; section: Amount }
  'seal/o-ring-differs': { designation: string; inside: Amount; section: Amount }
  'seal/o-ring-found': { designation: string }
  'seal/o-ring-not-in-table': { designation: string }
  'seal/o-ring-size-not-in-table': NoParams
  'seal/o-ring-not-described': NoParams
  'seal/material-not-stated': NoParams
  'seal/material-unsuitable': { material: string; medium: string }
  'seal/material-poor': { material: string; medium: string }
  'seal/material-suitable': { material: string; medium: string; min: Amount; max: Amount }
  'seal/above-continuous-limit': { material: string; medium: string; temperature: Amount; max: Amount }
  'seal/material-limits-not-known': { material: string }
  'seal/temperature-needs-special-compound': {
    material: string
    temperature: Amount
    min: Amount
    max: Amount
  }
  'seal/temperature-outside-material': { material: string; temperature: Amount; min: Amount; max: Amount }
  'seal/in-stock': { name: string; count: number }
  'seal/buy': { count: number }
  'seal/keep-spare': { count: number }
  'seal/stock-may-match': { name: string }
}

export const sealReason: ReasonMaker<SealCodes> = makeReason
