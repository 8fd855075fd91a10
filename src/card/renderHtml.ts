import { toHtml } from 'hast-util-to-html'
import type { CardModel, CardSection } from './cardParts.js'
import { element, tag } from './html/element.js'
import { cautionHtml, lineHtml, linesHtml } from './html/lineHtml.js'
import { partHtml } from './html/partHtml.js'
import { cautionSign } from './html/pictures.js'
import { CARD_STYLE } from './html/style.js'
import { requireCard } from './requireCard.js'
import { plainText } from './spans.js'

/** No script and no requests, so that the card can be opened from any file share. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'"

function headHtml(card: CardModel) {
  return tag(
    'head',
    element('meta', { charSet: 'utf-8' }),
    element('meta', { httpEquiv: ['Content-Security-Policy'], content: POLICY }),
    element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    tag('title', `${card.title}: ${plainText(card.machine)}`),
    tag('style', CARD_STYLE),
  )
}

function bannerHtml({ title, machine, about, variant, facts, header, authority }: CardModel) {
  return tag(
    'header',
    tag('div.name', tag('p.title', title), tag('h1', lineHtml(machine)), tag('p.about', lineHtml(about))),
    tag(
      variant.known ? 'div.variant' : 'div.variant.unknown',
      tag('p.label', variant.label),
      linesHtml(variant.lines, 'main'),
    ),
    tag(
      'dl.facts',
      facts.map(({ label, value }) => tag('div', tag('dt', label), tag('dd', lineHtml(value)))),
    ),
    header === undefined ? undefined : tag('p.header-note', lineHtml(header)),
    tag(
      'div.authority',
      authority.map((sentence) => tag('p', sentence)),
    ),
  )
}

function cautionsHtml({ cautions: { label, cautions } }: CardModel) {
  if (cautions.length === 0) return undefined
  const items = cautions.map((caution) => tag('li', cautionHtml(caution)))
  return element(
    'aside.cautions',
    { ariaLabel: label },
    cautions.every(({ notice }) => notice) ? undefined : cautionSign(),
    element('ul', { role: 'list' }, items),
  )
}

function sectionHtml({ id: name, heading, parts }: CardSection, card: CardModel) {
  const id = `s-${name}`
  const blocks = parts.flatMap((part) => partHtml(part, card))
  const title = element('h2', { id }, heading)
  return element('section', { id: name, ariaLabelledBy: [id] }, title, tag('div.parts', blocks))
}

/**
 * Writes the card as one HTML file, for printing on A4 or Letter and for small screens. It includes its styles and
 * drawings, has no script, requests nothing, and is legible in black and white. Every figure has its pointer into the
 * plan in `data-from`.
 *
 * @param card - from {@link cardModel}
 * @returns a whole HTML document; names from the sheet are escaped
 * @throws TypeError if `card` is not a card
 *
 * Source: layout by WCAG 2.2, level AA, as far as a document can meet it; from memory.
 *
 * @example
 * ```ts
 * import { cardModel, renderHtml } from 'drivetrain-service/v1/card'
 * import { en } from 'drivetrain-service/v1/message/en'
 * import { planVisit } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'Station 1', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [] } as const
 * const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * const planned = planVisit({ sheet, log, today: '2031-10-06' }, { services: 'due', due, iso6789: '2017' })
 * if (!planned.ok) throw new Error('no plan')
 * // What is the language of the document?
 * renderHtml(cardModel(planned, en)).slice(0, 41) // => '<!doctype html><html lang="en" dir="ltr">'
 * ```
 */
export function renderHtml(card: CardModel): string {
  requireCard(card)
  const sectionsOf = (inFooter: boolean) =>
    card.sections.filter(({ id }) => (id === 'sources') === inFooter).map((one) => sectionHtml(one, card))
  const main = tag('main', cautionsHtml(card), sectionsOf(false))
  const sheet = tag('div.sheet', bannerHtml(card), main, tag('footer', sectionsOf(true)))
  const body = tag(`body.${card.extent}`, sheet)
  const html = element('html', { lang: card.language, dir: card.direction }, headHtml(card), body)
  return `${toHtml({ type: 'root', children: [{ type: 'doctype' }, html] })}\n`
}
