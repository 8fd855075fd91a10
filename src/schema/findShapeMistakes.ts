import * as z from 'zod/v4/core'
import {
  type Finding,
  type JsonPointer,
  joinPointer,
  MAX_MISTAKES,
  readPointer,
  suggestName,
} from '../base/index.js'
import type { SpecCodes } from '../spec/index.js'
import { convertIssue, type Issue, listAllowed, type Tokens } from './convertIssue.js'
import type { ReportMistake } from './reportMistake.js'

/** The result of reading a document with its shape. */
export interface ShapeReading {
  readonly value: unknown
  readonly findings: readonly Finding<SpecCodes>[]
  /** There are more mistakes than were read. */
  readonly hasMore: boolean
}

/**
 * Reads plain data with a shape and gives one finding for each mistake. A misspelled key is one mistake, not
 * an unknown key and a missing one. Values that were already rejected are not reported again. `isLeftOut` names the
 * omitted keys that were filled in; a misspelled key may be one of them.
 */
export function findShapeMistakes(
  shape: Shape,
  data: unknown,
  refused: ReadonlySet<JsonPointer>,
  report: ReportMistake,
  isLeftOut: (pointer: JsonPointer) => boolean = () => false,
): ShapeReading {
  const { value, issues } = readIssues(shape, data, [])
  const misspelled = new Set<JsonPointer>()
  const unknownKeys: Finding<SpecCodes>[] = []
  for (const issue of issues)
    if (issue.code === 'unrecognized_keys' && unknownKeys.length <= MAX_MISTAKES)
      for (const key of issue.keys)
        if (!refused.has(joinPointer([...issue.path, key])))
          unknownKeys.push(reportUnknownKey(data, issue, key, misspelled, isLeftOut, report))
  const otherFindings = issues.flatMap((issue) => {
    const path = joinPointer(issue.path)
    if (issue.code === 'unrecognized_keys' || wasRefused(path, refused) || misspelled.has(path)) return []
    // Of two limits of a number, only the tighter is reported.
    const isCovered =
      issue.code === 'too_big' &&
      issues.some(
        (other) =>
          other.code === 'too_big' && other.maximum < issue.maximum && joinPointer(other.path) === path,
      )
    return isCovered ? [] : [convertIssue(issue, data, issue.path, report)]
  })
  return { value, findings: [...otherFindings, ...unknownKeys], hasMore: issues.length > MAX_MISTAKES }
}

type Shape = z.$ZodType

/** The parts of a shape's definition that this file reads. */
interface ShapeParts {
  readonly shape?: object
  readonly valueType?: Shape
  readonly discriminator?: string
  readonly options?: readonly Shape[]
}

/**
 * The issues of the shape reader, and those that it misses: in values under an invalid id, and next to a
 * misspelled tag.
 */
function readIssues(
  shape: Shape,
  data: unknown,
  parentTokens: Tokens,
): { readonly value: unknown; readonly issues: readonly Issue[] } {
  const missedParts: { readonly shape: Shape; readonly data: unknown; readonly tokens: Tokens }[] = []
  const parsed = z.safeParse(shape, data, {
    error: (issue) => {
      const tokens = (issue.path ?? []) as Tokens
      const at = readPointer(data, joinPointer(tokens))
      const { shape, valueType, discriminator, options } = (issue.inst?._zod.def ?? {}) as ShapeParts
      // The message contains the allowed keys; users get texts from the catalogue.
      if (issue.code === 'unrecognized_keys') return Object.keys(shape ?? {}).join(' ')
      if (issue.code === 'invalid_key' && valueType !== undefined)
        missedParts.push({ shape: valueType, data: at, tokens })
      if (issue.code === 'invalid_union' && typeof at === 'string' && discriminator !== undefined) {
        const suggestion = suggestName(at, listAllowed(issue as z.$ZodIssue))
        const alternative = options?.find(({ _zod }) => _zod.propValues?.[discriminator]?.has(suggestion))
        const holder = tokens.slice(0, -1)
        const holderData = readPointer(data, joinPointer(holder)) as object
        if (alternative !== undefined && suggestion !== undefined)
          missedParts.push({
            shape: alternative,
            data: { ...holderData, [discriminator]: suggestion },
            tokens: holder,
          })
      }
      return issue.code
    },
  })
  if (parsed.success) return { value: parsed.data, issues: [] }
  const foundIssues = (parsed.error.issues as readonly Issue[])
    .flatMap(expandUnion)
    .map((issue): Issue => ({ ...issue, path: [...parentTokens, ...issue.path] }))
  const missedIssues = missedParts.flatMap(
    (part) => readIssues(part.shape, part.data, [...parentTokens, ...part.tokens]).issues,
  )
  return { value: undefined, issues: [...foundIssues, ...missedIssues] }
}

/** If a value can have two forms, reports the mistakes of the form with fewer. */
function expandUnion(issue: Issue): readonly Issue[] {
  if (issue.code !== 'invalid_union' || issue.errors.length === 0) return [issue]
  const isOfType = (inner: z.$ZodIssue) =>
    inner.path.length > 0 || !['invalid_type', 'invalid_value', 'invalid_union'].includes(inner.code)
  const [closest = []] = issue.errors
    .filter((alternative) => alternative.every(isOfType))
    .toSorted((first, second) => first.length - second.length)
  if (closest.length === 0) return [issue]
  return (closest as readonly Issue[]).map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] }))
}

function wasRefused(path: JsonPointer, refused: ReadonlySet<JsonPointer>): boolean {
  for (let current = path; ; current = current.slice(0, current.lastIndexOf('/'))) {
    if (refused.has(current)) return true
    if (current === '') return false
  }
}

function reportUnknownKey(
  data: unknown,
  issue: Issue,
  key: string,
  misspelled: Set<JsonPointer>,
  isLeftOut: (pointer: JsonPointer) => boolean,
  report: ReportMistake,
): Finding<SpecCodes> {
  const makePointer = (name: string) => joinPointer([...issue.path, name])
  const known = issue.message.split(' ')
  const unusedKeys = known.filter((name) => {
    const pointer = makePointer(name)
    return isLeftOut(pointer) || readPointer(data, pointer) === undefined
  })
  const didYouMean = suggestName(key, unusedKeys)
  const from = makePointer(key)
  if (didYouMean === undefined) return report(from, 'spec/unknown-key', { key, known })
  const path = makePointer(didYouMean)
  misspelled.add(path)
  return report(from, 'spec/unknown-key', { key, known, didYouMean }, { op: 'move', from, path })
}
