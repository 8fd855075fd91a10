// Every law again on fresh seeds and with more cases: what a release should survive, and what one fixed seed cannot
// find. `npm run test:laws -- 20 test/procedure/` draws twenty times as many cases for one folder.
import { spawnSync } from 'node:child_process'

const [first = '10', ...files] = process.argv.slice(2)
const times = Number(first)
if (!(times >= 1)) throw new RangeError(`Expected a number of times from 1, found ${first}`)
const seed = Date.now() % 2 ** 31
console.log(`seed ${seed}, ${times} times as many cases`)
const { status } = spawnSync('npx', ['vitest', 'run', '--config', 'test/vitest.config.ts', ...files], {
  stdio: 'inherit',
  env: { ...process.env, DRIVETRAIN_LAW_SEED: String(seed), DRIVETRAIN_LAW_TIMES: String(times) },
})
process.exit(status ?? 1)
