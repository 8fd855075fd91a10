import { requireShape, requireTree, type Shape } from '../base/index.js'
import type { Catalogue } from '../message/index.js'
import type { OwnerSlip } from '../service/index.js'
import { writeCautions, writePart, writeQuantity, writeReason } from './cardContext.js'
import type { CardModel, CardSection, Line } from './cardParts.js'
import { finishCard } from './finishCard.js'
import { DUE_SHAPE } from './requirePlan.js'
import { requireWords } from './requireWords.js'
import { type ListItem, type SlipContext, writeWork } from './slip/slipContext.js'
import { writeDone } from './slip/writeDone.js'
import { writeFound } from './slip/writeFound.js'
import { writeNext } from './slip/writeNext.js'
import { joinLines, makeListPart, quoteOptionalText, quoteText, writeWords } from './spans.js'
import { writeAuthority } from './writeAuthority.js'

const PART_SHAPE = [{ part: { path: 'string' }, 'torque?': {} }] as const
/** The objects and lists of a slip that a card reads. */
const SLIP_SHAPE: Shape = {
  machine: { sheet: {}, identity: {}, variant: {} },
  readings: { 'hours?': {}, 'distance?': {} },
  corrections: [{}],
  faults: [{ finding: { code: 'string', params: {} } }],
  work: [
    {
      part: { path: 'string' },
      'notDone?': { code: 'string', params: {} },
      'refilled?': {},
      'oil?': {},
      'sample?': {},
      tightened: PART_SHAPE,
      seals: PART_SHAPE,
      filters: PART_SHAPE,
    },
  ],
  shields: PART_SHAPE,
  notes: ['string'],
  due: [DUE_SHAPE],
  samples: PART_SHAPE,
}

/**
 * Builds the owner's slip as a card with the open faults, the work done, the findings, the work not done, the next
 * services and the oil samples. Write it with {@link renderHtml}, {@link renderMarkdown} or {@link renderText}. Its lines
 * have pointers into the slip.
 *
 * @param slip - the result of `ownerSlip`
 * @param catalogue - the language of the slip; import it from `/v1/message/en`
 * @returns plain JSON without a time stamp: the same slip gives the same card
 * @throws TypeError if `slip` is not an owner's slip, or `catalogue` is not a language
 *
 * @example
 * ```ts
 * import { renderText, slipModel } from 'drivetrain-service/v1/card'
 * import { en } from 'drivetrain-service/v1/message/en'
 * import { ownerSlip } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const entry = { service: 'change', gearcase: 'rear', notDone: 'the plug is seized', opened: [], tightened: [], seals: [] }
 * const record = {
 *   kind: 'service-record', version: '1.0', id: 'r', machine: 'one', sheet: { id: 'example', revision: '1' },
 *   detail: 'full', date: '2031-10-06', readings: {}, entries: [entry],
 * } as const
 * const log = {
 *   kind: 'machine-log', version: '1.0', id: 'one', name: 'One', sheet: record.sheet, identity: {}, meters: {}, records: [record],
 * } as const
 * const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * const slip = ownerSlip({ sheet, log, today: '2031-10-07', faults: [] }, { due })
 * // What is the last line?
 * renderText(slipModel(slip, en)).trim().split('\n').at(-1) // => '    Not done: the plug is seized.'
 * ```
 */
