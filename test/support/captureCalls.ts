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
  const watch = (name: string, entryValue: unknown): unknown =>
    typeof entryValue !== 'function' || /^class/.test(String(entryValue))
      ? entryValue
      : (...args: readonly unknown[]) => {
          calls.push({ name, args })
          return entryValue(...args)
        }
  const quietConsole = { log: () => undefined }
  await runCode(code, { console: quietConsole }, (entry) =>
    Object.fromEntries(Object.entries(entry).map(([name, entryValue]) => [name, watch(name, entryValue)])),
  )
  return calls
}
