import { execFileSync } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, readFileSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'

// A script that is bundled before it runs is elsewhere.
const ROOT = process.cwd()

/** Packs the built files as npm does, unpacks them into the modules of an app, and returns the folder of the app. */
export function unpackLibrary(): string {
  const folder = mkdtempSync(join(tmpdir(), 'drivetrain-service-'))
  const packOutput = execFileSync(
    'npm',
    ['pack', '--ignore-scripts', '--json', '--pack-destination', folder],
    {
      cwd: ROOT,
      encoding: 'utf8',
    },
  )
  const [{ filename }] = JSON.parse(packOutput) as [{ filename: string }]
  const modules = join(folder, 'node_modules')
  const library = join(modules, 'drivetrain-service')
  mkdirSync(library, { recursive: true })
  execFileSync('tar', ['-xzf', join(folder, filename), '-C', library, '--strip-components=1'])
  // The packages that npm would install with it, and no others.
  const installed = new Set<string>()
  const install = (from: string): void => {
    for (const name of Object.keys(readManifest(from).dependencies ?? {})) {
      const path = join(ROOT, 'node_modules', name)
      if (installed.has(name) || !existsSync(path)) continue
      installed.add(name)
      mkdirSync(dirname(join(modules, name)), { recursive: true })
      symlinkSync(path, join(modules, name))
      install(path)
    }
  }
  install(ROOT)
  return folder
}

function readManifest(folder: string): { readonly dependencies?: Readonly<Record<string, string>> } {
  return JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
}
