import { createRequire } from 'node:module'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import type { Options } from '../readOptions.js'

const KINDS: readonly string[] = [
  ...['spec-sheet', 'machine-log', 'toolbox', 'stock', 'procedure', 'service-record'],
  // Results.
  ...['visit-plan', 'due-line', 'service-card', 'finding'],
]

/** `schema`: prints the JSON Schema of one kind of document or result. */
export async function runSchema(options: Options, io: CommandIo): Promise<ExitCode> {
  const [word] = options.paths
  const kind = KINDS.find((knownKind) => knownKind === word)
  if (kind === undefined || options.paths.length !== 1)
    throw new UsageError('notOneOf', { given: 'schema', expected: KINDS.join(', ') })
  // The published file has descriptions; the library does not.
  const schema: unknown = createRequire(import.meta.url)(`drivetrain-service/schemas/v1/${kind}.json`)
  io.print(JSON.stringify(schema, null, 2))
  return 0
}
