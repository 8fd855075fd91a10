import type { SpecSheet } from '../../spec/index.js'
import type { ExampleUnits } from './convertExample.js'

/** The parts of a sheet that a log repeats. */
export type LogSheet = Pick<SpecSheet, 'id' | 'revision'> & {
  readonly machine: Pick<SpecSheet['machine'], 'variants'>
  readonly services: Readonly<Record<string, Pick<SpecSheet['services'][string], 'gearcases'>>>
}

/** A machine log to fill in, for one sheet. */
export function renderBlankLog(sheet: LogSheet, { distance }: ExampleUnits): string {
  const { id, revision, machine, services } = sheet
  const variants = Object.keys(machine.variants)
  const entries = Object.entries(services).flatMap(([service, { gearcases }]) =>
    gearcases.map((gearcase) => `#      - ${service} of ${gearcase}\n`),
  )
  const formatReadings = (hours: number, distanceRun: number) => `${hours} h, ${distanceRun} ${distance}`
  return `# Machine log: the facts, meter readings and services of one machine.
# To fill in a part, delete its {} or [] and the # before the lines below it, then write your own values.
kind: machine-log
version: "1.0"
id: machine-1
name: Machine 1
sheet: { id: ${id}, revision: ${JSON.stringify(revision)} }
# First day of use.
#commissioned: 2022-05-20
# From its plate${variants.length > 1 ? `, or its variant: ${variants.join(' or ')}` : ''}.
identity: {}
#  serial: TS 00123
#  modelYear: 2022
${variants.length > 1 ? `#  variant: ${variants[0]}\n` : ''}# Readings of the hour meter, the odometer or both. The last one is the current state.
meters: []
#  - ${formatReadings(301.4, 1820)} on 2022-11-20
#  - ${formatReadings(512.6, 3104)} on 2023-10-06
# Services done: date, meter readings and work.
records: []
#  - date: 2022-11-20
#    readings: ${formatReadings(301.4, 1820)}
#    entries:
${entries.join('')}`
}
