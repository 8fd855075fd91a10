import type { JsonPointer } from '../../base/index.js'
import type { SceneKind } from '../../message/index.js'
import type { PlannedDue, VariantDifference } from '../../service/index.js'
import {
  quoteName,
  type TextContext,
  writePart,
  writeQuantity,
  writeReason,
  writeReasons,
} from '../cardContext.js'
import type { CardCaution, Line } from '../cardParts.js'
import type { Cue, CueSpeech } from '../cueParts.js'
import {
  addLabel,
  capitalise,
  joinLines,
  joinSpans,
  quoteOptionalText,
  quoteText,
  writeWords,
} from '../spans.js'
import { writeFigure } from '../writeFigure.js'
import { writePeriod } from '../writeInterval.js'
import { writeShownFigure } from './writeScreen.js'
import { addCautions, type CueContexts } from './writeWorkScene.js'

export type SceneDraft = Omit<Cue, 'seconds'>

function makeScene(
  { written: { catalogue } }: CueContexts,
  kind: Extract<SceneKind, 'opening' | 'interval' | 'tools' | 'variants'>,
  from: JsonPointer,
  sentences: readonly string[],
  screen: readonly Line[],
): SceneDraft & { readonly say: CueSpeech[]; readonly hold: CardCaution[] } {
  return {
    id: kind,
    kind,
    title: writeWords(catalogue.cues.scenes[kind]),
    shots: [{ text: catalogue.cues.shots[kind] }],
    say: sentences.filter((text) => text !== '').map((text): CueSpeech => ({ kind: 'step', text, from })),
    hold: [],
    screen: screen.filter((line) => line.length > 0),
    from,
  }
}

/** Writes a text with its numbers in words. */
const makeSayText =
  ({ spoken }: CueContexts) =>
  (text: string) =>
    joinSpans(quoteName(spoken, text, ''))

/** The machine, its variant, the work, and the cautions of the whole visit. */
export function writeOpening(contexts: CueContexts): SceneDraft {
  const { plan, catalogue } = contexts.written
  const { cues } = catalogue
  const sayText = makeSayText(contexts)
  const { machine } = plan
  const partsByService = new Map<string, { readonly shown: Line; readonly parts: Line[] }>()
  for (const [index, { serviceName, part }] of plan.work.entries()) {
    const partLine = writePart(part, `/work/${index}/part`)
    const service = partsByService.get(serviceName)
    if (service !== undefined) service.parts.push(partLine)
    else
      partsByService.set(serviceName, {
        shown: capitalise(quoteText(serviceName, `/work/${index}/serviceName`)),
        parts: [partLine],
      })
  }
  const services = [...partsByService.entries()]
  const known = machine.variant.verdict === 'one' ? machine.variant.name : undefined
  const model = joinLines(
    [quoteText(machine.make, '/machine/make'), quoteText(machine.model, '/machine/model')],
    ' ',
  )
  const scene = makeScene(
    contexts,
    'opening',
    '/machine',
    [
      cues.opening({
        machine: sayText(machine.name),
        ...(known !== undefined && { variant: sayText(known) }),
        work: services.map(([service, { parts }]) => ({
          service: sayText(service),
          parts: parts.map((line) => sayText(joinSpans(line))),
        })),
      }),
      ...cues.authority,
    ],
    [
      joinLines([quoteText(machine.name, '/machine/name'), model], ' · '),
      quoteOptionalText(known, '/machine/variant/name'),
      ...services.map(([, { shown, parts }]) => [...shown, ...writeWords(': '), ...joinLines(parts, ', ')]),
    ],
  )
  addCautions(contexts, plan.cautions, '/cautions', scene)
  return scene
}

/** The limits of each service of the visit; gearcases with the same limits share a sentence. */
export function writeIntervalScene(contexts: CueContexts): SceneDraft {
  const { written, spoken } = contexts
  const { plan, catalogue } = written
  const sayText = makeSayText(contexts)
  const groups = new Map<string, { readonly due: PlannedDue; readonly index: number }>()
  for (const { due: pointer } of plan.work) {
    const index = Number(pointer.split('/')[2])
    const due = plan.due[index]
    if (due === undefined) continue
    const key = JSON.stringify([due.serviceName, due.lines.map(({ limit, printed }) => [limit, printed])])
    if (!groups.has(key)) groups.set(key, { due, index })
  }
  const services = [...groups.values()].map(({ due, index }) => {
    const pointer = `/due/${index}`
    const limits = writeLimits(written, due, pointer)
    const sentence = catalogue.cues.interval({
      service: sayText(due.serviceName),
      limits: writeLimits(spoken, due, pointer).map(joinSpans),
    })
    const service = capitalise(quoteText(due.serviceName, `${pointer}/serviceName`))
    const unknown = writeReasons(written, due.missing, `${pointer}/missing`)
    const line = joinLines(limits, ` ${written.words.labels.or} `)
    return {
      sentence,
      lines: [[...addLabel(joinSpans(service), line)], ...(limits.length === 0 ? unknown : [])],
    }
  })
  const use =
    plan.severity === 'normal' ? [] : quoteText(written.words.severities[plan.severity], '/severity')
  return makeScene(
    contexts,
    'interval',
    '/due',
    services.map(({ sentence }) => sentence),
    [...services.flatMap(({ lines }) => lines), addLabel(written.words.labels.use, use)],
  )
}

