import { defineConfig } from 'vitest/config'
import ProgressReporter from './support/progressReporter.js'

/** Files that replace a module or measure the heap: they need their own process. */
const ALONE = ['test/quantity/convertPaths.test.ts', 'test/interval/judgeRowLines.test.ts']

/** Tests that only `npm run test:all` runs: the browser, and the types of the packed library. */
const LONG = process.env['DRIVETRAIN_LONG'] === '1' ? [] : ['test/**/*.long.test.ts']

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    reporters: [new ProgressReporter()],
    // Use both cores: by default the tool leaves one of two idle.
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
    // Long enough for a busy machine: only a test that hangs reaches it.
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
