import { type Unit, unitSymbol } from '../../quantity/index.js'
import { convertExample, type ExampleUnits } from './convertExample.js'

/** A toolbox to fill in. */
export function renderBlankToolbox({ torque, volume }: ExampleUnits): string {
  const writePlainSymbol = (unit: Unit) => unitSymbol(unit).replaceAll('\u00a0', ' ')
  const formatAmount = (value: number): number => convertExample(volume, { value, unit: 'mL' }, 1)
  return `# Toolbox: the tools of the workshop. A plan checks them and gives the setting of each wrench.
# To fill in a part, delete its {} and the # before the lines below it, then write your own values.
kind: toolbox
version: "1.0"
id: my-workshop
name: My workshop
# Torque wrenches: scale as marked, type and square drive. The accuracy is that of ISO 6789 unless you add the
# maker's figure: "4 % of reading".
wrenches: {}
#  half-inch-click: 20–100 ${writePlainSymbol(torque)} by 1, click, 1/2 in
# Keys, sockets and bits, with the square drive if they have one.
sockets: {}
#  hex-8: internal hex 8 mm, 1/2 in
#  ring-19: external hex 19 mm
# Measuring jugs and bottles: highest mark, and step between marks.
vessels: {}
#  jug: ${formatAmount(1000)} ${writePlainSymbol(volume)} by ${formatAmount(50)}
# Drain pans.
pans: {}
#  drain-pan: ${formatAmount(8000)} ${writePlainSymbol(volume)}
# Funnels with a hose.
fillers: {}
#  funnel:
#    funnel: { shape: cone, diameter: 150 mm, depth: 120 mm }
#    hose: { bore: 12 mm, length: 600 mm, drop: 500 mm }
# Stands, with the rated load of one stand.
stands: {}
#  axle-stands: 2 x 1500 kg
# Ramps for wheels, and the rated load of one.
# ramps: { wheel-ramps: 2 x 1000 kg }
`
}
