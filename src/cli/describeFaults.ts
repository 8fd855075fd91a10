import { en } from '../message/en/index.js'
import { renderMessage } from '../message/index.js'
import type { OpenFault, OpenSample } from '../record/index.js'
import { cleanLine } from './cleanLine.js'

/** One line for each open fault of a machine. */
export const describeFaults = (faults: readonly OpenFault[]): readonly string[] =>
  faults.map(({ date, record, finding }) =>
    cleanLine(`NOT TO BE USED: fault open since ${date} (${record}). ${renderMessage(finding, en)}`),
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
