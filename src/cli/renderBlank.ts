import type {
  DistanceUnit,
  Quantity,
  TemperatureUnit,
  TorqueUnit,
  Unit,
  VolumeUnit,
} from '../quantity/index.js'
import { convert, unitSymbol } from '../quantity/index.js'
import type { SpecSheet } from '../spec/index.js'
import type { BlankWords } from './message/blankWords.js'

/** The units of the examples in a blank document. */
export interface ExampleUnits {
  readonly torque: TorqueUnit
  readonly volume: VolumeUnit
  readonly distance: DistanceUnit
  readonly temperature: TemperatureUnit
}

/** The value of an example in another unit, with few digits. */
function convertExample(unit: Unit, quantity: Quantity, digits = 2): number {
  return Number(convert(quantity, unit).value.toPrecision(digits))
}

/** The parts of a sheet that a log repeats. */
export type LogSheet = Pick<SpecSheet, 'id' | 'revision'> & {
  readonly machine: Pick<SpecSheet['machine'], 'variants'>
  readonly services: Readonly<Record<string, Pick<SpecSheet['services'][string], 'gearcases'>>>
}

/** A machine log to fill in, for one sheet. */
export function renderBlankLog(sheet: LogSheet, { distance }: ExampleUnits, words: BlankWords): string {
  const { id, revision, machine, services } = sheet
  const variants = Object.keys(machine.variants)
  const entries = Object.entries(services).flatMap(([service, { gearcases }]) =>
    gearcases.map((gearcase) => `#      - ${service} of ${gearcase}\n`),
  )
  const formatReadings = (hours: number, distanceRun: number) => `${hours} h, ${distanceRun} ${distance}`
  const plate = variants.length > 1 ? words.plateOrVariant({ variants: variants.join(', ') }) : words.plate
  return `# ${words.log}
# ${words.fillIn}
kind: machine-log
version: "1.0"
id: machine-1
name: Machine 1
sheet: { id: ${id}, revision: ${JSON.stringify(revision)} }
# ${words.firstDay}
#commissioned: 2022-05-20
# ${plate}
identity: {}
#  serial: TS 00123
#  modelYear: 2022
${variants.length > 1 ? `#  variant: ${variants[0]}\n` : ''}# ${words.readings}
meters: []
#  - ${formatReadings(301.4, 1820)} on 2022-11-20
#  - ${formatReadings(512.6, 3104)} on 2023-10-06
# ${words.services}
records: []
#  - date: 2022-11-20
#    readings: ${formatReadings(301.4, 1820)}
#    entries:
${entries.join('')}`
}

/** Gearcase types recognized in an id: `front-final-drive` is a final drive. */
const TYPE_PATTERNS: readonly (readonly [RegExp, string])[] = [
  [/final/, 'final drive'],
  [/transfer/, 'transfer case'],
  [/hub/, 'hub reduction'],
  [/bevel/, 'bevel box'],
  [/gearbox|transmission/, 'gearbox'],
]

const GEARCASE_TYPES = ['differential', ...new Set(TYPE_PATTERNS.map(([, type]) => type))]

/** A spec sheet to fill in: every value is `not stated`, with an example next to it. */
export function renderBlankSheet(
  gearcases: readonly string[],
  variants: readonly string[],
  units: ExampleUnits,
  words: BlankWords,
): string {
  const [torqueSymbol, volumeSymbol, distanceSymbol, temperatureSymbol] = [
    units.torque,
    units.volume,
    units.distance,
    units.temperature,
  ].map((unit) => unitSymbol(unit).replaceAll('\u00a0', ' '))
  const writeTorqueExample = (value: number): number => convertExample(units.torque, { value, unit: 'N.m' })
  const writeTemperatureExample = (value: number): number =>
    convertExample(units.temperature, { value, unit: 'degC' })
  const drainPlug = `${writeTorqueExample(30)} ${torqueSymbol}`
  const refill = `${convertExample(units.volume, { value: 450, unit: 'mL' })} ${volumeSymbol}`
  const distance = `${convertExample(units.distance, { value: 2000, unit: 'km' })} ${distanceSymbol}`
  const ambient = `${writeTemperatureExample(-10)} to ${writeTemperatureExample(45)} ${temperatureSymbol}`
  return `# ${words.sheet}
# ${words.leaveNotStated}
#   tightening: ${writeTorqueExample(25)}–${drainPlug}, dry
#   tightening: ${writeTorqueExample(20)} ${torqueSymbol} then 90°, oiled
#   fill: ${refill} (15 US fl oz), by quantity
#   fill: ${refill} [p. 31]
#   source: p. 31
#   oils: SAE 80W-90 GL-5, ${ambient}; SAE 90 GL-5
#   seals: o-ring 15.6 x 1.78 mm, on condition
#   intervals: { first: 50 h, repeat: "200 h, 12 months" }
#   thread: M14x1.5
# ${words.brackets}
# ${words.levelHole({ fill: refill })}
${variants.length === 0 ? `# ${words.severalVariants}\n` : ''}kind: spec-sheet
version: "1.0"
id: my-machine
revision: "1"
machine:
  make: Maker
  model: Model
  type: utility machine
${variants.length === 0 ? '' : `  variants: { ${variants.map((id) => `${id}: {}`).join(', ')} }\n`}sources:
  manual: Owner's manual, owner manual  # Ferd 2 owner's manual, owner manual, edition 3
gearcases:
${gearcases.map(renderGearcase).join('\n')}
services:
  gear-oil-change:
    gearcases: [${gearcases.join(', ')}]
    intervals: not stated  # 200 h, ${distance}, 12 months
${variants.length === 0 ? '' : renderOverrideExample()}`

  /** Only an example: the differing values are known only when the sheet is written. */
  function renderOverrideExample(): string {
    return `# ${words.differing}
#overrides:
#  - when: variant ${variants.at(-1)}
#    set:
#      /gearcases/${gearcases.at(-1)}/oilSpace/fill/drainAndRefill: ${refill}
`
  }

  function renderGearcase(id: string): string {
    const type = TYPE_PATTERNS.find(([pattern]) => pattern.test(id))?.[1] ?? 'differential'
    return `  ${id}:
    type: ${type}  # ${words.or} ${GEARCASE_TYPES.filter((gearcaseType) => gearcaseType !== type).join(', ')}
    access: not stated  # from the ground
    oilSpace:
      oils: not stated  # SAE 80W-90 GL-5
      fill: not stated  # ${refill}, by quantity
    openings:
${['fill', 'drain'].map(renderOpening).join('\n')}`
  }

  function renderOpening(id: string): string {
    return `      ${id}:
        tightening: not stated  # ${drainPlug}
        drive: not stated  # internal hex 8 mm
        seals: not stated  # flat copper crush washer 14 x 18 x 1.5 mm, every opening`
  }
}

