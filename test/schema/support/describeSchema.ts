import ts from 'typescript'
import { notationExamples, notationText } from './notationTexts.js'

/** A JSON Schema that may be changed. */
export interface SchemaNode {
  [keyword: string]: unknown
  $ref?: string
  title?: string
  description?: string
  examples?: readonly unknown[]
  properties?: Record<string, SchemaNode>
  patternProperties?: Record<string, SchemaNode>
  additionalProperties?: SchemaNode | boolean
  items?: SchemaNode
  oneOf?: SchemaNode[]
  anyOf?: SchemaNode[]
  allOf?: SchemaNode[]
  then?: SchemaNode
  else?: SchemaNode
  $defs?: Record<string, SchemaNode>
}

export interface DescribedSchema {
  readonly schema: SchemaNode
  /** The interface or type whose comments describe each object and union of the schema. */
  readonly names: ReadonlyMap<SchemaNode, string>
  /** Places without a comment. */
  readonly missing: readonly string[]
}

/** The texts of a section's `source`, which the full form does not have. */
const SECTION_SOURCE = 'The page of the manual that the short texts in here come from: `p. 60`.'

/** The interfaces of the documents, read by the compiler. */
const readInterfaces = (() => {
  let known: { readonly checker: ts.TypeChecker; readonly documents: ts.Type } | undefined
  return () => {
    known ??= load()
    return known
  }
  function load() {
    const file = `${process.cwd()}/src/spec/documents.ts`
    const program = ts.createProgram([file], {
      strict: true,
      exactOptionalPropertyTypes: true,
      target: ts.ScriptTarget.ES2023,
      module: ts.ModuleKind.NodeNext,
      types: [],
    })
    const checker = program.getTypeChecker()
    const source = program.getSourceFile(file)
    const module = source && checker.getSymbolAtLocation(source)
    const documents = module?.exports?.get(ts.escapeLeadingUnderscores('Documents'))
    if (documents === undefined) throw new Error(`${file} exports no Documents`)
    return { checker, documents: checker.getDeclaredTypeOfSymbol(documents) }
  }
})()

/**
 * Adds the comments of the interfaces, and examples, to the schema of one kind of document. This happens when the files
 * are written, so that no bundle has the texts.
 *
 * At each place an editor shows the innermost description and the outermost title. A description behind a `$ref` replaces
 * the one next to the `$ref`. So if the type of a property has a description, the property also gets its own text as
 * `title`, and an `allOf` around its `$ref`.
 */
