import type { JsonPointer } from '../base/index.js'
import { type Catalogue, renderMessage } from '../message/index.js'
import type { VisitPlan } from '../service/index.js'
import type { CardContext } from './cardContext.js'
import type { Span } from './cardParts.js'
import { requirePlan } from './requirePlan.js'
import { requireWords } from './requireWords.js'
import { joinSpans } from './spans.js'
import { writeLine } from './writeLine.js'

/** A part of a presenter's script. */
export interface Cue {
  /** The id of the first step of the line. For a caution, the id of its step and a number. */
  readonly id: string
  readonly kind: 'opening' | 'caution' | 'step'
  /** The camera shot. */
  readonly show: string
  /** The spoken text, with all values in words. */
  readonly say: string
  /** Values to show on the screen, as the manual prints them, with pointers into the plan. */
  readonly screen: readonly Span[]
  readonly from: JsonPointer
  /** Speaking time in whole seconds. */
  readonly seconds: number
}

const WORDS_PER_MINUTE = 140
const MIN_SECONDS = 3

/** Pieces for the screen. Names of parts are spoken but not shown. */
const SCREEN_PIECES = ['torque', 'turns', 'setting', 'volume', 'oil', 'wait', 'temperature'] as const

function estimateSeconds(say: string): number {
  const words = say.split(/\s+/).filter((word) => word !== '').length
  return Math.max(MIN_SECONDS, Math.ceil((words * 60) / WORDS_PER_MINUTE))
}

/**
 * Writes a presenter's script for the visit. Each line of steps has a camera shot, the spoken text with figures in
 * words, and the figures on the screen. For a card for the technician, use {@link cardModel}.
 *
 * @param plan - from `planVisit`
 * @param catalogue - the language of the script
 * @returns the cues in the order of work, with cautions before their line
 * @throws TypeError if `plan` is not a visit plan, or `catalogue` is not a language
 *
 * Source: house rule: 140 words a minute and a minimum of three seconds, slow enough to follow during the work.
 *
 * @example
 * ```ts
 * import { cueList } from 'drivetrain-service/v1/card'
 * import { en } from 'drivetrain-service/v1/message/en'
 * import { planVisit } from 'drivetrain-service/v1/service'
 * const machine = { make: 'Invented', model: 'Example', type: 'carrier', variants: { only: { name: 'Only' } }, axles: {}, supports: {} }
 * const sheet = { kind: 'spec-sheet', version: '1.0', id: 'example', revision: '1', machine, sources: {}, gearcases: {}, services: {} } as const
 * const log = { kind: 'machine-log', version: '1.0', id: 'one', name: 'Station 1', sheet: { id: 'example', revision: '1' }, identity: {}, meters: {}, records: [] } as const
 * const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
 * const planned = planVisit({ sheet, log, today: '2031-10-06' }, { services: 'due', due, iso6789: '2017' })
 * if (!planned.ok) throw new Error('no plan')
 * // What does the presenter say first?
 * cueList(planned.value, en)[0]?.say // => "Station 1. The machine's own manual and the local codes come before this card. Leave work that needs a licence to people who hold one."
 * ```
 */
export function cueList(plan: VisitPlan, catalogue: Catalogue): Cue[] {
  requirePlan('plan', plan)
  requireWords(catalogue)
  const writtenContext: CardContext = { plan, catalogue, words: catalogue.card, form: 'written' }
  const spokenContext: CardContext = { ...writtenContext, form: 'spoken' }
  const { authority, cues: cueWords } = catalogue.card
  const { name } = plan.machine
  const makeCue = (
    id: string,
    kind: Cue['kind'],
    pointer: JsonPointer,
    show: string,
    say: string,
    screen: readonly Span[] = [],
  ): Cue => ({ id, kind, show, say, screen, from: pointer, seconds: estimateSeconds(say) })
  const opening = [name, ...authority].map((text) => (/[.!?]$/.test(text) ? text : `${text}.`)).join(' ')
  const screen = [{ text: name, from: '/machine/name' }]
  const cues = [makeCue('opening', 'opening', '/machine', cueWords.opening, opening, screen)]
  for (const [index, line] of plan.lines.entries()) {
    const { steps, writeText } = writeLine(spokenContext, line, true)
    for (const { step, index: stepIndex } of steps)
      for (const [cautionIndex, caution] of step.cautions.entries()) {
        const id = `${step.id}-caution-${cautionIndex + 1}`
        const say = renderMessage(caution, catalogue)
        cues.push(
          makeCue(id, 'caution', `/steps/${stepIndex}/cautions/${cautionIndex}`, cueWords.caution, say),
        )
      }
    const values = writeLine(writtenContext, line, true)
      .pieces.flatMap((pieces) => SCREEN_PIECES.flatMap((pieceName) => pieces[pieceName] ?? []))
      .map(({ tone: _tone, ...span }) => span)
    const [id = ''] = line.steps
    cues.push(
      makeCue(
        id,
        'step',
        `/lines/${index}`,
        joinSpans(writeText('show')),
        joinSpans(writeText('full')),
        values,
      ),
    )
  }
  return cues
}
