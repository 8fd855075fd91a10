import { execFileSync, spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'

const ROOT = join(import.meta.dirname, '../..')

let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'release-'))
  const files = [
    '.ci',
    '.gitignore',
    'package.json',
    'CHANGELOG.md',
    'README.md',
    'LICENSE',
    'dist',
    'schemas',
    'examples',
  ]
  for (const file of files) cpSync(join(ROOT, file), join(folder, file), { recursive: true })
  for (const file of ['decisions.md', 'safety.md', 'rooms.svg'])
    cpSync(join(ROOT, 'docs', file), join(folder, 'docs', file))
  git('init', '-q')
  commit()
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const git = (...args: readonly string[]) => execFileSync('git', args, { cwd: folder })
function commit(): void {
  git('add', '-A')
  git('-c', 'user.name=test', '-c', 'user.email=test@test.example', 'commit', '-qm', 'test')
}

/** Tries a release; it must not reach a registry, so there is none. */
function release(...options: readonly string[]) {
  const { status, stdout } = spawnSync('bash', ['.ci/release', ...options], {
    cwd: folder,
    encoding: 'utf8',
    env: { ...process.env, ACTIONS_ID_TOKEN_REQUEST_URL: '', npm_config_registry: 'http://127.0.0.1:9/' },
  })
  return { status, stdout, missing: stdout.split('\n').filter((line) => line.startsWith('not ready: ')) }
}

it('a dry run of a commit that is no release names all that is missing, and packs', () => {
  writeFileSync(join(folder, 'notes.txt'), 'not committed')
  const { status, stdout, missing } = release('--dry-run', '--built')
  rmSync(join(folder, 'notes.txt'))
  expect(missing.map((line) => /changes|CHANGELOG|tag|repository/.exec(line)?.[0])).toEqual([
    'changes',
    'CHANGELOG',
    'tag',
    'repository',
  ])
  expect(stdout).toContain('== nothing was published; 4 of what a release needs are missing')
  expect(status).toBe(1)
})

it('a commit with its version in the changelog, its tag and a repository is ready; the list has the files of the package', () => {
  const manifest = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
  const repository = 'https://code.example/drivetrain-service.git'
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ ...manifest, repository }))
  const changes = readFileSync(join(folder, 'CHANGELOG.md'), 'utf8')
  const heading = `## [${manifest.version}] - 2031-01-12`
  writeFileSync(join(folder, 'CHANGELOG.md'), changes.replace(/^## .*$/m, heading))
  commit()
  git('tag', `v${manifest.version}`)
  const { status, stdout, missing } = release('--dry-run', '--built')
  expect(missing).toEqual([])
  expect(status).toBe(0)
  const files = stdout.split('\n')
  expect(files).toEqual(
    expect.arrayContaining(['dist/index.js', 'docs/safety.md', 'README.md', 'LICENSE', 'package.json']),
  )
  expect(files.filter((file) => /decisions|^test|^src|CHANGELOG|examples\/apps/.test(file))).toEqual([])
  expect(stdout).toMatch(/^\d+ files, \d+ bytes packed, sha256 [0-9a-f]{64}$/m)
  // Another version than that of the tag is no release.
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ ...manifest, repository, version: '9.9.9' }))
  commit()
  const other = release('--dry-run', '--built')
  expect(other.missing.join('\n')).toMatch(/CHANGELOG.*9\.9\.9[\s\S]*tag.*v9\.9\.9/)
  expect(other.status).toBe(1)
})

it('outside a build service nothing is published, and only a dry run takes a built folder', () => {
  expect(release().missing.join('\n')).toContain('no build service')
  expect(release().status).toBe(1)
  expect(release('--built').status).toBe(2)
  expect(release('--publish').status).toBe(2)
  expect(JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')).publishConfig).toEqual({
    access: 'public',
    provenance: true,
  })
})