export function slipModel(slip: OwnerSlip, catalogue: Catalogue): CardModel {
  const advice = 'pass the result of ownerSlip'
  if (slip?.kind !== 'owner-slip')
    throw new TypeError(`slip must be an owner's slip, with kind 'owner-slip'; ${advice}`)
  requireTree('slip', slip)
  requireShape('slip', slip, SLIP_SHAPE, advice)
  requireWords(catalogue)
  const context: SlipContext = { slip, catalogue, words: catalogue.card, form: 'written' }
  const { card: words, slip: slipWords } = catalogue
  const { labels, sections: headings, title } = slipWords
  const { machine, faults } = slip
  const cautions = faults.map(({ date, finding: { code, params } }) => ({
    code: 'service/not-to-be-used',
    params: { signal: 'warning', date, fault: { code, params } },
  }))
  const isUsable = faults.length === 0
  const sections = [
    { id: 'done', parts: makeListPart(writeDone(context)) },
    { id: 'found', parts: makeListPart(writeFound(context)) },
    { id: 'notDone', parts: makeListPart(writeNotDone(context)) },
    { id: 'next', parts: makeListPart(writeNext(context)) },
    { id: 'samples', parts: makeListPart(writeSamples(context)) },
  ] as const
  return finishCard(
    {
      kind: 'service-card',
      version: '1.0',
      language: catalogue.language,
      direction: catalogue.direction,
      extent: 'slip',
      title,
      shortTitle: title,
      machine: quoteText(machine.name, '/machine/name'),
      about: joinLines(
        (['make', 'model', 'type'] as const).map((name) => quoteText(machine[name], `/machine/${name}`)),
        ' · ',
      ),
      ...(machine.header !== undefined && { header: quoteText(machine.header, '/machine/header') }),
      variant: {
        known: true,
        label: labels.use,
        lines: [writeWords(isUsable ? labels.usable : labels.notToBeUsed)],
      },
      facts: writeFacts(context),
      authority: writeAuthority(slipWords.authority, catalogue),
      cautions: { label: words.labels.caution, cautions: writeCautions(context, cautions, '/faults') },
      sections: sections.flatMap((section): CardSection[] =>
        section.parts.length === 0 ? [] : [{ ...section, heading: headings[section.id] }],
      ),
    },
    words,
  )
}

function writeFacts(context: SlipContext): CardModel['facts'] {
  const { slip, words, catalogue } = context
  const { labels } = words
  const { by, corrected, record } = catalogue.slip.labels
  const { readings, machine } = slip
  const { variant, identity } = machine
  const dates = slip.corrections.map(({ date }, correctionIndex) =>
    quoteText(date, `/corrections/${correctionIndex}/date`),
  )
  const facts: CardModel['facts'] = [
    { label: labels.today, value: quoteText(slip.date, '/date') },
    { label: labels.hours, value: writeQuantity(context, readings.hours, '/readings/hours') },
    { label: labels.distance, value: writeQuantity(context, readings.distance, '/readings/distance') },
    { label: by, value: quoteOptionalText(slip.by, '/by') },
    { label: labels.serial, value: quoteOptionalText(identity.serial, '/machine/identity/serial') },
    {
      label: labels.variant,
      value: variant.verdict === 'one' ? quoteText(variant.name, '/machine/variant/name') : [],
    },
    { label: record, value: quoteText(slip.record, '/record') },
    { label: corrected, value: joinLines(dates, ', ') },
  ]
  return facts.filter(({ value }) => value.length > 0)
}

function writeNotDone(context: SlipContext): ListItem[] {
  return context.slip.work.flatMap((work, index): ListItem[] => {
    const pointer = `/work/${index}`
    if (work.notDone === undefined) return []
    return [
      { line: writeWork(work, pointer), notes: [writeReason(context, work.notDone, `${pointer}/notDone`)] },
    ]
  })
}

function writeSamples({ slip, catalogue }: SlipContext): Line[] {
  const { sample: label, noResult } = catalogue.slip.labels
  return slip.samples.map(({ part, bottle, date, laboratory }, index) => {
    const pointer = `/samples/${index}`
    const about = [
      [...writeWords(`${label} `), ...quoteText(bottle, `${pointer}/bottle`)],
      writePart(part, `${pointer}/part`),
      quoteText(date, `${pointer}/date`),
      quoteOptionalText(laboratory, `${pointer}/laboratory`),
    ]
    return joinLines([joinLines(about, ', '), writeWords(noResult)], ': ')
  })
}
