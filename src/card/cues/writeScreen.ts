import type { JsonPointer } from '../../base/index.js'
import type { PlannedFigure, PlannedStep } from '../../service/index.js'
import {
  type CardContext,
  findEntry,
  type TextContext,
  writeDuration,
  writePart,
  writeQuantity,
} from '../cardContext.js'
import type { Line } from '../cardParts.js'
import { insertSpans } from '../insertSpans.js'
import { roundWaitSeconds } from '../roundWaitSeconds.js'
import { addLabel, capitalise, joinLines, quoteOptionalText, writeWords } from '../spans.js'
import { writeFigure, writeSecondaryFigures } from '../writeFigure.js'

/** A step with its place in the plan. */
export interface PlacedStep {
  readonly step: PlannedStep
  readonly index: number
}

/** Figures to show while their step is done. Places, seals and tools are in the picture itself. */
const SHOWN_ROLES: ReadonlySet<PlannedFigure['role']> = new Set([
  'refill',
  'tightening',
  'drain temperature',
  'working temperature',
  'level',
  'additive',
  'cure',
])

/** The manual's figure first, then the other units in brackets. */
export function writeShownFigure(
  context: TextContext,
  figure: Parameters<typeof writeFigure>[1],
  pointer: JsonPointer,
): Line {
  const lines = writeFigure(context, figure, pointer)
  const others = joinLines(writeSecondaryFigures(context, lines), ' · ')
  return others.length === 0
    ? lines.main
    : [...lines.main, ...writeWords(' ('), ...others, ...writeWords(')')]
}

/**
 * The figures on the screen during the steps: each once, in the manual's units and in others, with the setting of its
 * wrench. After a wait that is cut, the time that has passed.
 */
export function writeScreen(
  context: CardContext,
  steps: readonly PlacedStep[],
  withGearcase: boolean,
): Line[] {
  const lines = new Map<string, Line>()
  for (const { step } of steps) {
    const tightening = findEntry(context, 'tightenings', step.tightening)
    const oil = findEntry(context, 'oil', step.oil)
    for (const pointer of [tightening?.entry.figure, oil?.entry.refill, ...Object.values(step.figures)]) {
      const found = findEntry(context, 'figures', pointer)
      if (found === undefined || !SHOWN_ROLES.has(found.entry.role) || lines.has(found.pointer)) continue
      const { role, part } = found.entry
      const isTightening = role === 'tightening' && pointer === tightening?.entry.figure
      const place = capitalise(writePart(part, `${found.pointer}/part`, withGearcase))
      const label = role === 'tightening' ? place : writeWords(context.words.roles[role])
      lines.set(found.pointer, [
        ...label,
        ...writeWords(': '),
        ...joinLines(
          [
            writeShownFigure(context, found.entry, found.pointer),
            isTightening && tightening !== undefined ? writeSetting(context, tightening) : [],
            role === 'refill' ? quoteOptionalText(oil?.entry.choice, `${oil?.pointer}/choice`) : [],
          ],
          ' · ',
        ),
      ])
    }
    if (oil?.entry.stopAt !== undefined && step.do === 'top up')
      lines.set(
        `${oil.pointer}/stopAt`,
        addLabel(
          context.catalogue.cues.labels.stopAt,
          writeQuantity(context, oil.entry.stopAt, `${oil.pointer}/stopAt`, 'computed'),
        ),
      )
    const wait = findEntry(context, 'waits', step.wait)
    const time = writeDuration(context, roundWaitSeconds(wait?.entry), `${wait?.pointer}/seconds`, 'computed')
    if (wait !== undefined && time.length > 0) lines.set(wait.pointer, writeTimePassed(context, time))
  }
  return [...lines.values()]
}

function writeSetting(
  context: CardContext,
  { entry, pointer }: NonNullable<ReturnType<typeof findEntry<'tightenings'>>>,
): Line {
  const setting = writeQuantity(context, entry.setting, `${pointer}/setting`, 'computed')
  if (setting.length === 0) return []
  const wrench = quoteOptionalText(entry.wrench?.name, `${pointer}/wrench/name`)
  return joinLines([[...writeWords(`${context.catalogue.cues.labels.setting} `), ...setting], wrench], ', ')
}

/** `6 min later` */
function writeTimePassed({ catalogue }: CardContext, time: Line): Line {
  return insertSpans({ time }, ({ time: placeholder = '' }) => [catalogue.cues.later(placeholder)]).flat()
}
