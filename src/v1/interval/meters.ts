export {
  type ImportCodes,
  type ImportedMachine,
  type ImportedReadings,
  importReadings,
} from '../../exchange/index.js'
export {
  type CountedMeterReading,
  type Forecast,
  type ForecastFacts,
  type ForecastOptions,
  forecastDue,
  type MeterCodes,
  type MetersRead,
  readMeters,
} from '../../interval/index.js'
