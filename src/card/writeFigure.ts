import type { JsonPointer } from '../base/index.js'
import { type Catalogue, showQuantity } from '../message/index.js'
import { formatNumber, type Unit, unitSymbol } from '../quantity/index.js'
import type { PlannedFigure } from '../service/index.js'
import {
  type BondedSeal,
  type CasePosition,
  type CrushWasher,
  type Drive,
  formatOilName,
  type Leaf,
  type NumberedPart,
  type OilsStated,
  type ORing,
  type PrintedValue,
  type Seal,
  type StatedValue,
  type Tightening,
  type TurnsTightening,
} from '../spec/index.js'
import type { TextContext } from './cardContext.js'
import type { Line, SpanTone } from './cardParts.js'
import { addLabel, dropEmptyLines, joinLines, quoteOptionalText, quoteText, writeWords } from './spans.js'
import { writeInterval } from './writeInterval.js'

/** A figure from the sheet on a card. */
export interface FigureLines {
  /** The first printed figure, or a gap. */
  readonly main: Line
  /** Other printed figures. */
  readonly alsoPrinted: readonly Line[]
  /** Figures calculated from the first one. */
  readonly computed: readonly Line[]
  /** Conditions of the figure. */
  readonly notes: readonly Line[]
}

const makeFigureLines = (main: Line, notes: readonly Line[] = []): FigureLines => ({
  main,
  alsoPrinted: [],
  computed: [],
  notes,
})

/** The lines after the first figure: other printed figures, then calculated ones with a mark. */
export function writeSecondaryFigures(
  { words }: TextContext,
  { alsoPrinted, computed }: FigureLines,
): Line[] {
  const computedMark = computed.length === 0 ? [] : writeWords(` ${words.computedMark}`)
  return dropEmptyLines([joinLines(alsoPrinted, ' · '), [...joinLines(computed, ' · '), ...computedMark]])
}

/** A drive such as `hexagon socket 5 mm`; empty for a tool without a drive. */
export function writeDrive({ words }: TextContext, drive: Drive | undefined, pointer: JsonPointer): Line {
  if (drive === undefined) return []
  return quoteText([words.drives[drive.kind], drive.size].filter(Boolean).join(' '), pointer)
}

/** Turns past finger tight, such as `2–3`. */
export function writeTurns(context: TextContext, turns: TurnsTightening, pointer: JsonPointer): Line {
  const { min, max } = turns
  const { marks, speech } = context.catalogue
  const writeNumber = (figure: string) =>
    context.form === 'spoken' ? speech.numeral(figure) : formatNumber(figure, marks)
  const writeRange =
    context.form === 'spoken' ? speech.range : (low: string, high: string) => `${low}–${high}`
  return quoteText(
    max === undefined ? writeNumber(min) : writeRange(writeNumber(min), writeNumber(max)),
    pointer,
    'printed',
  )
}

/**
 * A printed value: the manual's characters if the sheet has them, otherwise the figures in the style of the language.
 */
export function writeValue(
  context: TextContext,
  value: PrintedValue<Unit>,
  pointer: JsonPointer,
  tone: SpanTone = 'printed',
): Line {
  const { asPrinted, unit } = value
  if (context.form === 'spoken') return quoteText(context.catalogue.speech.band(value), pointer, tone)
  if (asPrinted !== undefined) {
    return quoteText(
      /\p{L}/u.test(asPrinted) ? asPrinted : `${asPrinted}\u00a0${unitSymbol(unit)}`,
      pointer,
      tone,
    )
  }
  return quoteText(showQuantity(value, context.catalogue.marks) ?? JSON.stringify(value), pointer, tone)
}

function writeStatedValue(context: TextContext, value: StatedValue<Unit>, pointer: JsonPointer): FigureLines {
  const alsoPrinted = (value.printed ?? []).map((printed, index) =>
    writeValue(context, printed, `${pointer}/printed/${index}`, 'also printed'),
  )
  return { ...makeFigureLines(writeValue(context, value, pointer)), alsoPrinted }
}

