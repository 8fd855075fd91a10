import { isMap, isSeq, parseDocument } from 'yaml'

/** Applies the changes between two documents to the YAML text of the first; comments and order are kept. */
export function editYaml(text: string, before: object, after: object): string {
  const document = parseDocument(text)
  const editNode = (path: readonly (string | number)[], from: unknown, to: unknown): void => {
    if (JSON.stringify(from) === JSON.stringify(to)) return
    const node = path.length === 0 ? document.contents : document.getIn(path)
    if (isMap(node) && isObject(from) && isObject(to)) {
      for (const key of Object.keys(from)) if (!Object.hasOwn(to, key)) document.deleteIn([...path, key])
      for (const [key, value] of Object.entries(to)) editNode([...path, key], from[key], value)
    } else if (isSeq(node) && Array.isArray(from) && Array.isArray(to) && isPrefix(from, to)) {
      if (from.length === 0) node.flow = false
      for (const item of to.slice(from.length)) document.addIn(path, document.createNode(item))
    } else document.setIn(path, document.createNode(to))
  }
  editNode([], before, after)
  return document.toString({ lineWidth: 0 })
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function isPrefix(from: readonly unknown[], to: readonly unknown[]): boolean {
  return from.every((item, index) => JSON.stringify(item) === JSON.stringify(to[index]))
}
