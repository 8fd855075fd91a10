export type { ImportCodes, ImportedMachine, ImportedReadings } from '../../exchange/index.js'
export { importReadings } from '../../exchange/index.js'
export type {
  CountedMeterReading,
  Forecast,
  ForecastFacts,
  ForecastOptions,
  MeterCodes,
  MetersRead,
} from '../../interval/index.js'
export { forecastDue, readMeters } from '../../interval/index.js'
