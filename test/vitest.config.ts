import { defineConfig } from 'vitest/config'
import CountReporter from './support/countReporter.js'

/** How many times as many cases each law draws (`npm run test:laws`). */
const times = Number(process.env['DRIVETRAIN_LAW_TIMES'] ?? 1)

export default defineConfig({
  plugins: [
    {
      name: 'more-cases',
      transform: (code, id) =>
        times > 1 && id.includes('/test/')
          ? code.replace(
              /numRuns: ([0-9_]+)/g,
              (_all, runs: string) => `numRuns: ${Number(runs.replaceAll('_', '')) * times}`,
            )
          : undefined,
    },
  ],
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['test/**/*.test.ts'],
    reporters: ['default', new CountReporter()],
    setupFiles: ['test/support/hostileDecimal.ts', 'test/support/lawSeed.ts'],
    testTimeout: 60_000 * times,
    hookTimeout: 120_000,
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      exclude: ['src/**/index.ts', 'src/v1.ts'],
      reporter: ['text-summary', 'json-summary'],
      thresholds: { lines: 95, branches: 90 },
    },
  },
})
