import fc from 'fast-check'
import type { Identity, ProcedureDocument, SpecSheet, Step } from '../../src/v1/spec.js'
import { GOOD_MACHINES } from '../service/goodMachines/index.js'
import { readExample } from '../support/readExample.js'
import { build, filterSheet, sharedSheet, varietySheet } from './sheets.js'
import { simulateProcedure } from './simulateProcedure.js'

// Correct procedures with random mistakes that writers make: steps lost, doubled or moved, parts exchanged, figures
// lost.

export interface Broken {
  readonly sheet: SpecSheet
  readonly good: ProcedureDocument
  readonly bad: ProcedureDocument
}

const EXAMPLES = ['acre-26', 'bud-3', 'kvist-2', 'reach-55', 'tind-4']

const MACHINES: readonly (readonly [SpecSheet, Identity])[] = [
  ...EXAMPLES.map((name) => ({ sheet: readExample(name, 'sheet'), log: readExample(name, 'log') })),
  ...Object.values(GOOD_MACHINES),
]
  .map(({ sheet, log }): readonly [SpecSheet, Identity] => [sheet, log.identity])
  .concat([varietySheet, sharedSheet, filterSheet].map((sheet) => [sheet, { variant: 'plain' }]))

/** Each service of each machine without missing facts. */
const GOOD = MACHINES.flatMap(([sheet, identity]) =>
  Object.keys(sheet.services).map((service) => [sheet, build(sheet, [service], identity)] as const),
).filter(
  ([sheet, validProcedure]) =>
    validProcedure.steps.length > 1 && simulateProcedure(validProcedure, sheet).findings.length === 0,
)

type Edit = { readonly kind: 'delete' | 'double' | 'move' | 'swap parts' | 'drop values' } & {
  readonly at: number
  readonly to: number
}

const editArbitrary: fc.Arbitrary<Edit> = fc.record({
  kind: fc.constantFrom('delete', 'double', 'move', 'swap parts', 'drop values'),
  at: fc.nat(),
  to: fc.nat(),
})

/** A good procedure with 1 to 3 edits. */
export const brokenArbitrary: fc.Arbitrary<Broken> = fc
  .tuple(fc.nat(GOOD.length - 1), fc.array(editArbitrary, { minLength: 1, maxLength: 3 }))
  .map(([place, edits]) => {
    const [sheet, validProcedure] = GOOD[place] as (typeof GOOD)[number]
    return {
      sheet,
      good: validProcedure,
      bad: { ...validProcedure, steps: edits.reduce(breakSteps, validProcedure.steps) },
    }
  })

function breakSteps(steps: readonly Step[], { kind, at, to }: Edit): readonly Step[] {
  const [from, other] = [at % steps.length, to % steps.length]
  const [step, second] = [steps[from], steps[other]]
  if (step === undefined || second === undefined) return steps
  if (kind === 'delete') return steps.toSpliced(from, 1)
  if (kind === 'double') return steps.toSpliced(other, 0, step)
  if (kind === 'move') return steps.toSpliced(from, 1).toSpliced(other, 0, step)
  const { values: _values, ...stepWithoutValues } = step
  if (kind === 'drop values') return steps.with(from, stepWithoutValues)
  return steps.with(from, exchange(step, second)).with(other, exchange(second, step))
}

/** The step of an action on the same part as another step. */
function exchange({ on: _on, at: _at, ...step }: Step, { on, at }: Step): Step {
  return { ...step, ...(on !== undefined && { on }), ...(at !== undefined && { at }) }
}
