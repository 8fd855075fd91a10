// `npm run test:engines`: what needs programs that are too large for `npm ci`, installed once in temporary folders of their
// own: dueSql in ClickHouse (chdb, 546 MB); all texts in three versions of Node, in Bun, Deno and Chromium; types in the oldest and the newest TypeScript.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

const VERSION = '3.4.0'
const folder = join(tmpdir(), `drivetrain-engines-chdb-${VERSION}`)
const run = (command, words, cwd) => {
  const { status } = spawnSync(command, words, { cwd, stdio: 'inherit' })
  if (status !== 0) process.exit(status ?? 1)
}
if (!existsSync(join(folder, 'node_modules', 'chdb', 'package.json'))) {
  mkdirSync(folder, { recursive: true })
  writeFileSync(join(folder, 'package.json'), '{ "private": true }')
  run('npm', ['install', `chdb@${VERSION}`, '--no-audit', '--no-fund'], folder)
}
run('node', ['test/support/run.mjs', 'test/engines/compareClickhouse.ts', folder], process.cwd())
run('node', ['test/support/run.mjs', 'test/engines/compareRuntimes.ts'], process.cwd())
run('node', ['test/support/run.mjs', 'test/engines/compareTypes.ts'], process.cwd())
