import type { Catalogue } from '../../message/index.js'
import type { PlannedMachine } from '../../service/index.js'
import type { CardModel, CardSection, Line, Paper } from '../cardParts.js'
import { finishCard } from '../finishCard.js'
import { joinLines, quoteText } from '../spans.js'
import { writeAuthority } from '../writeAuthority.js'

/** What a paper has besides the words of its language. */
export interface PaperContent extends Pick<CardModel, 'title' | 'machine' | 'about' | 'header'> {
  readonly extent: Paper
  readonly variant?: Line
  readonly authority?: readonly string[]
  readonly sections: readonly CardSection[]
}

/** A paper in the form of a card. Empty sections are omitted. */
export function makePaper(catalogue: Catalogue, content: PaperContent): CardModel {
  const { card: words } = catalogue
  const {
    extent,
    title,
    machine,
    about,
    header,
    variant,
    authority = writeAuthority(words.authority, catalogue),
    sections,
  } = content
  return finishCard(
    {
      kind: 'service-card',
      version: '1.0',
      language: catalogue.language,
      direction: catalogue.direction,
      extent,
      title,
      shortTitle: title,
      machine,
      about,
      ...(header !== undefined && { header }),
      variant: {
        known: variant?.some(({ tone }) => tone === 'gap') === false,
        label: words.labels.variant,
        lines: variant === undefined ? [] : [variant],
      },
      facts: [],
      authority,
      cautions: { label: words.labels.caution, cautions: [] },
      sections: sections.filter(({ parts }) => parts.length > 0),
    },
    words,
  )
}

/** The head of a paper about one machine; without a log the machine has no name of its own. */
export function writeMachine(
  { card: words }: Catalogue,
  machine: Partial<Pick<PlannedMachine, 'name' | 'variant' | 'header'>> &
    Pick<PlannedMachine, 'make' | 'model' | 'type'>,
): Pick<PaperContent, 'machine' | 'about' | 'header' | 'variant'> {
  const { name, variant, header } = machine
  const [make, model, type] = (['make', 'model', 'type'] as const).map((key) =>
    quoteText(machine[key], `/machine/${key}`),
  )
  const makeAndModel = joinLines([make ?? [], model ?? []], ' ')
  const missing = variant?.verdict === 'cannot tell' ? variant.missing : []
  return {
    machine: name === undefined ? makeAndModel : quoteText(name, '/machine/name'),
    about: joinLines(name === undefined ? [type ?? []] : [make ?? [], model ?? [], type ?? []], ' · '),
    ...(header !== undefined && { header: quoteText(header, '/machine/header') }),
    ...(variant !== undefined && {
      variant:
        variant.verdict === 'one'
          ? quoteText(variant.name, '/machine/variant/name')
          : quoteText(
              words.cannotTell(missing.map((fact) => words.identityFacts[fact])),
              '/machine/variant/missing',
              'gap',
            ),
    }),
  }
}
