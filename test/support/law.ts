import fc from 'fast-check'

/** How many times as many cases each law draws (`npm run test:all`, `npm run test:laws`). */
const times = Number(process.env['DRIVETRAIN_LAW_TIMES'] ?? 1)

/** The same commit gets the same verdict twice: the laws draw from one seed, unless `npm run test:laws` gives a fresh one. */
const seed = Number(process.env['DRIVETRAIN_LAW_SEED'] ?? 20_231_006)

/** How many cases a law draws in this run that draws `runs` in `npm test`. */
export function cases(runs: number): number {
  return runs * times
}

/** Fails where the predicate throws or is false for any of the cases: `runs` of them in `npm test`, more in the long run. */
export function law<Values extends [unknown, ...unknown[]]>(
  runs: number,
  ...arbitrariesAndPredicate: [
    ...arbitraries: { [Place in keyof Values]: fc.Arbitrary<Values[Place]> },
    // biome-ignore lint/suspicious/noConfusingVoidType: a predicate either answers or throws, as in fast-check
    predicate: (...values: Values) => boolean | void,
  ]
): void {
  fc.assert(fc.property(...arbitrariesAndPredicate), { seed, numRuns: cases(runs) })
}
