import type { Finding } from '../base/index.js'
import { type Catalogue, renderMessage } from '../message/index.js'
import type { PlannedMissing, VisitPlan } from '../service/index.js'
import { type CardContext, cautionLines, quantityLine, reasonLine, reasonLines } from './cardContext.js'
import type { CardList, CardModel, CardSection, Line } from './cardParts.js'
import { dueSection } from './dueSection.js'
import { figuresSection } from './figuresSection.js'
import { readySection } from './readySection.js'
import { recordSection } from './recordSection.js'
import { capitalised, joined, ownWords, quoted } from './spans.js'
import { stepsSection } from './stepsSection.js'
import { tighteningSection } from './tighteningSection.js'
import { waitsSection } from './waitsSection.js'

function variantOf(context: CardContext): CardModel['variant'] {
  const { plan, words } = context
  const { variant } = plan.machine
  const label = words.labels.variant
  if (variant.verdict === 'one') {
    return { known: true, label, lines: [quoted(variant.name, '/machine/variant/name')] }
  }
  const missing = variant.missing.map((fact) => words.identityFacts[fact])
  const names = variant.candidates.map(({ name }, index) =>
    quoted(name, `/machine/variant/candidates/${index}/name`),
  )
  const lines: Line[] = [
    quoted(words.cannotTell(missing), '/machine/variant/missing', 'gap'),
    ...(names.length === 0
      ? []
      : [[...ownWords(`${words.labels.candidates}: `), ...joined(names, ` ${words.labels.or} `)]]),
    ...reasonLines(context, variant.reasons, '/machine/variant/reasons'),
  ]
  return { known: false, label, lines }
}

function factsOf(context: CardContext): CardModel['facts'] {
  const { plan, words } = context
  const { labels } = words
  const { identity } = plan.machine
  const { hours, distance } = plan.readings
  const reading = (value: Line, date: string, from: string) =>
    joined([value, quoted(date, `${from}/date`)], ', ')
  const facts: { label: string; value: Line }[] = [
    { label: labels.today, value: quoted(plan.today, '/today') },
  ]
  if (identity.serial !== undefined)
    facts.push({ label: labels.serial, value: quoted(identity.serial, '/machine/identity/serial') })
  if (identity.modelYear !== undefined) {
    facts.push({
      label: labels.modelYear,
      value: quoted(String(identity.modelYear), '/machine/identity/modelYear'),
    })
  }
  if (identity.market !== undefined)
    facts.push({ label: labels.market, value: quoted(identity.market, '/machine/identity/market') })
  if (hours !== undefined) {
    facts.push({
      label: labels.hours,
      value: reading(quantityLine(context, hours, '/readings/hours'), hours.date, '/readings/hours'),
    })
  }
  if (distance !== undefined) {
    const shown = quantityLine(context, distance, '/readings/distance')
    facts.push({ label: labels.distance, value: reading(shown, distance.date, '/readings/distance') })
  }
  if (plan.ambient !== undefined)
    facts.push({ label: labels.ambient, value: quantityLine(context, plan.ambient, '/ambient') })
  facts.push({ label: labels.use, value: quoted(words.severities[plan.severity], '/severity') })
  return facts
}

/** A plan with the findings about its documents, as `planVisit` gives them. */
export interface PlannedVisit {
  readonly value: VisitPlan
  readonly findings: readonly Finding[]
}

/**
 * The service card of one visit, for printing and reading: which machine and variant, what is due and by what, the
 * figures, what to lay ready, the steps, and what is missing. Every figure carries the pointer of the place in the plan
 * that it came from (`/findings/0`: in the findings beside it); what has nothing to say is left out. It is data: {@link renderHtml}, {@link renderMarkdown} and
 * {@link renderText} write it out.
 *
 * @param planned - what `planVisit` gives: the plan with the findings about its documents, which are on the card too
 * @param catalogue - the language of every word on the card; import it from `/v1/message/en`
 * @returns plain JSON, without a time stamp: same plan, same card
 * @throws TypeError when `planned` holds no visit plan
 *
 * @example
 * ```ts
 * import { cardModel } from 'drivetrain-service/v1/card'
 * import { en } from 'drivetrain-service/v1/message/en'
 * import { planVisit } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'Station 1', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [] } as const
 * const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * const planned = planVisit({ sheet, log, today: '2031-10-06' }, { services: 'due', due, iso6789: '2017' })
 * if (!planned.ok) throw new Error('no plan')
 * // What is on the card of a machine with nothing to do?
 * cardModel(planned, en).sections.map(({ id }) => id) // => ['due', 'missing', 'record', 'sources']
 * ```
 */
