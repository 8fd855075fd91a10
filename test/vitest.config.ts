import { defineConfig } from 'vitest/config'
import ProgressReporter from './support/progressReporter.js'

/** Files that swap a module for another one, or measure the heap: they need a process to themselves. */
const ALONE = ['test/quantity/convertPaths.test.ts', 'test/interval/judgeRowLines.test.ts']

/** What `npm run test:all` runs on top of `npm test`: the browser, and the types of the packed library. */
const LONG = process.env['DRIVETRAIN_LONG'] === '1' ? [] : ['test/**/*.long.test.ts']

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    reporters: [new ProgressReporter()],
    // Both cores: the tool's own choice leaves one of two idle.
    maxWorkers: 2,
    projects: [
      // The library keeps no state between calls, so the files of a worker share its modules.
      {
        extends: true,
        test: {
          name: 'shared',
          isolate: false,
          include: ['test/**/*.test.ts'],
          exclude: [...ALONE, ...LONG],
        },
      },
      { extends: true, test: { name: 'alone', include: ALONE } },
    ],
    setupFiles: ['test/support/hostileDecimal.ts'],
    // A hang is found, a busy machine is not: no test comes near this.
    testTimeout: 600_000,
    hookTimeout: 600_000,
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      exclude: ['src/**/index.ts', 'src/v1/**'],
      reporter: ['text-summary', 'json-summary'],
      thresholds: { lines: 95, branches: 90 },
    },
  },
})
