import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { applyPatch, type PatchOperation } from '../../src/base/applyPatch.js'
import { joinPointer, readPointer, splitPointer } from '../../src/base/pointers.js'
import { law } from '../support/law.js'

describe('reading', () => {
  // RFC 6901, section 5, from memory: the pointers of its example document.
  const example = {
    foo: ['bar', 'baz'],
    '': 0,
    'a/b': 1,
    'c%d': 2,
    'e^f': 3,
    'g|h': 4,
    'i\\j': 5,
    'k"l': 6,
    ' ': 7,
    'm~n': 8,
  }
  test.each([
    ['', example],
    ['/foo', ['bar', 'baz']],
    ['/foo/0', 'bar'],
    ['/', 0],
    ['/a~1b', 1],
    ['/c%d', 2],
    ['/e^f', 3],
    ['/g|h', 4],
    ['/i\\j', 5],
    ['/k"l', 6],
    ['/ ', 7],
    ['/m~0n', 8],
  ])('%j', (pointer, value) => {
    expect(readPointer(example, pointer)).toEqual(value)
  })

  test.each([
    '/foo/2',
    '/foo/-',
    '/foo/00',
    '/foo/length',
    '/foo/0/0',
    '/bar',
    'foo',
    '/m~n',
    '/m~2n',
    '/constructor',
    '/__proto__',
    '/foo/map',
  ])('nothing is at %j', (pointer) => {
    expect(readPointer(example, pointer)).toBe(undefined)
  })

  test('an own key __proto__ is a key like any other', () => {
    expect(readPointer(JSON.parse('{"__proto__":{"a":1}}'), '/__proto__/a')).toBe(1)
  })

  test('misuse throws', () => {
    expect(() => readPointer({}, 3 as never)).toThrow(TypeError)
    expect(() => splitPointer(undefined as never)).toThrow(TypeError)
    expect(() => joinPointer('a' as never)).toThrow(/^tokens must be a list, got 'a'$/)
    expect(() => joinPointer(['a', Object.create(null)])).toThrow(TypeError)
    expect(() => joinPointer(['a', -1])).toThrow(
      /^tokens\[1\] must be a key or a whole number from 0, got -1$/,
    )
    expect(() => joinPointer(['a', Number.NaN])).toThrow(RangeError)
  })

  test('law: what is joined is split again', () => {
    law(50, fc.array(fc.string()), (tokens) => {
      expect(splitPointer(joinPointer(tokens))).toEqual(tokens)
    })
  })
})

