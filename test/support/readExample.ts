import { existsSync, readFileSync } from 'node:fs'
import { parse } from 'yaml'
import type {
  MachineLog,
  ProcedureDocument,
  ServiceRecord,
  SpecSheet,
  Stock,
  Toolbox,
} from '../../src/v1/spec.js'
import { parseDocument } from '../../src/v1/spec.js'

// Not import.meta.url: run.mjs bundles this into node_modules, which a worktree may share.
const EXAMPLES = `${process.cwd()}/examples/`

interface Kinds {
  readonly procedure: ProcedureDocument
  readonly sheet: SpecSheet
  readonly log: MachineLog
  readonly toolbox: Toolbox
  readonly stock: Stock
  readonly record: ServiceRecord
}

/** One document of `examples/`, such as `readExample('tind-4', 'sheet')`; throws if it has any finding. */
export function readExample<Kind extends keyof Kinds>(
  folder: string,
  kind: Kind,
  file: string = kind,
): Kinds[Kind] {
  const [path = ''] = [`${folder}/${file}.yaml`, `${folder}/${file}.json`].filter((candidate) =>
    existsSync(EXAMPLES + candidate),
  )
  // YAML reads JSON too.
  const read = parseDocument('any', parse(readFileSync(EXAMPLES + path, 'utf8')))
  if (!read.ok || read.findings.length > 0) throw new Error(JSON.stringify(read.findings))
  return read.value as Kinds[Kind]
}
