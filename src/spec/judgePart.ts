import { type JsonPointer, joinPointer, readPointer, splitPointer } from '../base/index.js'
import { specReason } from './codes.js'
import { findCandidates } from './judgeCondition.js'
import { joinJudgements, judgeFacts } from './judgeFacts.js'
import type { Condition, Identity } from './leaf.js'
import type { Judgement } from './resolved.js'
import type { SpecSheet } from './specSheet.js'

/**
 * Judges whether a machine has a part of the sheet at all: a gearcase, opening, cover, shield or service.
 * For a bare condition use {@link judgeCondition}.
 *
 * Equation: the `appliesTo` of the part and of everything that it sits in, all of which must hold; without any, `yes`.
 * @param sheet The sheet.
 * @param identity What is known of the machine.
 * @param path Pointer to the part, or to something inside it.
 * @returns The answer with reasons; `missing` names the facts that would decide.
 * @throws RangeError when there is nothing at `path`; TypeError when an argument is of the wrong type.
 *
 * Source: house rule: a part on some machines only is never assumed.
 * @example
 * ```ts
 * import { judgePart } from 'drivetrain-service/v1/spec'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: {}, axles: {}, supports: {} }
 * const winch = { name: 'Winch gearcase', appliesTo: { market: ['NO'] } }
 * // Does a machine of unknown market have the winch gearcase?
 * console.log(judgePart({ machine, gearcases: { winch } }, {}, '/gearcases/winch').verdict) // => 'cannot tell'
 * ```
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
    const judged = judgeFacts(appliesTo, identity, candidates)
    return [
      {
        ...judged,
        reasons: [specReason('spec/part-on-some-machines', { path: partPath }), ...judged.reasons],
      },
    ]
  })
  if (parts.length === 0)
    return { verdict: 'yes', reasons: [specReason('spec/part-on-every-machine', { path })] }
  return joinJudgements(parts)
}
