import type { Catalogue } from '../message/index.js'
import { buildDueSection } from './buildDueSection.js'
import { buildReadySection } from './buildReadySection.js'
import { buildTighteningSection } from './buildTighteningSection.js'
import { type CardContext, writeQuantity } from './cardContext.js'
import { cardModel, type PlannedVisit } from './cardModel.js'
import type { CardCell, CardPart, CardTable, Line } from './cardParts.js'
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
 * missing. Each line is a text of its own.
 */
export function summariseVisit(planned: PlannedVisit, catalogue: Catalogue): string[] {
  const { value: plan } = planned
  const { card: words } = catalogue
  const { labels } = words
  const context: CardContext = { plan, catalogue, words, form: 'written' }
  const card = cardModel(planned, catalogue)
  const ready = buildReadySection(context).parts.flatMap((part) => (part.kind === 'list' ? [part] : []))
  const oils = ready.find(({ heading }) => heading === labels.oil)?.items ?? []
  const cautions = card.cautions.cautions.flatMap(({ notice, line }) => (notice ? [] : [line]))
  const lines: Line[] = [
    joinLines([card.machine, ...card.variant.lines.slice(0, 1), quoteText(plan.today, '/today')], ', '),
    ...cautions,
    addLabel(labels.ownSteps, quoteOptionalText(plan.procedure?.name, '/procedure/name')),
    ...buildDueSection(context).parts.flatMap(writeDue),
    ...oils.map(({ line }) => addLabel(labels.oil, line)),
    addLabel(
      capitalise(writeWords(labels.buy))
        .map(({ text }) => text)
        .join(''),
      joinLines(listPurchases(context), '; '),
    ),
    ...buildTighteningSection(context).parts.flatMap((part) =>
      part.kind === 'table' ? part.rows.map((cells) => writeSetting(cells, labels.set)) : [],
    ),
    ...listMissing(card.sections.find(({ id }) => id === 'missing')?.parts ?? []),
  ]
  return dropEmptyLines(lines).map(joinSpans)
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

function listMissing(parts: readonly CardPart[]): Line[] {
  const items = parts.flatMap((part) => (part.kind === 'list' ? part.items.map(({ line }) => line) : []))
  const rest = items.length - MISSING_SHOWN
  return rest > 0 ? [...items.slice(0, MISSING_SHOWN), [{ text: `+ ${rest}` }]] : items
}
