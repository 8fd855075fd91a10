import type { PlannedOil, PlannedSeal, PlannedTool } from '../service/index.js'
import { type CardContext, entryAt, partLine, quantityLine, reasonLine, reasonLines } from './cardContext.js'
import type { CardList, CardSection, Line } from './cardParts.js'
import { figureLines, sealLine } from './figureLines.js'
import { capitalised, joined, ownWords, quoted } from './spans.js'

/** Reasons that only repeat the lines above them. */
const SHOWN_ELSEWHERE: ReadonlySet<string> = new Set([
  'service/oil-for-ambient',
  'service/oil-only-choice',
  'service/oil-first-choice',
  'service/oil-from-shelf',
  'service/oil-short',
  'fill/opened-first',
  'fill/containers-short',
  'fill/containers-left-over',
])

type Item = CardList['items'][number]

const labelled = (label: string, line: Line): Line =>
  line.length === 0 ? [] : [...ownWords(`${label}: `), ...line]
const filled = (lines: readonly Line[]) => lines.filter((line) => line.length > 0)

function oilItem(context: CardContext, oil: PlannedOil, index: number): Item {
  const { labels, notStated } = context.words
  const from = `/oil/${index}`
  const refill = entryAt(context.plan.figures, 'figures', oil.refill)
  const gap =
    refill === undefined ? ownWords(notStated) : figureLines(context, refill.entry, refill.index).main
  const needed = oil.needed === undefined ? gap : quantityLine(context, oil.needed, `${from}/needed`)
  const choice = oil.choice === undefined ? [] : quoted(oil.choice, `${from}/choice`)
  const take = oil.take.map((container, place) => {
    const at = `${from}/take/${place}`
    const state = container.opened ? ownWords(` (${labels.opened})`) : []
    const volume = quantityLine(context, container.volume, `${at}/volume`)
    return [...quoted(container.name, `${at}/name`), ...state, ...ownWords(', '), ...volume]
  })
  const buy = oil.buy === undefined ? [] : buyLine(context, oil.buy, `${from}/buy`)
  const line = [
    ...capitalised(partLine(oil.part, `${from}/part`, 'with gearcase')),
    ...ownWords(': '),
    ...joined([needed, choice], ' '),
  ]
  const additive = oil.additive
  const extra =
    additive === undefined
      ? []
      : joined(
          [
            quoted(additive.name, `${from}/additive/name`),
            additive.needed === undefined
              ? []
              : quantityLine(context, additive.needed, `${from}/additive/needed`),
          ],
          ', ',
        )
  const notes = filled([
    labelled(labels.additive, extra),
    labelled(labels.take, joined(take, '; ')),
    labelled(labels.buy, buy),
  ])
  const settled = oil.needed !== undefined && oil.buy === undefined && oil.take.length > 0
  const why = oil.reasons.flatMap((reason, place) =>
    settled || SHOWN_ELSEWHERE.has(reason.code)
      ? []
      : [reasonLine(context, reason, `${from}/reasons/${place}`)],
  )
  return { line, notes: [...notes, ...why] }
}

function buyLine(context: CardContext, buy: NonNullable<PlannedOil['buy']>, from: string): Line {
  const volume = quantityLine(context, buy.volume, `${from}/volume`)
  const containers = (buy.containers ?? []).map(({ size, count }, place) => [
    ...quoted(String(count), `${from}/containers/${place}/count`),
    ...ownWords(' × '),
    ...quantityLine(context, size, `${from}/containers/${place}/size`),
  ])
  return joined([volume, joined(containers, ', ')], ': ')
}

function sealItem(context: CardContext, seal: PlannedSeal, index: number): Item {
  const { labels, replace } = context.words
  const from = `/seals/${index}`
  const line = [
    ...quoted(String(seal.count), `${from}/count`),
    ...ownWords(' × '),
    ...sealLine(context, seal.seal, `${from}/seal`),
  ]
  const where = partLine(seal.part, `${from}/part`, 'with gearcase')
  const rule = quoted(replace[seal.replace], `${from}/replace`)
  const buy = seal.buy === 0 ? [] : labelled(labels.buy, quoted(String(seal.buy), `${from}/buy`))
  const shelf =
    seal.stock === undefined ? [] : labelled(labels.take, quoted(seal.stock.name, `${from}/stock/name`))
  return { line, notes: filled([joined([joined([where, rule], ': '), shelf, buy], ' · ')]) }
}

