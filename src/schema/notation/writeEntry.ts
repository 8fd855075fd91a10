import type { Value, Writer } from './writer.js'
import { joinParts } from './writeValue.js'

/**
 * Writes the text of an entry. If it cannot express everything, it differs when read back, and the entry
 * stays an object.
 */
export const writeEntry =
  (quantity: Writer, oil: Writer, tightened: Writer): Writer =>
  (entry: Value, source) => {
    const { service, gearcase, instance, drained, refilled, oilFinding, magnet, sample, level, leaks } = entry
    const findPartId = ({ on }: Value) => String(on).split('/')[4]
    const seals = (done: string) =>
      (entry.seals ?? [])
        .filter((seal: Value) => seal.done === done)
        .map(findPartId)
        .join(' and ')
    const [fresh, old] = [seals('new'), seals('inspected and used again')]
    return joinParts(
      `${service} of ${gearcase}${instance === undefined ? '' : ` ${instance}`}`,
      drained?.unit && `${quantity(drained, source)} drained`,
      refilled && `${quantity(refilled, source)} refilled`,
      entry.oil && `oil ${oil(entry.oil, source)}`,
      entry.oil?.batch && `batch ${entry.oil.batch}`,
      oilFinding && `old oil ${oilFinding}`,
      magnet && (magnet === 'no magnet' ? magnet : `magnet ${magnet}`),
      sample && `sample ${sample.bottle}`,
      level && `level ${level}`,
      leaks && `joints ${leaks}`,
      ...(entry.tightened ?? []).map(
        (tightening: Value) => `${findPartId(tightening)} ${tightened(tightening, source)}`,
      ),
      fresh && `new seals ${fresh}`,
      old && `seals used again ${old}`,
    )
  }
