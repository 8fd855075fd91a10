import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { files, imports, LEVELS, moduleOf, SRC, target } from './support/imports.js'

/** The files that other modules may import: the index of a module; a language and the unit codes are separate entries. */
const DOORS = /^([a-z0-9]+|message\/[a-z]{2}|quantity\/unitCodes)\/index\.ts$/
const levelOf = (module: string): number => LEVELS.findIndex((level) => level.includes(module))

describe('the walls between modules', () => {
  it('finds imports', () => {
    expect(files.length).toBeGreaterThan(100)
    expect(imports.length).toBeGreaterThan(300)
    expect(imports.filter((link) => link.typeOnly).length).toBeGreaterThan(100)
  })

  it('knows every module', () => {
    expect([...new Set(files.map(moduleOf))].filter((module) => levelOf(module) < 0)).toEqual([])
  })

  it('resolves every relative import to a file', () => {
    const known = new Set(files)
    expect(imports.filter((link) => target(link) !== undefined && !known.has(target(link) ?? ''))).toEqual([])
  })

  it('lower never imports higher, and neighbours do not import each other', () => {
    const badImports = imports.filter((link) => {
      const to = target(link)
      if (to === undefined) return false
      const [lower, upper] = [moduleOf(to), moduleOf(link.from)]
      if (lower === upper) return false
      return levelOf(lower) >= levelOf(upper)
    })
    expect(badImports).toEqual([])
  })

  it('another module is entered through its index', () => {
    const deepImports = imports.flatMap((link) => {
      const to = target(link)
      return to === undefined || moduleOf(to) === moduleOf(link.from) || DOORS.test(to)
        ? []
        : [`${link.from} -> ${to}`]
    })
    expect(deepImports).toEqual([])
  })

  it('calculations take only types from spec', () => {
    const calculations = new Set(['interval', 'torque', 'oil', 'fill', 'seal'])
    const badImports = imports.filter(
      (link) =>
        calculations.has(moduleOf(link.from)) && moduleOf(target(link) ?? '') === 'spec' && !link.typeOnly,
    )
    expect(badImports).toEqual([])
  })

  it('zod is imported in schema alone, convert-units in one file of quantity, decimal.js in one of service', () => {
    const users = (name: string): readonly string[] => [
      ...new Set(
        imports.filter(({ to }) => to === name || to.startsWith(`${name}/`)).map(({ from }) => from),
      ),
    ]
    expect(users('zod').filter((file) => moduleOf(file) !== 'schema')).toEqual([])
    expect(users('zod').length).toBeGreaterThan(0)
    expect(users('convert-units').map(moduleOf)).toEqual(['quantity'])
    expect(users('decimal.js')).toEqual(['service/kitSums.ts'])
  })

  it('a card formats, and calculates nothing: of quantity/ it imports names, formatting and types', () => {
    const text = (file: string) => readFileSync(join(SRC, file), 'utf8')
    const names = files
      .filter((file) => moduleOf(file) === 'card')
      .flatMap((file) => [
        ...text(file).matchAll(/^import (type )?\{([^}]*)\} from '(?:\.\.\/)+quantity\/index\.js'/gm),
      ])
      .flatMap(([, type, list = '']) => (type === undefined ? list.split(',') : []))
      .map((name) => name.trim())
      .filter((name) => name !== '' && !name.startsWith('type '))
    expect([...new Set(names)].sort()).toEqual(['formatNumber', 'measureOf', 'unitSymbol'])
  })

  it('node and files are touched by the command line alone', () => {
    const badImports = imports.filter(({ from, to }) => to.startsWith('node:') && moduleOf(from) !== 'cli')
    expect(badImports).toEqual([])
  })

  it('no circles inside or across modules, types included', () => {
    const next = new Map<string, readonly string[]>()
    for (const file of files)
      next.set(
        file,
        imports.filter((link) => link.from === file).flatMap((link) => target(link) ?? []),
      )
    const circles: string[] = []
    const visited = new Set<string>()
    const walk = (file: string, trail: readonly string[]): void => {
      if (trail.includes(file)) {
        circles.push([...trail.slice(trail.indexOf(file)), file].join(' -> '))
        return
      }
      if (visited.has(file)) return
      for (const to of next.get(file) ?? []) walk(to, [...trail, file])
      visited.add(file)
    }
    for (const file of files) walk(file, [])
    expect(circles).toEqual([])
  })

  it('no clock, no randomness, no code from text outside the command line', () => {
    const badImports = files
      .filter((file) => moduleOf(file) !== 'cli')
      .filter((file) => {
        const text = readFileSync(join(SRC, file), 'utf8')
          .replace(/\/\*[\s\S]*?\*\//g, '')
          .replace(/\/\/.*$/gm, '')
        return /\bnew Date\b|\bDate\.now\b|\bMath\.random\b|\beval\(|\bnew Function\b|\bprocess\./.test(text)
      })
    expect(badImports).toEqual([])
  })
})
