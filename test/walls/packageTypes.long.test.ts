import { execFileSync } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { packedFiles, readPackedList } from './support/packedFiles.js'
import { unpackLibrary } from './support/unpackLibrary.js'

const ROOT = new URL('../../', import.meta.url).pathname

/** Megabytes with the types; `package.test.ts` packs the quick build, which has none. 0.9 before three more languages, 1.11 before their words for the command line. */
const PACKED_CEILING = 1.18

/**
 * Instantiations of types when TypeScript 5.9 checks an app that imports the root, a language and a calculation, as ES module
 * and CommonJS: 70,111. Unlike its seconds (4 of checking), it is the same on every machine.
 */
const INSTANTIATIONS_CEILING = 72_000

it('the packed library type checks under node16, nodenext and bundler resolution, within its budget, and is within its ceiling', () => {
  const folder = unpackLibrary()
  // An app that runs in Node has its types.
  mkdirSync(join(folder, 'node_modules/@types'), { recursive: true })
  symlinkSync(join(ROOT, 'node_modules/@types/node'), join(folder, 'node_modules/@types/node'))
  try {
    const { size } = statSync(join(folder, 'drivetrain-service-0.1.0.tgz'))
    console.log(`packed with types: ${(size / 1e6).toFixed(3)} MB of ${PACKED_CEILING}`)
    expect(size / 1e6).toBeLessThanOrEqual(PACKED_CEILING)
    expect(packedFiles(folder)).toEqual(readPackedList())
    expect(readFileSync(join(ROOT, 'README.md'), 'utf8')).toContain(`at most ${PACKED_CEILING} MB`)
    const source = `import { convert, planVisit, type VisitPlan } from 'drivetrain-service'
import { en } from 'drivetrain-service/v1/message/en'
import { checkWrench } from 'drivetrain-service/v1/torque'
export const plan: VisitPlan['kind'] = 'visit-plan'
export const functions = [convert, planVisit, checkWrench, en] as const
// @ts-expect-error a length is no torque
convert({ value: 1, unit: 'mm' }, 'N.m').value satisfies string
`
    writeFileSync(join(folder, 'types.mts'), source)
    writeFileSync(join(folder, 'types.cts'), source)
    for (const [module, resolution] of [
      ['node16', 'node16'],
      ['nodenext', 'nodenext'],
      ['esnext', 'bundler'],
    ] as const) {
      const output = execFileSync(
        join(ROOT, 'node_modules/.bin/tsc'),
        ['--noEmit', '--strict', '--exactOptionalPropertyTypes', '--target', 'es2022', '--module', module]
          .concat(['--moduleResolution', resolution, '--types', 'node', 'types.mts', '--extendedDiagnostics'])
          .concat(module === 'esnext' ? [] : ['types.cts']),
        { cwd: folder, encoding: 'utf8', stdio: 'pipe' },
      )
      expect(output, `module ${module}`).not.toContain('error TS')
      const instantiations = Number(/^Instantiations: +(\d+)$/m.exec(output)?.[1])
      console.log(`${resolution}: ${instantiations} instantiations of ${INSTANTIATIONS_CEILING}`)
      expect(instantiations).toBeGreaterThan(0)
      expect(instantiations).toBeLessThanOrEqual(INSTANTIATIONS_CEILING)
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
})
