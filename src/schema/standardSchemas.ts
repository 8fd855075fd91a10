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

/** One mistake in the form of Standard Schema. */
export interface DocumentIssue {
  /** The code and its params, for developers. For users, give `finding` to `renderMessage` with a catalogue. */
  readonly message: string
  /** The keys from the document to the place; a number is a place of a list. */
  readonly path: readonly (string | number)[]
  readonly finding: Finding<SpecCodes>
}

/** A kind of document in the form that form and router libraries take: Standard Schema, version 1. */
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

/** The spec sheet as a Standard Schema: what {@link parseSpecSheet} reads, short notation too. */
export const specSheetSchema = /* @__PURE__ */ makeSchema<SpecSheet, SpecSheetInput>((value) =>
  parseSpecSheet(value),
)
/** The machine log as a Standard Schema: what {@link parseMachineLog} reads. */
export const machineLogSchema = /* @__PURE__ */ makeSchema<MachineLog, MachineLogInput>((value) =>
  parseMachineLog(value),
)
/** The toolbox as a Standard Schema: what {@link parseToolbox} reads. */
export const toolboxSchema = /* @__PURE__ */ makeSchema<Toolbox, ToolboxInput>((value) => parseToolbox(value))
/** The stock as a Standard Schema: what {@link parseStock} reads. */
export const stockSchema = /* @__PURE__ */ makeSchema<Stock, StockInput>((value) => parseStock(value))
/** The procedure as a Standard Schema: what {@link parseProcedure} reads. */
export const procedureSchema = /* @__PURE__ */ makeSchema<ProcedureDocument>((value) => parseProcedure(value))
/** The service record as a Standard Schema: what {@link parseServiceRecord} reads. */
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
    // Foreign data: reading the property could call its getter.
    const isObject = typeof holder === 'object' && holder !== null
    holder = isObject ? Object.getOwnPropertyDescriptor(holder, token)?.value : undefined
  }
  const params = Object.entries(finding.params).map(([name, value]) => `${name} ${JSON.stringify(value)}`)
  const message = params.length === 0 ? finding.code : `${finding.code}: ${params.join(', ')}`
  return { message, path, finding }
}