function writeTightening(
  context: TextContext,
  tightening: Tightening,
  pointer: JsonPointer,
  isFilter: boolean,
): FigureLines {
  const { words } = context
  const { labels } = words
  const condition = quoteText(
    words.threadConditions[tightening.threadCondition],
    `${pointer}/threadCondition`,
  )
  const notes = [addLabel(labels.thread, condition)]
  if (tightening.kind === 'not stated')
    return makeFigureLines(quoteText(words.notStated, pointer, 'gap'), notes)
  if (tightening.kind === 'turns') {
    const { maxTorque } = tightening
    if (maxTorque !== undefined)
      notes.push(addLabel(labels.maximum, writeValue(context, maxTorque, `${pointer}/maxTorque`)))
    return makeFigureLines(
      joinLines(
        [
          writeTurns(context, tightening, pointer),
          writeWords(isFilter ? labels.turnsFromContact : labels.turnsPast),
        ],
        ' ',
      ),
      notes,
    )
  }
  const { torque, stages = [], thenAngle } = tightening
  const lastStage = writeStatedValue(context, torque, `${pointer}/torque`)
  const stageLines = stages.map((stage, index) => writeValue(context, stage, `${pointer}/stages/${index}`))
  const angle = thenAngle === undefined ? [] : writeValue(context, thenAngle, `${pointer}/thenAngle`)
  const main = joinLines([...stageLines, lastStage.main], labels.thenStage)
  return {
    ...lastStage,
    main: angle.length === 0 ? main : [...main, ...writeWords(labels.thenAngle), ...angle],
    notes,
  }
}

function writeOils(context: TextContext, { choices }: OilsStated, pointer: JsonPointer): FigureLines {
  const { limitedSlip: slipWords, labels } = context.words
  const [first = [], ...others] = choices.map((choice, index) => {
    const { ambient, limitedSlip } = choice
    const choicePointer = `${pointer}/choices/${index}`
    const slipText =
      limitedSlip === 'required' || limitedSlip === 'not permitted' ? slipWords[limitedSlip] : undefined
    return joinLines(
      [
        quoteText(formatOilName(choice), choicePointer, 'printed'),
        ambient === undefined ? [] : writeValue(context, ambient, `${choicePointer}/ambient`),
        quoteOptionalText(slipText, `${choicePointer}/limitedSlip`),
      ],
      ', ',
    )
  })
  return makeFigureLines(
    first,
    others.map((line) => [...writeWords(`${labels.or} `), ...line]),
  )
}

type SealSize = NonNullable<(CrushWasher | BondedSeal | ORing)['size']>

/** `14 × 18 × 1.5 mm`, with the marks of the language. */
export const formatSealSize = ({ unit, ...sizes }: SealSize, { marks }: Catalogue): string =>
  `${Object.values(sizes)
    .map((figure) => formatNumber(figure, marks))
    .join(' × ')}\u00a0${unit}`

/** A seal such as `crush washer, flat, aluminium, 14 × 18 × 1.5 mm`, with its part number. */
export function writeSeal({ words, catalogue }: TextContext, seal: Seal, pointer: JsonPointer): Line {
  if (seal.kind === 'not stated') return quoteText(words.notStated, pointer, 'gap')
  const lines = [quoteText(words.seals[seal.kind], `${pointer}/kind`)]
  if ('form' in seal && seal.form !== 'not stated')
    lines.push(quoteText(words.sealForms[seal.form], `${pointer}/form`))
  if (seal.kind === 'crush washer' || seal.kind === 'bonded seal' || seal.kind === 'o-ring') {
    if (seal.material !== 'not stated')
      lines.push(quoteText(words.sealMaterials[seal.material], `${pointer}/material`))
    if (seal.kind === 'o-ring') lines.push(quoteOptionalText(seal.designation, `${pointer}/designation`))
    if (seal.size !== undefined)
      lines.push(quoteText(formatSealSize(seal.size, catalogue), `${pointer}/size`, 'printed'))
  }
  if (seal.kind === 'gasket') lines.push(quoteText(seal.material, `${pointer}/material`))
  if ('product' in seal) lines.push(quoteText(seal.product, `${pointer}/product`))
  if ('replace' in seal) lines.push(writePartNumber(seal, pointer, words.labels.supersedes))
  return joinLines(lines, ', ')
}

