// The long runs, on top of `npm test`: every law with eight times as many cases, the modules that hold dates in the zones
// at both ends of the earth's day (`.ci/run` runs `npm test` in a zone of half hours), the modules that work with decimals
// under a hostile setting of the shared Decimal, the cards in a browser, and the packed library with its types. It stops
// at the first that fails.
import { spawnSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'

const dates = ['calendar', 'interval', 'service', 'cli', 'card', 'message', 'rules']
const decimals = ['quantity', 'service', 'fill', 'cli']
// How files are saved hangs on neither dates nor decimals, and starts many processes.
const folders = (modules) => [
  ...modules.map((module) => `test/${module}/`),
  '--exclude',
  '**/cli/save*.test.ts',
]
const laws = readdirSync('test', { recursive: true, encoding: 'utf8' })
  .map((file) => `test/${file.replaceAll('\\', '/')}`)
  .filter((file) => file.endsWith('.test.ts') && readFileSync(file, 'utf8').includes('/support/law.js'))
const vitest = ['npx', 'vitest', 'run', '--config', 'test/vitest.config.ts']

const runs = [
  ['build with types', ['npm', 'run', '-s', 'build'], {}],
  // It packs what was just built.
  ['package', ['npm', 'run', '-s', 'test:package'], { npm_config_ignore_scripts: 'true' }],
  ['browser, types of the packed library', [...vitest, '.long.test.ts'], { DRIVETRAIN_LONG: '1' }],
  ['laws, eight times as many cases', [...vitest, ...laws], { DRIVETRAIN_LAW_TIMES: '4' }],
  ['the latest zone', [...vitest, ...folders(dates)], { TZ: 'Pacific/Kiritimati' }],
  [
    'the earliest zone, hostile precision',
    [...vitest, ...folders([...new Set([...dates, ...decimals])])],
    { TZ: 'Pacific/Pago_Pago', DRIVETRAIN_HOSTILE_DECIMAL: '1' },
  ],
]
const began = performance.now()
for (const [name, [command, ...words], env] of runs) {
  console.log(`\n# ${name}, from ${Math.round((performance.now() - began) / 1000)} s`)
  const { status } = spawnSync(command, words, { stdio: 'inherit', env: { ...process.env, ...env } })
  if (status !== 0) {
    console.error(`failed: ${name}`)
    process.exit(status ?? 1)
  }
}
console.log(`\nall long runs passed, ${Math.round((performance.now() - began) / 1000)} s`)
