import type { JsonPointer, Reason } from '../base/index.js'
import { type CardWords, type Catalogue, renderMessage, showAmount, showQuantity } from '../message/index.js'
import type { Quantity } from '../quantity/index.js'
import type { PartName, VisitPlan } from '../service/index.js'
import type { CardCaution, Line, SpanTone } from './cardParts.js'
import { capitalise, joinLines, ownWords, plainText, quoteOptional, quoteText } from './spans.js'

/** The plan and the language of a card. */
export interface CardContext {
  readonly plan: VisitPlan
  readonly catalogue: Catalogue
  readonly words: CardWords
  /** `spoken`: figures are written in words. */
  readonly form: 'written' | 'spoken'
}

const SPEECH_MARKS = { decimal: '.', group: '' } as const

/** A calculated or measured quantity of the plan; empty if it is not known. */
export function quantityLine(
  { catalogue: { marks, speech }, form }: CardContext,
  quantity: Quantity | undefined,
  from: JsonPointer,
  tone?: SpanTone,
): Line {
  if (quantity === undefined) return []
  const { value, unit } = quantity
  if (form === 'spoken')
    return quoteText(speech.quantity(showAmount(quantity, SPEECH_MARKS) ?? String(value), unit), from, tone)
  return quoteText(showQuantity({ value, unit }, marks) ?? `${value} ${unit}`, from, tone)
}

/** A time in whole seconds; empty if it is not known. */
export function durationLine(
  { catalogue, words, form }: CardContext,
  seconds: number | undefined,
  from: JsonPointer,
  tone?: SpanTone,
): Line {
  if (seconds === undefined) return []
  return quoteText((form === 'spoken' ? catalogue.speech : words).duration(seconds), from, tone)
}

/** A reason of the plan as a whole sentence. */
export function reasonLine({ catalogue }: CardContext, reason: Reason, from: JsonPointer): Line {
  return capitalise([{ text: renderMessage(reason, catalogue), from }])
}

/** Reasons as sentences, except those that other lines already show. */
export function reasonLines(
  context: CardContext,
  reasons: readonly Reason[],
  from: JsonPointer,
  shown?: ReadonlySet<string>,
): Line[] {
  const lines = new Map<string, Line>()
  for (const [index, reason] of reasons.entries()) {
    const line = reasonLine(context, reason, `${from}/${index}`)
    const text = plainText(line)
    if (shown?.has(reason.code) !== true && !lines.has(text)) lines.set(text, line)
  }
  return [...lines.values()]
}

/**
 * Cautions of the plan, without those in the head of the card. A caution whose text has a signal word gets none in front.
 */
export function cautionLines(
  context: CardContext,
  cautions: readonly Reason[],
  from: JsonPointer,
): CardCaution[] {
  return cautions.flatMap((caution, index): CardCaution[] => {
    if (caution.code === 'service/manual-first' || caution.code === 'service/licensed-work') return []
    const line = reasonLine(context, caution, `${from}/${index}`)
    const { signal } = caution.params
    if (signal === undefined) return [{ word: context.words.labels.caution, line }]
    return [signal === 'notice' ? { notice: true, line } : { line }]
  })
}

/** A part such as `drain plug (left)`, with its gearcase in front if no heading names it. */
export function partLine(part: PartName, from: JsonPointer, withGearcase = true): Line {
  const gearcase = withGearcase || part.part === undefined ? part.gearcase : undefined
  const names = [quoteOptional(gearcase, `${from}/gearcase`), quoteOptional(part.part, `${from}/part`)]
  const name = joinLines(names, ', ')
  const shown = name.length === 0 && part.path !== '' ? quoteText(part.path, `${from}/path`) : name
  if (part.instance === undefined) return shown
  return [
    ...shown,
    ...ownWords(' ('),
    ...quoteText(part.instance.name, `${from}/instance/name`),
    ...ownWords(')'),
  ]
}

/** The entry of a list of the plan for a pointer such as `/figures/3`. */
export function entryAt<Name extends 'figures' | 'oil' | 'tightenings' | 'waits'>(
  { plan }: CardContext,
  name: Name,
  pointer: JsonPointer | undefined,
):
  | { readonly entry: VisitPlan[Name][number]; readonly from: JsonPointer; readonly index: number }
  | undefined {
  const found = new RegExp(`^/${name}/(0|[1-9][0-9]*)$`).exec(pointer ?? '')
  const index = Number(found?.[1] ?? -1)
  const entry = plan[name][index]
  return entry === undefined ? undefined : { entry, from: `/${name}/${index}`, index }
}
