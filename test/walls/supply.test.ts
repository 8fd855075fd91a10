import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { BUNDLED } from '../../tsup.config.js'

interface Manifest {
  readonly version: string
  readonly license: string
  readonly scripts?: Readonly<Record<string, string>>
  readonly dependencies?: Readonly<Record<string, string>>
  readonly optionalDependencies?: Readonly<Record<string, string>>
  readonly peerDependencies?: Readonly<Record<string, string>>
  readonly devDependencies: Readonly<Record<string, string>>
  readonly allowScripts: Readonly<Record<string, boolean>>
}
interface Lock {
  readonly packages: Readonly<
    Record<
      string,
      { readonly version?: string; readonly integrity?: string; readonly hasInstallScript?: true }
    >
  >
}

const readJson = <T>(path: string): T => JSON.parse(readFileSync(path, 'utf8'))
const manifest = readJson<Manifest>('package.json')
const lock = readJson<Lock>('package-lock.json')
const page = readFileSync('DEVELOPERS.md', 'utf8')
const table = [...page.matchAll(/^\| ([\w.-]+) \| (\d\S+) \| (\S+) \| ([^|]+) \| ([^|]+) \|$/gm)].map(
  ([, name = '', version = '', licence = '', reason = '', replacement = '']) => ({
    name,
    version,
    licence,
    reason,
    replacement,
  }),
)

/** Scripts that npm runs when a package is installed. */
const INSTALL_SCRIPTS = ['preinstall', 'install', 'postinstall']
/** A package with this file and without scripts is built by node-gyp on installation. */
const BUILD_FILE = 'binding.gyp'
/** Licences that let anybody use and pass on the code, also sold, if their text goes with it. */
const LICENCES = ['MIT', 'ISC', 'BSD-3-Clause']

describe('what users get', () => {
  it('installs nothing else and runs nothing on installation', () => {
    for (const kind of ['dependencies', 'optionalDependencies', 'peerDependencies'] as const)
      expect(manifest[kind], kind).toBeUndefined()
    expect(Object.keys(manifest.scripts ?? {}).filter((name) => INSTALL_SCRIPTS.includes(name))).toEqual([])
  })

  it('bundles the packages of the table in DEVELOPERS.md, in the versions of package.json', () => {
    expect(table.map(({ name }) => name)).toEqual(BUNDLED)
    for (const { name, version } of table) {
      expect(manifest.devDependencies[name], name).toBe(version)
      expect(lock.packages[`node_modules/${name}`], name).toMatchObject({ version, integrity: /^sha512-/ })
    }
  })

  it.each(BUNDLED)(
    '%s is what is installed, with an allowed licence, no scripts and nothing below it',
    (name) => {
      const folder = `node_modules/${name}`
      const installed = readJson<Manifest>(`${folder}/package.json`)
      const row = table.find((one) => one.name === name)
      expect(installed.version).toBe(row?.version)
      expect(installed.license).toBe(row?.licence)
      expect(LICENCES).toContain(installed.license)
      expect(readdirSync(folder).some((file) => /^licen[cs]e/i.test(file))).toBe(true)
      expect(
        Object.keys(installed.scripts ?? {}).filter((script) => INSTALL_SCRIPTS.includes(script)),
      ).toEqual([])
      expect(existsSync(`${folder}/${BUILD_FILE}`)).toBe(false)
      expect(installed.dependencies ?? {}).toEqual({})
    },
  )

  it('judges every version before a full release, with what would replace it', () => {
    const unfinished = table.filter(({ version }) => version.includes('-') || version.startsWith('0.'))
    expect(unfinished.map(({ name }) => name)).toEqual(['convert-units'])
    for (const { name } of unfinished) expect(page).toMatch(new RegExp(`^${name} is a beta, judged on `, 'm'))
  })
})

describe('what developers install', () => {
  it('has one exact version each', () => {
    const moving = Object.entries(manifest.devDependencies).filter(
      ([, version]) => !/^(?:npm:[\w-]+@)?\d+\.\d+\.\d+(?:-[\w.]+)?$/.test(version),
    )
    expect(moving).toEqual([])
  })

  it('runs scripts of allowed packages only', () => {
    const running = Object.entries(lock.packages)
      .filter(([, { hasInstallScript }]) => hasInstallScript === true)
      .map(([path]) => path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length))
    expect([...new Set(running)]).toEqual(Object.keys(manifest.allowScripts))
  })
})
