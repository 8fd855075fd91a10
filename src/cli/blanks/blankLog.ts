import type { SpecSheet } from '../../spec/index.js'
import type { ExampleUnits } from './exampleIn.js'

/** The parts of a sheet that a log repeats. */
export type SheetOfLog = Pick<SpecSheet, 'id' | 'revision'> & {
  readonly machine: Pick<SpecSheet['machine'], 'variants'>
  readonly services: Readonly<Record<string, Pick<SpecSheet['services'][string], 'gearcases'>>>
}

/** A machine log to fill in, for one sheet. */
export function blankLog(sheet: SheetOfLog, { distance }: ExampleUnits): string {
  const { id, revision, machine, services } = sheet
  const reference = `{ id: ${id}, revision: ${JSON.stringify(revision)} }`
  const variants = Object.keys(machine.variants)
  const entries = Object.entries(services).flatMap(([service, { gearcases }]) =>
    gearcases.map(
      (gearcase) =>
        `#      - { service: ${service}, gearcase: ${gearcase}, opened: [], tightened: [], seals: [] }\n`,
    ),
  )
  return `# Machine log: the facts, meter readings and services of one machine.
# To fill a part in, delete its {} or [] and the # before the lines below it; then write your own values.
kind: machine-log
version: "1.0"
id: machine-1
name: Machine 1
sheet: ${reference}
# First day in use.
#commissioned: 2022-05-20
# What its plate says${variants.length > 1 ? `, or its variant: ${variants.join(' or ')}` : ''}.
identity: {}
#  serial: TS 00123
#  modelYear: 2022
${variants.length > 1 ? `#  variant: ${variants[0]}\n` : ''}# Readings of its meters. The last one says how far it has run.
meters: {}
#  hours:
#    unit: h
#    readings:
#      - { date: 2022-11-20, value: 301.4 }
#      - { date: 2023-10-06, value: 512.6 }
#  distance:
#    unit: ${distance}
#    readings:
#      - { date: 2022-11-20, value: 1820 }
#      - { date: 2023-10-06, value: 3104 }
# Services done: the day, the meters and what was done.
records: []
#  - kind: service-record
#    version: "1.0"
#    id: last-service
#    machine: machine-1
#    sheet: ${reference}
#    detail: date and meters only
#    date: 2022-11-20
#    readings:
#      hours: { value: 301.4, unit: h }
#      distance: { value: 1820, unit: ${distance} }
#    entries:
${entries.join('')}`
}
