import type { DocumentReference, Finding, JsonPointer } from '../finding.js'
import type { NotPlain } from './codes.js'
import { cutText } from './cutText.js'
import { MAX_DEPTH, MAX_STRING_LENGTH, MAX_VALUES } from './documentLimits.js'
import { joinPointer } from './joinPointer.js'
import { reportMistake } from './reportMistake.js'
import { FORBIDDEN_KEYS } from './shapes/textShapes.js'

/** Foreign data as plain JSON, and what could not be taken over. */
export interface PlainCopy {
  readonly value: unknown
  readonly findings: readonly Finding[]
  /** Places where null stands instead of something that was refused. */
  readonly refused: ReadonlySet<JsonPointer>
}

/**
 * Copies foreign data into plain JSON, so that everything after it reads data that has no getters, no classes, no
 * cycles and no keys that shadow built-ins. Nothing foreign is called: a getter is seen, never run.
 */
export function copyPlainData(input: unknown, document: DocumentReference): PlainCopy {
  const findings: Finding[] = []
  const refused = new Set<JsonPointer>()
  const above = new Set<object>()
  let values = 0

  const refuse = (finding: Finding): null => {
    findings.push(finding)
    refused.add(finding.path)
    return null
  }
  const refuseAs = (found: NotPlain, tokens: Tokens): null =>
    refuse(reportMistake(document, joinPointer(tokens), 'spec/not-plain-data', { found }))

  const copy = (value: unknown, tokens: Tokens): unknown => {
    values += 1
    if (values > MAX_VALUES) throw new TooManyValues()
    if (value === null || typeof value === 'boolean') return value
    if (typeof value === 'number') return Number.isFinite(value) ? value : refuseAs('not-finite', tokens)
    if (typeof value === 'string')
      return value.length <= MAX_STRING_LENGTH ? value : refuse(tooLong(document, tokens, value))
    if (typeof value !== 'object') return refuseAs(typeof value as NotPlain, tokens)
    if (above.has(value)) return refuseAs('cycle', tokens)
    if (tokens.length >= MAX_DEPTH)
      return refuse(reportMistake(document, joinPointer(tokens), 'spec/too-deep', { limit: MAX_DEPTH }))
    above.add(value)
    const copied = Array.isArray(value) ? copyList(value, tokens) : copyObject(value, tokens)
    above.delete(value)
    return copied
  }

  const copyList = (list: readonly unknown[], tokens: Tokens): unknown => {
    const keys = Reflect.ownKeys(list)
    // One key for each entry, and `length`.
    if (keys.length < list.length + 1) return refuseAs('sparse-list', tokens)
    if (keys.length > list.length + 1) return refuseAs('list-with-keys', tokens)
    // The list itself is not iterated: that would run its getters.
    return Array.from({ length: list.length }, (_nothing, place) => {
      const property = Object.getOwnPropertyDescriptor(list, place)
      return property === undefined || !('value' in property)
        ? refuseAs('accessor', [...tokens, place])
        : copy(property.value, [...tokens, place])
    })
  }

  const copyObject = (value: object, tokens: Tokens): unknown => {
    if (!isPlainObject(value)) return refuseAs('class-instance', tokens)
    const copied: Record<string, unknown> = {}
    for (const key of Reflect.ownKeys(value)) {
      if (typeof key === 'symbol') {
        findings.push(
          reportMistake(document, joinPointer(tokens), 'spec/not-plain-data', { found: 'symbol-key' }),
        )
        continue
      }
      if (key.length > MAX_STRING_LENGTH) {
        findings.push(tooLong(document, tokens, key))
        continue
      }
      const below = [...tokens, key]
      if (FORBIDDEN_KEYS.includes(key)) {
        findings.push(reportMistake(document, joinPointer(below), 'spec/forbidden-key', { key }))
        continue
      }
      const property = Object.getOwnPropertyDescriptor(value, key)
      if (property === undefined || !('value' in property)) copied[key] = refuseAs('accessor', below)
      else if (!property.enumerable) copied[key] = refuseAs('hidden-property', below)
      else copied[key] = copy(property.value, below)
    }
    return copied
  }

  try {
    return { value: copy(input, []), findings, refused }
  } catch (error) {
    // A proxy may throw whatever it likes.
    const mistake =
      error instanceof TooManyValues
        ? reportMistake(document, '', 'spec/too-large', { limit: MAX_VALUES })
        : reportMistake(document, '', 'spec/not-plain-data', { found: 'unreadable' })
    return { value: null, findings: [...findings, mistake], refused: new Set(['']) }
  }
}

type Tokens = readonly (string | number)[]

class TooManyValues extends Error {}

function tooLong(document: DocumentReference, tokens: Tokens, text: string): Finding {
  return reportMistake(document, joinPointer(tokens), 'spec/too-long', {
    found: cutText(text),
    length: text.length,
    limit: MAX_STRING_LENGTH,
  })
}

/** An object literal or what JSON.parse makes, also from another window or worker; no class. */
function isPlainObject(value: object): boolean {
  const above: unknown = Object.getPrototypeOf(value)
  return (
    above === null ||
    above === Object.prototype ||
    (typeof above === 'object' &&
      Object.getPrototypeOf(above) === null &&
      Object.hasOwn(above, 'isPrototypeOf'))
  )
}
