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

const EXAMPLES = new URL('../../examples/', import.meta.url)

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
    existsSync(new URL(candidate, EXAMPLES)),
  )
  // YAML reads JSON too.
  const read = parseDocument('any', parse(readFileSync(new URL(path, EXAMPLES), 'utf8')))
  if (!read.ok || read.findings.length > 0) throw new Error(JSON.stringify(read.findings))
  return read.value as Kinds[Kind]
}
