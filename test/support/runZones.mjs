// The suite again under other time zones, and once with a hostile setting of the shared Decimal.
import { spawnSync } from 'node:child_process'

const runs = [
  { TZ: 'Pacific/Kiritimati' },
  { TZ: 'America/St_Johns' },
  { TZ: 'Pacific/Pago_Pago' },
  { TZ: 'UTC', DRIVETRAIN_HOSTILE_DECIMAL: '1' },
]
// The package is packed and judged once; what is left does not depend on the zone any less.
const left = ['--exclude', 'test/walls/package.test.ts', '--exclude', 'test/browser/**']
for (const env of runs) {
  console.log(`\n# ${JSON.stringify(env)}`)
  const { status } = spawnSync('npx', ['vitest', 'run', '--config', 'test/vitest.config.ts', ...left], {
    stdio: 'inherit',
    env: { ...process.env, ...env },
  })
  if (status !== 0) process.exit(status ?? 1)
}
