import { type JsonPointer, requireShape, requireTree, type Shape } from '../base/index.js'
import { type Catalogue, cleanText } from '../message/index.js'
import type { WallFacts, WallInterval } from '../service/index.js'
import { buildSourcesSection } from './buildSourcesSection.js'
import { writeFactor, writeReason } from './cardContext.js'
import type { CardModel, CardSection, Line } from './cardParts.js'
import { finishCard } from './finishCard.js'
import { requireWords } from './requireWords.js'
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
import { buildJobSection } from './wall/buildJobSection.js'
import { buildPanel } from './wall/buildPanel.js'
import { buildPoursSection } from './wall/buildPoursSection.js'
import { buildSettingsSection } from './wall/buildSettingsSection.js'
import { buildSizesSection } from './wall/buildSizesSection.js'
import { findFact, listMarks, type WallContext } from './wall/wallContext.js'
import { writeAuthority } from './writeAuthority.js'
import { writeFigure } from './writeFigure.js'
import { writeScaledInterval } from './writeInterval.js'

const PART: Shape = { path: 'string' }
/** The objects and lists of the facts that a card reads. */
const FACTS_SHAPE: Shape = {
  machine: { model: 'string', sheet: {}, identity: {}, variant: {}, 'when?': {} },
  figures: [{ path: 'string', part: PART, resolved: { kind: 'string' } }],
  intervals: [
    { serviceName: 'string', gearcases: [PART], repeat: 'string', 'severe?': { criteria: 'string' } },
  ],
  missing: [{ reason: { code: 'string', params: {} } }],
  panels: [
    {
      part: PART,
      supports: ['string'],
      parts: [{ part: PART, seals: ['string'] }],
      loosen: ['string'],
      tighten: ['string'],
    },
  ],
  job: [{ line: 'string', phrases: [{ phrase: 'string', 'only?': [PART] }] }],
  tightenings: [{ part: PART, figure: 'string' }],
  wrenches: [{ name: 'string', scales: [{ scale: {}, settings: [{ tightening: 'string', setting: {} }] }] }],
  oil: [{ part: PART }],
  pours: [{ part: PART, at: [{ celsius: 'number' }] }],
  jugs: [{ part: PART, name: 'string', size: {}, graduation: {}, marks: [{}] }],
  sizes: [{ parts: [PART], count: 'number' }],
  sources: { '*': {} },
}

/**
 * Builds the wall card of a machine, without a date. It has the intervals and one panel per gearcase with quantity,
 * oil, tools, torques and wrench settings. Then come the job in at most ten lines, pouring times, and seals and
 * hexagons in true size. Print it with {@link renderHtml}; {@link renderMarkdown} and {@link renderText} write the
 * same. Its lines have pointers into the facts. For the card of one visit, use {@link cardModel}.
 *
 * @param facts - the result of `wallFacts`
 * @param catalogue - the language of the card; import it from `/v1/message/en`
 * @returns plain JSON without a date: the same facts give the same card
 * @throws TypeError if `facts` is not the result of `wallFacts`, or `catalogue` is not a language
 *
 * @example
 * ```ts
 * import { wallModel } from 'drivetrain-service/v1/card'
 * import { en } from 'drivetrain-service/v1/message/en'
 * import { wallFacts } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const facts = wallFacts({ sheet, identity: {} }, { iso6789: '2017' })
 * if (!facts.ok) throw new Error('no facts')
 * // Which sections has the card of a machine without gearcases?
 * wallModel(facts.value, en).sections.map(({ id }) => id) // => ['wallSources']
 * ```
 */
export function wallModel(facts: WallFacts, catalogue: Catalogue): CardModel {
  const advice = 'pass the result of wallFacts'
  if (facts?.kind !== 'wall-facts')
    throw new TypeError(`facts must be the facts of a wall card, with kind 'wall-facts'; ${advice}`)
  requireTree('facts', facts)
  requireShape('facts', facts, FACTS_SHAPE, advice)
  requireWords(catalogue)
  const { card: words, wall } = catalogue
  const context: WallContext = {
    facts,
    catalogue,
    words,
    wall,
    marks: listMarks(facts, wall),
    form: 'written',
  }
  const { machine } = facts
  const panels: CardSection = {
    id: 'panels',
    heading: wall.sections.panels,
    parts: facts.panels.map((panel, place) => buildPanel(context, panel, place)),
  }
  const job = buildJobSection(context)
  const sections: CardSection[] = [
    buildMissingSection(context),
    ...(countRows(facts) > MAX_ROWS_BEFORE_JOB ? [job, panels] : [panels, job]),
    buildSettingsSection(context),
    buildPoursSection(context),
    {
      ...buildSourcesSection({ ...context, plan: facts }),
      id: 'wallSources' as const,
      heading: wall.sections.wallSources,
    },
    buildSizesSection(context),
  ].filter(({ parts }) => parts.length > 0)
  return finishCard(
    {
      kind: 'service-card',
      version: '1.0',
      language: catalogue.language,
      direction: catalogue.direction,
      extent: 'wall',
      title: wall.title,
      shortTitle: wall.title,
      machine: quoteText(machine.model, '/machine/model'),
      about: joinLines(
        (['make', 'type'] as const).map((name) => quoteText(machine[name], `/machine/${name}`)),
        ' · ',
      ),
      ...(machine.header !== undefined && { header: quoteText(machine.header, '/machine/header') }),
      variant: describeVariant(context),
      facts: [
        ...listSerials(context),
        ...facts.intervals.flatMap((interval, place) => listIntervals(context, interval, place)),
        ...listSubmerged(context),
      ],
      authority: writeAuthority(wall.authority, catalogue),
      cautions: {
        label: words.labels.caution,
        cautions: wall.cautions.map(({ word, text }) => ({ word, line: writeWords(text) })),
      },
      sections,
    },
    words,
  )
}

