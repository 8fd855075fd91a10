import type { JsonPointer } from '../base/index.js'
import { type Catalogue, renderMessage } from '../message/index.js'
import type { VisitPlan } from '../service/index.js'
import type { CardContext } from './cardContext.js'
import type { Line, Span } from './cardParts.js'
import { capitalised } from './spans.js'
import { type StepPieces, stepPieces } from './stepPieces.js'
import { weaveText } from './weaveText.js'

/** One moment of a script to camera. */
export interface Cue {
  /** The step's id; a caution before it has the id of its step and a number. */
  readonly id: string
  readonly kind: 'opening' | 'caution' | 'step'
  /** What the camera shows. */
  readonly show: string
  /** What the presenter says, with every value in words. */
  readonly say: string
  /** Values to put on the screen while it is said, as the manual prints them, with their place in the plan. */
  readonly screen: readonly Span[]
  readonly from: JsonPointer
  /** How long the sentence takes, in whole seconds. */
  readonly seconds: number
}

const WORDS_A_MINUTE = 140
const SHORTEST_SECONDS = 3

/** Pieces that belong on the screen; names of parts are only spoken. */
const ON_SCREEN = ['torque', 'turns', 'setting', 'volume', 'oil', 'wait', 'temperature'] as const

const write = (line: Line) => line.map(({ text }) => text).join('')

function secondsFor(say: string): number {
  const words = say.split(/\s+/).filter((word) => word !== '').length
  return Math.max(SHORTEST_SECONDS, Math.ceil((words * 60) / WORDS_A_MINUTE))
}

const onScreen = (pieces: StepPieces): Span[] => ON_SCREEN.flatMap((name) => pieces[name] ?? [])

/**
 * A presenter's script for the visit: for each step what the camera shows, what is said, with figures in words, and
 * which figures stand on the screen. For a card to work from use {@link cardModel}.
 *
 * @param plan - from `planVisit`
 * @param catalogue - the language of the script
 * @returns the cues in the order of work; cautions come before their step
 * @throws TypeError when `plan` is no visit plan
 *
 * Source: 140 words a minute, three seconds at least: house rule, slow enough to follow with a wrench in hand.
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
  if (plan?.kind !== 'visit-plan') throw new TypeError("plan must be a visit plan, with kind 'visit-plan'")
  const written: CardContext = { plan, catalogue, words: catalogue.card, form: 'written' }
  const spoken: CardContext = { ...written, form: 'spoken' }
  const { name } = plan.machine
  const opening = [name, ...catalogue.card.authority]
    .map((text) => (/[.!?]$/.test(text) ? text : `${text}.`))
    .join(' ')
  const screen: Span[] = [{ text: name, from: '/machine/name' }]
  const cues: Cue[] = [
    {
      id: 'opening',
      kind: 'opening',
      show: catalogue.card.cues.opening,
      say: opening,
      screen,
      from: '/machine',
      seconds: secondsFor(opening),
    },
  ]
  for (const [index, step] of plan.steps.entries()) {
    const from = `/steps/${index}`
    const text = catalogue.steps[step.do]
    const { pieces, choices } = stepPieces(spoken, step, index, 'alone')
    for (const [place, caution] of step.cautions.entries()) {
      const say = renderMessage(caution, catalogue)
      const at = `${from}/cautions/${place}`
      cues.push({
        id: `${step.id}-caution-${place + 1}`,
        kind: 'caution',
        show: catalogue.card.cues.caution,
        say,
        screen: [],
        from: at,
        seconds: secondsFor(say),
      })
    }
    const say = write(capitalised(weaveText(pieces, (signs) => text.full({ ...signs, ...choices }))))
    const show = write(capitalised(weaveText(pieces, (signs) => text.show({ ...signs, ...choices }))))
    const values = onScreen(stepPieces(written, step, index, 'alone').pieces).map(
      ({ text: value, from: at }) => (at === undefined ? { text: value } : { text: value, from: at }),
    )
    cues.push({ id: step.id, kind: 'step', show, say, screen: values, from, seconds: secondsFor(say) })
  }
  return cues
}