describe('patching', () => {
  // RFC 6902, appendix A, from memory: its cases except those of `copy`.
  test.each<[string, unknown, PatchOperation[], unknown]>([
    [
      'A.1 add a member',
      { foo: 'bar' },
      [{ op: 'add', path: '/baz', value: 'qux' }],
      { baz: 'qux', foo: 'bar' },
    ],
    [
      'A.2 add to a list',
      { foo: ['bar', 'baz'] },
      [{ op: 'add', path: '/foo/1', value: 'qux' }],
      { foo: ['bar', 'qux', 'baz'] },
    ],
    ['A.3 remove a member', { baz: 'qux', foo: 'bar' }, [{ op: 'remove', path: '/baz' }], { foo: 'bar' }],
    [
      'A.4 remove from a list',
      { foo: ['bar', 'qux', 'baz'] },
      [{ op: 'remove', path: '/foo/1' }],
      { foo: ['bar', 'baz'] },
    ],
    [
      'A.5 replace',
      { baz: 'qux', foo: 'bar' },
      [{ op: 'replace', path: '/baz', value: 'boo' }],
      { baz: 'boo', foo: 'bar' },
    ],
    [
      'A.6 move',
      { foo: { bar: 'baz', waldo: 'fred' }, qux: { corge: 'grault' } },
      [{ op: 'move', from: '/foo/waldo', path: '/qux/thud' }],
      { foo: { bar: 'baz' }, qux: { corge: 'grault', thud: 'fred' } },
    ],
    [
      'A.7 move in a list',
      { foo: ['all', 'grass', 'cows', 'eat'] },
      [{ op: 'move', from: '/foo/1', path: '/foo/3' }],
      { foo: ['all', 'cows', 'eat', 'grass'] },
    ],
    [
      'A.8 test',
      { baz: 'qux', foo: ['a', 2, 'c'] },
      [
        { op: 'test', path: '/baz', value: 'qux' },
        { op: 'test', path: '/foo/1', value: 2 },
      ],
      { baz: 'qux', foo: ['a', 2, 'c'] },
    ],
    [
      'A.10 add a nested object',
      { foo: 'bar' },
      [{ op: 'add', path: '/child', value: { grandchild: {} } }],
      { foo: 'bar', child: { grandchild: {} } },
    ],
    [
      'A.16 add a list to a list',
      { foo: ['bar'] },
      [{ op: 'add', path: '/foo/-', value: ['abc', 'def'] }],
      { foo: ['bar', ['abc', 'def']] },
    ],
    ['replace all', { foo: 1 }, [{ op: 'replace', path: '', value: [1] }], [1]],
    ['move onto itself', { foo: 1 }, [{ op: 'move', from: '/foo', path: '/foo' }], { foo: 1 }],
    ['replace inside a list', [[1], [2]], [{ op: 'replace', path: '/1/0', value: 3 }], [[1], [3]]],
    [
      'test an object in another order',
      { a: { x: 1, y: [2] } },
      [{ op: 'test', path: '/a', value: { y: [2], x: 1 } }],
      { a: { x: 1, y: [2] } },
    ],
  ])('%s', (_name, document, patch, expected) => {
    const before = JSON.stringify(document)
    expect(applyPatch(document, patch)).toEqual(expected)
    expect(JSON.stringify(document)).toBe(before)
  })

  test.each<[string, unknown, PatchOperation]>([
    ['A.9 a test that fails', { baz: 'qux' }, { op: 'test', path: '/baz', value: 'bar' }],
    ['A.12 add under nothing', { foo: 'bar' }, { op: 'add', path: '/baz/bat', value: 'qux' }],
    ['A.15 a number is no text', { '/': 9 }, { op: 'test', path: '/~01', value: '9' }],
    ['add past the end', [1], { op: 'add', path: '/2', value: 1 }],
    ['add at a name in a list', [1], { op: 'add', path: '/x', value: 1 }],
    ['add inside a number', 1, { op: 'add', path: '/x', value: 1 }],
    ['add inside a list past its end', [[1]], { op: 'add', path: '/1/0', value: 1 }],
    ['remove nothing', { a: 1 }, { op: 'remove', path: '/b' }],
    ['remove all', { a: 1 }, { op: 'remove', path: '' }],
    ['remove past the end', [1], { op: 'remove', path: '/-' }],
    ['replace nothing', [1], { op: 'replace', path: '/1', value: 1 }],
    ['move nothing', { a: 1 }, { op: 'move', from: '/b', path: '/c' }],
    ['move into itself', { a: { b: 1 } }, { op: 'move', from: '/a', path: '/a/b' }],
    ['no pointer', { a: 1 }, { op: 'add', path: 'a', value: 1 }],
    ['a key of the prototype', {}, { op: 'add', path: '/constructor/x', value: 1 }],
    ['test nothing', {}, { op: 'test', path: '/a', value: 1 }],
    ['test a list against an object', { a: [] }, { op: 'test', path: '/a', value: {} }],
    ['test fewer keys', { a: { b: 1 } }, { op: 'test', path: '/a', value: {} }],
    ['test null', { a: null }, { op: 'test', path: '/a', value: {} }],
  ])('%s throws', (_name, document, operation) => {
    expect(() => applyPatch(document, [operation])).toThrow(RangeError)
  })

  test('misuse throws, and says which operation', () => {
    expect(() => applyPatch({}, 'x' as never)).toThrow(TypeError)
    expect(() => applyPatch({}, [{ op: 'copy', from: '', path: '/a' } as never])).toThrow(
      /operations\[0\].*'copy'/,
    )
    expect(() =>
      applyPatch({ a: 1 }, [
        { op: 'remove', path: '/a' },
        { op: 'remove', path: '/a' },
      ]),
    ).toThrow(/operations\[1\]/)
    const patch = (operation: unknown) => () => applyPatch({ a: 1 }, [operation as PatchOperation])
    expect(patch(null)).toThrow(/^operations\[0\] must be an object, got null; use operations of RFC 6902$/)
    expect(patch({ op: 'remove' })).toThrow(/^operations\[0\]\.path must be a string/)
    expect(patch({ op: 'move', path: '/b' })).toThrow(/^operations\[0\]\.from must be a string/)
    expect(patch({ op: 10n, path: '/b' })).toThrow(/'op' must be add, .* got bigint$/)
  })

  test('a place or a value deeper than any document is reported', () => {
    const nest = (levels: number): unknown => Array.from({ length: levels }).reduce((inner) => [inner], 1)
    const test32 = { op: 'test', path: '', value: nest(32) } as const
    expect(applyPatch(nest(32), [test32])).toEqual(nest(32))
    expect(() => applyPatch(nest(9000), [{ ...test32, value: nest(9000) }])).toThrow(
      /^operations\[0\]\.value must be nested at most 32 levels deep/,
    )
    const deepPatch = { op: 'replace', path: '/0'.repeat(8999), value: 1 } as const
    expect(() => applyPatch(nest(9000), [deepPatch])).toThrow(
      /^operations\[0\] \(replace\): a pointer has at most 32 levels/,
    )
  })

  test('a key __proto__ is added as a key, and no prototype changes', () => {
    const patched = applyPatch({}, [{ op: 'add', path: '/__proto__', value: { polluted: true } }])
    expect(Object.hasOwn(patched as object, '__proto__')).toBe(true)
    expect(({} as Record<string, unknown>)['polluted']).toBe(undefined)
  })

  test('law: what is written is read, everything else is as before, and a remove undoes an add', () => {
    const key = fc.constantFrom('a', 'b/c', '~', 'd')
    law(50, fc.dictionary(key, fc.jsonValue()), key, fc.jsonValue(), (document, name, value) => {
      const path = joinPointer([name])
      const withValue = applyPatch(document, [{ op: 'add', path, value }])
      expect(readPointer(withValue, path)).toEqual(value)
      for (const other of Object.keys(document))
        if (other !== name) expect(readPointer(withValue, joinPointer([other]))).toEqual(document[other])
      const withoutValue = applyPatch(withValue, [{ op: 'remove', path }])
      const { [name]: _taken, ...rest } = document
      expect(withoutValue).toEqual(rest)
    })
  })
})
