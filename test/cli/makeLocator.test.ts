import { describe, expect, it } from 'vitest'
import { makeLocator } from '../../src/cli/makeLocator.js'

const JSON_TEXT = `{
  "a/b": {
    "~c": [1,
      { "d": 2 }]
  },
  "e": null
}`

describe('the line and column of a pointer', () => {
  const locate = makeLocator(JSON_TEXT)

  it.each([
    ['', 1, 1, 2],
    ['/a~1b', 2, 3, 8],
    ['/a~1b/~0c', 3, 5, 9],
    ['/a~1b/~0c/0', 3, 12, 13],
    ['/a~1b/~0c/1', 4, 7, 8],
    ['/a~1b/~0c/1/d', 4, 9, 15],
    ['/e', 6, 3, 12],
  ])('%s', (path, line, column, endColumn) => {
    expect(locate(path)).toEqual({ line, column, end: { line, column: endColumn } })
  })

  it.each([
    ['a key that is not there: the object that lacks it', '/a~1b/nothing', 2],
    ['an item that is not there: the list', '/a~1b/~0c/7', 3],
    ['a place within a number: the number', '/a~1b/~0c/0/x', 3],
    ['a place within null', '/e/f', 6],
    ['no pointer at all: the document', 'e', 1],
  ])('%s', (_what, path, line) => {
    expect(locate(path)?.line).toBe(line)
  })

  it('in YAML too', () => {
    const yaml = makeLocator('kind: stock\nseals:\n  - name: x\n    count: 1\n')
    expect(yaml('/seals/0/count')).toEqual({ line: 4, column: 5, end: { line: 4, column: 13 } })
    expect(yaml('/kind')).toEqual({ line: 1, column: 1, end: { line: 1, column: 12 }, text: 'stock' })
  })

  it('a text over several lines ends where its last line ends', () => {
    const yaml = makeLocator('note: >-\n  one\n  two\nname: "a\n  b"\nlast:\n')
    expect(yaml('/name')).toMatchObject({ line: 4, end: { line: 5, column: 5 } })
    expect(yaml('/last')).toMatchObject({ line: 6, column: 1, end: { line: 6, column: 6 } })
    expect(yaml('/note')).toMatchObject({ line: 1, end: { line: 4, column: 1 } })
  })

  it('a text that is not there, broken, or nested without end has none, or the deepest that can be read', () => {
    expect(makeLocator('')('/a')).toBeUndefined()
    expect(makeLocator('{"a": {"b": [1, ')('/a/b')).toMatchObject({ line: 1, column: 8 })
    for (const nest of ['[', '{"a":', '- ', '? ', '\n[']) {
      expect(makeLocator(`${nest.repeat(20_000)}1`)('/0/0')).toBeUndefined()
      expect(makeLocator(`${nest.repeat(5)}1`)('')).toBeDefined()
    }
    const nestedYaml = Array.from({ length: 1100 }, (_nothing, place) => `${' '.repeat(place)}a:`).join('\n')
    expect(makeLocator(nestedYaml)('/a')).toBeUndefined()
    expect(makeLocator(`${'[],'.repeat(2000)}{"a": "]]]]"}`)('')).toBeDefined()
    expect(makeLocator(`${'['.repeat(500)}1${']'.repeat(500)}`)('/0')).toMatchObject({ line: 1, column: 2 })
    expect(makeLocator(`${'['.repeat(501)}1${']'.repeat(501)}`)('/0')).toBeUndefined()
  })

  it('is looked for in two million characters, not in more', () => {
    const text = (length: number) => `{"a": 1}${' '.repeat(length - 8)}`
    expect(makeLocator(text(2_000_000))('/a')).toMatchObject({ line: 1, column: 2 })
    expect(makeLocator(text(2_000_001))('/a')).toBeUndefined()
  })
})
