// The functions and types that other rooms import.
export {
  type ImportCodes,
  type ImportedMachine,
  type ImportedReadings,
  importReadings,
} from './importReadings.js'
export { writeCsv } from './writeCsv.js'
