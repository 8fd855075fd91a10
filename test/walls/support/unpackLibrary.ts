import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readdirSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

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
  // The installed dependencies stand in for a registry.
  for (const name of readdirSync(join(ROOT, 'node_modules')))
    if (!name.startsWith('.') && name !== 'drivetrain-service')
      symlinkSync(join(ROOT, 'node_modules', name), join(modules, name))
  return folder
}
