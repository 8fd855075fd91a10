import type { StepParams } from '../message/index.js'
import type { PlannedFigure, PlannedStep } from '../service/index.js'
import { type CardContext, durationLine, entryAt, quantityLine, reasonLine } from './cardContext.js'
import type { Line } from './cardParts.js'
import { figureLines, turnsLine, valueLine } from './figureLines.js'
import { shownSeconds } from './shownSeconds.js'
import { joinLines, quoteOptional } from './spans.js'

/** Params of a step that are pieces of the plan. */
type PieceName = Exclude<keyof StepParams, ChoiceName>

/** Params that choose words. */
type ChoiceName =
  | 'wheelMark'
  | 'seal'
  | 'gap'
  | 'additiveOrder'
  | 'level'
  | 'cover'
  | 'filter'
  | 'fluid'
  | 'drive'
  | 'staged'
  | 'beforeDraining'
  | 'isOther'

/** What the texts of a step are written from: pieces of the plan, and params that choose words. */
export interface StepWords {
  readonly pieces: Readonly<Partial<Record<PieceName, Line>>>
  readonly choices: Pick<StepParams, ChoiceName>
}

const TIGHTENING_ACTIONS: ReadonlySet<PlannedStep['do']> = new Set([
  'tighten',
  'tighten cover',
  'tighten filter',
  'refit shield',
])

interface FoundFigure {
  /** Pointer to the resolved leaf. */
  readonly from: string
  readonly resolved: PlannedFigure['resolved']
  readonly main: Line
}

/** The figures of a step, by role. */
function figuresOf(context: CardContext, step: PlannedStep): ReadonlyMap<PlannedFigure['role'], FoundFigure> {
  const pointers = [
    ...Object.values(step.figures),
    entryAt(context, 'tightenings', step.tightening)?.entry.figure,
    entryAt(context, 'oil', step.oil)?.entry.refill,
  ]
  const found = new Map<PlannedFigure['role'], FoundFigure>()
  for (const pointer of pointers) {
    const at = entryAt(context, 'figures', pointer)
    if (at === undefined || found.has(at.entry.role)) continue
    const { role, resolved } = at.entry
    const { main } = figureLines(context, at.entry, at.index)
    found.set(role, { from: `${at.from}/resolved/value`, resolved, main })
  }
  return found
}

const stated = (found: FoundFigure | undefined) =>
  found?.resolved.kind === 'stated' ? { ...found, leaf: found.resolved.value } : undefined

/** The turns of a tightening step, or its torque, setting and wrench. */
function tighteningPieces(
  context: CardContext,
  step: PlannedStep,
  found: FoundFigure | undefined,
): StepWords['pieces'] {
  const figure = stated(found)
  if (figure?.leaf.kind === 'turns') return { turns: turnsLine(context, figure.leaf, figure.from) }
  const at = entryAt(context, 'tightenings', step.tightening)
  return {
    torque: figure?.main ?? [],
    setting: quantityLine(context, at?.entry.setting, `${at?.from}/setting`),
    wrench: quoteOptional(at?.entry.wrench?.name, `${at?.from}/wrench/name`),
  }
}

function oilPieces(
  context: CardContext,
  step: PlannedStep,
  volume: FoundFigure | undefined,
): StepWords['pieces'] {
  const { entry: oil, from } = entryAt(context, 'oil', step.oil) ?? {}
  const additive = oil?.additive
  const isAdditive = step.do === 'add the additive'
  const [needed, at] = isAdditive
    ? [additive?.perInstance, 'additive/perInstance']
    : [oil?.measure, 'measure']
  const printed = stated(volume)?.main ?? []
  return {
    volume: needed === undefined ? printed : quantityLine(context, needed, `${from}/${at}`),
    stopAt: quantityLine(context, oil?.stopAt, `${from}/stopAt`),
    together: additive?.includedInRefill && oil?.measure !== undefined && !isAdditive ? printed : [],
    oil: quoteOptional(oil?.choice, `${from}/choice`),
    additive: quoteOptional(additive?.name, `${from}/additive/name`),
  }
}

