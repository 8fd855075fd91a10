import { listSpellings, type Unit } from '../../quantity/index.js'
import type { NotationName } from './notationTables.js'
import type { SheetNotationName } from './sheetNotations.js'
import { formatSeal, joinParts, type Value, type Writer, writeEntry } from './writeValue.js'

const quantity: Writer = ({ value, unit }) => `${value} ${listSpellings(unit as Unit)[0]}`

const formatReadings: Writer = ({ date, hours, distance }, source) =>
  `${joinParts(hours && quantity(hours, source), distance && quantity(distance, source))} on ${date}`
const price: Writer = ({ value, currency }) => `${value} ${currency}`
const scale: Writer = ({ lowest, highest, graduation, unit }, source) =>
  `${lowest}–${quantity({ value: highest, unit }, source)} by ${graduation}`
const accuracy: Writer = ({ kind, percent }) => (percent === undefined ? kind : `${percent} % ${kind}`)
const oilUsed: Writer = ({ name, container }) =>
  container === undefined ? name : `${name} from ${container}`
const tightened: Writer = ({ kind, torque, tool, turns, wheelMark }: Value, source) => {
  const done = torque
    ? `${quantity(torque, source)} with ${tool}`
    : turns === undefined
      ? kind
      : `${turns} turns`
  return wheelMark === undefined ? done : `${done} at ${wheelMark}`
}

/** The texts of all documents except sheets: they have measured quantities and no sources. */
export const MEASURED_WRITERS: Readonly<Record<Exclude<NotationName, SheetNotationName>, Writer>> = {
  quantityHours: quantity,
  quantityWorkingTime: quantity,
  quantityDistance: quantity,
  quantityVolume: quantity,
  quantityTorque: quantity,
  quantityLength: quantity,
  quantityMass: quantity,
  quantityViscosity: quantity,
  quantityDensity: quantity,
  quantityCelsius: quantity,
  readingsInKm: formatReadings,
  readingsInMi: formatReadings,
  event: ({ kind, gearcases, date }) =>
    `${kind}${gearcases === undefined ? '' : ` of ${gearcases.join(', ')}`} on ${date}`,
  topUp: ({ volume, gearcase, instance, date, oil }, source) =>
    `${quantity(volume, source)} in ${gearcase}${instance === undefined ? '' : ` ${instance}`} on ${date}, ${oil}`,
  pause: ({ from, to }) => `${from} to ${to}`,
  container: ({ count, size, oil, opened, price: each }, source) =>
    joinParts(
      `${count === 1 ? '' : `${count} x `}${quantity(size, source)} of ${oil.name}`,
      opened && `opened ${quantity(opened, source)}`,
      each && price(each, source),
    ),
  label: ({ name }) => name,
  seals: ({ count, seal, price: each }, source) =>
    joinParts(`${count} x ${formatSeal(seal, source)}`, each && price(each, source)),
  sealInStock: formatSeal,
  price,
  scale,
  accuracy,
  wrench: ({ scales, type, drive, accuracy: error, leverLength, calibration }, source) =>
    joinParts(
      scales.map((scaleValue: Value) => scale(scaleValue, source)).join(' and '),
      type,
      drive,
      error && error.kind !== 'ISO 6789' && accuracy(error, source),
      leverLength && `lever ${quantity(leverLength, source)}`,
      calibration && `calibrated ${calibration.date}`,
      calibration?.cyclesSince !== undefined && `${calibration.cyclesSince} cycles since`,
    ),
  socket: ({ fits, size, drive }) => joinParts(size === undefined ? fits : `${fits} ${size}`, drive),
  vessel: ({ size, graduation, lowestMark }, source) =>
    `${lowestMark === undefined ? '' : `${lowestMark.value}–`}${quantity(size, source)} by ${graduation.value}`,
  stands: ({ count, rating }, source) => `${count} x ${quantity(rating, source)}`,
  sheetReference: ({ id, revision }) => `${id}, revision ${revision}`,
  readings: ({ hours, distance }, source) =>
    joinParts(hours && quantity(hours, source), distance && quantity(distance, source)),
  oilUsed,
  // Called only at use: otherwise a bundle that only reads would keep the table.
  entry: (input, source) => writeEntry(quantity, oilUsed, tightened)(input, source),
  tightened,
  sealDone: ({ done, partNumber }) => joinParts(done, partNumber && `part ${partNumber}`),
  usedOil: ({ volume, to, receipt, keptApart }, source) =>
    joinParts(
      [volume && quantity(volume, source), to && `to ${to}`].filter(Boolean).join(' '),
      receipt && `receipt ${receipt}`,
      keptApart && `kept apart: ${keptApart}`,
    ),
  filterDone: ({ done, partNumber, found }) =>
    joinParts(done, partNumber && `part ${partNumber}`, found && `found ${found}`),
}
