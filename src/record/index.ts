// The functions and types that other modules import.
export { type AppendedRecord, appendRecord, type EntryDone } from './appendRecord.js'
export { checkRecord } from './checkRecord.js'
export type { AppendCodes, RecordCodes } from './codes.js'
export { listOpenSamples, type OpenSample } from './listOpenSamples.js'
export { type OpenFault, openFaults } from './openFaults.js'
export { type NotDone, type ResolvedLog, resolveLog, resolveParsedLog } from './resolveLog.js'
export { sumUsedOil, type UsedOilLine, type UsedOilReport, type UsedOilSum } from './sumUsedOil.js'
