import type { Element, ElementContent, Properties } from 'hast'

type Child = ElementContent | string | undefined | readonly (ElementContent | string | undefined)[]

/** An element of the tree that the serialiser writes out and escapes; strings become text. `p.note` is of the class `note`. */
export function element(name: string, properties: Properties, ...children: readonly Child[]): Element {
  const [tagName = '', ...className] = name.split('.')
  const content = children
    .flat()
    .filter((child) => child !== undefined)
    .map((child): ElementContent => (typeof child === 'string' ? { type: 'text', value: child } : child))
  const own = className.length === 0 ? properties : { className, ...properties }
  return { type: 'element', tagName, properties: own, children: content }
}

/** An element without properties but its class. */
export function plain(name: string, ...children: readonly Child[]): Element {
  return element(name, {}, ...children)
}
