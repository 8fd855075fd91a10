import type { Element, ElementContent, Properties } from 'hast'

type Child = ElementContent | string | undefined | readonly (ElementContent | string | undefined)[]

/** An HTML element. Strings become text and are escaped later. `p.note` has the class `note`. */
export function createElement(name: string, properties: Properties, ...children: readonly Child[]): Element {
  const [tagName = '', ...className] = name.split('.')
  const content = children
    .flat()
    .filter((child) => child !== undefined)
    .map((child): ElementContent => (typeof child === 'string' ? { type: 'text', value: child } : child))
  const allProperties = className.length === 0 ? properties : { className, ...properties }
  return { type: 'element', tagName, properties: allProperties, children: content }
}

/** An element without properties other than a class. */
export function createTag(name: string, ...children: readonly Child[]): Element {
  return createElement(name, {}, ...children)
}
