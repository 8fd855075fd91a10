import { type Finding, joinPointer, requireShape } from '../base/index.js'
import { type Catalogue, renderMessage } from '../message/index.js'
import type { VisitPlan } from '../service/index.js'
import { type CardContext, cautionLines, quantityLine, reasonLine, reasonLines } from './cardContext.js'
import type { CardModel, CardSection, Line } from './cardParts.js'
import { dueSection } from './dueSection.js'
import { figuresSection } from './figuresSection.js'
import { readySection } from './readySection.js'
import { recordSection } from './recordSection.js'
import { requirePlan } from './requirePlan.js'
import { requireWords } from './requireWords.js'
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
import { stepsSection } from './stepsSection.js'
import { tighteningSection } from './tighteningSection.js'
import { waitsSection } from './waitsSection.js'

function variantOf(context: CardContext): CardModel['variant'] {
  const { plan, words } = context
  const { variant } = plan.machine
  const { variant: label, candidates, or } = words.labels
  const at = '/machine/variant'
  if (variant.verdict === 'one') return { known: true, label, lines: [quoteText(variant.name, `${at}/name`)] }
  const missing = variant.missing.map((fact) => words.identityFacts[fact])
  const names = variant.candidates.map(({ name }, index) => quoteText(name, `${at}/candidates/${index}/name`))
  const lines = [
    quoteText(words.cannotTell(missing), `${at}/missing`, 'gap'),
    addLabel(candidates, joinLines(names, ` ${or} `)),
    ...reasonLines(context, variant.reasons, `${at}/reasons`),
  ]
  return { known: false, label, lines: dropEmpty(lines) }
}

function factsOf(context: CardContext): CardModel['facts'] {
  const { plan, words } = context
  const { labels } = words
  const { serial, modelYear, market } = plan.machine.identity
  const reading = (meter: 'hours' | 'distance'): Line => {
    const at = `/readings/${meter}`
    const { [meter]: found } = plan.readings
    return joinLines([quantityLine(context, found, at), quoteOptional(found?.date, `${at}/date`)], ', ')
  }
  const facts: CardModel['facts'] = [
    { label: labels.today, value: quoteText(plan.today, '/today') },
    { label: labels.serial, value: quoteOptional(serial, '/machine/identity/serial') },
    { label: labels.modelYear, value: quoteOptional(modelYear?.toString(), '/machine/identity/modelYear') },
    { label: labels.market, value: quoteOptional(market, '/machine/identity/market') },
    { label: labels.hours, value: reading('hours') },
    { label: labels.distance, value: reading('distance') },
    { label: labels.ambient, value: quantityLine(context, plan.ambient, '/ambient') },
    { label: labels.ownSteps, value: quoteOptional(plan.procedure?.name, '/procedure/name') },
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
 * The service card of one visit as data: the machine and its variant, the due services and their limits, the figures,
 * tools and supplies, the steps, and the missing facts. Every figure points to its place in the plan, or in the findings
 * (`/findings/0`). Empty sections are omitted. To write the card, use {@link renderHtml}, {@link renderMarkdown} or
 * {@link renderText}.
 *
 * @param planned - the result of `planVisit`; its findings are on the card too
 * @param catalogue - the language of the card; import it from `/v1/message/en`
 * @returns plain JSON without a time stamp, so that the same plan gives the same card
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
    machine: quoteText(machine.name, '/machine/name'),
    about: joinLines(
      (['make', 'model', 'type'] as const).map((name) => quoteText(machine[name], `/machine/${name}`)),
      ' · ',
    ),
    ...(machine.header !== undefined && { header: quoteText(machine.header, '/machine/header') }),
    variant: variantOf(context),
    facts: factsOf(context),
    authority: words.authority,
    cautions: { label: words.labels.caution, cautions: cautionLines(context, plan.cautions, '/cautions') },
    sections,
    marks: { computed: words.computedMark, pictures: words.pictures, legend: words.legend },
  }
}

