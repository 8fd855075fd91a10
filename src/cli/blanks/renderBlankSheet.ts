import { unitSymbol } from '../../quantity/index.js'
import { convertExample, type ExampleUnits } from './convertExample.js'

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
  return `# Spec sheet. Replace "not stated" with what the manual prints, in its own units, as in the examples after #.
# Leave "not stated" where the manual gives nothing. Other forms:
#   tightening: ${writeTorqueExample(25)}–${drainPlug}, dry
#   tightening: ${writeTorqueExample(20)} ${torqueSymbol} then 90°, oiled
#   fill: ${refill} (15 US fl oz), by quantity
#   fill: ${refill} [p. 31]
#   source: p. 31
#   oils: SAE 80W-90 GL-5, ${ambient}; SAE 90 GL-5
#   seals: o-ring 15.6 x 1.78 mm, on condition
#   intervals: { first: 50 h, repeat: "200 h, 12 months" }
#   thread: M14x1.5
# Round brackets: the value in another unit. Square brackets: its page. "source": the page of a whole section.
# If the fill hole sets the level, write "uses: fill, level" for that plug, and "fill: ${refill}, to level hole".
${variants.length === 0 ? '# For a machine with several variants, start with: new --variants short,long\n' : ''}kind: spec-sheet
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
    return `# Values that differ in one variant: the path of the value in this sheet, and the value.
#overrides:
#  - when: variant ${variants.at(-1)}
#    set:
#      /gearcases/${gearcases.at(-1)}/oilSpace/fill/drainAndRefill: ${refill}
`
  }

  function renderGearcase(id: string): string {
    const type = TYPE_PATTERNS.find(([pattern]) => pattern.test(id))?.[1] ?? 'differential'
    return `  ${id}:
    type: ${type}  # or ${GEARCASE_TYPES.filter((gearcaseType) => gearcaseType !== type).join(', ')}
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
