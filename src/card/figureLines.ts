import type { JsonPointer } from '../base/index.js'
import { showQuantity } from '../message/index.js'
import { formatNumber, type Unit, unitSymbol } from '../quantity/index.js'
import type { PlannedFigure } from '../service/index.js'
import {
  type Drive,
  type Leaf,
  type NumberedPart,
  nameOil,
  type OilsStated,
  type PrintedValue,
  type Seal,
  type StatedValue,
  type Tightening,
  type TurnsTightening,
} from '../spec/index.js'
import type { CardContext } from './cardContext.js'
import type { Line, SpanTone } from './cardParts.js'
import { intervalLine } from './intervalLine.js'
import { addLabel, dropEmpty, joinLines, ownWords, quoteOptional, quoteText } from './spans.js'

/** A figure of the sheet on a card. */
export interface FigureLines {
  /** The first printed figure, or the gap. */
  readonly main: Line
  /** Other printed figures. */
  readonly alsoPrinted: readonly Line[]
  /** Figures calculated from the printed one. */
  readonly computed: readonly Line[]
  /** Conditions of the figure. */
  readonly notes: readonly Line[]
}

const singleFigure = (main: Line, notes: readonly Line[] = []): FigureLines => ({
  main,
  alsoPrinted: [],
  computed: [],
  notes,
})

/** The lines next to the first printed figure: other printed figures and, with a mark, calculated ones. */
export function secondaryLines({ words }: CardContext, { alsoPrinted, computed }: FigureLines): Line[] {
  const mark = computed.length === 0 ? [] : ownWords(` ${words.computedMark}`)
  return dropEmpty([joinLines(alsoPrinted, ' · '), [...joinLines(computed, ' · '), ...mark]])
}

/** A drive such as `hexagon socket 5 mm`; empty for a tool without a drive. */
export function driveLine({ words }: CardContext, drive: Drive | undefined, from: JsonPointer): Line {
  if (drive === undefined) return []
  return quoteText([words.drives[drive.kind], drive.size].filter(Boolean).join(' '), from)
}

/** Turns past finger tight, such as `2–3`. */
export function turnsLine(context: CardContext, turns: TurnsTightening, from: JsonPointer): Line {
  const { min, max } = turns
  const { marks, speech } = context.catalogue
  const write = (figure: string) =>
    context.form === 'spoken' ? speech.numeral(figure) : formatNumber(figure, marks)
  const range = context.form === 'spoken' ? speech.range : (low: string, high: string) => `${low}–${high}`
  return quoteText(max === undefined ? write(min) : range(write(min), write(max)), from, 'printed')
}

/** A printed value: the characters of the manual if the sheet has them, else the figures in the style of the language. */
export function valueLine(
  context: CardContext,
  value: PrintedValue<Unit>,
  from: JsonPointer,
  tone: SpanTone = 'printed',
): Line {
  const { asPrinted, unit } = value
  if (context.form === 'spoken') return quoteText(context.catalogue.speech.band(value), from, tone)
  if (asPrinted !== undefined) {
    return quoteText(
      /\p{L}/u.test(asPrinted) ? asPrinted : `${asPrinted}\u00a0${unitSymbol(unit)}`,
      from,
      tone,
    )
  }
  return quoteText(showQuantity(value, context.catalogue.marks) ?? JSON.stringify(value), from, tone)
}

function statedLines(context: CardContext, value: StatedValue<Unit>, from: JsonPointer): FigureLines {
  const alsoPrinted = (value.printed ?? []).map((printed, index) =>
    valueLine(context, printed, `${from}/printed/${index}`, 'also printed'),
  )
  return { ...singleFigure(valueLine(context, value, from)), alsoPrinted }
}

function tighteningLines(
  context: CardContext,
  tightening: Tightening,
  from: JsonPointer,
  isFilter: boolean,
): FigureLines {
  const { words } = context
  const { labels } = words
  const condition = quoteText(words.threadConditions[tightening.threadCondition], `${from}/threadCondition`)
  const notes = [addLabel(labels.thread, condition)]
  if (tightening.kind === 'not stated') return singleFigure(quoteText(words.notStated, from, 'gap'), notes)
  if (tightening.kind === 'turns') {
    const { maxTorque } = tightening
    if (maxTorque !== undefined)
      notes.push(addLabel(labels.maximum, valueLine(context, maxTorque, `${from}/maxTorque`)))
    return singleFigure(
      joinLines(
        [
          turnsLine(context, tightening, from),
          ownWords(isFilter ? labels.turnsFromContact : labels.turnsPast),
        ],
        ' ',
      ),
      notes,
    )
  }
  const { torque, stages = [], thenAngle } = tightening
  const lastStage = statedLines(context, torque, `${from}/torque`)
  const steps = stages.map((stage, index) => valueLine(context, stage, `${from}/stages/${index}`))
  const angle = thenAngle === undefined ? [] : valueLine(context, thenAngle, `${from}/thenAngle`)
  const main = joinLines([...steps, lastStage.main], labels.thenStage)
  return {
    ...lastStage,
    main: angle.length === 0 ? main : [...main, ...ownWords(labels.thenAngle), ...angle],
    notes,
  }
}

