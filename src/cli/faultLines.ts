import { en } from '../message/en/index.js'
import { renderMessage } from '../message/index.js'
import type { OpenFault, OpenSample } from '../record/index.js'
import { safeLine } from './safeLine.js'

/** One line for each open fault of a machine. */
export const faultLines = (faults: readonly OpenFault[]): readonly string[] =>
  faults.map(({ date, record, finding }) =>
    safeLine(`NOT TO BE USED: fault open since ${date} (${record}). ${renderMessage(finding, en)}`),
  )

/** One line for each oil sample without a result. */
export const sampleLines = (samples: readonly OpenSample[]): readonly string[] =>
  samples.map(({ date, record, gearcase, instance, bottle, laboratory }) => {
    const where = [gearcase, instance].filter(Boolean).join(' ')
    const whose = laboratory === undefined ? '' : ` at ${laboratory}`
    return safeLine(`Oil sample ${bottle} of ${where}, ${date} (${record})${whose}: no result yet.`)
  })
