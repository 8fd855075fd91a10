import { existsSync, readdirSync } from 'node:fs'
import { join } from 'node:path'

const EXAMPLES = join(import.meta.dirname, '..', '..', 'examples')

/** The folders of `examples/` that hold a machine; `examples/apps` holds programs. */
export function exampleMachines(): readonly string[] {
  return readdirSync(EXAMPLES)
    .filter((name) => existsSync(join(EXAMPLES, name, 'sheet.yaml')))
    .sort()
}
