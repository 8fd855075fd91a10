import { type Finding, splitPointer } from '../base/index.js'
import type {
  MachineLog,
  MachineLogInput,
  Parsed,
  ProcedureDocument,
  ServiceRecord,
  ServiceRecordInput,
  SpecCodes,
  SpecSheet,
  SpecSheetInput,
  Stock,
  StockInput,
  Toolbox,
  ToolboxInput,
} from '../spec/index.js'
import {
  parseMachineLog,
  parseProcedure,
  parseServiceRecord,
  parseSpecSheet,
  parseStock,
  parseToolbox,
} from './parseKinds.js'

/** One mistake in the format of Standard Schema. */
export interface DocumentIssue {
  /**
   * The code and its params, for developers. For users, pass `finding` to `renderMessage` with a catalogue.
   */
  readonly message: string
  /** The keys from the document to the mistake; a number is an index of a list. */
  readonly path: readonly (string | number)[]
  readonly finding: Finding<SpecCodes>
}

/** A kind of document as Standard Schema, version 1, for form and router libraries. */
export interface DocumentSchema<Output, Input = Output> {
  readonly '~standard': {
    readonly version: 1
    readonly vendor: 'drivetrain-service'
    readonly validate: (
      value: unknown,
    ) =>
      | { readonly value: Output; readonly issues?: undefined }
      | { readonly issues: readonly DocumentIssue[] }
    readonly types?: { readonly input: Input; readonly output: Output } | undefined
  }
}

/**
 * The spec sheet as a Standard Schema. It accepts the same input as {@link parseSpecSheet}, including short
 * notation.
 */
export const specSheetSchema = /* @__PURE__ */ makeSchema<SpecSheet, SpecSheetInput>((value) =>
  parseSpecSheet(value),
)
/** The machine log as a Standard Schema. It accepts the same input as {@link parseMachineLog}. */
export const machineLogSchema = /* @__PURE__ */ makeSchema<MachineLog, MachineLogInput>((value) =>
  parseMachineLog(value),
)
/** The toolbox as a Standard Schema. It accepts the same input as {@link parseToolbox}. */
export const toolboxSchema = /* @__PURE__ */ makeSchema<Toolbox, ToolboxInput>((value) => parseToolbox(value))
/** The stock as a Standard Schema. It accepts the same input as {@link parseStock}. */
export const stockSchema = /* @__PURE__ */ makeSchema<Stock, StockInput>((value) => parseStock(value))
/** The procedure as a Standard Schema. It accepts the same input as {@link parseProcedure}. */
export const procedureSchema = /* @__PURE__ */ makeSchema<ProcedureDocument>((value) => parseProcedure(value))
/** The service record as a Standard Schema. It accepts the same input as {@link parseServiceRecord}. */
export const serviceRecordSchema = /* @__PURE__ */ makeSchema<ServiceRecord, ServiceRecordInput>((value) =>
  parseServiceRecord(value),
)

function makeSchema<Output, Input = Output>(
  parse: (value: unknown) => Parsed<Output>,
): DocumentSchema<Output, Input> {
  const validate = (value: unknown) => {
    const parsed = parse(value)
    return parsed.ok
      ? { value: parsed.value }
      : { issues: parsed.findings.map((found) => makeIssue(found, value)) }
  }
  return { '~standard': { version: 1, vendor: 'drivetrain-service', validate } }
}

function makeIssue(finding: Finding<SpecCodes>, document: unknown): DocumentIssue {
  const path: (string | number)[] = []
  let holder = document
  for (const token of splitPointer(finding.path) ?? []) {
    path.push(Array.isArray(holder) ? Number(token) : token)
    // Reading a property of foreign data could call its getter.
    const isObject = typeof holder === 'object' && holder !== null
    holder = isObject ? Object.getOwnPropertyDescriptor(holder, token)?.value : undefined
  }
  const params = Object.entries(finding.params).map(([name, value]) => `${name} ${JSON.stringify(value)}`)
  const message = params.length === 0 ? finding.code : `${finding.code}: ${params.join(', ')}`
  return { message, path, finding }
}