export function describeSchema(kind: string, plain: object): DescribedSchema {
  const schema = structuredClone(plain) as SchemaNode
  const defs = schema.$defs ?? {}
  const { checker, documents } = readInterfaces()
  const names = new Map<SchemaNode, string>()
  const missing: string[] = []
  const seen = new Set<SchemaNode>()

  for (const [name, def] of Object.entries(defs)) {
    const text = notationText(name)
    if (text !== undefined)
      Object.assign(def, { description: text, examples: notationExamples(name)?.slice(0, 1) })
  }
  const root = documents.getProperty(kind)
  if (root === undefined) throw new Error(`no document ${kind}`)
  const type = checker.getTypeOfSymbol(root)
  Object.assign(schema, { description: findDescription(type) })
  visit(schema, [type], kind)
  return { schema, names, missing }

  /** `all`: the types of the whole union, if the node is one alternative of it. */
  function visit(node: SchemaNode, types: readonly ts.Type[], place: string, all = types): void {
    if (seen.has(node)) return
    seen.add(node)
    const { $ref, oneOf, anyOf, properties, additionalProperties, items } = node
    if ($ref !== undefined) {
      visit(defOf($ref), types, $ref.replace('#/$defs/', ''), all)
      return
    }
    for (const form of [node.then, node.else, ...(node.allOf ?? [])])
      if (form !== undefined) visit(form, types, place)
    const [first] = types
    if (first === undefined) return
    const isUnion = oneOf !== undefined || (anyOf !== undefined && properties === undefined)
    if (isUnion || properties !== undefined) {
      const name = nameOf(first)
      if (name !== undefined) names.set(node, name)
    }
    if ((isUnion || anyOf !== undefined) && node.description === undefined) {
      const text = [...types, ...all].map(findDescription).find((candidate) => candidate !== undefined)
      if (text === undefined) missing.push(`${place} (union ${nameOf(first)})`)
      else node.description = text
    }
    for (const arm of oneOf ?? anyOf ?? []) if (isUnion) visit(arm, armTypes(arm, types), place, types)
    if (properties !== undefined && node.description === undefined && !isArm(types, node)) {
      const text = findDescription(first)
      if (text !== undefined) node.description = text
    }
    for (const [key, child] of Object.entries(properties ?? {}))
      describeProperty(key, child, types, all, place)
    // Besides properties it states which of them are required.
    if (!isUnion)
      for (const arm of anyOf ?? [])
        for (const [key, child] of Object.entries(arm.properties ?? {}))
          Object.assign(child, { description: node.properties?.[key]?.description })
    if (typeof additionalProperties === 'object')
      visit(additionalProperties, below(types, ts.IndexKind.String), `${place}/*`)
    if (items !== undefined) visit(items, below(types, ts.IndexKind.Number), `${place}/*`)
  }

  function describeProperty(
    key: string,
    child: SchemaNode,
    types: readonly ts.Type[],
    all: readonly ts.Type[],
    place: string,
  ): void {
    const symbols = propertiesOf(types, key)
    const [symbol] = symbols
    const [ownComment] = symbols.map(commentOf).filter((text) => text !== '')
    const [ofAny] = propertiesOf(all, key)
      .map(commentOf)
      .filter((text) => text !== '')
    const ofTypes = (ofKind: readonly ts.Type[]) =>
      key === 'kind' ? ofKind.map(findDescription).find((text) => text !== undefined) : undefined
    // The comment of its interface describes an alternative.
    const text =
      symbol === undefined && key === 'source'
        ? SECTION_SOURCE
        : (ownComment ?? ofTypes(types) ?? ofAny ?? ofTypes(all))
    if (text !== undefined && isInline(child)) child.description = text
    for (const form of [child.then, child.else])
      if (text !== undefined && form?.anyOf !== undefined) form.description = text
    const below = symbol && [
      ...new Set(
        symbols.map((otherSymbol) => checker.getNonNullableType(checker.getTypeOfSymbol(otherSymbol))),
      ),
    ]
    if (below !== undefined) visit(child, below, `${place}/${key}`)
    if (text === undefined) {
      missing.push(`${place}/${key}`)
      return
    }
    const described = hasOwnText(child) ? { title: text, description: text } : { description: text }
    const { $ref } = child
    const wrapped = $ref !== undefined && defOf($ref).description !== undefined
    const examples = examplesOf(child)
    const form = wrapped ? { allOf: [{ ...child }] } : { ...child }
    // Changed in place: the node has a name, and a map of overrides also refers to it.
    for (const keyword of Object.keys(child)) delete child[keyword]
    Object.assign(child, described, form, examples && { examples })
  }

  /** Whether an editor would show the text of the type instead of that of the property. */
  function hasOwnText(node: SchemaNode): boolean {
    const inner = [
      node.then,
      node.else,
      ...(node.oneOf ?? []),
      ...(node.$ref === undefined ? [] : [defOf(node.$ref)]),
    ]
    return inner.some(
      (candidate) =>
        candidate !== undefined && (candidate.description !== undefined || hasOwnText(candidate)),
    )
  }

  /** A short text, and the full form if the text is one leaf. */
  function examplesOf({ then, else: full, $ref }: SchemaNode): readonly unknown[] | undefined {
    const name = then?.$ref?.replace('#/$defs/', '')
    if (name !== undefined) {
      const isLeaf = full?.$ref !== undefined && defOf(full.$ref).oneOf !== undefined
      const examples = notationExamples(name)?.map(putKindFirst)
      return isLeaf ? examples : examples?.slice(0, 1)
    }
    return $ref === '#/$defs/seal' ? notationExamples('text-seal')?.slice(1) : undefined
  }

  /** The kind first, as people read it. */
  function putKindFirst(example: unknown): unknown {
    if (typeof example !== 'object' || example === null || !('kind' in example)) return example
    const { kind, ...others } = example
    return { kind, ...others }
  }

  function propertiesOf(types: readonly ts.Type[], key: string): readonly ts.Symbol[] {
    return types.flatMap((otherType) =>
      membersOf(otherType).flatMap((member) => member.getProperty(key) ?? []),
    )
  }

  function armTypes(arm: SchemaNode, types: readonly ts.Type[]): readonly ts.Type[] {
    const target = arm.$ref === undefined ? arm : defOf(arm.$ref)
    if (target.oneOf !== undefined) return types
    const { kind: tag } = target.properties ?? {}
    const words =
      tag?.['const'] === undefined ? (tag?.['enum'] as readonly string[] | undefined) : [tag['const']]
    if (words === undefined) return types
    return types.flatMap(membersOf).filter((member) => {
      const property = member.getProperty('kind')
      if (property === undefined) return false
      const literals = membersOf(checker.getTypeOfSymbol(property))
      return literals.some((literal) => literal.isStringLiteral() && words.includes(literal.value))
    })
  }

  function below(types: readonly ts.Type[], index: ts.IndexKind): readonly ts.Type[] {
    return types.flatMap(
      (otherType) => checker.getIndexTypeOfType(checker.getNonNullableType(otherType), index) ?? [],
    )
  }

  function commentOf(symbol: ts.Symbol): string {
    return oneLine(ts.displayPartsToString(symbol.getDocumentationComment(checker)))
  }

  function findDescription(of: ts.Type): string | undefined {
    for (const symbol of [of.aliasSymbol, of.getSymbol()]) {
      const text = symbol && commentOf(symbol)
      if (text !== undefined && text !== '') return text
    }
    return undefined
  }

  function defOf(ref: string): SchemaNode {
    const def = defs[ref.replace('#/$defs/', '')]
    if (def === undefined) throw new Error(`${ref} is nowhere`)
    return def
  }
}

/** An alternative of a union, named by its property `kind`. */
function isArm(types: readonly ts.Type[], node: SchemaNode): boolean {
  return (
    types.length > 0 &&
    node.properties?.['kind']?.['const'] !== undefined &&
    node.properties['version'] === undefined
  )
}

/** Whether the schema belongs only to this property. */
const isInline = ({ $ref, then }: SchemaNode): boolean => $ref === undefined && then === undefined

const membersOf = (type: ts.Type): readonly ts.Type[] => (type.isUnion() ? type.types : [type])

const nameOf = (type: ts.Type): string | undefined => {
  const name = type.aliasSymbol?.name ?? type.getSymbol()?.name
  return name?.startsWith('__') ? undefined : name
}

const oneLine = (text: string): string =>
  text
    .replace(/\{@link (\w+) ?\}/g, '`$1`')
    .replace(/\s+/g, ' ')
    .trim()
