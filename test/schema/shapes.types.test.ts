import { expect, expectTypeOf, test } from 'vitest'
import type * as z from 'zod/mini'
import { DOCUMENT_SHAPES } from '../../src/schema/shapes/documentShapes.js'
import type { Documents } from '../../src/spec/documents.js'

/** A type with its intersections and interfaces expanded and without `readonly`, so that two types can be compared. */
type Flat<T> = T extends readonly (infer Entry)[]
  ? Flat<Entry>[]
  : T extends object
    ? { -readonly [Key in keyof T]: Flat<T[Key]> }
    : T

type Same<First, Second> =
  (<T>() => T extends First ? 1 : 2) extends <T>() => T extends Second ? 1 : 2 ? true : false

type Shaped = { [Kind in keyof Documents]: z.infer<ReturnType<(typeof DOCUMENT_SHAPES)[Kind]>> }

/** The same for each kind separately, so that an error names the kind. */
type Compared = { [Kind in keyof Documents]: Same<Flat<Shaped[Kind]>, Flat<Documents[Kind]>> }

/** `optional` instead of `exactOptional` would allow undefined: flat types hide this, an assignment does not. */
type Assigned = { [Kind in keyof Documents]: Shaped[Kind] extends Documents[Kind] ? true : false }

test('the interfaces say the same as the shapes', () => {
  expectTypeOf<Compared>().toEqualTypeOf<{ [Kind in keyof Documents]: true }>()
  expectTypeOf<Assigned>().toEqualTypeOf<{ [Kind in keyof Documents]: true }>()
  const allProved: { [Kind in keyof Documents]: true } = {
    'spec-sheet': true,
    'machine-log': true,
    toolbox: true,
    stock: true,
    procedure: true,
    'service-record': true,
  } satisfies Compared & Assigned
  expect(Object.keys(DOCUMENT_SHAPES)).toEqual(Object.keys(allProved))
})

test('the comparison sees a key that is missing, optional or of another type', () => {
  expectTypeOf<Same<Flat<{ readonly a: 1 }>, Flat<{ a: 1 }>>>().toEqualTypeOf<true>()
  expectTypeOf<Same<Flat<{ a: 1 }>, Flat<{ a?: 1 }>>>().toEqualTypeOf<false>()
  expectTypeOf<Same<Flat<{ a: 1 }>, Flat<{ a: 1; b?: 2 }>>>().toEqualTypeOf<false>()
  expectTypeOf<Same<Flat<{ a: [{ b: 'x' | 'y' }] }>, Flat<{ a: [{ b: 'x' }] }>>>().toEqualTypeOf<false>()
  const isSame: Same<{ a: 1 }, { a: 2 }> = false
  expect(isSame).toBe(false)
})
