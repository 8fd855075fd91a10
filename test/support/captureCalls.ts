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
  const watched = (name: string, it: unknown): unknown =>
    typeof it !== 'function' || /^class/.test(String(it))
      ? it
      : (...args: readonly unknown[]) => {
          calls.push({ name, args })
          return it(...args)
        }
  const quiet = { log: () => undefined }
  await runCode(code, { console: quiet }, (entry) =>
    Object.fromEntries(Object.entries(entry).map(([name, it]) => [name, watched(name, it)])),
  )
  return calls
}