function toolItem(context: CardContext, tool: PlannedTool, index: number): Item {
  const { words } = context
  const from = `/tools/${index}`
  const drive =
    tool.drive === undefined
      ? []
      : quoted([words.drives[tool.drive.kind], tool.drive.size].filter(Boolean).join(' '), `${from}/drive`)
  const have = tool.have === undefined ? [] : quoted(tool.have.name, `${from}/have/name`)
  const kind = quoted(words.tools[tool.kind], `${from}/kind`)
  const name = drive.length > 0 ? (have.length > 0 ? [] : drive) : kind
  const bad =
    tool.verdict === 'fits' ? [] : quoted(words.toolVerdicts[tool.verdict], `${from}/verdict`, 'gap')
  const why = tool.verdict === 'fits' ? [] : reasonLines(context, tool.reasons, `${from}/reasons`)
  const parts = tool.for.map((part, place) => partLine(part, `${from}/for/${place}`, 'with gearcase'))
  const use = tool.kind === 'socket' ? joined(parts, '; ') : []
  return { line: joined([capitalised(joined([name, have, bad], ': ')), use], ' · '), notes: filled(why) }
}

function wrenchItems(context: CardContext): Item[] {
  const { plan } = context
  return plan.wrenches.use.flatMap((id) => {
    const place = plan.tightenings.findIndex(({ wrench }) => wrench?.id === id)
    const wrench = plan.tightenings[place]?.wrench
    return wrench === undefined
      ? []
      : [{ line: capitalised(quoted(wrench.name, `/tightenings/${place}/wrench/name`)), notes: [] }]
  })
}

/** What belongs to the whole visit: the pan with its tally. */
function panItems(context: CardContext): readonly Item[] {
  const { plan, words } = context
  const { pan } = plan
  if (pan === undefined) return []
  const have =
    pan.have === undefined
      ? []
      : [
          ...quoted(pan.have.name, '/pan/have/name'),
          ...ownWords(', '),
          ...quantityLine(context, pan.have.size, '/pan/have/size'),
        ]
  const volume =
    pan.volume === undefined
      ? []
      : labelled(words.labels.mustHold, quantityLine(context, pan.volume, '/pan/volume', 'computed'))
  const bad = pan.verdict === 'fits' ? [] : quoted(words.toolVerdicts[pan.verdict], '/pan/verdict', 'gap')
  const why = pan.verdict === 'fits' ? [] : reasonLines(context, pan.reasons, '/pan/reasons')
  const line = joined([ownWords(words.labels.pan), have, bad], ': ')
  return [{ line, notes: filled([volume, ...why]) }]
}

/** Oil, seals, tools and consumables to prepare before work starts. */
export function readySection(context: CardContext): CardSection {
  const { plan, words } = context
  const { labels } = words
  const list = (heading: string, items: readonly Item[], picture?: CardList['picture']): CardList[] =>
    items.length === 0
      ? []
      : [{ kind: 'list', heading, box: true, items, ...(picture !== undefined && { picture }) }]
  const tools = plan.tools.flatMap((tool, index) => {
    const first = plan.tools.findIndex(({ kind, have }) => kind === tool.kind && have?.id === tool.have?.id)
    const again = tool.have !== undefined && first < index
    return tool.kind === 'pan' || again ? [] : [toolItem(context, tool, index)]
  })
  const consumables = reasonLines(context, plan.consumables, '/consumables').map((line) => ({
    line,
    notes: [],
  }))
  return {
    id: 'ready',
    heading: words.sections.ready,
    parts: [
      ...list(
        labels.oil,
        plan.oil.map((oil, index) => oilItem(context, oil, index)),
      ),
      ...list(
        labels.seals,
        plan.seals.map((seal, index) => sealItem(context, seal, index)),
        'washer',
      ),
      ...list(labels.tools, [...wrenchItems(context), ...tools, ...panItems(context)]),
      ...list(labels.consumables, consumables),
    ],
  }
}
