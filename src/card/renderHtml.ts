import { requireKnownKeys, requireOneOf, requireShape } from '../base/index.js'
import type { CardModel, CardSection } from './cardParts.js'
import { cardStyle } from './cardStyle.js'
import { createElement, createTag } from './html/createElement.js'
import { drawCautionSign } from './html/pictures.js'
import { renderCaution, renderLine, renderLines } from './html/renderLine.js'
import { renderPart } from './html/renderPart.js'
import { renderWall } from './html/renderWall.js'
import { PAPER_CLASS } from './html/scopeStyle.js'
import { requireCard } from './requireCard.js'
import { joinSpans } from './spans.js'

/** How {@link renderHtml} writes a card. */
export interface HtmlOptions {
  /** `page`: a whole document. `fragment`: one element for an app's own page, without a style. Absent: `page`. */
  readonly form?: 'page' | 'fragment'
  /** The address of the file with the text of {@link cardStyle}, for a page. Absent: the style is in the page. */
  readonly stylesheet?: string
}

/** The page around the paper. */
const PAGE_STYLE = `html{-webkit-text-size-adjust:100%}
body{margin:0;background:#d9e0e1}
@media print{body{background:#fff}}
@media screen and (prefers-color-scheme:dark){body{background:#000}}
`

function renderHead(card: CardModel, { stylesheet }: HtmlOptions) {
  // Forbids scripts and other requests: the card opens safely from any file share.
  const policy = `default-src 'none'; style-src ${stylesheet === undefined ? "'unsafe-inline'" : "'self'"}`
  return createTag(
    'head',
    createElement('meta', { charset: 'utf-8' }),
    createElement('meta', { 'http-equiv': 'Content-Security-Policy', content: policy }),
    createElement('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    createTag('title', `${card.title}${card.marks.colon ?? ': '}${joinSpans(card.machine)}`),
    stylesheet === undefined
      ? { html: `<style>${PAGE_STYLE}${cardStyle(card)}</style>` }
      : createElement('link', { rel: 'stylesheet', href: stylesheet }),
  )
}

function renderBanner({ title, machine, about, variant, facts, header, authority }: CardModel) {
  return createTag(
    'header',
    createTag(
      'div.name',
      createTag('p.title', title),
      createTag('h1', renderLine(machine)),
      createTag('p.about', renderLine(about)),
    ),
    variant.lines.length === 0
      ? undefined
      : createTag(
          variant.known ? 'div.variant' : 'div.variant.unknown',
          createTag('p.label', variant.label),
          renderLines(variant.lines, 'div.main'),
        ),
    facts.length === 0
      ? undefined
      : createTag(
          'dl.facts',
          facts.map(({ label, value }) =>
            createTag('div', createTag('dt', label), createTag('dd', renderLine(value))),
          ),
        ),
    header === undefined ? undefined : createTag('p.header-note', renderLine(header)),
    createTag(
      'div.authority',
      authority.map((sentence) => createTag('p', sentence)),
    ),
  )
}

function renderCautions({ cautions: { label, cautions }, marks }: CardModel) {
  if (cautions.length === 0) return undefined
  const items = cautions.map((caution) => createTag('li', renderCaution(caution, marks)))
  return createElement(
    'aside.cautions',
    { 'aria-label': label },
    cautions.every(({ notice }) => notice) ? undefined : drawCautionSign(),
    createElement('ul', { role: 'list' }, items),
  )
}

function renderSection({ id: name, heading, parts }: CardSection, card: CardModel) {
  const id = `s-${name}`
  const blocks = parts.flatMap((part) => renderPart(part, card))
  const title = createElement('h2', { id }, heading)
  return createElement('section', { id: name, 'aria-labelledby': id }, title, createTag('div.parts', blocks))
}

/**
 * Writes the card as one HTML file, for printing on A4 or Letter and for small screens. It includes its styles and
 * drawings, has no script, requests nothing, and is legible in black and white. Boxes and blanks can be filled in on a
 * screen. The attribute `data-from` has the pointer of each figure into the plan.
 *
 * @param card - from {@link cardModel}
 * @param options - for an app with a strict content policy: a fragment, or the address of the stylesheet
 * @returns a complete HTML document or one element; names from the sheet are escaped
 * @throws TypeError if `card` is not a card or `options` has another field or `form`
 *
 * Source: WCAG 2.2, level AA, as far as it applies to a document, from memory.
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
export function renderHtml(card: CardModel, options: HtmlOptions = {}): string {
  requireCard(card)
  requireShape('options', options, { 'form?': 'string', 'stylesheet?': 'string' })
  requireKnownKeys('options', options, ['form', 'stylesheet'])
  const { form = 'page' } = options
  requireOneOf('options.form', form, ['page', 'fragment'])
  const renderSections = (inFooter: boolean) =>
    card.sections
      .filter(({ id }) => (id === 'sources') === inFooter)
      .map((section) => renderSection(section, card))
  const attributes = { lang: card.language, dir: card.direction }
  const content =
    card.extent === 'wall'
      ? [renderWall(card, renderSection)]
      : [
          renderBanner(card),
          createTag('main', renderCautions(card), renderSections(false)),
          createTag('footer', renderSections(true)),
        ]
  const paper = createElement(`div.${PAPER_CLASS}.${card.extent}`, form === 'page' ? {} : attributes, content)
  if (form === 'fragment') return `${paper.html}\n`
  const html = createElement('html', attributes, renderHead(card, options), createTag('body', paper))
  return `<!doctype html>${html.html}\n`
}