/** The limits as the manual prints them: `200 h`, `1200 mi`, `12 months`. */
function writeLimits(context: TextContext, { lines }: PlannedDue, pointer: JsonPointer): Line[] {
  return lines.flatMap(({ limit, printed }, index): Line[] => {
    if (limit === undefined) return []
    const from = `${pointer}/lines/${index}`
    if ('period' in limit) {
      const period = writePeriod(context, limit.period, `${from}/limit/period`)
      if (context.form === 'written') return [period]
      return [period.map((span) => ({ ...span, text: context.catalogue.speech.name(span.text) }))]
    }
    const { value, unit } = printed ?? limit
    return [
      writeQuantity(context, { value: Number(value), unit }, printed ? `${from}/printed` : `${from}/limit`),
    ]
  })
}

/** Wrenches, sockets, oil and seals to show, and the facts that are missing. */
export function writeToolsScene(contexts: CueContexts): SceneDraft {
  const { written, spoken } = contexts
  const { plan, words, catalogue } = written
  const { cues } = catalogue
  const sayText = makeSayText(contexts)
  const wrenches = plan.tightenings.map(({ wrench }, index) =>
    quoteOptionalText(wrench?.name, `/tightenings/${index}/wrench/name`),
  )
  const tools = plan.tools.map(({ have, drive }, index) =>
    drive?.kind === 'hand' ? [] : quoteOptionalText(have?.name, `/tools/${index}/have/name`),
  )
  const byName = new Map([...tools, ...wrenches].map((line) => [joinSpans(line), line]))
  byName.delete('')
  const oils = plan.oil.map((oil, index) => {
    const pointer = `/oil/${index}`
    const amount = [oil.needed, `${pointer}/needed`] as const
    const volume = joinSpans(writeQuantity(spoken, ...amount))
    const sentence = cues.oil({
      part: sayText(joinSpans(writePart(oil.part, `${pointer}/part`))),
      ...(volume !== '' && { volume }),
      ...(oil.choice !== undefined && { oil: sayText(oil.choice) }),
    })
    const shown = [writeQuantity(written, ...amount), quoteOptionalText(oil.choice, `${pointer}/choice`)]
    const line = addLabel(
      joinSpans(capitalise(writePart(oil.part, `${pointer}/part`))),
      joinLines(shown, ' '),
    )
    return { sentence, line }
  })
  const counts = new Map<string, number>()
  for (const { seal, count } of plan.seals)
    if (seal.kind !== 'none' && seal.kind !== 'not stated')
      counts.set(words.seals[seal.kind], (counts.get(words.seals[seal.kind]) ?? 0) + count)
  const missing = plan.missing.map(({ reason }, index) =>
    writeReason(written, reason, `/missing/${index}/reason`),
  )
  return makeScene(
    contexts,
    'tools',
    '/tools',
    [
      cues.tools([...byName.keys()].map(sayText)),
      ...oils.map(({ sentence }) => sentence),
      cues.seals([...counts].map(([kind, count]) => ({ count, kind }))),
    ],
    [
      ...byName.values(),
      ...oils.map(({ line }) => line),
      ...missing.map((line) => addLabel(cues.labels.missing, line)),
    ],
  )
}

/** Figures in which other variants differ, of the parts of this visit. */
export function writeVariantsScene(
  contexts: CueContexts,
  differences: readonly VariantDifference[],
): SceneDraft | undefined {
  const { written, spoken } = contexts
  const { plan, catalogue } = written
  const { cues } = catalogue
  const sayText = makeSayText(contexts)
  const own = plan.machine.variant.verdict === 'one' ? plan.machine.variant.id : undefined
  const paths = new Set(plan.figures.map(({ path }) => path))
  const rows = differences.flatMap(({ path, role, part, variants }, index) => {
    // The place has the same in words.
    if (!paths.has(path) || role === 'position') return []
    const pointer = `/differences/${index}`
    const name = joinLines([writePart(part, `${pointer}/part`), writeWords(cues.figure(role))], ', ')
    return variants.flatMap(({ variant, name: variantName, resolved }, variantIndex) => {
      if (variant === own) return []
      const from = `${pointer}/variants/${variantIndex}`
      const value = joinSpans(writeFigure(spoken, { path, resolved }, from).main)
      return [
        {
          sentence: cues.otherVariant({
            variant: sayText(variantName),
            role: cues.figure(role),
            ...(part.gearcase !== undefined && { gearcase: sayText(part.gearcase) }),
            ...(part.part !== undefined && { part: sayText(part.part) }),
            value: role === 'place' || role === 'oils' ? sayText(value) : value,
          }),
          line: [
            ...quoteText(variantName, `${from}/name`),
            ...writeWords(': '),
            ...name,
            ...writeWords(': '),
            ...writeShownFigure(written, { path, resolved }, from),
          ],
        },
      ]
    })
  })
  if (rows.length === 0) return undefined
  return makeScene(
    contexts,
    'variants',
    '/machine/variant',
    rows.map(({ sentence }) => sentence),
    rows.map(({ line }) => line),
  )
}
