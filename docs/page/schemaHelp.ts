/** What an editor needs to know about one place of a document: a JSON Schema with short notation, without its patterns. */
export interface HelpNode {
  readonly about?: string
  /** Texts in short notation. */
  readonly examples?: readonly string[]
  /** The texts of a closed list. */
  readonly values?: readonly string[]
  /** Keys, each with the number of its node. */
  readonly keys?: { readonly [key: string]: number }
  /** The node of each entry of a map whose keys are ids. */
  readonly entry?: number
  /** The node of each item of a list. */
  readonly item?: number
}

/** The nodes of a document; the first is its root. */
export type SchemaHelp = readonly HelpNode[]

export interface Suggestion {
  readonly label: string
  readonly about: string
  readonly examples: readonly string[]
  /** The text to write for a key: what follows on the same line or, for a map, on the next. */
  readonly opens?: 'text' | 'map' | 'list'
}

/** The node at a path of keys and list positions; undefined if the schema has none. */
export function findNode(help: SchemaHelp, path: readonly string[]): HelpNode | undefined {
  let node = help[0]
  for (const token of path) {
    const next =
      node?.keys && Object.hasOwn(node.keys, token) ? node.keys[token] : (node?.entry ?? node?.item)
    if (next === undefined) return undefined
    node = help[next]
  }
  return node
}

/** The keys that a map at a path may still have. */
export function suggestKeys(
  help: SchemaHelp,
  path: readonly string[],
  written: ReadonlySet<string>,
): readonly Suggestion[] {
  const keys = findNode(help, path)?.keys ?? {}
  return Object.entries(keys).flatMap(([label, place]) => {
    const node = help[place]
    if (node === undefined || written.has(label) || label.startsWith('$')) return []
    const { about = '', examples = [] } = node
    const hasText = examples.length > 0 || node.values !== undefined
    const isMap = node.keys !== undefined || node.entry !== undefined
    const opens = hasText ? 'text' : isMap ? 'map' : node.item === undefined ? 'text' : 'list'
    return [{ label, about, examples, opens } as const]
  })
}

/** The texts that a value at a path may be: those of a closed list, or examples of its notation. */
export function suggestValues(help: SchemaHelp, path: readonly string[]): readonly Suggestion[] {
  const node = findNode(help, path)
  const { about = '', values } = node ?? {}
  return (values ?? listExamples(node)).map((label) => ({ label, about, examples: [] }))
}

/** The examples of a node, or those in its description. */
export function listExamples(node: HelpNode | undefined): readonly string[] {
  const { about = '', examples = [] } = node ?? {}
  return examples.length > 0 ? examples : [...about.matchAll(/`([^`]+)`/g)].map(([, example = '']) => example)
}
