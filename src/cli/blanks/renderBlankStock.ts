import { unitSymbol } from '../../quantity/index.js'
import { convertExample, type ExampleUnits } from './convertExample.js'

/** A stock of oil and seals to fill in. */
export function renderBlankStock({ volume }: ExampleUnits): string {
  const formatAmount = (value: number): string =>
    `${convertExample(volume, { value, unit: 'mL' }, 1)} ${unitSymbol(volume).replaceAll('\u00a0', ' ')}`
  return `# Stock: oil and seals on the shelf. A plan takes from it and lists what to buy.
# To fill in a part, delete its {} and the # before the lines below it, then write your own values.
kind: stock
version: "1.0"
id: my-shelf
name: My shelf
# Containers, with grade and categories from the label; "opened" is the rest in an opened one. Name and data of an oil go
# under "oil": { size: ${formatAmount(1000)}, count: 2, oil: { name: gear oil, grade: 80W-90, system: SAE J306, kv100: 14.5 mm²/s } }
containers: {}
#  bottle-80w-90: 2 x ${formatAmount(1000)} of 80W-90 GL-5, opened ${formatAmount(250)}
# Seals.
seals: {}
#  copper-14: 10 x flat copper crush washer 14 x 18 x 1.5 mm
`
}
