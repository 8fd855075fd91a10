import type { JsonPointer, Reason } from '../base/index.js'
import { type CardWords, type Catalogue, renderMessage, showAmount, showQuantity } from '../message/index.js'
import type { Quantity } from '../quantity/index.js'
import type { PartName, VisitPlan } from '../service/index.js'
import type { CardCaution, Line, SpanTone } from './cardParts.js'
import { capitalised, joined, ownWords, quoted } from './spans.js'

/** What every part of the card is written from. */
export interface CardContext {
  readonly plan: VisitPlan
  readonly catalogue: Catalogue
  readonly words: CardWords
  /** `spoken`: figures in words, for a voice. */
  readonly form: 'written' | 'spoken'
}

const BARE_MARKS = { decimal: '.', group: '' } as const

/** A computed or measured quantity of the plan. */
export function quantityLine(
  context: CardContext,
  quantity: Quantity,
  from: JsonPointer,
  tone?: SpanTone,
): Line {
  const { marks, speech } = context.catalogue
  const { value, unit } = quantity
  if (context.form === 'spoken')
    return quoted(speech.quantity(showAmount({ value, unit }, BARE_MARKS) ?? String(value), unit), from, tone)
  return quoted(showQuantity({ value, unit }, marks) ?? `${value} ${unit}`, from, tone)
}

/** A time of whole seconds. */
export function durationLine(
  context: CardContext,
  seconds: number,
  from: JsonPointer,
  tone?: SpanTone,
): Line {
  const { catalogue, words, form } = context
  return quoted(form === 'spoken' ? catalogue.speech.duration(seconds) : words.duration(seconds), from, tone)
}

/** A reason of the plan, whole, as its sentence. */
export function reasonLine({ catalogue }: CardContext, reason: Reason, from: JsonPointer): Line {
  return capitalised([{ text: renderMessage(reason, catalogue), from }])
}

export function reasonLines(context: CardContext, reasons: readonly Reason[], from: JsonPointer): Line[] {
  return reasons.map((reason, index) => reasonLine(context, reason, `${from}/${index}`))
}

/**
 * Cautions of the plan; those that the card's head says already are left out. A caution that states its own signal word
 * needs none in front.
 */
export function cautionLines(
  context: CardContext,
  cautions: readonly Reason[],
  from: JsonPointer,
): CardCaution[] {
  return cautions.flatMap((caution, index) => {
    if (caution.code === 'service/manual-first' || caution.code === 'service/licensed-work') return []
    const line = reasonLine(context, caution, `${from}/${index}`)
    return [caution.params['signal'] === undefined ? { word: context.words.labels.caution, line } : { line }]
  })
}

/** `drain plug (left)`; the gearcase in front where no heading names it. */
export function partLine(
  part: PartName,
  from: JsonPointer,
  gearcase: 'with gearcase' | 'under its gearcase',
): Line {
  const names: Line[] = []
  const alone = part.part === undefined
  if (part.gearcase !== undefined && (alone || gearcase === 'with gearcase')) {
    names.push(quoted(part.gearcase, `${from}/gearcase`))
  }
  if (part.part !== undefined) names.push(quoted(part.part, `${from}/part`))
  if (names.length === 0 && part.path !== '') names.push(quoted(part.path, `${from}/path`))
  const name = joined(names, ', ')
  if (part.instance === undefined) return name
  return [
    ...name,
    ...ownWords(' ('),
    ...quoted(part.instance.name, `${from}/instance/name`),
    ...ownWords(')'),
  ]
}

/** The entry of one of the plan's lists that a pointer such as `/figures/3` names. */
export function entryAt<Entry>(
  list: readonly Entry[],
  name: string,
  pointer: JsonPointer | undefined,
): { readonly entry: Entry; readonly from: JsonPointer; readonly index: number } | undefined {
  const found = new RegExp(`^/${name}/(0|[1-9][0-9]*)$`).exec(pointer ?? '')
  const index = Number(found?.[1] ?? -1)
  const entry = list[index]
  return entry === undefined ? undefined : { entry, from: `/${name}/${index}`, index }
}
