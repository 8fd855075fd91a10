import * as z from 'zod/v4/core'
import { LARGEST_COUNT, LARGEST_NUMBER } from '../../base/index.js'

// The kinds of shapes that documents are made of. They are made from zod's core: zod's own constructors bring methods
// that no shape needs, and code made from text, which strict content policies forbid.

type Shape = z.$ZodType
type Fields = Readonly<Record<string, Shape>>
type Checks<Value = never> = readonly z.$ZodCheck<Value>[]
type ObjectShape<Its extends Fields> = z.$ZodObject<{ -readonly [Key in keyof Its]: Its[Key] }, z.$strict>

/** A shape that is built at its first use and kept: zod's objects are slow to make, and nothing may run at import. */
export function buildOnce<Built>(build: () => Built): () => Built {
  let built: Built | undefined
  return () => {
    built ??= build()
    return built
  }
}

/** `error` is the code of the finding, since no text is made here. */
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

export const literal = <const Value extends string>(value: Value) =>
  new z.$ZodLiteral({ type: 'literal', values: [value] }) as z.$ZodLiteral<Value>

export const oneOf = <const Value extends string>(values: readonly Value[]) =>
  new z.$ZodEnum({
    type: 'enum',
    entries: Object.fromEntries(values.map((value) => [value, value])),
  }) as unknown as z.$ZodEnum<{ [Its in Value]: Its }>

export const optional = <Its extends Shape>(innerType: Its) =>
  new z.$ZodExactOptional({ type: 'optional', innerType }) as z.$ZodExactOptional<Its>

export const list = <Its extends Shape>(element: Its, checks: Checks = []) =>
  new z.$ZodArray({ type: 'array', element, checks: [...checks] }) as z.$ZodArray<Its>

/** A list with at least one entry. */
export const filledList = <Its extends Shape>(element: Its) => list(element, [atLeast(1)])

export const record = <Key extends z.$ZodRecordKey & Shape, Its extends Shape>(
  keyType: Key,
  valueType: Its,
) => new z.$ZodRecord({ type: 'record', keyType, valueType }) as unknown as z.$ZodRecord<Key, Its>

export const object = <Its extends Fields>(shape: Its, checks: Checks = []) =>
  new z.$ZodObject({
    type: 'object',
    shape,
    catchall: new z.$ZodNever({ type: 'never' }),
    checks: [...checks],
  }) as unknown as ObjectShape<Its>

/** One arm of {@link byTag} of `kind`. */
export const kind = <const Kind extends string, Its extends Fields>(name: Kind, rest: Its, checks?: Checks) =>
  object({ kind: literal(name), ...rest } as { kind: z.$ZodLiteral<Kind> } & Its, checks)

export const byTag = <const Arms extends readonly Shape[]>(arms: Arms, discriminator = 'kind') =>
  new z.$ZodDiscriminatedUnion({
    type: 'union',
    options: arms,
    discriminator,
    inclusive: false,
  }) as unknown as z.$ZodDiscriminatedUnion<Arms>

export const either = <const Arms extends readonly Shape[]>(options: Arms) =>
  new z.$ZodUnion({ type: 'union', options, inclusive: true }) as unknown as z.$ZodUnion<Arms>

const above = (value: number, inclusive = true) =>
  new z.$ZodCheckGreaterThan({ check: 'greater_than', value, inclusive })
const upTo = (value: number) => new z.$ZodCheckLessThan({ check: 'less_than', value, inclusive: true })

// JSON numbers. All have a maximum, so that sums, products and loops end.

/** From a minimum, 0 where none is given. */
export const amount = (smallest = 0) =>
  new z.$ZodNumber({ type: 'number', checks: [above(smallest), upTo(LARGEST_NUMBER)] })

/** More than 0. */
export const positive = (largest = LARGEST_NUMBER) =>
  new z.$ZodNumber({ type: 'number', checks: [above(0, false), upTo(largest)] })

export const whole = (checks: Checks<number> = []) =>
  new z.$ZodNumberFormat({
    type: 'number',
    check: 'number_format',
    format: 'safeint',
    abort: false,
    checks: [...checks],
  })

/** Whole things: containers, bolts, wheels. */
export const count = (smallest: 0 | 1 = 0, largest = LARGEST_COUNT) => whole([above(smallest), upTo(largest)])
