import type { Catalogue } from '../message/index.js'
import type { VariantDifference, VisitPlan } from '../service/index.js'
import type { Cue, CueSpeech } from './cueParts.js'
import { groupScenes } from './cues/groupScenes.js'
import {
  type SceneDraft,
  writeIntervalScene,
  writeOpening,
  writeToolsScene,
  writeVariantsScene,
} from './cues/writeTalkScenes.js'
import { type CueContexts, writeWorkScene } from './cues/writeWorkScene.js'
import { requirePlan } from './requirePlan.js'
import { requireWords } from './requireWords.js'
import { setSigns } from './setSigns.js'

const WORDS_PER_MINUTE = 140
const MIN_SECONDS = 3

/**
 * Writes a presenter's script for the visit, one cue per scene: the camera shots, the spoken text with figures in
 * words, and the figures on the screen. Waits are cut out; a shot that cannot be repeated is marked. To write the script,
 * use {@link paperModel}; to write captions, {@link renderWebVtt}.
 *
 * @param plan - from `planVisit`
 * @param catalogue - the language of the script
 * @param differences - from `listVariantDifferences`, for the scene about other variants
 * @returns the scenes in the order of work. Pointers are into the plan, or into the differences (`/differences/0`)
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
 * cueList(planned.value, en)[0]?.say[0]?.text // => 'This is Station one, the Only.'
 * ```
 */
export function cueList(
  plan: VisitPlan,
  catalogue: Catalogue,
  differences: readonly VariantDifference[] = [],
): Cue[] {
  requirePlan('plan', plan)
  requireWords(catalogue)
  const contexts = makeContexts(plan, catalogue)
  const seen = new Set<string>()
  const work = groupScenes(plan).map((scene) => writeWorkScene(contexts, scene, seen))
  const closing = work.at(-1)?.kind === 'closing' ? work.slice(-1) : []
  const variants = writeVariantsScene(contexts, differences)
  const scenes: SceneDraft[] = [
    writeOpening(contexts),
    ...(plan.work.length === 0 ? [] : [writeIntervalScene(contexts), writeToolsScene(contexts)]),
    ...(variants === undefined ? [] : [variants]),
    ...work.slice(0, work.length - closing.length),
    ...closing.map((scene) => addClosing(scene, catalogue)),
  ]
  const cues = scenes.map((scene) => ({ ...scene, seconds: estimateSeconds(scene.say) }))
  return setSigns(cues, catalogue.card)
}

/** If the manual prints a volume in cc, the script says volumes in cc. */
function makeContexts(plan: VisitPlan, catalogue: Catalogue): CueContexts {
  const { speech } = catalogue
  const usesCc = /"asPrinted":"[^"]*\bcc\b|"unit":"cm3"/.test(JSON.stringify(plan.figures))
  const spokenCatalogue: Catalogue = {
    ...catalogue,
    speech: {
      ...speech,
      quantity: (digits, unit) => speech.quantity(digits, usesCc && unit === 'mL' ? 'cm3' : unit),
    },
  }
  return {
    written: { plan, catalogue, words: catalogue.card, form: 'written' },
    spoken: { plan, catalogue: spokenCatalogue, words: catalogue.card, form: 'spoken' },
  }
}

function addClosing(scene: SceneDraft, { cues }: Catalogue): SceneDraft {
  const sentences = cues.closing.map((text): CueSpeech => ({ kind: 'step', text, from: scene.from }))
  return {
    ...scene,
    shots: [...scene.shots, { text: cues.shots.closing }],
    say: [...scene.say, ...sentences],
  }
}

function estimateSeconds(say: Cue['say']): number {
  const words = say.flatMap(({ text }) => text.split(/\s+/)).filter((word) => word !== '').length
  return Math.max(MIN_SECONDS, Math.ceil((words * 60) / WORDS_PER_MINUTE))
}