function oilsLines(context: CardContext, { choices }: OilsStated, from: JsonPointer): FigureLines {
  const { limitedSlip: slipWords, labels } = context.words
  const [first = [], ...others] = choices.map((choice, index) => {
    const { ambient, limitedSlip } = choice
    const at = `${from}/choices/${index}`
    const slip =
      limitedSlip === 'required' || limitedSlip === 'not permitted' ? slipWords[limitedSlip] : undefined
    return joinLines(
      [
        quoteText(nameOil(choice), at, 'printed'),
        ambient === undefined ? [] : valueLine(context, ambient, `${at}/ambient`),
        quoteOptional(slip, `${at}/limitedSlip`),
      ],
      ', ',
    )
  })
  return singleFigure(
    first,
    others.map((line) => [...ownWords(`${labels.or} `), ...line]),
  )
}

/** A seal such as `crush washer, flat, aluminium, 14 × 18 × 1.5 mm`, with its part number. */
export function sealLine({ words }: CardContext, seal: Seal, from: JsonPointer): Line {
  if (seal.kind === 'not stated') return quoteText(words.notStated, from, 'gap')
  const lines = [quoteText(words.seals[seal.kind], `${from}/kind`)]
  if ('form' in seal && seal.form !== 'not stated')
    lines.push(quoteText(words.sealForms[seal.form], `${from}/form`))
  if (seal.kind === 'crush washer' || seal.kind === 'bonded seal' || seal.kind === 'o-ring') {
    if (seal.material !== 'not stated')
      lines.push(quoteText(words.sealMaterials[seal.material], `${from}/material`))
    if (seal.kind === 'o-ring') lines.push(quoteOptional(seal.designation, `${from}/designation`))
    if (seal.size !== undefined) {
      const { unit, ...sizes } = seal.size
      lines.push(quoteText(`${Object.values(sizes).join(' × ')}\u00a0${unit}`, `${from}/size`, 'printed'))
    }
  }
  if (seal.kind === 'gasket') lines.push(quoteText(seal.material, `${from}/material`))
  if ('product' in seal) lines.push(quoteText(seal.product, `${from}/product`))
  if ('replace' in seal) lines.push(numberLine(seal, from, words.labels.supersedes))
  return joinLines(lines, ', ')
}

/** The number to buy, and the one that it supersedes. */
export function numberLine(
  { partNumber, supersededBy }: NumberedPart,
  from: JsonPointer,
  supersedes: string,
): Line {
  const old = quoteOptional(partNumber, `${from}/partNumber`)
  if (supersededBy === undefined) return old
  const buy = quoteText(supersededBy.partNumber, `${from}/supersededBy/partNumber`)
  return old.length === 0 ? buy : [...buy, ...ownWords(` (${supersedes} `), ...old, ...ownWords(')')]
}

function leafLines(context: CardContext, leaf: Leaf, from: JsonPointer, isFilter: boolean): FigureLines {
  switch (leaf.kind) {
    case 'not stated':
      return 'threadCondition' in leaf
        ? tighteningLines(context, leaf, from, isFilter)
        : singleFigure(quoteText(context.words.notStated, from, 'gap'))
    case 'nominal':
    case 'nominal with tolerance':
    case 'limits':
      return statedLines(context, leaf, from)
    case 'torque':
    case 'turns':
      return tighteningLines(context, leaf, from, isFilter)
    case 'oils':
      return oilsLines(context, leaf, from)
    case 'interval':
      return singleFigure(intervalLine(context, leaf, from))
    case 'place':
      return singleFigure(quoteText(leaf.text, from))
    default:
      return singleFigure(
        'replace' in leaf || leaf.kind === 'none'
          ? sealLine(context, leaf, from)
          : driveLine(context, leaf, from),
      )
  }
}

/**
 * A figure of the plan on a card: the first printed figure, other printed ones, and calculated ones. For a gap, its kind and
 * the candidates.
 */
export function figureLines(context: CardContext, figure: PlannedFigure, index: number): FigureLines {
  const from = `/figures/${index}`
  const { resolved, computed = [] } = figure
  const isFilter = /^\/gearcases\/[^/]+\/filters\//.test(figure.path)
  const { words } = context
  if (resolved.kind === 'not stated')
    return singleFigure(quoteText(words.notStated, `${from}/resolved/kind`, 'gap'))
  if (resolved.kind === 'cannot tell') {
    const missing = resolved.missing.map((fact) => words.identityFacts[fact])
    const candidates = resolved.candidates.map(
      ({ value }, place) =>
        leafLines(context, value, `${from}/resolved/candidates/${place}/value`, isFilter).main,
    )
    return singleFigure(
      quoteText(words.cannotTell(missing), `${from}/resolved/missing`, 'gap'),
      dropEmpty([addLabel(words.labels.candidates, joinLines(candidates, ` ${words.labels.or} `))]),
    )
  }
  return {
    ...leafLines(context, resolved.value, `${from}/resolved/value`, isFilter),
    computed: computed.map((value, place) =>
      valueLine(context, value, `${from}/computed/${place}`, 'computed'),
    ),
  }
}