export function cardModel(planned: PlannedVisit, catalogue: Catalogue): CardModel {
  const plan = planned?.value
  if (plan?.kind !== 'visit-plan' || !Array.isArray(planned.findings))
    throw new TypeError('planned must be the result of planVisit, with a visit plan as its value')
  if (typeof catalogue?.card !== 'object')
    throw new TypeError('catalogue must be a catalogue, such as en of /v1/message/en')
  const context: CardContext = { plan, catalogue, words: catalogue.card, form: 'written' }
  const { words } = context
  const { machine } = plan
  const sections: CardSection[] = [
    dueSection(context),
    figuresSection(context),
    tighteningSection(context),
    readySection(context),
    stepsSection(context),
    waitsSection(context),
    afterSection(context),
    missingSection(context, planned.findings),
    recordSection(context),
    sourcesSection(context),
  ].filter(({ parts }) => parts.length > 0)
  return {
    kind: 'service-card',
    version: '1.0',
    language: catalogue.language,
    direction: catalogue.direction,
    extent: 'full',
    title: words.title,
    shortTitle: words.shortTitle,
    machine: quoted(machine.name, '/machine/name'),
    about: joined(
      [
        quoted(machine.make, '/machine/make'),
        quoted(machine.model, '/machine/model'),
        quoted(machine.type, '/machine/type'),
      ],
      ' · ',
    ),
    ...(machine.header !== undefined && { header: quoted(machine.header, '/machine/header') }),
    variant: variantOf(context),
    facts: factsOf(context),
    authority: words.authority,
    cautions: { label: words.labels.caution, cautions: cautionLines(context, plan.cautions, '/cautions') },
    sections,
    marks: {
      computed: words.computedMark,
      pictures: words.pictures,
      legend: words.legend,
    },
  }
}

/** The leak check and the used oil. */
function afterSection(context: CardContext): CardSection {
  const { plan, words } = context
  const { usedOil } = plan
  if (plan.steps.length === 0) return { id: 'after', heading: words.sections.after, parts: [] }
  const volume: Line[] =
    usedOil.volume === undefined
      ? []
      : [
          [
            ...ownWords(`${words.labels.usedOil}: `),
            ...quantityLine(context, usedOil.volume, '/usedOil/volume', 'computed'),
          ],
        ]
  const lines = [
    ...words.leakAdvice.map(ownWords),
    ...volume,
    ...usedOil.reasons.flatMap((reason, index) =>
      reason.code === 'service/used-oil' ? [] : [reasonLine(context, reason, `/usedOil/reasons/${index}`)],
    ),
  ]
  const items = lines.map((line) => ({ line, notes: [] }))
  return { id: 'after', heading: words.sections.after, parts: [{ kind: 'list', box: true, items }] }
}

function missingLine(context: CardContext, missing: PlannedMissing, index: number): Line {
  const from = `/missing/${index}`
  const kind = quoted(context.words.missingKinds[missing.kind], `${from}/kind`, 'gap')
  return joined([capitalised(kind), reasonLine(context, missing.reason, `${from}/reason`)], ': ')
}

/** What the documents lack, and what is wrong in them. */
function missingSection(context: CardContext, findings: readonly Finding[]): CardSection {
  const { plan, words } = context
  const gaps = plan.missing.map((missing, index) => ({
    line: missingLine(context, missing, index),
    notes: [],
  }))
  const faults = findings.flatMap((finding, index) =>
    finding.severity === 'info'
      ? []
      : [
          {
            line: [{ text: renderMessage(finding, context.catalogue), from: `/findings/${index}` }],
            notes: [],
          },
        ],
  )
  const nothing = [{ line: ownWords(words.labels.nothingMissing), notes: [] }]
  const parts: CardList[] = [{ kind: 'list', box: false, items: gaps.length === 0 ? nothing : gaps }]
  if (faults.length > 0)
    parts.push({ kind: 'list', heading: words.labels.findings, box: false, items: faults })
  return { id: 'missing', heading: words.sections.missing, parts }
}

/** The pages that the figures of this visit were read on, for one source: each page once, with the figure that named it. */
function pagesOf({ plan, words }: CardContext, source: string): Line {
  const pages = new Map<string, Line>()
  let doubtful: Line = []
  for (const [index, { resolved }] of plan.figures.entries()) {
    if (resolved.kind === 'cannot tell') continue
    const ref = resolved.trace.source
    if (ref?.ref !== source) continue
    const from = `/figures/${index}/resolved/trace/source`
    if (ref.page !== undefined && !pages.has(ref.page)) pages.set(ref.page, quoted(ref.page, `${from}/page`))
    if (ref.confidence !== 'read')
      doubtful = quoted(words.confidences[ref.confidence], `${from}/confidence`, 'gap')
  }
  const sorted = [...pages].sort(([one], [other]) => Number(one) - Number(other) || (one < other ? -1 : 1))
  const list = joined(
    sorted.map(([, line]) => line),
    ', ',
  )
  return joined([list.length === 0 ? [] : [...ownWords(`${words.labels.page} `), ...list], doubtful], ', ')
}

/** Where the figures come from, with editions and pages, and which sheet holds them. */
function sourcesSection(context: CardContext): CardSection {
  const { plan, words } = context
  const { labels } = words
  const items = Object.entries(plan.sources).map(([id, source]) => {
    const from = `/sources/${id.replace(/~/g, '~0').replace(/\//g, '~1')}`
    const edition =
      source.edition === undefined
        ? []
        : [...ownWords(`${labels.edition} `), ...quoted(source.edition, `${from}/edition`)]
    const date = source.date === undefined ? [] : quoted(source.date, `${from}/date`)
    const title = quoted(source.title, `${from}/title`)
    const kind = quoted(words.documents[source.document], `${from}/document`)
    return { line: joined([title, kind, edition, date, pagesOf(context, id)], ', '), notes: [] }
  })
  const sheet: Line = [
    ...ownWords(`${labels.sheet}: `),
    ...quoted(plan.machine.sheet.id, '/machine/sheet/id'),
    ...ownWords(`, ${labels.revision} `),
    ...quoted(plan.machine.sheet.revision, '/machine/sheet/revision'),
  ]
  const parts: CardList[] = [{ kind: 'list', box: false, items: [...items, { line: sheet, notes: [] }] }]
  return { id: 'sources', heading: words.sections.sources, parts }
}
