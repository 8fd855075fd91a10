import type { Reason } from '../base/index.js'
import type { PlannedFilter, PlannedOil, PlannedSeal, PlannedTool } from '../service/index.js'
import {
  type CardContext,
  findEntry,
  writePart,
  writeQuantity,
  writeReason,
  writeReasons,
} from './cardContext.js'
import type { CardList, CardSection, Line } from './cardParts.js'
import {
  addLabel,
  capitalise,
  dropEmptyLines,
  joinLines,
  makeListPart,
  quoteOptionalText,
  quoteText,
  writeWords,
} from './spans.js'
import { writeDrive, writeFigure, writePartNumber, writeSeal } from './writeFigure.js'

/** Reasons that only repeat the lines above them. */
const CODES_SHOWN_ELSEWHERE: ReadonlySet<string> = new Set([
  'service/oil-for-ambient',
  'service/oil-only-choice',
  'fill/opened-first',
  'fill/containers-short',
  'fill/containers-left-over',
])

type ListItem = CardList['items'][number]

function buildOilItem(context: CardContext, oil: PlannedOil, index: number): ListItem {
  const { labels, notStated } = context.words
  const pointer = `/oil/${index}`
  const { additive, buy } = oil
  const refill = findEntry(context, 'figures', oil.refill)
  const gap =
    refill === undefined ? writeWords(notStated) : writeFigure(context, refill.entry, refill.pointer).main
  const needed = oil.needed === undefined ? gap : writeQuantity(context, oil.needed, `${pointer}/needed`)
  const takeLines = oil.take.map((container, itemIndex) => {
    const itemPointer = `${pointer}/take/${itemIndex}`
    const openedMark = container.opened ? writeWords(` (${labels.opened})`) : []
    return joinLines(
      [
        [...quoteText(container.name, `${itemPointer}/name`), ...openedMark],
        writeQuantity(context, container.volume, `${itemPointer}/volume`),
      ],
      ', ',
    )
  })
  const containerLines = (buy?.containers ?? []).map(({ size, count }, itemIndex) => {
    const itemPointer = `${pointer}/buy/containers/${itemIndex}`
    return joinLines(
      [quoteText(String(count), `${itemPointer}/count`), writeQuantity(context, size, `${itemPointer}/size`)],
      ' × ',
    )
  })
  const purchase = [
    writeQuantity(context, buy?.volume, `${pointer}/buy/volume`),
    joinLines(containerLines, ', '),
  ]
  const additiveParts = [
    quoteOptionalText(additive?.name, `${pointer}/additive/name`),
    writeQuantity(context, additive?.needed, `${pointer}/additive/needed`),
  ]
  const isInStock = oil.needed !== undefined && buy === undefined && oil.take.length > 0
  const part = capitalise(writePart(oil.part, `${pointer}/part`))
  const choice = quoteOptionalText(oil.choice, `${pointer}/choice`)
  const amount = joinLines([needed, choice], oil.needed === undefined ? ', ' : ' ')
  const notes = [
    addLabel(labels.additive, joinLines(additiveParts, ', ')),
    addLabel(labels.take, joinLines(takeLines, '; ')),
    addLabel(labels.buy, joinLines(purchase, ': ')),
    ...(isInStock ? [] : writeReasons(context, oil.reasons, `${pointer}/reasons`, CODES_SHOWN_ELSEWHERE)),
  ]
  return { line: [...part, ...writeWords(': '), ...amount], notes: dropEmptyLines(notes) }
}

function buildSealItem(context: CardContext, seal: PlannedSeal, index: number): ListItem {
  const { labels, replace } = context.words
  const pointer = `/seals/${index}`
  const count = quoteText(String(seal.count), `${pointer}/count`)
  const partName = writePart(seal.part, `${pointer}/part`)
  // A seal in this list is new: only a doubt needs words.
  const replacement =
    seal.replace === 'every opening' ? [] : quoteText(replace[seal.replace], `${pointer}/replace`)
  const buyLine = seal.buy === 0 ? [] : addLabel(labels.buy, quoteText(String(seal.buy), `${pointer}/buy`))
  const stockLine = addLabel(labels.take, quoteOptionalText(seal.stock?.name, `${pointer}/stock/name`))
  return {
    line: [...count, ...writeWords(' × '), ...writeSeal(context, seal.seal, `${pointer}/seal`)],
    notes: dropEmptyLines([joinLines([joinLines([partName, replacement], ': '), stockLine, buyLine], ' · ')]),
  }
}

function buildFilterItem(context: CardContext, filter: PlannedFilter, index: number): ListItem {
  const pointer = `/filters/${index}`
  const description = [
    quoteText(context.words.filters[filter.kind], `${pointer}/kind`),
    writePartNumber(filter, pointer, context.words.labels.supersedes),
  ]
  const count = quoteText(String(filter.count), `${pointer}/count`)
  const line = [...count, ...writeWords(' × '), ...joinLines(description, ', ')]
  return { line, notes: [writePart(filter.part, `${pointer}/part`)] }
}

/** The verdict on a tool or the pan, with its reasons. No verdict if it fits. */
function findToolProblem(
  context: CardContext,
  { verdict, reasons }: Pick<PlannedTool, 'verdict' | 'reasons'>,
  pointer: string,
): { readonly problem: Line; readonly details: readonly Line[] } {
  // A refill in several pours is shown even if the vessel fits.
  const pourLines = reasons.flatMap((reason, reasonIndex) =>
    reason.code === 'fill/vessel-in-several-pours'
      ? [writeReason(context, reason, `${pointer}/reasons/${reasonIndex}`)]
      : [],
  )
  if (verdict === 'fits') return { problem: [], details: pourLines }
  return {
    problem: quoteText(context.words.toolVerdicts[verdict], `${pointer}/verdict`, 'gap'),
    details: writeReasons(context, reasons, `${pointer}/reasons`),
  }
}

