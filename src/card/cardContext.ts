import type { JsonPointer, Reason } from '../base/index.js'
import { type CardWords, type Catalogue, renderMessage, showAmount, showQuantity } from '../message/index.js'
import { type Figure, formatNumber, type Quantity } from '../quantity/index.js'
import type { PartName, VisitPlan } from '../service/index.js'
import type { CardCaution, Line, SpanTone } from './cardParts.js'
import { capitalise, joinLines, joinSpans, quoteOptionalText, quoteText, writeWords } from './spans.js'

/** The language of a card or slip. */
export interface TextContext {
  readonly catalogue: Catalogue
  readonly words: CardWords
  /** `spoken` writes figures in words. */
  readonly form: 'written' | 'spoken'
}

/** The plan and the language of a card. */
export interface CardContext extends TextContext {
  readonly plan: VisitPlan
}

const SPOKEN_NUMBER_MARKS = { decimal: '.', group: '' } as const

/** A calculated or measured quantity of the plan; empty if it is not known. */
export function writeQuantity(
  { catalogue: { marks, speech }, form }: TextContext,
  quantity: Quantity | undefined,
  pointer: JsonPointer,
  tone?: SpanTone,
): Line {
  if (quantity === undefined) return []
  const { value, unit } = quantity
  if (form === 'spoken')
    return quoteText(
      speech.quantity(showAmount(quantity, SPOKEN_NUMBER_MARKS) ?? String(value), unit),
      pointer,
      tone,
    )
  return quoteText(showQuantity({ value, unit }, marks) ?? `${value} ${unit}`, pointer, tone)
}

/** A printed number without a unit, such as the factor of a severe interval. */
export const writeFactor = (
  { catalogue: { marks } }: TextContext,
  factor: Figure | undefined,
  pointer: JsonPointer,
): Line => (factor === undefined ? [] : quoteText(formatNumber(factor, marks), pointer, 'printed'))

/** A name of the plan; in speech, its numbers are words. Empty if it is not in the plan. */
export function quoteName(
  { catalogue, form }: TextContext,
  name: string | undefined,
  pointer: JsonPointer,
): Line {
  if (name === undefined) return []
  const line = quoteText(name, pointer)
  return form === 'written' ? line : line.map((span) => ({ ...span, text: catalogue.speech.name(span.text) }))
}

/** A time in whole seconds; empty if it is not known. */
export function writeDuration(
  { catalogue, words, form }: TextContext,
  seconds: number | undefined,
  pointer: JsonPointer,
  tone?: SpanTone,
): Line {
  if (seconds === undefined) return []
  return quoteText((form === 'spoken' ? catalogue.speech : words).duration(seconds), pointer, tone)
}

/** A reason of the plan as a whole sentence. */
export function writeReason({ catalogue }: TextContext, reason: Reason, pointer: JsonPointer): Line {
  return capitalise([{ text: renderMessage(reason, catalogue), from: pointer }])
}

/** Reasons as sentences, except those that other lines already show. */
export function writeReasons(
  context: TextContext,
  reasons: readonly Reason[],
  pointer: JsonPointer,
  shownCodes?: ReadonlySet<string>,
): Line[] {
  const lines = new Map<string, Line>()
  for (const [index, reason] of reasons.entries()) {
    const line = writeReason(context, reason, `${pointer}/${index}`)
    const text = joinSpans(line)
    if (shownCodes?.has(reason.code) !== true && !lines.has(text)) lines.set(text, line)
  }
  return [...lines.values()]
}

/**
 * The plan's cautions, except those in the head of the card. The label is omitted if the text has a signal word.
 */
export function writeCautions(
  context: TextContext,
  cautions: readonly Reason[],
  pointer: JsonPointer,
): CardCaution[] {
  return cautions.flatMap((caution, index): CardCaution[] => {
    if (caution.code === 'service/manual-first' || caution.code === 'service/licensed-work') return []
    const line = writeReason(context, caution, `${pointer}/${index}`)
    const { signal } = caution.params
    if (signal === undefined) return [{ word: context.words.labels.caution, line }]
    return [signal === 'notice' ? { notice: true, line } : { line }]
  })
}

/** A part such as `drain plug (left)`, after its gearcase if no heading names that. */
export function writePart(part: PartName, pointer: JsonPointer, withGearcase = true): Line {
  const gearcase = withGearcase || part.part === undefined ? part.gearcase : undefined
  const names = [
    quoteOptionalText(gearcase, `${pointer}/gearcase`),
    quoteOptionalText(part.part, `${pointer}/part`),
  ]
  const listName = joinLines(names, ', ')
  const shownCodes =
    listName.length === 0 && part.path !== '' ? quoteText(part.path, `${pointer}/path`) : listName
  if (part.instance === undefined) return shownCodes
  return [
    ...shownCodes,
    ...writeWords(' ('),
    ...quoteText(part.instance.name, `${pointer}/instance/name`),
    ...writeWords(')'),
  ]
}

/** The entry of the plan at a pointer such as `/figures/3`. */
export function findEntry<Name extends 'figures' | 'oil' | 'tightenings' | 'waits'>(
  { plan }: CardContext,
  listName: Name,
  pointer: JsonPointer | undefined,
):
  | { readonly entry: VisitPlan[Name][number]; readonly pointer: JsonPointer; readonly index: number }
  | undefined {
  const [found, list, index] = /^\/(\w+)\/(0|[1-9][0-9]*)$/.exec(pointer ?? '') ?? []
  const entry = list === listName ? plan[listName][Number(index)] : undefined
  return entry && found ? { entry, pointer: found, index: Number(index) } : undefined
}
