// The functions and types that other modules import.
export type { ImportCodes, ImportedMachine, ImportedReadings } from './importReadings.js'
export { importReadings } from './importReadings.js'
export { writeCsv } from './writeCsv.js'
