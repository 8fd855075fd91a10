import * as z from 'zod/v4/core'
import { MAX_COUNT, MAX_MISTAKES, MAX_NUMBER } from '../../base/index.js'

// The shapes of documents. They use zod's core. Its usual constructors add unneeded methods, and code made
// from text, which strict content policies forbid.

type Shape = z.$ZodType
type Checks<Value = never> = readonly z.$ZodCheck<Value>[]

/** A field of an object or an entry of a list: a shape, the allowed words, or the fields of an object. */
export type Field = Shape | string | readonly string[] | Fields
/** A key that ends in `?` is optional. */
export interface Fields {
  readonly [key: string]: Field
}
export type ShapeOf<Definition> = Definition extends Shape
  ? Definition
  : Definition extends string
    ? z.$ZodLiteral<Definition>
    : Definition extends readonly string[]
      ? z.$ZodEnum<{ [Word in Definition[number]]: Word }>
      : Definition extends object
        ? ObjectShape<Definition>
        : never
type ObjectShape<Definition> = z.$ZodObject<
  {
    -readonly [Key in keyof Definition as Key extends `${infer Name}?` ? Name : Key]: Key extends `${string}?`
      ? z.$ZodExactOptional<ShapeOf<Definition[Key]>>
      : ShapeOf<Definition[Key]>
  },
  z.$strict
>

/**
 * Builds a shape at its first use and keeps it. Zod's objects are slow to build, and nothing may run at
 * import.
 */
export function buildOnce<Built>(build: () => Built): () => Built {
  let built: Built | undefined
  return () => {
    built ??= build()
    return built
  }
}

/** `error` is the code of the finding. */
export const stringShape = (checks: Checks<string>, error?: string) =>
  new z.$ZodString({
    type: 'string',
    checks: [...checks],
    ...(error !== undefined && { error: () => error }),
  })

export const matchesPattern = (pattern: RegExp, error: string, abort = false) =>
  new z.$ZodCheckRegex({ check: 'string_format', format: 'regex', pattern, error: () => error, abort })

export const meetsCheck = <Value>(fn: (value: Value) => boolean, error: string): z.$ZodCheck<Value> =>
  new z.$ZodCustom({
    type: 'custom',
    check: 'custom',
    fn: fn as (value: unknown) => boolean,
    error: () => error,
  })

export const hasMinLength = (minimum: number) => new z.$ZodCheckMinLength({ check: 'min_length', minimum })

export const booleanShape = () => new z.$ZodBoolean({ type: 'boolean' })

export const oneOf = <const Word extends string>(words: readonly Word[]) =>
  new z.$ZodEnum({
    type: 'enum',
    entries: Object.fromEntries(words.map((word) => [word, word])),
  }) as unknown as z.$ZodEnum<{ [Choice in Word]: Choice }>

function toShape(field: Field): Shape {
  if (typeof field === 'string') return new z.$ZodLiteral({ type: 'literal', values: [field] })
  if (Array.isArray(field)) return oneOf(field)
  return '_zod' in field ? (field as Shape) : object(field as Fields)
}

/** A list. It is not read further once it has more mistakes than are reported: a million would fill the memory. */
const $List = /* @__PURE__ */ z.$constructor<z.$ZodArray>('$List', (inst, definition) => {
  const init: (list: z.$ZodArray, definition: z.$ZodArrayDef) => void = z.$ZodType.init
  init(inst, definition)
  inst._zod.parse = (payload, context) => {
    const { value: input, issues } = payload
    if (Array.isArray(input)) {
      const read: unknown[] = []
      payload.value = read
      for (const [place, value] of input.entries()) {
        if (issues.length > MAX_MISTAKES) break
        const item = definition.element._zod.run({ value, issues: [] }, context) as z.ParsePayload
        for (const issue of item.issues) issues.push({ ...issue, path: [place, ...(issue.path ?? [])] })
        read.push(item.value)
      }
    } else issues.push({ expected: 'array', code: 'invalid_type', input, inst })
    return payload
  }
})