/** Maximum number of panel rows on the first page. The job must fit on this page too, because it has the cautions. */
const MAX_ROWS_BEFORE_JOB = 4

/** Total rows of the panels, which are in pairs side by side. */
function countRows({ panels }: WallFacts): number {
  const counts = panels.map(({ parts }) => parts.length)
  return counts.reduce(
    (sum, count, place) => (place % 2 === 0 ? sum + Math.max(count, counts[place + 1] ?? 0) : sum),
    0,
  )
}

function describeVariant({ facts, words }: WallContext): CardModel['variant'] {
  const { variant } = facts.machine
  const { labels } = words
  const pointer = '/machine/variant'
  if (variant.verdict === 'one')
    return { known: true, label: labels.variant, lines: [quoteText(variant.name, `${pointer}/name`)] }
  const missing = variant.missing.map((fact) => words.identityFacts[fact])
  const names = variant.candidates.map(({ name }, index) =>
    quoteText(name, `${pointer}/candidates/${index}/name`),
  )
  return {
    known: false,
    label: labels.variant,
    lines: dropEmptyLines([
      quoteText(words.cannotTell(missing), `${pointer}/missing`, 'gap'),
      addLabel(labels.candidates, joinLines(names, ` ${labels.or} `)),
    ]),
  }
}

/** The serial numbers of the variant, or that of the machine. */
function listSerials({ facts, wall }: WallContext): CardModel['facts'] {
  const { identity, when } = facts.machine
  const { serials } = when ?? {}
  const range =
    serials === undefined
      ? []
      : joinLines(
          [serials.from, serials.to].map((number, place) =>
            quoteOptionalText(
              number === undefined ? undefined : `${serials.prefix ?? ''}${number}`,
              `/machine/when/serials/${place === 0 ? 'from' : 'to'}`,
            ),
          ),
          '–',
        )
  const value = joinLines([quoteOptionalText(identity.serial, '/machine/identity/serial'), range], ' · ')
  return value.length === 0 ? [] : [{ label: wall.labels.serial, value }]
}

/** The limits of one service: normal, first, severe, and after the machine was under water. */
function listIntervals(context: WallContext, interval: WallInterval, place: number): CardModel['facts'] {
  const { labels } = context.wall
  const pointer = `/intervals/${place}`
  const write = (at: JsonPointer | undefined): Line => {
    const figure = findFact(context, 'figures', at)
    return figure && at !== undefined ? writeFigure(context, figure, at).main : []
  }
  const { severe } = interval
  const factor = writeFactor(context, severe?.factor, `${pointer}/severe/factor`)
  const times = factor.length === 0 ? [] : [...writeWords(`${labels.times} `), ...factor]
  const limits =
    severe?.scaled === undefined
      ? write(severe?.interval)
      : writeScaledInterval(context, severe.scaled, `${pointer}/severe/scaled`)
  const criteria = quoteOptionalText(severe?.criteria, `${pointer}/severe/criteria`)
  const severeValue =
    severe === undefined
      ? []
      : limits.length === 0
        ? [...times, ...writeWords(' ('), ...criteria, ...writeWords(')')]
        : [...limits, ...writeWords(' ('), ...joinLines([times, criteria], ': '), ...writeWords(')')]
  const rows = [
    {
      label: cleanText(interval.serviceName),
      value: write(interval.repeat),
      ...(interval.task === 'change' && { large: true as const }),
    },
    { label: labels.first, value: write(interval.first) },
    { label: labels.severe, value: severeValue },
  ]
  return rows.filter(({ value }) => value.length > 0)
}

/** The services that are due before the next use after the machine was under water: changes, or checks without one. */
function listSubmerged({ facts, wall }: WallContext): CardModel['facts'] {
  const affected = facts.intervals.flatMap(({ afterSubmersion, task, serviceName }, place) =>
    afterSubmersion ? { task, name: quoteText(serviceName, `/intervals/${place}/serviceName`) } : [],
  )
  const changes = affected.filter(({ task }) => task === 'change')
  const names = (changes.length > 0 ? changes : affected).map(({ name }) => name)
  if (names.length === 0) return []
  return [
    {
      label: wall.labels.submerged,
      value: joinLines([joinLines(names, ', '), writeWords(wall.labels.beforeNextUse)], ' '),
    },
  ]
}

/** Facts that the manual does not state, at the top of the card. */
function buildMissingSection(context: WallContext): CardSection {
  const lines = context.facts.missing.map(({ reason }, place) =>
    capitalise(writeReason(context, reason, `/missing/${place}/reason`)),
  )
  return {
    id: 'wallMissing',
    heading: context.wall.sections.wallMissing,
    parts: makeListPart(lines),
  }
}
