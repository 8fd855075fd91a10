// The functions and types for other modules.

export { createLogReader } from './createLogReader.js'
export { parseNotation } from './notation/sheetNotations.js'
export { writeShort } from './notation/writeShort.js'
export { writeText } from './notation/writeText.js'
export { type DocumentOf, parseDocument } from './parseDocument.js'
export { parseDocumentText } from './parseDocumentText.js'
export { parseHistory } from './parseHistory.js'
export {
  parseMachineLog,
  parseProcedure,
  parseServiceRecord,
  parseSpecSheet,
  parseStock,
  parseToolbox,
} from './parseKinds.js'
export { readTableHead } from './readTableHead.js'
export type { DocumentIssue, DocumentSchema } from './standardSchemas.js'
export {
  machineLogSchema,
  procedureSchema,
  serviceRecordSchema,
  specSheetSchema,
  stockSchema,
  toolboxSchema,
} from './standardSchemas.js'
export { writeHistory } from './writeHistory.js'
