import type { Catalogue } from '../message/index.js'
import { type CardContext, writeQuantity } from './cardContext.js'
import { cardModel, type PlannedVisit } from './cardModel.js'
import type { CardCell, CardPart, CardSection, CardTable, Line } from './cardParts.js'
import { setSigns } from './setSigns.js'
import {
  addLabel,
  capitalise,
  dropEmptyLines,
  joinLines,
  joinSpans,
  quoteOptionalText,
  quoteText,
  writeWords,
} from './spans.js'
import { writeSeal } from './writeFigure.js'

/** Missing facts that the summary names; the others are counted. */
const MISSING_SHOWN = 3

/**
 * The answer to a visit in about ten lines: what is due, how much of which oil, what to get, the settings, what is
 * missing. Each line is a separate text.
 */
export function summariseVisit(planned: PlannedVisit, catalogue: Catalogue): string[] {
  const { value: plan } = planned
  const { card: words } = catalogue
  const { labels } = words
  const card = cardModel(planned, catalogue)
  const partsOf = (name: CardSection['id']) => card.sections.find(({ id }) => id === name)?.parts ?? []
  const oils = partsOf('ready').find((part) => part.kind === 'list' && part.heading === labels.oil)
  const lines: Line[] = [
    joinLines([card.machine, ...card.variant.lines.slice(0, 1), quoteText(plan.today, '/today')], ', '),
    ...card.cautions.cautions.flatMap(({ notice, line }) => (notice ? [] : [line])),
    addLabel(labels.ownSteps, quoteOptionalText(plan.procedure?.name, '/procedure/name')),
    ...partsOf('due').flatMap(writeDue),
    ...listItems(oils).map((line) => addLabel(labels.oil, line)),
    addLabel(
      joinSpans(capitalise(writeWords(labels.buy))),
      joinLines(listPurchases({ plan, catalogue, words, form: 'written' }), '; '),
    ),
    ...partsOf('tightening').flatMap((part) =>
      part.kind === 'table' ? part.rows.map((cells) => writeSetting(cells, labels.set)) : [],
    ),
    ...listMissing(partsOf('missing').flatMap(listItems), words.moreMissing),
  ]
  return setSigns(dropEmptyLines(lines), words).map(joinSpans)
}

/** The services of a table of limits, with the limit that decides. */
function writeDue(part: CardPart): Line[] {
  if (part.kind !== 'table') return []
  const deciding = part.rows.find((cells) => (cells.at(-1)?.lines.length ?? 0) > 1)
  return [joinLines([part.caption, deciding?.[4]?.lines[0] ?? []], ': ')]
}

/** `Rear gearcase, drain plug: 28–34 N·m, set 31 N·m, half-inch click wrench` */
function writeSetting([part, manual, , wrench, setting]: CardTable['rows'][number], set: string): Line {
  const first = (cell: CardCell | undefined): Line => cell?.lines[0] ?? []
  const settingLine = first(setting).length === 0 ? [] : [...writeWords(`${set} `), ...first(setting)]
  return joinLines([first(part), joinLines([first(manual), settingLine, first(wrench)], ', ')], ': ')
}

/** Oil and seals to buy, and tools that the toolbox lacks. */
function listPurchases(context: CardContext): Line[] {
  const { plan, words } = context
  const oils = plan.oil.map(({ buy, choice }, index) =>
    buy === undefined
      ? []
      : joinLines(
          [
            writeQuantity(context, buy.volume, `/oil/${index}/buy/volume`),
            choice === undefined ? [] : quoteText(choice, `/oil/${index}/choice`),
          ],
          ' ',
        ),
  )
  const seals = plan.seals.map(({ buy, seal }, index) =>
    buy === 0
      ? []
      : joinLines(
          [quoteText(String(buy), `/seals/${index}/buy`), writeSeal(context, seal, `/seals/${index}/seal`)],
          ' × ',
        ),
  )
  const tools = plan.tools.map(({ kind, verdict }, index) =>
    verdict === 'missing' ? quoteText(words.tools[kind], `/tools/${index}/kind`) : [],
  )
  return dropEmptyLines([...oils, ...seals, ...tools])
}

/** The items of a list, without their notes. */
const listItems = (part: CardPart | undefined): readonly Line[] =>
  part?.kind === 'list' ? part.items.map(({ line }) => line) : []

function listMissing(items: readonly Line[], writeMore: (count: number) => string): readonly Line[] {
  const rest = items.length - MISSING_SHOWN
  return rest > 0 ? [...items.slice(0, MISSING_SHOWN), writeWords(writeMore(rest))] : items
}
