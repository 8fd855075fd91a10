import { readFileSync } from 'node:fs'
import { sourceOf } from './runExample.js'

const MANIFEST = new URL('../../package.json', import.meta.url)

/** Every function that an entry of the package exports, by name. */
export async function publicFunctions(): Promise<ReadonlyMap<string, (...args: unknown[]) => unknown>> {
  const { name, exports } = JSON.parse(readFileSync(MANIFEST, 'utf8')) as {
    readonly name: string
    readonly exports: Readonly<Record<string, unknown>>
  }
  const sources = new Set(Object.keys(exports).flatMap((entry) => sourceOf(entry.replace(/^\./, name)) ?? []))
  const found = new Map<string, (...args: unknown[]) => unknown>()
  for (const source of sources)
    for (const [key, exported] of Object.entries((await import(source)) as object))
      if (typeof exported === 'function' && !/^class/.test(Function.prototype.toString.call(exported)))
        found.set(key, exported)
  return found
}
