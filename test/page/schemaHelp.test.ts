import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { listKeys } from '../../docs/page/pathAtCursor.js'
import { findNode, suggestKeys, suggestValues } from '../../docs/page/schemaHelp.js'
import { trimSchema } from '../../docs/page/trimSchema.js'

const ROOT = new URL('../../', import.meta.url)
const read = (file: string): string => readFileSync(new URL(file, ROOT), 'utf8')
const helpOf = (kind: string) => trimSchema(JSON.parse(read(`schemas/v1/${kind}.json`)))
const sheet = helpOf('spec-sheet')
const labels = (suggestions: readonly { readonly label: string }[]) => suggestions.map(({ label }) => label)

describe('what an editor knows from the schema', () => {
  it('offers the keys of a place that are not written yet, in the order of the schema', () => {
    const path = ['gearcases', 'rear', 'openings', 'drain']
    expect(labels(suggestKeys(sheet, path, new Set(['name', 'uses'])))).toEqual([
      'appliesTo',
      'thread',
      'housing',
      'drive',
      'tightening',
      'seals',
      'magnet',
      'place',
      'position',
      'source',
    ])
    expect(labels(suggestKeys(sheet, ['no', 'such', 'place'], new Set()))).toEqual([])
    // A document can have the name of a method of objects as an id.
    expect(suggestKeys(sheet, ['gearcases', 'constructor', 'toString'], new Set())).toEqual([])
  })

  it('knows what follows a key: a text, a map or a list', () => {
    const opens = new Map(suggestKeys(sheet, [], new Set()).map((key) => [key.label, key.opens]))
    expect([opens.get('id'), opens.get('gearcases'), opens.get('overrides')]).toEqual(['text', 'map', 'list'])
  })

  it('offers closed lists, and examples of the notation', () => {
    const rear = ['gearcases', 'rear']
    expect(labels(suggestValues(sheet, [...rear, 'type']))).toContain('final drive')
    expect(labels(suggestValues(sheet, [...rear, 'openings', 'drain', 'tightening']))).toEqual([
      '30 N·m (22 lbf·ft), dry [p. 62]',
    ])
    expect(labels(suggestValues(sheet, ['kind']))).toEqual(['spec-sheet'])
    expect(labels(suggestValues(helpOf('machine-log'), ['meters', '0']))[0]).toMatch(/ on \d{4}-\d{2}-\d{2}$/)
  })

  it.each([
    ['spec-sheet', 'sheet'],
    ['machine-log', 'log'],
    ['toolbox', 'toolbox'],
  ] as const)('has a node with a description for every key of every %s of the examples', (kind, file) => {
    const help = helpOf(kind)
    let count = 0
    for (const folder of ['tind-4', 'acre-26', 'bud-3', 'kvist-2', 'reach-55']) {
      const text = read(`examples/${folder}/${file}.yaml`)
      for (const { path } of listKeys(text)) {
        // The keys of `set` are pointers into the sheet.
        if (path.some((token) => token.startsWith('/'))) continue
        expect(findNode(help, path), `${folder} ${path.join('/')}`).toBeDefined()
        count += 1
      }
      expect(parse(text).kind).toBe(kind)
    }
    expect(count).toBeGreaterThan(40)
  })

  it('is small: at most 75 kB of the 340 kB of the three schemas', () => {
    const size = ['spec-sheet', 'machine-log', 'toolbox'].map((kind) => JSON.stringify(helpOf(kind)).length)
    expect(size.reduce((sum, one) => sum + one)).toBeLessThan(75_000)
  })
})
