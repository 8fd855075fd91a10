import { readExample } from '../support/readExample.js'

const EXAMPLES = ['tind-4', 'acre-26', 'bud-3', 'kvist-2', 'reach-55']

export const FLEET_SHEETS = EXAMPLES.map((name) => readExample(name, 'sheet'))

const LOGS = EXAMPLES.map((name) => readExample(name, 'log'))

/** Machine logs on lines: the logs of the examples in turn, each with its own id and meters that ran differently long. */
export function* makeFleetLogs(count: number): Generator<string> {
  for (let index = 0; index < count; index++) {
    const log = LOGS[index % LOGS.length]
    if (log === undefined) throw new Error('no example')
    const id = `machine-${index}`
    const { hours, distance } = log.meters
    const ahead = (index * 7) % 90
    const addTo = <
      M extends { readonly readings: readonly { readonly date: string; readonly value: number }[] },
    >(
      meter: M,
    ): M => {
      const readings = [...meter.readings]
      const last = readings.at(-1)
      if (last !== undefined) readings[readings.length - 1] = { ...last, value: last.value + ahead }
      return { ...meter, readings }
    }
    const meters = { ...(hours && { hours: addTo(hours) }), ...(distance && { distance: addTo(distance) }) }
    const records = log.records.map((record) => ({ ...record, machine: id }))
    yield `${JSON.stringify({ ...log, id, name: `Machine ${index}`, meters, records })}\n`
  }
}
