import ts from 'typescript'
import type { JsonSchema } from './toJsonSchema.js'

type Schema = Record<string, unknown>

/** The compiler's view of one file. */
export function readTypes(file: string): {
  readonly checker: ts.TypeChecker
  readonly source: ts.SourceFile
} {
  const program = ts.createProgram([file], {
    strict: true,
    exactOptionalPropertyTypes: true,
    target: ts.ScriptTarget.ES2023,
    module: ts.ModuleKind.NodeNext,
    types: ['node'],
  })
  const source = program.getSourceFile(file)
  if (source === undefined) throw new Error(`${file} cannot be read`)
  return { checker: program.getTypeChecker(), source }
}

/**
 * The JSON Schema (draft 2020-12) of a type of plain data, with the comments of its keys. A named type is a
 * definition; a generic one is written out.
 */
export function makeTypeSchema(type: ts.Type, checker: ts.TypeChecker): JsonSchema {
  const definitions = new Map<string, string>()
  const numbers = new Map<ts.Type, number>()
  const bodies: Record<string, Schema> = {}
  const root = writeBody(type)
  return shareRepeated(root, bodies)

  function write(part: ts.Type): Schema {
    const key = keyOf(part)
    const known = definitions.get(key)
    if (known !== undefined) return { $ref: `#/$defs/${known}` }
    const name = nameOf(part)
    if (name === undefined) return writeBody(part)
    const usedNames = Object.keys(bodies)
    let freeName = name
    for (let count = 2; usedNames.includes(freeName); count++) freeName = `${name}-${count}`
    definitions.set(key, freeName)
    // The name is taken before the body is written, for types that contain themselves.
    bodies[freeName] = {}
    bodies[freeName] = writeBody(part)
    return { $ref: `#/$defs/${freeName}` }
  }

  /** A union is the same with or without `undefined`, which makes a new type without a name. */
  function keyOf(part: ts.Type): string {
    const members = part.isUnion()
      ? part.types.filter(({ flags }) => !(flags & ts.TypeFlags.Undefined))
      : [part]
    return members.map(numberOf).toSorted().join()
  }

  function numberOf(part: ts.Type): number {
    const number = numbers.get(part) ?? numbers.size
    numbers.set(part, number)
    return number
  }

  function writeBody(part: ts.Type): Schema {
    if (part.isStringLiteral() || part.isNumberLiteral()) return { const: part.value }
    if (part.flags & ts.TypeFlags.BooleanLiteral) return { const: checker.typeToString(part) === 'true' }
    if (part.flags & ts.TypeFlags.Boolean) return { type: 'boolean' }
    if (part.flags & ts.TypeFlags.StringLike) return { type: 'string' }
    if (part.flags & ts.TypeFlags.NumberLike) return { type: 'number' }
    if (part.flags & ts.TypeFlags.Null) return { type: 'null' }
    if (part.flags & ts.TypeFlags.Unknown) return {}
    if (part.isUnion()) return writeUnion(part)
    if (checker.isTupleType(part)) {
      const items = checker.getTypeArguments(part as ts.TypeReference).map(write)
      return { type: 'array', prefixItems: items, items: false, minItems: items.length }
    }
    if (checker.isArrayType(part)) {
      const [item] = checker.getTypeArguments(part as ts.TypeReference)
      return { type: 'array', ...(item && { items: write(item) }) }
    }
    if (part.flags & (ts.TypeFlags.Object | ts.TypeFlags.Intersection)) return writeObject(part)
    throw new Error(`${checker.typeToString(part)} is not plain data`)
  }

  function writeUnion(union: ts.UnionType): Schema {
    const members = union.types.filter(({ flags }) => !(flags & ts.TypeFlags.Undefined))
    const [onlyMember] = members
    if (members.length === 1 && onlyMember !== undefined) return write(onlyMember)
    const codes = findCodes(members)
    if (codes !== undefined) return codes
    const isBoolean = ({ flags }: ts.Type) => (flags & ts.TypeFlags.BooleanLiteral) !== 0
    const texts = members.flatMap((member) => (member.isStringLiteral() ? [member.value] : []))
    const booleans = members.filter(isBoolean)
    const otherTypes = members.filter((member) => !member.isStringLiteral() && !isBoolean(member)).map(write)
    const alternatives = [
      ...(texts.length > 0 ? [{ type: 'string', enum: texts.toSorted() }] : []),
      ...(booleans.length === 2 ? [{ type: 'boolean' }] : booleans.map(write)),
      ...otherTypes,
    ]
    return alternatives.length === 1 ? (alternatives[0] ?? {}) : { anyOf: alternatives }
  }

  /** Findings with their params by code, in hundreds: one object with a list of codes and any params. */
  function findCodes(members: readonly ts.Type[]): Schema | undefined {
    const [first] = members
    const codes = members.map((member) => {
      const code = checker.getPropertyOfType(member, 'code')
      const type = code && checker.getTypeOfSymbol(code)
      return type?.isStringLiteral() ? type.value : undefined
    })
    if (first === undefined || members.length < 20 || codes.includes(undefined)) return undefined
    return writeObject(first, {
      code: { type: 'string', enum: codes.toSorted() },
      params: { type: 'object' },
    })
  }

  function writeObject(object: ts.Type, given: Readonly<Record<string, Schema>> = {}): Schema {
    const properties: Record<string, Schema> = {}
    const required: string[] = []
    for (const symbol of checker.getPropertiesOfType(object)) {
      const type = checker.getTypeOfSymbol(symbol)
      // A key that may only be undefined is never in JSON.
      if (type.flags & (ts.TypeFlags.Undefined | ts.TypeFlags.Never)) continue
      // The fields of documents are described in the schemas of the documents.
      const isOfDocument = symbol.declarations?.some((declaration) =>
        declaration.getSourceFile().fileName.includes('src/spec/'),
      )
      const comment = isOfDocument ? [] : symbol.getDocumentationComment(checker)
      const description = ts.displayPartsToString(comment).replaceAll(/\s+/g, ' ')
      const schema = given[symbol.name] ?? write(type)
      properties[symbol.name] = { ...(description !== '' && { description }), ...schema }
      if (!(symbol.flags & ts.SymbolFlags.Optional)) required.push(symbol.name)
    }
    const values = checker.getIndexTypeOfType(object, ts.IndexKind.String)
    return {
      type: 'object',
      ...(Object.keys(properties).length > 0 && { properties }),
      ...(required.length > 0 && { required }),
      additionalProperties: values === undefined ? false : write(values),
    }
  }

  /** The name of a type in its own words, such as `planned-oil` or `quantity-of-volume-unit`. */
  function nameOf(part: ts.Type): string | undefined {
    const isSimple =
      (part.flags & (ts.TypeFlags.Object | ts.TypeFlags.Union | ts.TypeFlags.Intersection)) === 0
    const isList = checker.isArrayType(part) || checker.isTupleType(part)
    const isFewLiterals =
      part.isUnion() && part.types.length < 4 && part.types.every((member) => member.isLiteral())
    if (isSimple || isList || isFewLiterals) return undefined
    const { name = '__type' } = part.aliasSymbol ?? part.symbol ?? {}
    if (name.startsWith('__')) return undefined
    const given = part.aliasSymbol === undefined ? listArguments(part) : (part.aliasTypeArguments ?? [])
    const names = given.map((argument) =>
      argument.isStringLiteral() ? toWords(argument.value) : nameOf(argument),
    )
    if (names.some((argument) => argument === undefined)) return undefined
    return [toWords(name), ...names].join('-of-')
  }

  function listArguments(part: ts.Type): readonly ts.Type[] {
    const isReference = ((part as ts.ObjectType).objectFlags & ts.ObjectFlags.Reference) !== 0
    const { thisType } = (isReference ? (part as ts.TypeReference).target : part) as ts.InterfaceType
    const given = isReference ? checker.getTypeArguments(part as ts.TypeReference) : []
    return given.filter((argument) => argument !== thisType && argument !== part)
  }
}

