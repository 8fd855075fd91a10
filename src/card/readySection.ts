import type { Reason } from '../base/index.js'
import type { PlannedFilter, PlannedOil, PlannedSeal, PlannedTool } from '../service/index.js'
import { type CardContext, entryAt, partLine, quantityLine, reasonLine, reasonLines } from './cardContext.js'
import type { CardList, CardSection, Line } from './cardParts.js'
import { driveLine, figureLines, numberLine, sealLine } from './figureLines.js'
import {
  addLabel,
  capitalise,
  dropEmpty,
  joinLines,
  listPart,
  ownWords,
  quoteOptional,
  quoteText,
} from './spans.js'

/** Reasons that only repeat the lines above them. */
const CODES_SHOWN_ELSEWHERE: ReadonlySet<string> = new Set([
  'service/oil-for-ambient',
  'service/oil-only-choice',
  'fill/opened-first',
  'fill/containers-short',
  'fill/containers-left-over',
])

type Item = CardList['items'][number]

function oilItem(context: CardContext, oil: PlannedOil, index: number): Item {
  const { labels, notStated } = context.words
  const from = `/oil/${index}`
  const { additive, buy } = oil
  const refill = entryAt(context, 'figures', oil.refill)
  const gap =
    refill === undefined ? ownWords(notStated) : figureLines(context, refill.entry, refill.index).main
  const needed = oil.needed === undefined ? gap : quantityLine(context, oil.needed, `${from}/needed`)
  const take = oil.take.map((container, place) => {
    const at = `${from}/take/${place}`
    const state = container.opened ? ownWords(` (${labels.opened})`) : []
    return joinLines(
      [
        [...quoteText(container.name, `${at}/name`), ...state],
        quantityLine(context, container.volume, `${at}/volume`),
      ],
      ', ',
    )
  })
  const containers = (buy?.containers ?? []).map(({ size, count }, place) => {
    const at = `${from}/buy/containers/${place}`
    return joinLines(
      [quoteText(String(count), `${at}/count`), quantityLine(context, size, `${at}/size`)],
      ' × ',
    )
  })
  const toBuy = [quantityLine(context, buy?.volume, `${from}/buy/volume`), joinLines(containers, ', ')]
  const additiveParts = [
    quoteOptional(additive?.name, `${from}/additive/name`),
    quantityLine(context, additive?.needed, `${from}/additive/needed`),
  ]
  const isCovered = oil.needed !== undefined && buy === undefined && oil.take.length > 0
  const part = capitalise(partLine(oil.part, `${from}/part`))
  const amount = joinLines([needed, quoteOptional(oil.choice, `${from}/choice`)], ' ')
  const notes = [
    addLabel(labels.additive, joinLines(additiveParts, ', ')),
    addLabel(labels.take, joinLines(take, '; ')),
    addLabel(labels.buy, joinLines(toBuy, ': ')),
    ...(isCovered ? [] : reasonLines(context, oil.reasons, `${from}/reasons`, CODES_SHOWN_ELSEWHERE)),
  ]
  return { line: [...part, ...ownWords(': '), ...amount], notes: dropEmpty(notes) }
}

function sealItem(context: CardContext, seal: PlannedSeal, index: number): Item {
  const { labels, replace } = context.words
  const from = `/seals/${index}`
  const count = quoteText(String(seal.count), `${from}/count`)
  const partName = partLine(seal.part, `${from}/part`)
  const rule = quoteText(replace[seal.replace], `${from}/replace`)
  const buy = seal.buy === 0 ? [] : addLabel(labels.buy, quoteText(String(seal.buy), `${from}/buy`))
  const shelf = addLabel(labels.take, quoteOptional(seal.stock?.name, `${from}/stock/name`))
  return {
    line: [...count, ...ownWords(' × '), ...sealLine(context, seal.seal, `${from}/seal`)],
    notes: dropEmpty([joinLines([joinLines([partName, rule], ': '), shelf, buy], ' · ')]),
  }
}

function filterItem(context: CardContext, filter: PlannedFilter, index: number): Item {
  const from = `/filters/${index}`
  const kindAndNumber = [
    quoteText(context.words.filters[filter.kind], `${from}/kind`),
    numberLine(filter, from, context.words.labels.supersedes),
  ]
  const count = quoteText(String(filter.count), `${from}/count`)
  const line = [...count, ...ownWords(' × '), ...joinLines(kindAndNumber, ', ')]
  return { line, notes: [partLine(filter.part, `${from}/part`)] }
}

