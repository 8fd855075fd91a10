import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { unpackLibrary } from '../walls/support/unpackLibrary.js'

// The packed types in the oldest and the newest TypeScript that are supported, for ES modules and CommonJS, under three
// module resolutions; also the declarations themselves, without skipLibCheck. Run by `npm run test:engines`, after a build
// with types.

/** 5.3 is the first that knows the attribute `resolution-mode`, by which CommonJS gets the types of the ES modules. */
const VERSIONS = ['5.3.3', '5.9.3', '7.0.2']
const RESOLUTIONS = [
  ['node16', 'node16'],
  ['nodenext', 'nodenext'],
  ['esnext', 'bundler'],
] as const

const source = `import { convert, planVisit, type VisitPlan } from 'drivetrain-service'
import { en } from 'drivetrain-service/v1/message/en'
import { checkWrench } from 'drivetrain-service/v1/torque'
export const plan: VisitPlan['kind'] = 'visit-plan'
export const functions = [convert, planVisit, checkWrench, en] as const
// @ts-expect-error a length is no torque
convert({ value: 1, unit: 'mm' }, 'N.m').value satisfies string
`
const app = unpackLibrary()
let failed = 0
try {
  mkdirSync(join(app, 'node_modules/@types'), { recursive: true })
  symlinkSync(join(process.cwd(), 'node_modules/@types/node'), join(app, 'node_modules/@types/node'))
  writeFileSync(join(app, 'types.mts'), source)
  writeFileSync(join(app, 'types.cts'), source)
  for (const version of VERSIONS) {
    const tsc = installTypeScript(version)
    for (const [module, resolution] of RESOLUTIONS) {
      const words = [
        '--noEmit',
        '--strict',
        '--exactOptionalPropertyTypes',
        '--target',
        'es2022',
        '--types',
        'node',
      ]
      const files = resolution === 'bundler' ? ['types.mts'] : ['types.mts', 'types.cts']
      const run = spawnSync(
        'node',
        [tsc, ...words, '--module', module, '--moduleResolution', resolution, ...files],
        { cwd: app, encoding: 'utf8' },
      )
      console.log(
        `TypeScript ${version}, ${resolution}: ${run.status === 0 ? 'no errors' : run.stdout.slice(0, 600)}`,
      )
      if (run.status !== 0) failed += 1
    }
  }
} finally {
  rmSync(app, { recursive: true })
}
if (failed > 0) process.exitCode = 1

/** The compiler of one version, installed once in a temporary folder of its own. */
function installTypeScript(version: string): string {
  const own = join(tmpdir(), `drivetrain-engines-typescript-${version}`)
  const program = join(own, 'node_modules/typescript/bin/tsc')
  if (existsSync(program)) return program
  mkdirSync(own, { recursive: true })
  writeFileSync(join(own, 'package.json'), '{ "private": true }')
  const words = ['install', `typescript@${version}`, '--no-audit', '--no-fund', '--ignore-scripts']
  const { status } = spawnSync('npm', words, { cwd: own, stdio: 'inherit' })
  if (status !== 0) throw new Error(`TypeScript ${version} cannot be installed`)
  return program
}
