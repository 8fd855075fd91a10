import { type Finding, requireShape } from '../base/index.js'
import { type Catalogue, renderMessage } from '../message/index.js'
import type { VisitPlan } from '../service/index.js'
import { buildDueSection } from './buildDueSection.js'
import { buildFiguresSection } from './buildFiguresSection.js'
import { buildReadySection } from './buildReadySection.js'
import { buildRecordSection } from './buildRecordSection.js'
import { buildSourcesSection } from './buildSourcesSection.js'
import { buildStepsSection } from './buildStepsSection.js'
import { buildTighteningSection } from './buildTighteningSection.js'
import { buildWaitsSection } from './buildWaitsSection.js'
import { type CardContext, writeCautions, writeQuantity, writeReason, writeReasons } from './cardContext.js'
import type { CardModel, CardSection, Line } from './cardParts.js'
import { finishCard } from './finishCard.js'
import { requirePlan } from './requirePlan.js'
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
import { writeAuthority } from './writeAuthority.js'

function describeVariant(context: CardContext): CardModel['variant'] {
  const { plan, words } = context
  const { variant } = plan.machine
  const { variant: label, candidates, or } = words.labels
  const pointer = '/machine/variant'
  if (variant.verdict === 'one')
    return { known: true, label, lines: [quoteText(variant.name, `${pointer}/name`)] }
  const missing = variant.missing.map((fact) => words.identityFacts[fact])
  const names = variant.candidates.map(({ name }, index) =>
    quoteText(name, `${pointer}/candidates/${index}/name`),
  )
  const lines = [
    quoteText(words.cannotTell(missing), `${pointer}/missing`, 'gap'),
    addLabel(candidates, joinLines(names, ` ${or} `)),
    ...writeReasons(context, variant.reasons, `${pointer}/reasons`),
  ]
  return { known: false, label, lines: dropEmptyLines(lines) }
}

function listFacts(context: CardContext): CardModel['facts'] {
  const { plan, words } = context
  const { labels } = words
  const { serial, modelYear, market } = plan.machine.identity
  const writeReading = (meter: 'hours' | 'distance'): Line => {
    const pointer = `/readings/${meter}`
    const { [meter]: found } = plan.readings
    return joinLines(
      [writeQuantity(context, found, pointer), quoteOptionalText(found?.date, `${pointer}/date`)],
      ', ',
    )
  }
  const facts: CardModel['facts'] = [
    { label: labels.today, value: quoteText(plan.today, '/today') },
    { label: labels.serial, value: quoteOptionalText(serial, '/machine/identity/serial') },
    {
      label: labels.modelYear,
      value: quoteOptionalText(modelYear?.toString(), '/machine/identity/modelYear'),
    },
    { label: labels.market, value: quoteOptionalText(market, '/machine/identity/market') },
    { label: labels.hours, value: writeReading('hours') },
    { label: labels.distance, value: writeReading('distance') },
    { label: labels.ambient, value: writeQuantity(context, plan.ambient, '/ambient') },
    { label: labels.ownSteps, value: quoteOptionalText(plan.procedure?.name, '/procedure/name') },
    { label: labels.use, value: quoteText(words.severities[plan.severity], '/severity') },
  ]
  return facts.filter(({ value }) => value.length > 0)
}

/** A plan with the findings about its documents: the result of `planVisit`. */
export interface PlannedVisit {
  readonly value: VisitPlan
  readonly findings: readonly Finding[]
}

/**
 * Builds the service card of one visit as data: the machine and its variant, due services and their limits, figures, tools
 * and supplies, steps, and missing facts. Every figure has a pointer into the plan, or into the findings
 * (`/findings/0`). Empty sections are omitted. To write the card, use {@link renderHtml}, {@link renderMarkdown} or
 * {@link renderText}.
 *
 * @param planned - the result of `planVisit`; the card also shows its findings
 * @param catalogue - the language of the card; import it from `/v1/message/en`
 * @returns plain JSON without a time stamp: the same plan gives the same card
 * @throws TypeError if `planned` has no visit plan, or `catalogue` is not a language
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
 * // Which sections has the card of a machine without work?
 * cardModel(planned, en).sections.map(({ id }) => id) // => ['due', 'missing', 'record', 'sources']
 * ```
 */
export function cardModel(planned: PlannedVisit, catalogue: Catalogue): CardModel {
  const plan = planned?.value
  requireShape('planned', planned, { value: {}, findings: [{}] }, 'pass the result of planVisit')
  requirePlan('planned.value', plan)
  requireWords(catalogue)
  const context: CardContext = { plan, catalogue, words: catalogue.card, form: 'written' }
  const { words } = context
  const { machine } = plan
  const sections: CardSection[] = [
    buildDueSection(context),
    buildReadySection(context),
    buildMissingSection(context, planned.findings),
    buildRecordSection(context),
    buildFiguresSection(context),
    buildTighteningSection(context),
    buildStepsSection(context),
    buildWaitsSection(context),
    buildSourcesSection(context),
  ].filter(({ parts }) => parts.length > 0)
  return finishCard(
    {
      kind: 'service-card',
      version: '1.0',
      language: catalogue.language,
      direction: catalogue.direction,
      extent: 'full',
      title: words.title,
      shortTitle: words.shortTitle,
      machine: quoteText(machine.name, '/machine/name'),
      about: joinLines(
        (['make', 'model', 'type'] as const).map((name) => quoteText(machine[name], `/machine/${name}`)),
        ' · ',
      ),
      ...(machine.header !== undefined && { header: quoteText(machine.header, '/machine/header') }),
      variant: describeVariant(context),
      facts: listFacts(context),
      authority: writeAuthority(words.authority, catalogue),
      cautions: { label: words.labels.caution, cautions: writeCautions(context, plan.cautions, '/cautions') },
      sections,
    },
    words,
  )
}

/** Missing facts, and findings about the documents. */
function buildMissingSection(context: CardContext, findings: readonly Finding[]): CardSection {
  const { plan, words, catalogue } = context
  const { nothingMissing, findings: heading } = words.labels
  const gapLines = plan.missing.map(({ kind, reason }, index) => {
    const pointer = `/missing/${index}`
    const gap = capitalise(quoteText(words.missingKinds[kind], `${pointer}/kind`, 'gap'))
    return joinLines([gap, writeReason(context, reason, `${pointer}/reason`)], ': ')
  })
  const findingLines = findings.flatMap((finding, index) =>
    finding.severity === 'info'
      ? []
      : [[{ text: renderMessage(finding, catalogue), from: `/findings/${index}` }]],
  )
  const parts = makeListPart(gapLines.length === 0 ? [writeWords(nothingMissing)] : gapLines)
  return {
    id: 'missing',
    heading: words.sections.missing,
    parts: [...parts, ...makeListPart(findingLines, { heading })],
  }
}
