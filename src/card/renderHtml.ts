import type { Root } from 'hast'
import { toHtml } from 'hast-util-to-html'
import type { CardModel, CardSection } from './cardParts.js'
import { element } from './html/element.js'
import { lineHtml, linesHtml } from './html/lineHtml.js'
import { partHtml } from './html/partHtml.js'
import { cautionSign } from './html/pictures.js'
import { CARD_STYLE } from './html/style.js'

/** No script, nothing fetched: the card may be opened from any file share. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'"

const plainText = (line: CardModel['machine']) => line.map(({ text }) => text).join('')

function headHtml(card: CardModel) {
  return element(
    'head',
    {},
    element('meta', { charSet: 'utf-8' }),
    element('meta', { httpEquiv: ['Content-Security-Policy'], content: POLICY }),
    element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    element('title', {}, `${card.title}: ${plainText(card.machine)}`),
    element('style', {}, CARD_STYLE),
  )
}

function bannerHtml(card: CardModel) {
  const { variant } = card
  const facts = card.facts.map(({ label, value }) =>
    element('div', {}, element('dt', {}, label), element('dd', {}, lineHtml(value))),
  )
  return element(
    'header',
    {},
    element(
      'div',
      { className: ['name'] },
      element('p', { className: ['title'] }, card.title),
      element('h1', {}, lineHtml(card.machine)),
      element('p', { className: ['about'] }, lineHtml(card.about)),
    ),
    element(
      'div',
      { className: variant.known ? ['variant'] : ['variant', 'unknown'] },
      element('p', { className: ['label'] }, variant.label),
      linesHtml(variant.lines, 'main'),
    ),
    element('dl', { className: ['facts'] }, facts),
    card.header === undefined
      ? undefined
      : element('p', { className: ['header-note'] }, lineHtml(card.header)),
    element(
      'div',
      { className: ['authority'] },
      card.authority.map((sentence) => element('p', {}, sentence)),
    ),
  )
}

function cautionsHtml({ cautions }: CardModel) {
  if (cautions.cautions.length === 0) return undefined
  return element(
    'aside',
    { className: ['cautions'], ariaLabel: cautions.label },
    cautionSign(),
    element(
      'ul',
      { role: 'list' },
      cautions.cautions.map(({ word, line }) =>
        element(
          'li',
          {},
          word === undefined ? undefined : element('strong', {}, `${word}: `),
          lineHtml(line),
        ),
      ),
    ),
  )
}

function sectionHtml(section: CardSection, card: CardModel) {
  const id = `s-${section.id}`
  return element(
    'section',
    { id: section.id, ariaLabelledBy: [id] },
    element('h2', { id }, section.heading),
    element(
      'div',
      { className: ['parts'] },
      section.parts.flatMap((part) => partHtml(part, card)),
    ),
  )
}

/**
 * The card as one HTML file to print or to read on a small screen: styles and drawings inside it, no script, nothing
 * fetched. It prints on A4 and on Letter, is legible in black and white, and every figure carries in `data-from` its
 * pointer into the plan.
 *
 * @param card - from {@link cardModel}
 * @returns a whole HTML document; whatever the sheet's names held is escaped
 * @throws TypeError when `card` is no card
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
 * // What language does the document say it is in?
 * renderHtml(cardModel(planned, en)).slice(0, 41) // => '<!doctype html><html lang="en" dir="ltr">'
 * ```
 */
export function renderHtml(card: CardModel): string {
  if (card?.kind !== 'service-card') throw new TypeError("card must be a card, with kind 'service-card'")
  const sections = card.sections.filter(({ id }) => id !== 'sources')
  const sources = card.sections.filter(({ id }) => id === 'sources')
  const body = element(
    'body',
    { className: [card.extent] },
    element(
      'div',
      { className: ['sheet'] },
      bannerHtml(card),
      element(
        'main',
        {},
        cautionsHtml(card),
        sections.map((section) => sectionHtml(section, card)),
      ),
      element(
        'footer',
        {},
        sources.map((section) => sectionHtml(section, card)),
      ),
    ),
  )
  const root: Root = {
    type: 'root',
    children: [
      { type: 'doctype' },
      element('html', { lang: card.language, dir: card.direction }, headHtml(card), body),
    ],
  }
  return `${toHtml(root)}\n`
}
