import { type JsonPointer, joinPointer, readPointer, splitPointer } from '../base/index.js'
import { specReason } from './codes.js'
import { combineJudgements, judgeFacts } from './judgeFacts.js'
import type { Condition, Identity } from './leaf.js'
import type { Judgement } from './resolved.js'
import { findCandidates } from './resolveVariant.js'
import type { SpecSheet } from './specSheet.js'

/**
 * Whether a machine has a part of the sheet: a gearcase, opening, cover, shield or service. Checks
 * `appliesTo` of the part and of the parts that contain it; without any, the answer is `yes`. Throws
 * RangeError if the sheet has nothing at `path`.
 */
export function judgePart(sheet: SpecSheet, identity: Identity, path: JsonPointer): Judgement {
  const tokens = splitPointer(path)
  if (tokens === undefined || readPointer(sheet, path) === undefined)
    throw new RangeError(`path must point to a part of the sheet, got ${JSON.stringify(path)}`)
  const candidates = findCandidates(sheet, identity)
  const parts = tokens.flatMap((_token, place): Judgement[] => {
    const partPath = joinPointer(tokens.slice(0, place + 1))
    const part = readPointer(sheet, partPath)
    if (typeof part !== 'object' || part === null || !Object.hasOwn(part, 'appliesTo')) return []
    const { appliesTo } = part as { readonly appliesTo: Condition }
    const judgement = judgeFacts(appliesTo, identity, candidates)
    return [
      {
        ...judgement,
        reasons: [specReason('spec/part-on-some-machines', { path: partPath }), ...judgement.reasons],
      },
    ]
  })
  if (parts.length === 0)
    return { verdict: 'yes', reasons: [specReason('spec/part-on-every-machine', { path })] }
  return combineJudgements(parts)
}
