import { describe, expect, it } from 'vitest'
import * as library from '../../src/index.js'
import * as codes from '../../src/quantity/unitCodes/index.js'
import * as card from '../../src/v1/card.js'
import { type Call, captureCalls } from '../support/captureCalls.js'
import { docExamples } from '../support/docExamples.js'

// Every public function, called as its documentation shows, with one argument, or one key of an argument, made invalid.
// It may return or throw, but it must throw its own error that names the place, never an error of the engine.

const ring: Record<string, unknown> = {}
ring['ring'] = ring
let nest: unknown = 'x'
for (let depth = 0; depth < 9000; depth += 1) nest = [nest]

const HOSTILE = {
  undefined: undefined,
  null: null,
  NaN: Number.NaN,
  Infinity: Number.POSITIVE_INFINITY,
  'minus one': -1,
  'a half': 0.5,
  huge: 1e308,
  true: true,
  bigint: 10n,
  symbol: Symbol('s'),
  function: () => 1,
  'no text': '',
  'a text': 'NaN',
  'a long text': 'x'.repeat(100_000),
  __proto__key: '__proto__',
  'an object': {},
  'an object without prototype': Object.create(null),
  'an object that is no text': { toString: {} },
  'an own __proto__': JSON.parse('{"__proto__":{"x":1}}'),
  'a list': [],
  'a list of null': [null],
  'a bad date': new Date(Number.NaN),
  'a ring': ring,
  'a nest': nest,
} as const

/** Messages of the engine when a program uses a value of the wrong type. */
const ENGINE =
  /^(Cannot |Class |Do not know|Converting |Invalid (array|string|time|typed)|Maximum call|Object prototype|Reduce of)|is not (a function|defined|iterable|a constructor|extensible)|undefined is|not iterable|Symbol value|BigInt/

type Path = readonly [number] | readonly [number, string]

function paths(args: readonly unknown[]): readonly Path[] {
  return args.flatMap((arg, place): readonly Path[] => [
    [place],
    ...(typeof arg === 'object' && arg !== null ? Object.keys(arg).map((key): Path => [place, key]) : []),
  ])
}

function replaceArgument(args: readonly unknown[], [place, key]: Path, by: unknown): readonly unknown[] {
  return args.map((arg, at) => {
    if (at !== place) return arg
    if (key === undefined) return by
    if (Array.isArray(arg)) return arg.map((item, index) => (String(index) === key ? by : item))
    return { ...(arg as object), [key]: by }
  })
}

const functions = Object.entries<unknown>({ ...library, ...codes, ...card }).filter(
  (entry): entry is [string, (...args: unknown[]) => unknown] =>
    typeof entry[1] === 'function' && !/^class/.test(Function.prototype.toString.call(entry[1])),
)
const calls: Call[] = []
const functionNames = new Set(functions.map(([name]) => name))
for (const { code, of } of docExamples())
  if (of !== undefined && functionNames.has(of)) calls.push(...(await captureCalls(code)))

describe('an argument, or a key of one, with any value', () => {
  it.each(functions)('%s', async (name, run) => {
    const own = calls.filter((call) => call.name === name)
    expect(own.length, 'calls in the examples of the documentation').toBeGreaterThan(0)
    const faults: string[] = []
    for (const { args } of own) {
      for (const path of paths(args)) {
        for (const [kind, by] of Object.entries(HOSTILE)) {
          const fault = await faultOf(() => run(...replaceArgument(args, path, by)))
          if (fault !== undefined) faults.push(`${JSON.stringify(path)} ${kind}: ${fault}`)
        }
      }
    }
    expect(faults).toEqual([])
  })
})

async function faultOf(act: () => unknown): Promise<string | undefined> {
  try {
    const result = await act()
    if (isIterator(result)) for (let step = 0; step < 100 && !result.next().done; step += 1);
    return undefined
  } catch (error) {
    if (!(error instanceof Error)) return `throws what is no error: ${typeof error}`
    return ENGINE.test(error.message) ? error.message : undefined
  }
}

function isIterator(value: unknown): value is Iterator<unknown> {
  return typeof value === 'object' && value !== null && 'next' in value && typeof value.next === 'function'
}
