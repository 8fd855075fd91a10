import { createRequire } from 'node:module'
import type { DocumentName } from '../../spec/index.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import type { Options } from '../readOptions.js'

const KINDS = ['spec-sheet', 'machine-log', 'toolbox', 'stock', 'procedure', 'service-record'] as const

/** `schema`: prints the JSON Schema of one kind of document. */
export async function runSchema(options: Options, io: CliIo): Promise<ExitCode> {
  const [word] = options.paths
  const kind: DocumentName | undefined = KINDS.find((knownKind) => knownKind === word)
  if (kind === undefined || options.paths.length !== 1)
    throw new UsageError(`schema: expected one of ${KINDS.join(', ')}`)
  // The published file has descriptions; the library does not.
  const schema: unknown = createRequire(import.meta.url)(`drivetrain-service/schemas/v1/${kind}.json`)
  io.print(JSON.stringify(schema, null, 2))
  return 0
}