/** A figure of a step by its name; empty if it is not stated. */
function figurePiece(context: CardContext, step: PlannedStep, name: string): Line {
  const at = entryAt(context, 'figures', step.figures[name])
  if (at?.entry.resolved.kind !== 'stated') return []
  return figureLines(context, at.entry, at.index).main
}

/** The sockets of the toolbox for the part of a step: several if the variant decides; empty if one is missing. */
function socketPiece({ plan, words }: CardContext, { part }: PlannedStep): Line {
  const sockets = plan.tools.flatMap(({ kind, for: parts, have }, index) =>
    kind === 'socket' && parts.some(({ path }) => path === part?.path)
      ? [quoteOptional(have?.name, `/tools/${index}/have/name`)]
      : [],
  )
  return sockets.every((socket) => socket.length > 0) ? joinLines(sockets, ` ${words.labels.or} `) : []
}

/** Collects what the texts of a step are written from; `withGearcase` if no heading names the gearcase. */
export function collectStepWords(
  context: CardContext,
  step: PlannedStep,
  index: number,
  withGearcase: boolean,
): StepWords {
  const { part } = step
  const from = `/steps/${index}/part`
  const found = figuresOf(context, step)
  const tightening = found.get('tightening')
  const volume = found.get(step.do === 'add the additive' ? 'additive' : 'refill')
  const seal = stated(found.get('seal'))
  const bead = seal?.leaf.kind === 'liquid gasket' ? seal.leaf.bead : undefined
  const wait = entryAt(context, 'waits', step.wait)
  const pieces = {
    part: quoteOptional(part?.part, `${from}/part`),
    gearcase: withGearcase ? quoteOptional(part?.gearcase, `${from}/gearcase`) : [],
    instance: quoteOptional(part?.instance?.name, `${from}/instance/name`),
    how: quoteOptional(step.how, `/steps/${index}/how`),
    shield: quoteOptional(step.shield, `/steps/${index}/shield`),
    socket: socketPiece(context, step),
    jack: quoteOptional(step.jack, `/steps/${index}/jack`),
    ...tighteningPieces(context, step, tightening),
    ...oilPieces(context, step, volume),
    place: stated(found.get('place'))?.main ?? [],
    sealant:
      seal !== undefined && 'product' in seal.leaf
        ? quoteOptional(seal.leaf.product, `${seal.from}/product`)
        : [],
    temperature: stated(found.get('drain temperature'))?.main ?? [],
    bead:
      bead === undefined || bead.kind === 'not stated' ? [] : valueLine(context, bead, `${seal?.from}/bead`),
    below: figurePiece(context, step, 'below'),
    levelTemperature: figurePiece(context, step, 'temperature'),
    minutes: figurePiece(context, step, 'minutesAfterStop'),
    usualWait: (wait?.entry.reasons ?? []).flatMap((reason, place) =>
      reason.code === 'service/usual-hoses'
        ? reasonLine(context, reason, `${wait?.from}/reasons/${place}`)
        : [],
    ),
    wait: durationLine(context, shownSeconds(wait?.entry), `${wait?.from}/seconds`, 'computed'),
  }
  const gap = (TIGHTENING_ACTIONS.has(step.do) ? tightening : volume)?.resolved.kind
  const additive = entryAt(context, 'oil', step.oil)?.entry.additive
  const leaf = stated(tightening)?.leaf
  const isStaged = leaf?.kind === 'torque' && (leaf.stages ?? []).length > 0
  const choices: Pick<StepParams, ChoiceName> = {
    ...(additive !== undefined && { additiveOrder: additive.order }),
    ...(step.level !== undefined && { level: step.level }),
    ...(step.cover !== undefined && { cover: step.cover }),
    ...(step.fluid !== undefined && { fluid: step.fluid }),
    ...(step.drive !== undefined && { drive: step.drive }),
    ...(step.filter !== undefined && { filter: step.filter }),
    ...(isStaged && { staged: true }),
    ...(step.beforeDraining && { beforeDraining: true }),
    ...(part?.wheelMark !== undefined && { wheelMark: part.wheelMark }),
    ...(seal !== undefined && { seal: seal.leaf.kind as StepParams['seal'] & string }),
    ...(gap !== undefined && gap !== 'stated' && { gap }),
  }
  return { pieces, choices }
}
