/** A piece of HTML that is already written, so that it is not escaped again. */
export interface Html {
  readonly html: string
}

/** Texts are escaped; undefined values are omitted. */
export type HtmlChild = Html | string | undefined | readonly HtmlChild[]

export type HtmlAttributes = Readonly<Record<string, string | number | undefined>>

/** Elements without content or end tag. */
const VOID = new Set(['meta', 'link', 'input'])

/** Writes an HTML element; texts are escaped. `p.note` has the class `note`. */
export function createElement(
  name: string,
  attributes: HtmlAttributes,
  ...children: readonly HtmlChild[]
): Html {
  const [tag = '', ...classes] = name.split('.')
  let start = classes.length === 0 ? `<${tag}` : `<${tag} class="${classes.join(' ')}"`
  for (const key in attributes) {
    const value = attributes[key]
    if (value !== undefined) start += ` ${key}="${escapeValue(String(value))}"`
  }
  return { html: VOID.has(tag) ? `${start}>` : `${start}>${writeChildren(children)}</${tag}>` }
}

/** An element without attributes except its class. */
export const createTag = (name: string, ...children: readonly HtmlChild[]): Html =>
  createElement(name, {}, children)

function writeChildren(children: readonly HtmlChild[]): string {
  let html = ''
  for (const child of children) {
    if (typeof child === 'string') html += escapeText(child)
    else if (child === undefined) continue
    else html += 'html' in child ? child.html : writeChildren(child)
  }
  return html
}

const escapeText = (text: string): string => text.replaceAll('&', '&#x26;').replaceAll('<', '&#x3C;')

const escapeValue = (text: string): string => text.replaceAll('&', '&#x26;').replaceAll('"', '&#x22;')
