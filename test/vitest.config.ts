import { defineConfig } from 'vitest/config'
import CountReporter from './support/countReporter.js'

/** How many times as many cases each law draws (`test/support/law.ts`). */
const times = Number(process.env['DRIVETRAIN_LAW_TIMES'] ?? 1)

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['test/**/*.test.ts'],
    reporters: ['default', new CountReporter()],
    setupFiles: ['test/support/hostileDecimal.ts'],
    testTimeout: 60_000 * times,
    hookTimeout: 120_000,
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      exclude: ['src/**/index.ts', 'src/v1/**'],
      reporter: ['text-summary', 'json-summary'],
      thresholds: { lines: 95, branches: 90 },
    },
  },
})
