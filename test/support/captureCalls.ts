import { runCode } from './runExample.js'

/** One call that an example of the documentation makes. */
export interface Call {
  readonly name: string
  readonly args: readonly unknown[]
}

/**
 * The calls of package functions in an example, with their arguments: valid calls, for tests that make one leaf
 * invalid.
 */
export async function captureCalls(code: string): Promise<readonly Call[]> {
  const calls: Call[] = []
  const watched = (name: string, entryValue: unknown): unknown =>
    typeof entryValue !== 'function' || /^class/.test(String(entryValue))
      ? entryValue
      : (...args: readonly unknown[]) => {
          calls.push({ name, args })
          return entryValue(...args)
        }
  const quiet = { log: () => undefined }
  await runCode(code, { console: quiet }, (entry) =>
    Object.fromEntries(Object.entries(entry).map(([name, entryValue]) => [name, watched(name, entryValue)])),
  )
  return calls
}
