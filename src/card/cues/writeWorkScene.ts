import type { JsonPointer, Reason } from '../../base/index.js'
import type { OnceShot } from '../../message/index.js'
import type { PlannedStep } from '../../service/index.js'
import { type CardContext, quoteName, writeCautions } from '../cardContext.js'
import type { CardCaution, Line } from '../cardParts.js'
import type { Cue, CueShot, CueSpeech } from '../cueParts.js'
import { capitalise, joinSpans, quoteText, writeWords } from '../spans.js'
import { writeLine } from '../writeLine.js'
import type { WorkScene } from './groupScenes.js'
import { type PlacedStep, writeScreen } from './writeScreen.js'

/** The contexts of a script: for the screen, and for the voice. */
export interface CueContexts {
  readonly written: CardContext
  readonly spoken: CardContext
}

/** Actions with a wait that is not filmed. */
const WAITING: ReadonlySet<PlannedStep['do']> = new Set([
  'let drain',
  'wait for the hose',
  'wait for the cure',
  'let settle',
  'let a leak show',
  'warm the oil',
  'short run',
])

/** The actions that happen only once on each part. */
const UNREPEATABLE_SHOTS: { readonly [Action in PlannedStep['do']]?: OnceShot } = {
  'crack loose': 'first crack',
  'take off cover': 'first oil',
  'let drain': 'first oil',
  'suck out the oil': 'first oil',
  'inspect the magnet': 'magnet',
}

/**
 * Cautions to speak before the action and to keep on the screen, each once per scene. The priority of the manual is in
 * the opening scene.
 */
export function addCautions(
  { written }: CueContexts,
  cautions: readonly Reason[],
  pointer: JsonPointer,
  scene: { readonly hold: CardCaution[]; readonly say: CueSpeech[] },
): void {
  for (const [index, caution] of cautions.entries()) {
    const from = `${pointer}/${index}`
    for (const { line, ...held } of writeCautions(written, [caution], pointer)) {
      const text = joinSpans(line)
      if (scene.say.some((speech) => speech.text === text)) continue
      scene.say.push({ kind: 'caution', text, from })
      scene.hold.push({ ...held, line: line.map((span) => ({ ...span, from })) })
    }
  }
}

/** The scene of some lines of the plan. `seen` has the shots of earlier scenes that cannot be repeated. */
export function writeWorkScene(
  contexts: CueContexts,
  { kind, gearcase, lines }: WorkScene,
  seen: Set<string>,
): Omit<Cue, 'seconds'> {
  const { written, spoken } = contexts
  const { cues } = written.catalogue
  const withGearcase = gearcase === undefined
  const shots: CueShot[] = []
  const say: CueSpeech[] = []
  const hold: CardCaution[] = []
  const placed: PlacedStep[] = []
  let part: Line = []
  let place: { readonly at: number; readonly from: JsonPointer } | undefined
  for (const { line, index } of lines) {
    const { steps, writeText } = writeLine(spoken, line, withGearcase)
    const { writeShots } = writeLine(written, line, withGearcase)
    const own = steps.find(({ step }) => step.part?.gearcase !== undefined)
    if (part.length === 0 && !withGearcase && own !== undefined) {
      part = writeGearcase(own)
      place = { at: say.length, from: `/lines/${index}` }
    }
    placed.push(...steps)
    for (const { step, index: stepIndex } of steps)
      addCautions(contexts, step.cautions, `/steps/${stepIndex}/cautions`, { hold, say })
    say.push({ kind: 'step', text: joinSpans(writeText('full')), from: `/lines/${index}` })
    for (const [position, shot] of writeShots().entries()) {
      const step = steps[position]?.step
      const text = joinSpans(capitalise(shot))
      if (step === undefined || shots.some((earlier) => earlier.text === text)) continue
      shots.push({ text, ...markShot(step, seen) })
    }
  }
  const heading = writeWords(cues.scenes[kind])
  const screen = writeScreen(written, placed, withGearcase)
  if (place !== undefined) {
    const text = writePlace(contexts, joinSpans(part), screen.length > 0)
    say.splice(place.at, 0, { kind: 'place', text, from: place.from })
  }
  return {
    id: lines[0]?.line.steps[0] ?? kind,
    kind,
    title: part.length === 0 ? heading : [...capitalise(part), ...writeWords(': '), ...heading],
    shots,
    say,
    hold,
    screen: screen.length === 0 ? [] : [writeVariant(written), ...screen],
    from: `/lines/${lines[0]?.index ?? 0}`,
  }
}

/** `hub reduction (left)` */
function writeGearcase({ step: { part }, index }: PlacedStep): Line {
  const pointer = `/steps/${index}/part`
  const name = quoteText(part?.gearcase ?? '', `${pointer}/gearcase`)
  if (part?.instance === undefined) return name
  const instance = quoteText(part.instance.name, `${pointer}/instance/name`)
  return [...name, ...writeWords(' ('), ...instance, ...writeWords(')')]
}

/** The place of the work, with the variant if figures follow. */
function writePlace({ spoken }: CueContexts, part: string, hasFigures: boolean): string {
  const { cues, speech } = spoken.catalogue
  const { variant } = spoken.plan.machine
  return cues.place({
    part: speech.name(part),
    ...(variant.verdict === 'one' &&
      hasFigures && { variant: joinSpans(quoteName(spoken, variant.name, '/machine/variant/name')) }),
  })
}

/** The variant above the figures on the screen. */
function writeVariant({ plan, words }: CardContext): Line {
  const { variant } = plan.machine
  if (variant.verdict === 'one') return quoteText(variant.name, '/machine/variant/name')
  const missing = variant.missing.map((fact) => words.identityFacts[fact])
  return quoteText(words.cannotTell(missing), '/machine/variant/missing', 'gap')
}

/** Whether the shot is cut at a wait, and whether it can be repeated. */
function markShot(step: PlannedStep, seen: Set<string>): Pick<CueShot, 'once' | 'isCut'> {
  const once = UNREPEATABLE_SHOTS[step.do]
  const key = `${once} ${step.part?.path} ${step.part?.instance?.id ?? ''}`
  const isFirst = once !== undefined && !seen.has(key)
  if (isFirst) seen.add(key)
  return { ...(isFirst && { once }), ...(WAITING.has(step.do) && { isCut: true }) }
}
