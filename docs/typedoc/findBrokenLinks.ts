import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { dirname, join, normalize } from 'node:path'
import type { Element, Nodes } from 'hast'
import { fromHtml } from 'hast-util-from-html'

export interface LinkCheck {
  readonly links: number
  /** `page -> link`, for each link to a file or an anchor of the site that does not exist. */
  readonly broken: readonly string[]
}

/** Checks each `href` and `src` of a static site that points into the site. Addresses of other sites are not asked. */
export function findBrokenLinks(site: string): LinkCheck {
  const pages = readdirSync(site, { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.html'),
  )
  const anchors = new Map<string, ReadonlySet<string>>()
  const links: { readonly page: string; readonly link: string }[] = []
  for (const page of pages) {
    const ids = new Set<string>()
    visitElements(fromHtml(readFileSync(join(site, page), 'utf8')), ({ properties }) => {
      if (typeof properties['id'] === 'string') ids.add(properties['id'])
      for (const name of ['href', 'src']) {
        const link = properties[name]
        if (typeof link === 'string' && !/^[a-z]+:|^\/\//.test(link)) links.push({ page, link })
      }
    })
    anchors.set(normalize(page), ids)
  }
  const resolves = (page: string, link: string): boolean => {
    const [path = '', anchor = ''] = link.split('#')
    const name = decodeURIComponent(path.replace(/\?.*$/, ''))
    const target = normalize(name === '' ? page : join(dirname(page), name))
    if (!existsSync(join(site, target)) || statSync(join(site, target)).isDirectory()) return false
    const ids = anchors.get(target)
    // An empty anchor is the top of the page; in a file that is not HTML there are no anchors to read.
    return anchor === '' || ids === undefined || ids.has(decodeURIComponent(anchor))
  }
  const broken = links.filter(({ page, link }) => !resolves(page, link))
  return { links: links.length, broken: [...new Set(broken.map(({ page, link }) => `${page} -> ${link}`))] }
}

function visitElements(node: Nodes, visit: (element: Element) => void): void {
  if (node.type === 'element') visit(node)
  if ('children' in node) for (const child of node.children) visitElements(child, visit)
}
