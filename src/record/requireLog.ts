import { requireShape, type Shape } from '../base/index.js'
import { type MachineLog, requireDocument } from '../spec/index.js'

/** The parts of a log that corrections and verdicts depend on. */
const RECORDS_SHAPE: Shape = {
  records: [{ readings: {}, entries: [{ opened: [], tightened: [], seals: [] }] }],
}

/** Throws a TypeError that names the field if `log` is not a parsed log. */
export function requireLog(name: string, log: MachineLog): void {
  requireDocument(name, log, 'machine-log')
  requireShape(name, log, RECORDS_SHAPE)
}
