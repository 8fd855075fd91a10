import type { OilLoss } from '../service/index.js'

/** Gearcases to which oil was added since their last oil change; no key if there are none. */
export function selectLosses(losses: readonly OilLoss[]): { readonly oilLoss?: readonly OilLoss[] } {
  const oilLoss = losses.filter(({ count }) => count > 0)
  return oilLoss.length > 0 ? { oilLoss } : {}
}
