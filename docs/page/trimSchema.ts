import type { HelpNode, SchemaHelp } from './schemaHelp.js'

/** A JSON Schema of `schemas/v1`, as far as an editor reads it. */
export interface JsonSchema {
  readonly $ref?: string
  readonly $defs?: { readonly [name: string]: JsonSchema }
  readonly description?: string
  readonly examples?: readonly unknown[]
  readonly const?: unknown
  readonly enum?: readonly unknown[]
  readonly properties?: { readonly [key: string]: JsonSchema }
  readonly additionalProperties?: JsonSchema | boolean
  readonly items?: JsonSchema
  readonly then?: JsonSchema
  readonly else?: JsonSchema
  readonly allOf?: readonly JsonSchema[]
  readonly anyOf?: readonly JsonSchema[]
  readonly oneOf?: readonly JsonSchema[]
}

/** A node whose places hold schemas, before they are numbered. */
interface Draft {
  about?: string
  examples: string[]
  values: string[]
  keys: Map<string, JsonSchema[]>
  entries: JsonSchema[]
  items: JsonSchema[]
}

/**
 * Keeps what an editor shows of a schema: descriptions, examples in short notation, closed lists, keys, maps and lists.
 * The forms of one place become one node. Equal nodes are kept once: a schema of 260 kB becomes about 40 kB.
 */
export function trimSchema(root: JsonSchema): SchemaHelp {
  const nodes: HelpNode[] = []
  const numbers = new Map<string, number>()

  const number = (schemas: readonly JsonSchema[]): number => {
    const key = JSON.stringify(schemas)
    const known = numbers.get(key)
    if (known !== undefined) return known
    // The number is taken first: a schema may contain itself.
    const place = nodes.push({}) - 1
    numbers.set(key, place)
    const draft = readForms(schemas, root)
    nodes[place] = {
      ...(draft.about !== undefined && { about: draft.about }),
      ...(draft.examples.length > 0 && { examples: draft.examples }),
      ...(draft.values.length > 0 && { values: draft.values }),
      ...(draft.keys.size > 0 && {
        keys: Object.fromEntries([...draft.keys].map(([name, forms]) => [name, number(forms)])),
      }),
      ...(draft.entries.length > 0 && { entry: number(draft.entries) }),
      ...(draft.items.length > 0 && { item: number(draft.items) }),
    }
    return place
  }
  number([root])
  return nodes
}

/** All forms of one place together; the first description is that of the place itself. */
function readForms(schemas: readonly JsonSchema[], root: JsonSchema): Draft {
  const draft: Draft = { examples: [], values: [], keys: new Map(), entries: [], items: [] }
  const read = (schema: JsonSchema): void => {
    if (schema.description !== undefined) draft.about ??= schema.description
    const add = (list: string[], texts: readonly unknown[]): void => {
      for (const text of texts) if (typeof text === 'string' && !list.includes(text)) list.push(text)
    }
    add(draft.examples, schema.examples ?? [])
    add(draft.values, [...(schema.enum ?? []), ...('const' in schema ? [schema.const] : [])])
    for (const [name, form] of Object.entries(schema.properties ?? {}))
      draft.keys.set(name, [...(draft.keys.get(name) ?? []), form])
    if (typeof schema.additionalProperties === 'object') draft.entries.push(schema.additionalProperties)
    if (schema.items !== undefined) draft.items.push(schema.items)
    for (const form of [
      schema.then,
      schema.else,
      ...(schema.allOf ?? []),
      ...(schema.anyOf ?? []),
      ...(schema.oneOf ?? []),
    ])
      if (form !== undefined) read(form)
    const name = schema.$ref?.replace('#/$defs/', '')
    const target = name === undefined ? undefined : root.$defs?.[name]
    if (target !== undefined) read(target)
  }
  for (const schema of schemas) read(schema)
  return draft
}
