import type { Finding, JsonPointer } from '../base/index.js'
import { cutText, joinPointer, MAX_DEPTH, MAX_KEYS, MAX_STRING_LENGTH, MAX_VALUES } from '../base/index.js'
import type { NotPlainData, SpecCodes } from '../spec/index.js'
import type { ReportMistake } from './reportMistake.js'
import { FORBIDDEN_KEYS } from './shapes/textShapes.js'

/** Foreign data as plain JSON, with findings for rejected data. */
export interface PlainCopy {
  readonly value: unknown
  readonly findings: readonly Finding<SpecCodes>[]
  /** Pointers where null replaces rejected data. */
  readonly refused: ReadonlySet<JsonPointer>
}

/**
 * Copies foreign data into plain JSON, without getters, classes, cycles and keys that shadow built-ins. Runs
 * no foreign code: a getter is reported, but not called.
 */
export function copyPlainData(input: unknown, reportMistake: ReportMistake): PlainCopy {
  const findings: Finding<SpecCodes>[] = []
  const refused = new Set<JsonPointer>()
  const parents = new Set<object>()
  // The current path: one list for all levels, because few values need a pointer.
  const tokens: (string | number)[] = []
  let values = 0
  let limit: number | undefined

  const report = <Code extends keyof SpecCodes>(code: Code, params: SpecCodes[Code]): JsonPointer => {
    const path = joinPointer(tokens)
    findings.push(reportMistake(path, code, params))
    return path
  }
  const refuse = <Code extends keyof SpecCodes>(code: Code, params: SpecCodes[Code]): null => {
    refused.add(report(code, params))
    return null
  }
  const refuseNotPlain = (found: NotPlainData): null => refuse('spec/not-plain-data', { found })

  const stopAt = (exceededLimit: number): never => {
    limit = exceededLimit
    throw new Error()
  }

  const copy = (value: unknown): unknown => {
    values += 1
    if (values > MAX_VALUES) stopAt(MAX_VALUES)
    if (value === null || typeof value === 'boolean') return value
    if (typeof value === 'number') return Number.isFinite(value) ? value : refuseNotPlain('not-finite')
    if (typeof value === 'string')
      return isShort(value) ? value : refuse('spec/too-long', describeLength(value))
    if (typeof value !== 'object') return refuseNotPlain(typeof value as NotPlainData)
    if (parents.has(value)) return refuseNotPlain('cycle')
    if (tokens.length >= MAX_DEPTH) return refuse('spec/too-deep', { limit: MAX_DEPTH })
    parents.add(value)
    const copiedValue = Array.isArray(value) ? copyList(value) : copyObject(value)
    parents.delete(value)
    return copiedValue
  }

  const copyProperty = (holder: object, key: string | number): unknown => {
    const property = Object.getOwnPropertyDescriptor(holder, key)
    tokens.push(key)
    const copiedValue =
      property === undefined || !('value' in property)
        ? refuseNotPlain('accessor')
        : property.enumerable
          ? copy(property.value)
          : refuseNotPlain('hidden-property')
    tokens.pop()
    return copiedValue
  }

  const copyList = (list: readonly unknown[]): unknown => {
    // To list the keys of millions of items would take long.
    if (list.length > MAX_VALUES && Object.hasOwn(list, MAX_VALUES)) stopAt(MAX_VALUES)
    const keys = Reflect.ownKeys(list).length
    // A list has one key for each entry, and `length`.
    if (keys < list.length + 1) return refuseNotPlain('sparse-list')
    if (keys > list.length + 1) return refuseNotPlain('list-with-keys')
    // Iterating over the list itself would run its getters.
    return Array.from({ length: list.length }, (_unused, place) => copyProperty(list, place))
  }

  const copyObject = (value: object): unknown => {
    if (!isPlainObject(value)) return refuseNotPlain('class-instance')
    const copiedValue: Record<string, unknown> = {}
    const keys = Reflect.ownKeys(value)
    if (keys.length > MAX_KEYS) stopAt(MAX_KEYS)
    for (const key of keys) {
      if (typeof key === 'symbol') report('spec/not-plain-data', { found: 'symbol-key' })
      else if (!isShort(key)) report('spec/too-long', describeLength(key))
      else if (FORBIDDEN_KEYS.includes(key)) {
        tokens.push(key)
        report('spec/forbidden-key', { key })
        tokens.pop()
      } else copiedValue[key] = copyProperty(value, key)
    }
    return copiedValue
  }

  try {
    return { value: copy(input), findings, refused }
  } catch {
    // A proxy may throw anything.
    const mistake =
      limit === undefined
        ? reportMistake('', 'spec/not-plain-data', { found: 'unreadable' })
        : reportMistake('', 'spec/too-large', { limit })
    return { value: null, findings: [...findings, mistake], refused: new Set(['']) }
  }
}

/** Counts characters as JSON Schema does: one outside the basic plane counts once, but has a length of two. */
const isShort = (text: string): boolean =>
  text.length <= MAX_STRING_LENGTH ||
  (text.length <= 2 * MAX_STRING_LENGTH && [...text].length <= MAX_STRING_LENGTH)

function describeLength(text: string): SpecCodes['spec/too-long'] {
  return { found: cutText(text), length: text.length, limit: MAX_STRING_LENGTH }
}

/**
 * True for an object literal or a result of JSON.parse, also from another window or worker; false for an
 * instance of a class.
 */
function isPlainObject(value: object): boolean {
  const prototype: unknown = Object.getPrototypeOf(value)
  return (
    prototype === null ||
    prototype === Object.prototype ||
    (typeof prototype === 'object' &&
      Object.getPrototypeOf(prototype) === null &&
      Object.hasOwn(prototype, 'isPrototypeOf'))
  )
}
