import { type ExampleUnits, exampleIn } from './exampleIn.js'

/** A stock of oil and seals to fill in. */
export function blankStock({ volume }: ExampleUnits): string {
  const amount = (value: number): string =>
    `{ value: ${exampleIn(volume, { value, unit: 'mL' }, 1)}, unit: ${volume} }`
  return `# Stock: oil and seals on the shelf. A plan takes from it, and lists what to buy.
# To fill a part in, delete its {} and the # before the lines below it; then write your own values.
kind: stock
version: "1.0"
id: my-shelf
name: My shelf
# Containers, with the oil as the label names it. "opened" is the rest in an opened one.
containers: {}
#  bottle-80w-90:
#    name: bottle of 80W-90 GL-5
#    oil: { name: gear oil 80W-90, grade: 80W-90, system: SAE J306, categories: [GL-5] }
#    size: ${amount(1000)}
#    count: 2
#    opened: ${amount(250)}
# Seals.
seals: {}
#  copper-14:
#    name: copper washer 14 x 18
#    seal:
#      kind: crush washer
#      form: flat
#      material: copper
#      size: { inside: "14", outside: "18", thickness: "1.5", unit: mm }
#      replace: every opening
#    count: 10
`
}