/** A stock of oil and seals to fill in. */
export function renderBlankStock({ volume }: ExampleUnits, words: BlankWords): string {
  const formatAmount = (value: number): string =>
    `${convertExample(volume, { value, unit: 'mL' }, 1)} ${unitSymbol(volume).replaceAll('\u00a0', ' ')}`
  const example = `{ size: ${formatAmount(1000)}, count: 2, oil: { name: gear oil, grade: 80W-90, system: SAE J306, kv100: 14.5 mm²/s } }`
  return `# ${words.stock}
# ${words.fillIn}
kind: stock
version: "1.0"
id: my-shelf
name: My shelf
# ${words.containers}
# ${words.containerData} ${example}
containers: {}
#  bottle-80w-90: 2 x ${formatAmount(1000)} of 80W-90 GL-5, opened ${formatAmount(250)}
# ${words.seals}
seals: {}
#  copper-14: 10 x flat copper crush washer 14 x 18 x 1.5 mm
`
}

/** A toolbox to fill in. */
export function renderBlankToolbox({ torque, volume }: ExampleUnits, words: BlankWords): string {
  const writePlainSymbol = (unit: Unit) => unitSymbol(unit).replaceAll('\u00a0', ' ')
  const formatAmount = (value: number): number => convertExample(volume, { value, unit: 'mL' }, 1)
  return `# ${words.toolbox}
# ${words.fillIn}
kind: toolbox
version: "1.0"
id: my-workshop
name: My workshop
# ${words.wrenches}
# ${words.wrenchAccuracy}
wrenches: {}
#  half-inch-click: 20–100 ${writePlainSymbol(torque)} by 1, click, 1/2 in
# ${words.sockets}
sockets: {}
#  hex-8: internal hex 8 mm, 1/2 in
#  ring-19: external hex 19 mm
# ${words.vessels}
vessels: {}
#  jug: ${formatAmount(1000)} ${writePlainSymbol(volume)} by ${formatAmount(50)}
# ${words.pans}
pans: {}
#  drain-pan: ${formatAmount(8000)} ${writePlainSymbol(volume)}
# ${words.fillers}
fillers: {}
#  funnel:
#    funnel: { shape: cone, diameter: 150 mm, depth: 120 mm }
#    hose: { bore: 12 mm, length: 600 mm, drop: 500 mm }
# ${words.stands}
stands: {}
#  axle-stands: 2 x 1500 kg
# ${words.ramps}
# ramps: { wheel-ramps: 2 x 1000 kg }
`
}
