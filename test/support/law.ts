import fc from 'fast-check'

/**
 * The share of its cases that each law draws: half in `npm test`, which must be fast; six times in `npm run test:all`,
 * ten times in `npm run test:laws`.
 */
const times = Number(process.env['DRIVETRAIN_LAW_TIMES'] ?? 0.5)

/** True in the runs with more cases. */
export const isLongRun = times > 1

/**
 * The same commit always gets the same result: the laws use a fixed seed, unless `npm run test:laws` gives a new one.
 */
const seed = Number(process.env['DRIVETRAIN_LAW_SEED'] ?? 20_231_006)

/** The number of cases that a law of `runs` cases draws in this run. */
export function cases(runs: number): number {
  return Math.ceil(runs * times)
}

/**
 * Fails if the predicate throws or is false for any of the cases: half of `runs` in `npm test`, more in the long run.
 */
export function law<Values extends [unknown, ...unknown[]]>(
  runs: number,
  ...arbitrariesAndPredicate: [
    ...arbitraries: { [Place in keyof Values]: fc.Arbitrary<Values[Place]> },
    // biome-ignore lint/suspicious/noConfusingVoidType: a predicate returns or throws, as in fast-check
    predicate: (...values: Values) => boolean | void,
  ]
): void {
  fc.assert(fc.property(...arbitrariesAndPredicate), { seed, numRuns: cases(runs) })
}

/** {@link law} for a predicate that returns a promise. */
export function lawAsync<Values extends [unknown, ...unknown[]]>(
  runs: number,
  ...arbitrariesAndPredicate: [
    ...arbitraries: { [Place in keyof Values]: fc.Arbitrary<Values[Place]> },
    // biome-ignore lint/suspicious/noConfusingVoidType: a predicate returns or throws, as in fast-check
    predicate: (...values: Values) => Promise<boolean | void>,
  ]
): Promise<void> {
  return fc.assert(fc.asyncProperty(...arbitrariesAndPredicate), { seed, numRuns: cases(runs) })
}

/**
 * {@link law} for a model: any commands, in any order, are run on the real thing and on a simple model of it; each
 * command compares the two.
 */
export function modelLaw<Model extends object, Real>(
  runs: number,
  commands: readonly fc.Arbitrary<fc.Command<Model, Real>>[],
  start: () => { readonly model: Model; readonly real: Real },
): void {
  law(runs, fc.commands([...commands], { maxCommands: 20 }), (drawn) => fc.modelRun(start, drawn))
}

/** One command of a model; `check` says when it can be run. */
export function command<Model extends object, Real>(
  name: string,
  run: (model: Model, real: Real) => void,
  check: (model: Readonly<Model>) => boolean = () => true,
): fc.Command<Model, Real> {
  return { check, run, toString: () => name }
}
