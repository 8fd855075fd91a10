import type { ProcedureDocument } from '../spec/index.js'
import { type CliIo, UsageError } from './cliIo.js'
import { type FileSet, listDocuments, readDocuments } from './readDocuments.js'

/**
 * The procedure in the file of an option; undefined if it has errors, which are among the findings of the
 * set.
 */
export async function readProcedure(
  flag: string,
  path: string,
  io: CliIo,
): Promise<{ readonly sets: readonly FileSet[]; readonly procedure: ProcedureDocument | undefined }> {
  const sets = await readDocuments([path], io)
  const [procedure, ...others] = listDocuments(sets, (set) => set.procedures)
  const isReadable = sets.every(({ findings }) => findings.every(({ severity }) => severity !== 'error'))
  if (isReadable && (procedure === undefined || others.length > 0))
    throw new UsageError(
      `${flag} ${path}: expected one procedure, found ${procedure === undefined ? 0 : others.length + 1}`,
    )
  return { sets, procedure: isReadable ? procedure : undefined }
}