/** The verdict on a tool or the pan with its reasons; no verdict if it fits. */
function findToolProblem(
  context: CardContext,
  { verdict, reasons }: Pick<PlannedTool, 'verdict' | 'reasons'>,
  from: string,
): { readonly problem: Line; readonly details: readonly Line[] } {
  // A refill in several pours is shown even if the vessel fits.
  const pours = reasons.flatMap((reason, place) =>
    reason.code === 'fill/vessel-in-several-pours'
      ? [reasonLine(context, reason, `${from}/reasons/${place}`)]
      : [],
  )
  if (verdict === 'fits') return { problem: [], details: pours }
  return {
    problem: quoteText(context.words.toolVerdicts[verdict], `${from}/verdict`, 'gap'),
    details: reasonLines(context, reasons, `${from}/reasons`),
  }
}

function toolItem(context: CardContext, tool: PlannedTool, index: number): Item {
  const from = `/tools/${index}`
  const have = quoteOptional(tool.have?.name, `${from}/have/name`)
  const kind = quoteText(context.words.tools[tool.kind], `${from}/kind`)
  const drive = driveLine(context, tool.drive, `${from}/drive`)
  const name = drive.length === 0 ? kind : have.length > 0 ? [] : drive
  const isAnyRefill = tool.reasons.some(({ code }) => code === 'fill/tolerance-not-stated')
  const { problem, details } = findToolProblem(context, tool, from)
  const parts = tool.for.map((part, place) => partLine(part, `${from}/for/${place}`))
  const use = tool.kind === 'socket' ? joinLines(parts, '; ') : []
  return {
    line: joinLines([capitalise(joinLines([name, have, isAnyRefill ? [] : problem], ': ')), use], ' · '),
    notes: dropEmpty(details),
  }
}

function wrenchLines({ plan }: CardContext): Line[] {
  return plan.wrenches.use.flatMap((id) => {
    const place = plan.tightenings.findIndex(({ wrench }) => wrench?.id === id)
    const name = plan.tightenings[place]?.wrench?.name
    return dropEmpty([capitalise(quoteOptional(name, `/tightenings/${place}/wrench/name`))])
  })
}

/** The pan, with the total volume that it must hold. */
function panItems(context: CardContext): readonly Item[] {
  const { labels } = context.words
  const { pan } = context.plan
  if (pan === undefined) return []
  const have = [
    quoteOptional(pan.have?.name, '/pan/have/name'),
    quantityLine(context, pan.have?.size, '/pan/have/size'),
  ]
  const volume = addLabel(labels.mustHold, quantityLine(context, pan.volume, '/pan/volume', 'computed'))
  const { problem, details } = findToolProblem(context, pan, '/pan')
  const line = joinLines([ownWords(labels.pan), joinLines(have, ', '), problem], ': ')
  return [{ line, notes: dropEmpty([volume, ...details]) }]
}

/** Whether a supply has a list of its own: the oil with its additive, or the seals with their sealants. */
function isListedAbove({ oil, seals }: CardContext['plan'], { params }: Reason): boolean {
  const { supply } = params
  if (supply === 'oil' || supply === 'additive') return oil.length > 0
  return (supply === 'seal' || supply === 'sealant') && seals.length > 0
}

/** Oil, seals, tools and consumables to prepare before work starts. */
export function readySection(context: CardContext): CardSection {
  const { plan, words } = context
  const { labels } = words
  const oil = plan.oil.map((one, index) => oilItem(context, one, index))
  const seals = plan.seals.map((seal, index) => sealItem(context, seal, index))
  const filters = (plan.filters ?? []).map((filter, index) => filterItem(context, filter, index))
  const tools = plan.tools.flatMap((tool, index) => {
    const first = plan.tools.findIndex(({ kind, have }) => kind === tool.kind && have?.id === tool.have?.id)
    const isRepeated = tool.have !== undefined && first < index
    return tool.kind === 'pan' || tool.drive?.kind === 'hand' || isRepeated
      ? []
      : [toolItem(context, tool, index)]
  })
  const handTools = plan.handTools === undefined ? [] : [reasonLine(context, plan.handTools, '/handTools')]
  const supplies = plan.consumables.flatMap((reason, index) =>
    isListedAbove(plan, reason) ? [] : [reasonLine(context, reason, `/consumables/${index}`)],
  )
  const box = true
  return {
    id: 'ready',
    heading: words.sections.ready,
    parts: [
      ...listPart(oil, { heading: labels.oil, box }),
      ...listPart(seals, { heading: labels.seals, box, picture: 'washer' }),
      ...listPart(filters, { heading: labels.filters, box }),
      ...listPart([...wrenchLines(context), ...tools, ...panItems(context), ...handTools], {
        heading: labels.tools,
        box,
      }),
      ...listPart(supplies, { heading: labels.consumables, box }),
    ],
  }
}