const toWords = (name: string): string =>
  name
    .replaceAll(/(?<=[a-z])(?=[A-Z])/g, '-')
    .replaceAll(/[^A-Za-z0-9]+/g, '-')
    .toLowerCase()

/** Subschemas of this length, in characters, are written once if they are the same. */
const MIN_SHARED_LENGTH = 150

/** Moves subschemas that repeat to the definitions, named after the first key with such a value. */
function shareRepeated(root: Schema, bodies: Readonly<Record<string, Schema>>): JsonSchema {
  const counts = new Map<string, number>()
  visit({ root, bodies })
  const names = new Map<string, string>()
  const sharedProperties: Record<string, unknown> = {}
  const definitions: Record<string, unknown> = {}
  for (const [name, body] of Object.entries(bodies)) definitions[name] = replace(body, name, true)
  const schema = replace(root, 'root', true) as Schema
  const all = Object.entries({ ...definitions, ...sharedProperties }).sort(([first], [second]) =>
    first < second ? -1 : 1,
  )
  return all.length === 0 ? schema : { ...schema, $defs: Object.fromEntries(all) }

  function visit(node: unknown): void {
    if (typeof node !== 'object' || node === null) return
    const text = textOf(node)
    if (text !== undefined) counts.set(text, (counts.get(text) ?? 0) + 1)
    // What is inside a repeated subschema is counted once.
    if (text === undefined || counts.get(text) === 1) for (const child of Object.values(node)) visit(child)
  }

  function textOf(node: object): string | undefined {
    if (!('anyOf' in node) && !('properties' in node && 'additionalProperties' in node)) return undefined
    const { description: _description, ...rest } = node as Schema
    const text = JSON.stringify(rest)
    return text.length < MIN_SHARED_LENGTH ? undefined : text
  }

  function replace(node: unknown, key: string, isDefinition = false): unknown {
    if (typeof node !== 'object' || node === null) return node
    if (Array.isArray(node)) return node.map((item) => replace(item, key))
    const text = textOf(node)
    const isShared = !isDefinition && text !== undefined && (counts.get(text) ?? 0) > 1
    if (!isShared) return replaceInside(node, key)
    const { description, ...rest } = node as Schema
    let name = names.get(text)
    if (name === undefined) {
      name = toWords(key)
      for (let count = 2; name in bodies || name in sharedProperties; count++)
        name = `${toWords(key)}-${count}`
      names.set(text, name)
      sharedProperties[name] = {}
      sharedProperties[name] = replaceInside(rest, key)
    }
    return { ...(description !== undefined && { description }), $ref: `#/$defs/${name}` }
  }

  function replaceInside(node: object, key: string): unknown {
    return Object.fromEntries(
      Object.entries(node).map(([keyword, child]) => [
        keyword,
        keyword === 'properties'
          ? Object.fromEntries(
              Object.entries(child as object).map(([name, value]) => [name, replace(value, name)]),
            )
          : replace(child, key),
      ]),
    )
  }
}
