import type { Finding } from '../base/index.js'
import { checkDocuments, type DocumentSet } from '../rules/index.js'
import type { MachineLog } from '../spec/index.js'
import type { Options } from './readOptions.js'

/** Findings caused by new entries of a log; the set has the log before the change. */
export function findNewMistakes(
  before: DocumentSet,
  after: MachineLog,
  { today }: Pick<Options, 'today'>,
): readonly Finding[] {
  const logs = before.logs.map((named) =>
    named.document.id === after.id ? { ...named, document: after } : named,
  )
  const makeKey = ({ code, params }: Finding) => `${code} ${JSON.stringify(params)}`
  const known = new Set(checkDocuments(before, { today }).map(makeKey))
  return checkDocuments({ ...before, logs }, { today }).filter((finding) => !known.has(makeKey(finding)))
}