export const list = <const Definition extends Field>(entry: Definition, checks: Checks = []) =>
  new $List({ type: 'array', element: toShape(entry), checks: [...checks] }) as unknown as z.$ZodArray<
    ShapeOf<Definition>
  >

/** A list with at least one entry. */
export const nonEmptyList = <const Definition extends Field>(entry: Definition) =>
  list(entry, [hasMinLength(1)])

export const record = <Key extends z.$ZodRecordKey & Shape, const Definition extends Field>(
  key: Key,
  value: Definition,
) =>
  new z.$ZodRecord({ type: 'record', keyType: key, valueType: toShape(value) }) as unknown as z.$ZodRecord<
    Key,
    ShapeOf<Definition>
  >

export function object<const Definition extends Fields>(
  fields: Definition,
  checks: Checks = [],
): ObjectShape<Definition> {
  const shape = Object.entries(fields).map(([key, field]): [string, Shape] => {
    const innerType: Shape = toShape(field)
    return key.endsWith('?')
      ? [key.slice(0, -1), new z.$ZodExactOptional({ type: 'optional', innerType })]
      : [key, innerType]
  })
  return new z.$ZodObject({
    type: 'object',
    shape: Object.fromEntries(shape),
    catchall: new z.$ZodNever({ type: 'never' }),
    checks: [...checks],
  }) as unknown as ObjectShape<Definition>
}

/** One alternative of {@link taggedUnion}, with its `kind`. */
export const kind = <const Kind extends string, const Definition extends Fields>(
  name: Kind,
  fields: Definition,
  checks?: Checks,
) => object({ kind: name, ...fields } as { readonly kind: Kind } & Definition, checks)

export const taggedUnion = <const Alternatives extends readonly Shape[]>(
  alternatives: Alternatives,
  discriminator = 'kind',
) =>
  new z.$ZodDiscriminatedUnion({
    type: 'union',
    options: alternatives,
    discriminator,
    inclusive: false,
  }) as unknown as z.$ZodDiscriminatedUnion<Alternatives>

/** A shape, or one word in its place. */
export const shapeOrWord = <Definition extends Shape, const Word extends string>(
  shape: Definition,
  word: Word,
) =>
  new z.$ZodUnion({
    type: 'union',
    options: [shape, toShape(word)],
    inclusive: true,
  }) as unknown as z.$ZodUnion<readonly [Definition, z.$ZodLiteral<Word>]>

const isAtLeast = (value: number, inclusive = true) =>
  new z.$ZodCheckGreaterThan({ check: 'greater_than', value, inclusive })
const isAtMost = (value: number) => new z.$ZodCheckLessThan({ check: 'less_than', value, inclusive: true })

// JSON numbers. All have a maximum, so sums and products stay finite and loops end.

/** At least `smallest`. */
export const numberFrom = (smallest = 0) =>
  new z.$ZodNumber({ type: 'number', checks: [isAtLeast(smallest), isAtMost(MAX_NUMBER)] })

/** More than 0. */
export const positiveNumber = (largest = MAX_NUMBER) =>
  new z.$ZodNumber({ type: 'number', checks: [isAtLeast(0, false), isAtMost(largest)] })

/** A safe integer. Zod's own number format would add the ranges of all its formats to the bundle. */
export const wholeNumber = (checks: Checks<number> = []) =>
  new z.$ZodNumber({
    type: 'number',
    checks: [isWhole(), isAtLeast(Number.MIN_SAFE_INTEGER), isAtMost(Number.MAX_SAFE_INTEGER), ...checks],
  })

function isWhole(): z.$ZodCheck<number> {
  const check = z._check<number>(({ value, issues }) => {
    if (!Number.isInteger(value))
      issues.push({ code: 'invalid_type', expected: 'int', input: value, inst: check, continue: false })
  })
  // This makes the JSON Schema say `integer`.
  check._zod.onattach.push((shape) => {
    shape._zod.bag['format'] = 'safeint'
  })
  return check
}

/** A number of containers, bolts or wheels. */
export const count = (smallest: 0 | 1 = 0, largest = MAX_COUNT) =>
  wholeNumber([isAtLeast(smallest), isAtMost(largest)])