/** The leak check and the used oil. */
function afterSection(context: CardContext): CardSection {
  const { plan, words } = context
  const { volume, reasons } = plan.usedOil
  const hasRun = plan.steps.some((step) => step.do === 'short run')
  const lines = [
    ...(hasRun ? words.leakAdvice.map(ownWords) : []),
    addLabel(words.labels.usedOil, quantityLine(context, volume, '/usedOil/volume', 'computed')),
    ...reasonLines(context, reasons, '/usedOil/reasons', new Set(['service/used-oil'])),
  ]
  const parts = plan.steps.length === 0 ? [] : listPart(dropEmpty(lines), { box: true })
  return { id: 'after', heading: words.sections.after, parts }
}

/** Missing facts, and findings about the documents. */
function missingSection(context: CardContext, findings: readonly Finding[]): CardSection {
  const { plan, words, catalogue } = context
  const { nothingMissing, findings: heading } = words.labels
  const gaps = plan.missing.map(({ kind, reason }, index) => {
    const from = `/missing/${index}`
    const gap = capitalise(quoteText(words.missingKinds[kind], `${from}/kind`, 'gap'))
    return joinLines([gap, reasonLine(context, reason, `${from}/reason`)], ': ')
  })
  const mistakes = findings.flatMap((finding, index) =>
    finding.severity === 'info'
      ? []
      : [[{ text: renderMessage(finding, catalogue), from: `/findings/${index}` }]],
  )
  const parts = listPart(gaps.length === 0 ? [ownWords(nothingMissing)] : gaps)
  return {
    id: 'missing',
    heading: words.sections.missing,
    parts: [...parts, ...listPart(mistakes, { heading })],
  }
}

/** The pages of one source that the figures of this visit name. */
function pagesOf({ plan, words }: CardContext, source: string): Line {
  const pages = new Map<string, Line>()
  let confidenceLine: Line = []
  for (const [index, { resolved }] of plan.figures.entries()) {
    const ref = resolved.kind === 'cannot tell' ? undefined : resolved.trace.source
    if (ref?.ref !== source) continue
    const from = `/figures/${index}/resolved/trace/source`
    if (ref.page !== undefined && !pages.has(ref.page))
      pages.set(ref.page, quoteText(ref.page, `${from}/page`))
    if (ref.confidence !== 'read')
      confidenceLine = quoteText(words.confidences[ref.confidence], `${from}/confidence`, 'gap')
  }
  const sorted = [...pages].sort(([one], [other]) => Number(one) - Number(other) || (one < other ? -1 : 1))
  const lines = sorted.map(([, line]) => line)
  const list = lines.length === 0 ? [] : [...ownWords(`${words.labels.page} `), ...joinLines(lines, ', ')]
  return joinLines([list, confidenceLine], ', ')
}

/** The sources of the figures, with editions and pages, and the sheet. */
function sourcesSection(context: CardContext): CardSection {
  const { plan, words } = context
  const { labels } = words
  const { id, revision } = plan.machine.sheet
  const lines = Object.entries(plan.sources).map(([name, { title, document, edition, date }]) => {
    const from = `/sources${joinPointer([name])}`
    const word = edition === undefined ? [] : ownWords(`${labels.edition} `)
    return joinLines(
      [
        quoteText(title, `${from}/title`),
        quoteText(words.documents[document], `${from}/document`),
        [...word, ...quoteOptional(edition, `${from}/edition`)],
        quoteOptional(date, `${from}/date`),
        pagesOf(context, name),
      ],
      ', ',
    )
  })
  const sheet: Line = [
    ...addLabel(labels.sheet, quoteText(id, '/machine/sheet/id')),
    ...ownWords(`, ${labels.revision} `),
    ...quoteText(revision, '/machine/sheet/revision'),
  ]
  return { id: 'sources', heading: words.sections.sources, parts: listPart([...lines, sheet]) }
}
