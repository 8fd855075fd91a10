export { type ImportedMachine, type ImportedReadings, importReadings } from '../../exchange/index.js'
export {
  countBetweenSignals,
  decodeMeterSignal,
  type Forecast,
  type ForecastOptions,
  type ForecastQuestion,
  fitTheilSen,
  forecastDue,
  type MeterReadingCounted,
  type MeterSignal,
  type MetersRead,
  readMeters,
  type SignalReading,
  type TheilSenFit,
} from '../../interval/index.js'
