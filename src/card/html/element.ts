import type { Element, ElementContent, Properties } from 'hast'

type Child = ElementContent | string | undefined | readonly (ElementContent | string | undefined)[]

/** An element of the tree that the serialiser writes out and escapes; strings become text. */
export function element(tagName: string, properties: Properties, ...children: readonly Child[]): Element {
  const content: ElementContent[] = []
  for (const child of children.flat()) {
    if (child === undefined) continue
    content.push(typeof child === 'string' ? { type: 'text', value: child } : child)
  }
  return { type: 'element', tagName, properties, children: content }
}
