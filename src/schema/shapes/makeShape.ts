import * as z from 'zod/v4/core'
import { MAX_COUNT, MAX_NUMBER } from '../../base/index.js'

// The shapes of documents. They use zod's core: zod's usual constructors add methods that no shape needs, and code made from
// text, which strict content policies forbid.

type Shape = z.$ZodType
type Checks<Value = never> = readonly z.$ZodCheck<Value>[]

/** A field of an object or an entry of a list: a shape, the allowed words, or the fields of an object. */
export type Field = Shape | string | readonly string[] | Fields
/** A key that ends in `?` may be left out. */
export interface Fields {
  readonly [key: string]: Field
}
export type ShapeOf<Given> = Given extends Shape
  ? Given
  : Given extends string
    ? z.$ZodLiteral<Given>
    : Given extends readonly string[]
      ? z.$ZodEnum<{ [Word in Given[number]]: Word }>
      : Given extends object
        ? ObjectShape<Given>
        : never
type ObjectShape<Given> = z.$ZodObject<
  {
    -readonly [Key in keyof Given as Key extends `${infer Name}?` ? Name : Key]: Key extends `${string}?`
      ? z.$ZodExactOptional<ShapeOf<Given[Key]>>
      : ShapeOf<Given[Key]>
  },
  z.$strict
>

/** Builds a shape at its first use and keeps it: zod's objects are slow to build, and nothing may run at import. */
export function buildOnce<Built>(build: () => Built): () => Built {
  let built: Built | undefined
  return () => {
    built ??= build()
    return built
  }
}

/** `error` is the code of the finding. */
export const string = (checks: Checks<string>, error?: string) =>
  new z.$ZodString({
    type: 'string',
    checks: [...checks],
    ...(error !== undefined && { error: () => error }),
  })

export const matching = (pattern: RegExp, error: string, abort = false) =>
  new z.$ZodCheckRegex({ check: 'string_format', format: 'regex', pattern, error: () => error, abort })

export const holding = <Value>(fn: (value: Value) => boolean, error: string): z.$ZodCheck<Value> =>
  new z.$ZodCustom({
    type: 'custom',
    check: 'custom',
    fn: fn as (value: unknown) => boolean,
    error: () => error,
  })

export const atLeast = (minimum: number) => new z.$ZodCheckMinLength({ check: 'min_length', minimum })

export const boolean = () => new z.$ZodBoolean({ type: 'boolean' })

export const oneOf = <const Word extends string>(words: readonly Word[]) =>
  new z.$ZodEnum({
    type: 'enum',
    entries: Object.fromEntries(words.map((word) => [word, word])),
  }) as unknown as z.$ZodEnum<{ [Each in Word]: Each }>

function shapeOf(field: Field): Shape {
  if (typeof field === 'string') return new z.$ZodLiteral({ type: 'literal', values: [field] })
  if (Array.isArray(field)) return oneOf(field)
  return '_zod' in field ? (field as Shape) : object(field as Fields)
}

export const list = <const Given extends Field>(entry: Given, checks: Checks = []) =>
  new z.$ZodArray({ type: 'array', element: shapeOf(entry), checks: [...checks] }) as unknown as z.$ZodArray<
    ShapeOf<Given>
  >

/** A list with at least one entry. */
export const filledList = <const Given extends Field>(entry: Given) => list(entry, [atLeast(1)])

export const record = <Key extends z.$ZodRecordKey & Shape, const Given extends Field>(
  key: Key,
  value: Given,
) =>
  new z.$ZodRecord({ type: 'record', keyType: key, valueType: shapeOf(value) }) as unknown as z.$ZodRecord<
    Key,
    ShapeOf<Given>
  >

export function object<const Given extends Fields>(fields: Given, checks: Checks = []): ObjectShape<Given> {
  const shape = Object.entries(fields).map(([key, field]): [string, Shape] => {
    const innerType: Shape = shapeOf(field)
    return key.endsWith('?')
      ? [key.slice(0, -1), new z.$ZodExactOptional({ type: 'optional', innerType })]
      : [key, innerType]
  })
  return new z.$ZodObject({
    type: 'object',
    shape: Object.fromEntries(shape),
    catchall: new z.$ZodNever({ type: 'never' }),
    checks: [...checks],
  }) as unknown as ObjectShape<Given>
}

/** One alternative of {@link byTag}, with its `kind`. */
export const kind = <const Kind extends string, const Given extends Fields>(
  name: Kind,
  rest: Given,
  checks?: Checks,
) => object({ kind: name, ...rest } as { readonly kind: Kind } & Given, checks)

export const byTag = <const Arms extends readonly Shape[]>(alternatives: Arms, discriminator = 'kind') =>
  new z.$ZodDiscriminatedUnion({
    type: 'union',
    options: alternatives,
    discriminator,
    inclusive: false,
  }) as unknown as z.$ZodDiscriminatedUnion<Arms>

/** A shape, or one word in its place. */
export const orWord = <Given extends Shape, const Word extends string>(shape: Given, word: Word) =>
  new z.$ZodUnion({
    type: 'union',
    options: [shape, shapeOf(word)],
    inclusive: true,
  }) as unknown as z.$ZodUnion<readonly [Given, z.$ZodLiteral<Word>]>

const above = (value: number, inclusive = true) =>
  new z.$ZodCheckGreaterThan({ check: 'greater_than', value, inclusive })
const upTo = (value: number) => new z.$ZodCheckLessThan({ check: 'less_than', value, inclusive: true })

// JSON numbers. All have a maximum, so that sums, products and loops end.

/** At least `smallest`. */
export const amount = (smallest = 0) =>
  new z.$ZodNumber({ type: 'number', checks: [above(smallest), upTo(MAX_NUMBER)] })

/** More than 0. */
export const positive = (largest = MAX_NUMBER) =>
  new z.$ZodNumber({ type: 'number', checks: [above(0, false), upTo(largest)] })

/** A safe integer. Zod's own format of numbers brings the ranges of all others into the bundle. */
export const whole = (checks: Checks<number> = []) =>
  new z.$ZodNumber({
    type: 'number',
    checks: [isWhole(), above(Number.MIN_SAFE_INTEGER), upTo(Number.MAX_SAFE_INTEGER), ...checks],
  })

function isWhole(): z.$ZodCheck<number> {
  const check = z._check<number>(({ value, issues }) => {
    if (!Number.isInteger(value))
      issues.push({ code: 'invalid_type', expected: 'int', input: value, inst: check, continue: false })
  })
  // The JSON Schema says `integer` by this.
  check._zod.onattach.push((shape) => {
    shape._zod.bag['format'] = 'safeint'
  })
  return check
}

/** A number of containers, bolts or wheels. */
export const count = (smallest: 0 | 1 = 0, largest = MAX_COUNT) => whole([above(smallest), upTo(largest)])
