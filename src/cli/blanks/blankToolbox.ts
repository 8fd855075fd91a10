import { type ExampleUnits, exampleIn } from './exampleIn.js'

/** A toolbox to fill in. */
export function blankToolbox({ torque, volume }: ExampleUnits): string {
  const amount = (value: number): string =>
    `{ value: ${exampleIn(volume, { value, unit: 'mL' }, 1)}, unit: ${volume} }`
  return `# Toolbox: what the workshop has. A plan checks it, and gives the setting of each wrench.
# To fill a part in, delete its {} and the # before the lines below it; then write your own values.
kind: toolbox
version: "1.0"
id: my-workshop
name: My workshop
# Torque wrenches, with the scale as it is marked. accuracy: { kind: of reading, percent: 4 } is a maker's figure.
wrenches: {}
#  half-inch-click:
#    name: half-inch click wrench
#    type: click
#    drive: 1/2 in
#    scales: [{ unit: ${torque}, lowest: 20, highest: 100, graduation: 1 }]
#    accuracy: { kind: ISO 6789 }
# Keys, sockets and bits.
sockets: {}
#  hex-8: { name: 8 mm hex bit socket, fits: internal hex, size: 8 mm, drive: 1/2 in }
#  ring-19: { name: 19 mm ring spanner, fits: external hex, size: 19 mm }
# Measuring jugs and bottles.
vessels: {}
#  jug: { name: measuring jug, size: ${amount(1000)}, graduation: ${amount(50)} }
# Drain pans.
pans: {}
#  pan: { name: drain pan, size: ${amount(8000)} }
# Funnels with a hose.
fillers: {}
#  funnel:
#    name: funnel and hose
#    funnel: { shape: cone, diameter: { value: 150, unit: mm }, depth: { value: 120, unit: mm } }
#    hose: { bore: { value: 12, unit: mm }, length: { value: 600, unit: mm }, drop: { value: 500, unit: mm } }
# Stands, and the rated load of one.
stands: {}
#  pair: { name: pair of stands, count: 2, rating: { value: 1500, unit: kg } }
`
}
