import type { Element, Nodes } from 'hast'
import { fromHtml } from 'hast-util-from-html'
import { toHtml } from 'hast-util-to-html'
import { cardStyle, renderHtml, wallModel } from '../../../src/v1/card.js'
import { en } from '../../../src/v1/message/en.js'
import { wallFacts } from '../../../src/v1/service.js'
import { readExample } from '../../support/readExample.js'

const WIDTH = 860
/** The example's card ends a little above this, in Liberation Sans, which is as wide as Arial. */
const HEIGHT = 1232

/** Draws `docs/wall-card.svg`: the wall card of the first example without its true sizes, as XHTML in an SVG. */
export function drawWallPicture(): string {
  const [sheet, toolbox, stock] = [
    readExample('tind-4', 'sheet'),
    readExample('tind-4', 'toolbox'),
    readExample('tind-4', 'stock'),
  ]
  const facts = wallFacts({ sheet, identity: { variant: 'short' }, toolbox, stock }, { iso6789: '2017' })
  if (!facts.ok) throw new Error('no wall card')
  const whole = wallModel(facts.value, en)
  const card = { ...whole, sections: whole.sections.filter(({ id }) => id !== 'sizes') }
  const tree = fromHtml(renderHtml(card, { form: 'fragment' }), { fragment: true })
  visitElements(tree, ({ tagName, properties }) => {
    // XML has no default namespace for drawings inside XHTML.
    if (tagName === 'svg') properties['xmlns'] = 'http://www.w3.org/2000/svg'
  })
  const body = toHtml(tree, {
    closeSelfClosing: true,
    tightSelfClosing: false,
    allowDangerousCharacters: false,
  })
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}" viewBox="0 0 ${WIDTH} ${HEIGHT}">
<rect width="${WIDTH}" height="${HEIGHT}" fill="#fff"/>
<foreignObject width="${WIDTH}" height="${HEIGHT}"><div xmlns="http://www.w3.org/1999/xhtml" lang="en"><style><![CDATA[${cardStyle(card)}]]></style>${body}</div></foreignObject>
</svg>
`
}

function visitElements(node: Nodes, visit: (element: Element) => void): void {
  if (node.type === 'element') visit(node)
  if ('children' in node) for (const child of node.children) visitElements(child, visit)
}