/** A seal as in a parts list: number, kind, and product or size. */
export function writeListedSeal({ words, catalogue }: TextContext, seal: Seal, pointer: JsonPointer): Line {
  if (seal.kind === 'none' || seal.kind === 'not stated') return quoteText(words.notStated, pointer, 'gap')
  const product =
    'product' in seal
      ? quoteText(seal.product, `${pointer}/product`)
      : 'size' in seal && seal.size !== undefined
        ? quoteText(formatSealSize(seal.size, catalogue), `${pointer}/size`)
        : []
  const number = 'replace' in seal ? writePartNumber(seal, pointer, words.labels.supersedes) : []
  return joinLines([number, quoteText(words.seals[seal.kind], `${pointer}/kind`), product], ' ')
}

/** The number to buy and the one that it supersedes. */
export function writePartNumber(
  { partNumber, supersededBy }: NumberedPart,
  pointer: JsonPointer,
  supersedesText: string,
): Line {
  const oldNumber = quoteOptionalText(partNumber, `${pointer}/partNumber`)
  if (supersededBy === undefined) return oldNumber
  const currentNumber = quoteText(supersededBy.partNumber, `${pointer}/supersededBy/partNumber`)
  return oldNumber.length === 0
    ? currentNumber
    : [...currentNumber, ...writeWords(` (${supersedesText} `), ...oldNumber, ...writeWords(')')]
}

/** `bottom face, left, 60 mm from the middle`. */
function writePosition(context: TextContext, position: CasePosition, pointer: JsonPointer): Line {
  const { words } = context
  const { face, offset } = position
  return joinLines(
    [
      quoteText(words.caseFaces[face], `${pointer}/face`),
      ...(['across', 'height'] as const).map((axis) => {
        const point = position[axis]
        return point === undefined ? [] : quoteText(words.casePoints[point], `${pointer}/${axis}`)
      }),
      offset === undefined
        ? []
        : [...writeValue(context, offset, `${pointer}/offset`), ...writeWords(` ${words.labels.fromMiddle}`)],
    ],
    ', ',
  )
}

function writeLeaf(context: TextContext, leaf: Leaf, pointer: JsonPointer, isFilter: boolean): FigureLines {
  switch (leaf.kind) {
    case 'not stated':
      return 'threadCondition' in leaf
        ? writeTightening(context, leaf, pointer, isFilter)
        : makeFigureLines(quoteText(context.words.notStated, pointer, 'gap'))
    case 'nominal':
    case 'nominal with tolerance':
    case 'limits':
      return writeStatedValue(context, leaf, pointer)
    case 'torque':
    case 'turns':
      return writeTightening(context, leaf, pointer, isFilter)
    case 'oils':
      return writeOils(context, leaf, pointer)
    case 'interval':
      return makeFigureLines(writeInterval(context, leaf, pointer))
    case 'place':
      return makeFigureLines(quoteText(leaf.text, pointer))
    case 'position':
      return makeFigureLines(writePosition(context, leaf, pointer))
    default:
      return makeFigureLines(
        'replace' in leaf || leaf.kind === 'none'
          ? writeSeal(context, leaf, pointer)
          : writeDrive(context, leaf, pointer),
      )
  }
}

/**
 * A figure of the plan on a card: the first printed figure, other printed figures, and calculated ones. For a gap:
 * its kind and the candidates.
 */
export function writeFigure(
  context: TextContext,
  figure: Pick<PlannedFigure, 'resolved' | 'computed' | 'path'>,
  pointer: JsonPointer,
): FigureLines {
  const { resolved, computed = [] } = figure
  const isFilter = /^\/gearcases\/[^/]+\/filters\//.test(figure.path)
  const { words } = context
  if (resolved.kind === 'not stated')
    return makeFigureLines(quoteText(words.notStated, `${pointer}/resolved/kind`, 'gap'))
  if (resolved.kind === 'cannot tell') {
    const missing = resolved.missing.map((fact) => words.identityFacts[fact])
    const candidates = resolved.candidates.map(
      ({ value }, candidateIndex) =>
        writeLeaf(context, value, `${pointer}/resolved/candidates/${candidateIndex}/value`, isFilter).main,
    )
    return makeFigureLines(
      quoteText(words.cannotTell(missing), `${pointer}/resolved/missing`, 'gap'),
      dropEmptyLines([addLabel(words.labels.candidates, joinLines(candidates, ` ${words.labels.or} `))]),
    )
  }
  return {
    ...writeLeaf(context, resolved.value, `${pointer}/resolved/value`, isFilter),
    computed: computed.map((value, computedIndex) =>
      writeValue(context, value, `${pointer}/computed/${computedIndex}`, 'computed'),
    ),
  }
}
