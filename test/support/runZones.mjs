// The suite again under other time zones, and once with a hostile setting of the shared Decimal: every room that holds
// dates in the one, every room that works with decimals in the other.
import { spawnSync } from 'node:child_process'

const dates = ['calendar', 'interval', 'service', 'cli', 'card', 'message', 'rules']
const decimals = ['quantity', 'service', 'fill', 'cli']
const runs = [
  [{ TZ: 'Pacific/Kiritimati' }, dates],
  [{ TZ: 'America/St_Johns' }, dates],
  [{ TZ: 'Pacific/Pago_Pago' }, dates],
  [{ TZ: 'UTC', DRIVETRAIN_HOSTILE_DECIMAL: '1' }, decimals],
]
for (const [env, rooms] of runs) {
  console.log(`\n# ${JSON.stringify(env)}`)
  const folders = rooms.map((room) => `test/${room}/`)
  const { status } = spawnSync('npx', ['vitest', 'run', '--config', 'test/vitest.config.ts', ...folders], {
    stdio: 'inherit',
    env: { ...process.env, ...env },
  })
  if (status !== 0) process.exit(status ?? 1)
}