function buildToolItem(context: CardContext, tool: PlannedTool, index: number): ListItem {
  const pointer = `/tools/${index}`
  const ownTool = quoteOptionalText(tool.have?.name, `${pointer}/have/name`)
  const kind = quoteText(context.words.tools[tool.kind], `${pointer}/kind`)
  const drive = writeDrive(context, tool.drive, `${pointer}/drive`)
  const name = drive.length === 0 ? kind : ownTool.length > 0 ? [] : drive
  const hasNoTolerance = tool.reasons.some(({ code }) => code === 'fill/tolerance-not-stated')
  const { problem, details } = findToolProblem(context, tool, pointer)
  const parts = tool.for.map((part, partIndex) => writePart(part, `${pointer}/for/${partIndex}`))
  const partsLine = tool.kind === 'socket' ? joinLines(parts, '; ') : []
  return {
    line: joinLines(
      [capitalise(joinLines([name, ownTool, hasNoTolerance ? [] : problem], ': ')), partsLine],
      ' · ',
    ),
    notes: dropEmptyLines(details),
  }
}

function listWrenches({ plan }: CardContext): Line[] {
  return plan.wrenches.use.flatMap((id) => {
    const tighteningIndex = plan.tightenings.findIndex(({ wrench }) => wrench?.id === id)
    const name = plan.tightenings[tighteningIndex]?.wrench?.name
    return dropEmptyLines([
      capitalise(quoteOptionalText(name, `/tightenings/${tighteningIndex}/wrench/name`)),
    ])
  })
}

/** The pan, with the total volume of the drained oil. */
function buildPanItems(context: CardContext): readonly ListItem[] {
  const { labels } = context.words
  const { pan } = context.plan
  if (pan === undefined) return []
  const ownTool = [
    quoteOptionalText(pan.have?.name, '/pan/have/name'),
    writeQuantity(context, pan.have?.size, '/pan/have/size'),
  ]
  const volume = addLabel(labels.mustHold, writeQuantity(context, pan.volume, '/pan/volume', 'computed'))
  const { problem, details } = findToolProblem(context, pan, '/pan')
  const line = joinLines([writeWords(labels.pan), joinLines(ownTool, ', '), problem], ': ')
  return [{ line, notes: dropEmptyLines([volume, ...details]) }]
}

/** Whether a supply is in another list: oil and additive, or seals and sealants. */
function isListedAbove({ oil, seals }: CardContext['plan'], { params }: Reason): boolean {
  const { supply } = params
  if (supply === 'oil' || supply === 'additive') return oil.length > 0
  return (supply === 'seal' || supply === 'sealant') && seals.length > 0
}

/** The used oil of the visit, for the size of its container. */
function buildUsedOilItems(context: CardContext): readonly ListItem[] {
  const { usedOil, steps } = context.plan
  const volume = writeQuantity(context, usedOil.volume, '/usedOil/volume', 'computed')
  const notes = writeReasons(context, usedOil.reasons, '/usedOil/reasons', new Set(['service/used-oil']))
  const line = addLabel(context.words.labels.usedOil, volume)
  const lines = steps.length === 0 ? [] : dropEmptyLines([line, ...notes])
  return lines.slice(0, 1).map((first) => ({ line: first, notes: lines.slice(1) }))
}

/** Oil, seals, tools and consumables to prepare before work starts. */
export function buildReadySection(context: CardContext): CardSection {
  const { plan, words } = context
  const { labels } = words
  const oilItems = plan.oil.map((plannedOil, index) => buildOilItem(context, plannedOil, index))
  const sealItems = plan.seals.map((seal, index) => buildSealItem(context, seal, index))
  const filterItems = (plan.filters ?? []).map((filter, index) => buildFilterItem(context, filter, index))
  const toolItems = plan.tools.flatMap((tool, index) => {
    const firstIndex = plan.tools.findIndex(
      ({ kind, have }) => kind === tool.kind && have?.id === tool.have?.id,
    )
    const isRepeated = tool.have !== undefined && firstIndex < index
    return tool.kind === 'pan' || tool.drive?.kind === 'hand' || isRepeated
      ? []
      : [buildToolItem(context, tool, index)]
  })
  const handTools = plan.handTools === undefined ? [] : [writeReason(context, plan.handTools, '/handTools')]
  const supplies = plan.consumables.flatMap((reason, index) =>
    isListedAbove(plan, reason) ? [] : [writeReason(context, reason, `/consumables/${index}`)],
  )
  const box = true
  return {
    id: 'ready',
    heading: words.sections.ready,
    parts: [
      ...makeListPart(oilItems, { heading: labels.oil, box }),
      ...makeListPart(sealItems, { heading: labels.seals, box, picture: 'washer' }),
      ...makeListPart(filterItems, { heading: labels.filters, box }),
      ...makeListPart([...listWrenches(context), ...toolItems, ...buildPanItems(context), ...handTools], {
        heading: labels.tools,
        box,
      }),
      ...makeListPart([...supplies, ...buildUsedOilItems(context)], { heading: labels.consumables, box }),
    ],
  }
}
