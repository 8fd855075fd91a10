import { unitSymbol } from '../../quantity/index.js'
import { type ExampleUnits, exampleIn } from './exampleIn.js'

/** The types whose name is in an id: `front-final-drive` is a final drive. */
const TYPES_BY_WORD: readonly (readonly [RegExp, string])[] = [
  [/final/, 'final drive'],
  [/transfer/, 'transfer case'],
  [/hub/, 'hub reduction'],
  [/bevel/, 'bevel box'],
  [/gearbox|transmission/, 'gearbox'],
]

const TYPES = ['differential', ...new Set(TYPES_BY_WORD.map(([, type]) => type))]

/** A spec sheet to fill in: every value is `not stated`, with an example beside it. */
export function blankSheet(
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
  const torque = (value: number): number => exampleIn(units.torque, { value, unit: 'N.m' })
  const temperature = (value: number): number => exampleIn(units.temperature, { value, unit: 'degC' })
  const drainPlug = `${torque(30)} ${torqueSymbol}`
  const refill = `${exampleIn(units.volume, { value: 450, unit: 'mL' })} ${volumeSymbol}`
  const distance = `${exampleIn(units.distance, { value: 2000, unit: 'km' })} ${distanceSymbol}`
  const ambient = `${temperature(-10)} to ${temperature(45)} ${temperatureSymbol}`
  return `# Spec sheet. Write what the manual prints over "not stated", in its own units, as the examples behind # show.
# What the manual does not say stays "not stated". More that you can write:
#   tightening: ${torque(25)}–${drainPlug}, dry
#   tightening: ${torque(20)} ${torqueSymbol} then 90°, oiled
#   fill: ${refill} (15 US fl oz), by quantity
#   fill: ${refill} [p. 31]
#   source: p. 31
#   oils: SAE 80W-90 GL-5, ${ambient}; SAE 90 GL-5
#   seals: o-ring 15.6 x 1.78 mm, on condition
#   intervals: { first: 50 h, repeat: "200 h, 12 months" }
#   thread: M14x1.5
# Round brackets hold the value in another unit, square ones its page; "source" is the page of a whole section.
# If the fill hole sets the level, write "uses: fill, level" at that plug, and "fill: ${refill}, to level hole".
${variants.length === 0 ? '# For a machine in several variants, begin with: new --variants short,long\n' : ''}kind: spec-sheet
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
${gearcases.map(blankGearcase).join('\n')}
services:
  gear-oil-change:
    gearcases: [${gearcases.join(', ')}]
    intervals: not stated  # 200 h, ${distance}, 12 months
${variants.length === 0 ? '' : overrideExample()}`

  /** Not a blank that can be filled in: what differs is known only when the sheet is written. */
  function overrideExample(): string {
    return `# What is different in one variant: the place of the value in this sheet, and the value.
#overrides:
#  - when: variant ${variants.at(-1)}
#    set:
#      /gearcases/${gearcases.at(-1)}/oilSpace/fill/drainAndRefill: ${refill}
`
  }

  function blankGearcase(id: string): string {
    const type = TYPES_BY_WORD.find(([word]) => word.test(id))?.[1] ?? 'differential'
    return `  ${id}:
    type: ${type}  # or ${TYPES.filter((one) => one !== type).join(', ')}
    access: not stated  # from the ground
    oilSpace:
      oils: not stated  # SAE 80W-90 GL-5
      fill: not stated  # ${refill}, by quantity
    openings:
${['fill', 'drain'].map(blankOpening).join('\n')}`
  }

  function blankOpening(id: string): string {
    return `      ${id}:
        tightening: not stated  # ${drainPlug}
        drive: not stated  # internal hex 8 mm
        seals: not stated  # flat copper crush washer 14 x 18 x 1.5 mm, every opening`
  }
}
