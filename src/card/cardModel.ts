import type { Finding } from '../base/index.js'
import type { Catalogue } from '../message/index.js'
import type { VisitPlan } from '../service/index.js'
import { afterSection } from './afterSection.js'
import { type CardContext, cautionLines, quantityLine, reasonLines } from './cardContext.js'
import type { CardModel, CardSection, Line } from './cardParts.js'
import { dueSection } from './dueSection.js'
import { figuresSection } from './figuresSection.js'
import { missingSection } from './missingSection.js'
import { readySection } from './readySection.js'
import { recordSection } from './recordSection.js'
import { sourcesSection } from './sourcesSection.js'
import { joined, ownWords, quoted } from './spans.js'
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
    throw new TypeError('planned must be what planVisit gives, with a visit plan as its value')
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
