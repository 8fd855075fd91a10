import { spellingsOf, type Unit } from '../../quantity/index.js'
import type { RecordNotation } from './recordPlaces.js'
import type { Value, Writer } from './writer.js'

const quantity: Writer = ({ value, unit }) => `${value} ${spellingsOf(unit as Unit)[0]}`
const listed = (...parts: readonly (string | undefined | false)[]): string =>
  parts.filter((part) => part !== undefined && part !== false).join(', ')

/** The texts of records, which hold measured quantities and no sources. */
export const RECORD_WRITERS: Readonly<Record<RecordNotation, Writer>> = {
  quantityHours: quantity,
  quantityDistance: quantity,
  quantityVolume: quantity,
  quantityTorque: quantity,
  sheetReference: ({ id, revision }) => `${id}, revision ${revision}`,
  readings: ({ hours, distance }, source) =>
    listed(hours && quantity(hours, source), distance && quantity(distance, source)),
  entry: ({ service, gearcase, instance }) =>
    `${service} of ${gearcase}${instance === undefined ? '' : ` ${instance}`}`,
  oilUsed: ({ name, container }) => (container === undefined ? name : `${name} from ${container}`),
  tightened: ({ kind, torque, tool, turns, wheelMark }: Value, source) => {
    const done = torque
      ? `${quantity(torque, source)} with ${tool}`
      : turns === undefined
        ? kind
        : `${turns} turns`
    return wheelMark === undefined ? done : `${done} at ${wheelMark}`
  },
  sealDone: ({ done, partNumber }) => listed(done, partNumber && `part ${partNumber}`),
  filterDone: ({ done, partNumber, found }) =>
    listed(done, partNumber && `part ${partNumber}`, found && `found ${found}`),
}
