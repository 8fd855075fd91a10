// What other rooms may use of this one.
export {
  type ImportCodes,
  type ImportedMachine,
  type ImportedReadings,
  importReadings,
} from './importReadings.js'
