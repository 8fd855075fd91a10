import { explain, renderMessage } from '../message/index.js'
import type { OpenFault, OpenSample } from '../record/index.js'
import type { OilLoss } from '../service/index.js'
import { cleanLine } from './cleanLine.js'
import type { CommandIo } from './cliIo.js'

/** One line for each open fault of a machine. */
export const describeFaults = (
  faults: readonly OpenFault[],
  { words, catalogue }: CommandIo,
): readonly string[] =>
  faults.map(({ date, record, finding }) =>
    cleanLine(words.reports.faultOpen({ date, record, message: renderMessage(finding, catalogue) })),
  )

/** One line for each oil sample without a result. */
export const describeSamples = (samples: readonly OpenSample[], { words }: CommandIo): readonly string[] =>
  samples.map(({ gearcase, instance, laboratory = '', bottle, date, record }) => {
    const place = [gearcase, instance].filter(Boolean).join(' ')
    return cleanLine(words.reports.sampleOpen({ bottle, gearcase: place, date, record, laboratory }))
  })

/** One line for each gearcase to which oil was added since its last oil change. */
export const describeLosses = (
  losses: readonly OilLoss[],
  { words, catalogue }: CommandIo,
): readonly string[] =>
  losses
    .filter(({ count }) => count > 0)
    .map(({ verdict, reasons }) =>
      cleanLine(`${words.oilLosses[verdict].toUpperCase()}  ${explain({ reasons }, catalogue).join(' ')}`),
    )

/** Gearcases to which oil was added since their last oil change; no key if there are none. */
export function selectLosses(losses: readonly OilLoss[]): { readonly oilLoss?: readonly OilLoss[] } {
  const oilLoss = losses.filter(({ count }) => count > 0)
  return oilLoss.length > 0 ? { oilLoss } : {}
}
