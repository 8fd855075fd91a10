import { en } from '../message/en/index.js'
import { renderMessage } from '../message/index.js'
import type { OpenFault } from '../record/index.js'
import { safeLine } from './safeLine.js'

/** One line for each open fault of a machine. */
export const faultLines = (faults: readonly OpenFault[]): readonly string[] =>
  faults.map(({ date, record, finding }) =>
    safeLine(`NOT TO BE USED: fault open since ${date} (${record}). ${renderMessage(finding, en)}`),
  )
