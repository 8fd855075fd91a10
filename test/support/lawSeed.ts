import fc from 'fast-check'

// The same commit gets the same verdict twice: the laws draw from one seed, unless `npm run test:laws` gives a fresh one.
fc.configureGlobal({
  seed: Number(process.env['DRIVETRAIN_LAW_SEED'] ?? 20_231_006),
  numRuns: 100 * Number(process.env['DRIVETRAIN_LAW_TIMES'] ?? 1),
})
