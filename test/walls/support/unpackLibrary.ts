import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, relative } from 'node:path'

const ROOT = new URL('../../../', import.meta.url).pathname

/** Packs what is built as npm would, unpacks it where an app has its modules, and gives that app's folder. */
export function unpackLibrary(): string {
  const folder = mkdtempSync(join(tmpdir(), 'drivetrain-service-'))
  const packed = execFileSync('npm', ['pack', '--ignore-scripts', '--json', '--pack-destination', folder], {
    cwd: ROOT,
    encoding: 'utf8',
  })
  const [{ filename }] = JSON.parse(packed) as [{ filename: string }]
  const modules = join(folder, 'node_modules')
  const library = join(modules, 'drivetrain-service')
  mkdirSync(library, { recursive: true })
  execFileSync('tar', ['-xzf', join(folder, filename), '-C', library, '--strip-components=1'])
  // What npm would install with it, and nothing that only we have.
  const listed = execFileSync('npm', ['ls', '--omit=dev', '--all', '--parseable'], {
    cwd: ROOT,
    encoding: 'utf8',
  })
  for (const path of listed.trim().split('\n').slice(1)) {
    const name = relative(join(ROOT, 'node_modules'), path)
    if (name.includes('node_modules')) continue
    mkdirSync(dirname(join(modules, name)), { recursive: true })
    symlinkSync(path, join(modules, name))
  }
  return folder
}
