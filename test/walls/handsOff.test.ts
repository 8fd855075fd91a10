import { createContext, runInContext } from 'node:vm'
import { build } from 'esbuild'
import { beforeAll, describe, expect, it } from 'vitest'
import { readMachines } from '../engines/readMachines.js'
import { writeEverything } from '../engines/writeEverything.js'

/**
 * A world of its own with the language only: no files, network, process, timers or console. Clock, random numbers and
 * locales throw, code cannot be made from text, and nothing of the language can be changed.
 */
const TAKE_AWAY = `
const refuse = (name) => function () { throw new Error('used: ' + name) }
const take = (holder, names, title) => {
  for (const name of names) Object.defineProperty(holder, name, { value: refuse(title + name), writable: false })
}
take(globalThis, ['Date', 'eval', 'Function', 'WeakRef', 'FinalizationRegistry', 'SharedArrayBuffer', 'Atomics', 'WebAssembly'], '')
Object.defineProperty(globalThis, 'Intl', { get: refuse('Intl') })
take(Math, ['random'], 'Math.')
take(String.prototype, ['localeCompare', 'toLocaleLowerCase', 'toLocaleUpperCase'], 'String.')
for (const [type, name] of [[Number, 'Number.'], [BigInt, 'BigInt.'], [Array, 'Array.'], [Object, 'Object.']])
  take(type.prototype, ['toLocaleString'], name)
for (const name of Object.getOwnPropertyNames(globalThis)) {
  const value = name === 'Intl' ? undefined : globalThis[name]
  if (value === globalThis || (typeof value !== 'function' && typeof value !== 'object') || value === null) continue
  if (value.prototype) Object.freeze(value.prototype)
  Object.freeze(value)
}`

let world: object
let code = ''
const run = (text: string): unknown => runInContext(text, world)

beforeAll(async () => {
  world = createContext({}, { codeGeneration: { strings: false, wasm: false } })
  run(TAKE_AWAY)
  const { outputFiles } = await build({
    stdin: {
      contents:
        "import { writeEverything } from './test/engines/writeEverything.js'\nglobalThis.writeEverything = writeEverything",
      resolveDir: process.cwd(),
    },
    bundle: true,
    write: false,
    format: 'iife',
    logLevel: 'warning',
  })
  code = outputFiles[0]?.text ?? ''
})

describe('with clock, random numbers, locale, files, network, eval and Function taken away', () => {
  it.each([
    ['new Date()', 'used: Date'],
    ['Date.now()', 'Date.now is not a function'],
    ['Math.random()', 'used: Math.random'],
    ['new Intl.NumberFormat()', 'used: Intl'],
    ['"a".localeCompare("b")', 'used: String.localeCompare'],
    ['(1.5).toLocaleString()', 'used: Number.toLocaleString'],
    ['eval("1")', 'used: eval'],
    ['Function("return 1")', 'used: Function'],
    ['(() => {}).constructor("return 1")', 'Code generation from strings disallowed'],
    ['require("fs")', 'require is not defined'],
    ['process.env', 'process is not defined'],
    ['fetch("http://localhost")', 'fetch is not defined'],
    ['setTimeout(() => {})', 'setTimeout is not defined'],
    ['"use strict"; Array.prototype.map = 1', 'Cannot assign to read only property'],
  ])('%s fails there', (text, message) => {
    expect(() => run(text)).toThrow(message)
  })

  it('findings, plans and papers of all examples in all languages are the same bytes', () => {
    const machines = readMachines()
    run(code)
    const texts = JSON.parse(
      run(
        `JSON.stringify(writeEverything(JSON.parse(${JSON.stringify(JSON.stringify(machines))})))`,
      ) as string,
    )
    const expected = writeEverything(machines)
    expect(texts.length).toBeGreaterThan(300)
    expect(texts.length).toBe(expected.length)
    expect(expected.filter(([, text], place) => texts[place][1] !== text).map(([name]) => name)).toEqual([])
  })
})
