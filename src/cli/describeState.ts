import { type Catalogue, explain, renderMessage } from '../message/index.js'
import type { OpenFault, OpenSample } from '../record/index.js'
import type { OilLoss } from '../service/index.js'
import { cleanLine } from './cleanLine.js'

/** One line for each open fault of a machine. */
export const describeFaults = (faults: readonly OpenFault[], catalogue: Catalogue): readonly string[] =>
  faults.map(({ date, record, finding }) =>
    cleanLine(`NOT TO BE USED: fault open since ${date} (${record}). ${renderMessage(finding, catalogue)}`),
  )

/** One line for each oil sample without a result. */
export const describeSamples = (samples: readonly OpenSample[]): readonly string[] =>
  samples.map(({ date, record, gearcase, instance, bottle, laboratory }) => {
    const gearcaseText = [gearcase, instance].filter(Boolean).join(' ')
    const laboratoryText = laboratory === undefined ? '' : ` at ${laboratory}`
    return cleanLine(
      `Oil sample ${bottle} of ${gearcaseText}, ${date} (${record})${laboratoryText}: no result yet.`,
    )
  })

/** One line for each gearcase to which oil was added since its last oil change. */
export const describeLosses = (losses: readonly OilLoss[], catalogue: Catalogue): readonly string[] =>
  losses
    .filter(({ count }) => count > 0)
    .map(({ verdict, reasons }) =>
      cleanLine(`${verdict.toUpperCase()}  ${explain({ reasons }, catalogue).join(' ')}`),
    )

/** Gearcases to which oil was added since their last oil change; no key if there are none. */
export function selectLosses(losses: readonly OilLoss[]): { readonly oilLoss?: readonly OilLoss[] } {
  const oilLoss = losses.filter(({ count }) => count > 0)
  return oilLoss.length > 0 ? { oilLoss } : {}
}
