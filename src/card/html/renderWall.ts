import type { CardModel, CardSection } from '../cardParts.js'
import { joinSpans } from '../spans.js'
import { createElement, createTag, type Html } from './createElement.js'
import { drawCautionSign } from './pictures.js'
import { renderCaution, renderLine } from './renderLine.js'

/** A wall card. Content that does not fit on the first page moves to the next, section by section. */
export function renderWall(
  card: CardModel,
  renderSection: (section: CardSection, card: CardModel) => Html,
): Html {
  const { title, machine, about, variant, facts, authority, cautions, sections } = card
  const renderFacts = (list: CardModel['facts'], className: string) =>
    list.length === 0
      ? undefined
      : createTag(
          `dl.${className}`,
          list.map(({ label, value }) =>
            createTag('div', createTag('dt', label), ' ', createTag('dd', renderLine(value))),
          ),
        )
  const name = createTag(
    'div.name',
    createTag('p', title, ' · ', renderLine(about)),
    createTag('h1', renderLine(machine)),
    createTag(
      variant.known ? 'div.variant' : 'div.variant.unknown',
      // A machine with one variant often has its name.
      variant.lines
        .filter((line) => joinSpans(line) !== joinSpans(machine))
        .map((line) => createTag('p', renderLine(line))),
    ),
  )
  const header = createTag(
    'header',
    name,
    renderFacts(
      facts.filter(({ large }) => large),
      'large',
    ),
    renderFacts(
      facts.filter(({ large }) => !large),
      'other',
    ),
  )
  const warning = createElement(
    'aside.cautions',
    { 'aria-label': cautions.label },
    drawCautionSign(),
    createTag(
      'div',
      cautions.cautions.map((caution) => createTag('p', renderCaution(caution, card.marks))),
    ),
  )
  const render = (list: readonly CardSection[]) => list.map((section) => renderSection(section, card))
  const isSourcesSection = ({ id }: CardSection) => id === 'wallSources'
  const isSizesSection = ({ id }: CardSection) => id === 'sizes'
  const isMissingSection = ({ id }: CardSection) => id === 'wallMissing'
  return createTag(
    'div.page',
    header,
    createTag(
      'main',
      createTag(
        'p.authority',
        authority.map((sentence, place) => [place === 0 ? '' : ' ', createTag('strong', sentence)]),
      ),
      render(sections.filter(isMissingSection)),
      warning,
      render(
        sections.filter(
          (section) => !isMissingSection(section) && !isSourcesSection(section) && !isSizesSection(section),
        ),
      ),
    ),
    createTag(
      'footer',
      render(sections.filter(isSourcesSection)),
      card.header === undefined ? undefined : createTag('p', renderLine(card.header)),
      render(sections.filter(isSizesSection)),
    ),
  )
}
