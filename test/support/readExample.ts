import { readFileSync } from 'node:fs'
import type { MachineLog, ServiceRecord, SpecSheet, Stock, Toolbox } from '../../src/v1/spec.js'
import { parseDocumentText } from '../../src/v1/spec.js'

const EXAMPLES = new URL('../../examples/', import.meta.url)

interface Kinds {
  readonly sheet: SpecSheet
  readonly log: MachineLog
  readonly toolbox: Toolbox
  readonly stock: Stock
  readonly record: ServiceRecord
}

/** One document of `examples/`, such as `readExample('tind-4', 'sheet')`; throws where it is not perfect. */
export function readExample<Kind extends keyof Kinds>(
  folder: string,
  kind: Kind,
  file: string = kind,
): Kinds[Kind] {
  const read = parseDocumentText('any', readFileSync(new URL(`${folder}/${file}.json`, EXAMPLES), 'utf8'))
  if (!read.ok || read.findings.length > 0) throw new Error(JSON.stringify(read.findings))
  return read.value as Kinds[Kind]
}
