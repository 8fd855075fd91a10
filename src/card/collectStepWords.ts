import type { StepParams } from '../message/index.js'
import type { PlannedFigure, PlannedStep } from '../service/index.js'
import {
  type CardContext,
  findEntry,
  quoteName,
  writeDuration,
  writeQuantity,
  writeReason,
} from './cardContext.js'
import type { Line } from './cardParts.js'
import { roundWaitSeconds } from './roundWaitSeconds.js'
import { joinLines } from './spans.js'
import { writeFigure, writeTurns, writeValue } from './writeFigure.js'

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
  | 'hasStages'
  | 'beforeDraining'
  | 'isOther'

/** The params for the texts of a step: pieces of the plan, and params that choose words. */
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
  readonly pointer: string
  readonly resolved: PlannedFigure['resolved']
  readonly main: Line
}

/** The figures of a step by role. */
function findFigures(
  context: CardContext,
  step: PlannedStep,
): ReadonlyMap<PlannedFigure['role'], FoundFigure> {
  const pointers = [
    ...Object.values(step.figures),
    findEntry(context, 'tightenings', step.tightening)?.entry.figure,
    findEntry(context, 'oil', step.oil)?.entry.refill,
  ]
  const figures = new Map<PlannedFigure['role'], FoundFigure>()
  for (const pointer of pointers) {
    const figureEntry = findEntry(context, 'figures', pointer)
    if (figureEntry === undefined || figures.has(figureEntry.entry.role)) continue
    const { role, resolved } = figureEntry.entry
    const { main } = writeFigure(context, figureEntry.entry, figureEntry.pointer)
    figures.set(role, { pointer: `${figureEntry.pointer}/resolved/value`, resolved, main })
  }
  return figures
}

const keepStated = (figure: FoundFigure | undefined) =>
  figure?.resolved.kind === 'stated' ? { ...figure, leaf: figure.resolved.value } : undefined

/** The turns of a tightening step, or its torque, setting and wrench. */
function collectTighteningPieces(
  context: CardContext,
  step: PlannedStep,
  found: FoundFigure | undefined,
): StepWords['pieces'] {
  const figure = keepStated(found)
  if (figure?.leaf.kind === 'turns') return { turns: writeTurns(context, figure.leaf, figure.pointer) }
  const { entry, pointer } = findEntry(context, 'tightenings', step.tightening) ?? {}
  const unit = figure?.leaf.kind === 'torque' ? figure.leaf.torque.unit : undefined
  // Only one unit is spoken; a setting in another one is on the screen.
  const isSettingShown = context.form === 'written' || entry?.setting?.unit === unit
  return {
    torque: figure?.main ?? [],
    setting: isSettingShown ? writeQuantity(context, entry?.setting, `${pointer}/setting`) : [],
    wrench: quoteName(context, entry?.wrench?.name, `${pointer}/wrench/name`),
  }
}

function collectOilPieces(
  context: CardContext,
  step: PlannedStep,
  volume: FoundFigure | undefined,
): StepWords['pieces'] {
  const { entry: oil, pointer } = findEntry(context, 'oil', step.oil) ?? {}
  const additive = oil?.additive
  const isAdditive = step.do === 'add the additive'
  const [needed, key] = isAdditive
    ? [additive?.perInstance, 'additive/perInstance']
    : [oil?.measure, 'measure']
  const printedVolume = keepStated(volume)?.main ?? []
  return {
    volume: needed === undefined ? printedVolume : writeQuantity(context, needed, `${pointer}/${key}`),
    stopAt: writeQuantity(context, oil?.stopAt, `${pointer}/stopAt`),
    totalVolume: additive?.includedInRefill && oil?.measure !== undefined && !isAdditive ? printedVolume : [],
    oil: quoteName(context, oil?.choice, `${pointer}/choice`),
    additive: quoteName(context, additive?.name, `${pointer}/additive/name`),
  }
}

/** A figure of a step by its name; empty if it is not stated. */
function writeStepFigure(context: CardContext, step: PlannedStep, name: string): Line {
  const figureEntry = findEntry(context, 'figures', step.figures[name])
  if (figureEntry?.entry.resolved.kind !== 'stated') return []
  return writeFigure(context, figureEntry.entry, figureEntry.pointer).main
}

/** The sockets for the part of a step: several if they depend on the variant, none if the toolbox lacks one. */
function writeSockets(context: CardContext, { part }: PlannedStep): Line {
  const { plan, words } = context
  const sockets = plan.tools.flatMap(({ kind, for: parts, have }, index) =>
    kind === 'socket' && parts.some(({ path }) => path === part?.path)
      ? [quoteName(context, have?.name, `/tools/${index}/have/name`)]
      : [],
  )
  return sockets.every((socket) => socket.length > 0) ? joinLines(sockets, ` ${words.labels.or} `) : []
}

/** Collects the params for the texts of a step. `withGearcase` if no heading names the gearcase. */
export function collectStepWords(
  context: CardContext,
  step: PlannedStep,
  index: number,
  withGearcase: boolean,
): StepWords {
  const { part } = step
  const pointer = `/steps/${index}/part`
  const figures = findFigures(context, step)
  const tightening = figures.get('tightening')
  const volume = figures.get(step.do === 'add the additive' ? 'additive' : 'refill')
  const seal = keepStated(figures.get('seal'))
  const bead = seal?.leaf.kind === 'liquid gasket' ? seal.leaf.bead : undefined
  const wait = findEntry(context, 'waits', step.wait)
  const pieces = {
    part: quoteName(context, part?.part, `${pointer}/part`),
    gearcase: withGearcase ? quoteName(context, part?.gearcase, `${pointer}/gearcase`) : [],
    instance: quoteName(context, part?.instance?.name, `${pointer}/instance/name`),
    how: quoteName(context, step.how, `/steps/${index}/how`),
    shield: quoteName(context, step.shield, `/steps/${index}/shield`),
    socket: writeSockets(context, step),
    jack: quoteName(context, step.jack, `/steps/${index}/jack`),
    ...collectTighteningPieces(context, step, tightening),
    ...collectOilPieces(context, step, volume),
    place: keepStated(figures.get('place'))?.main ?? [],
    sealant:
      seal !== undefined && 'product' in seal.leaf
        ? quoteName(context, seal.leaf.product, `${seal.pointer}/product`)
        : [],
    temperature: keepStated(figures.get('drain temperature'))?.main ?? [],
    bead:
      bead === undefined || bead.kind === 'not stated'
        ? []
        : writeValue(context, bead, `${seal?.pointer}/bead`),
    below: writeStepFigure(context, step, 'below'),
    levelTemperature: writeStepFigure(context, step, 'temperature'),
    minutes: writeStepFigure(context, step, 'minutesAfterStop'),
    usualWait: (wait?.entry.reasons ?? []).flatMap((reason, reasonIndex) =>
      reason.code === 'service/usual-hoses'
        ? writeReason(context, reason, `${wait?.pointer}/reasons/${reasonIndex}`)
        : [],
    ),
    wait: writeDuration(context, roundWaitSeconds(wait?.entry), `${wait?.pointer}/seconds`, 'computed'),
  }
  const gap = (TIGHTENING_ACTIONS.has(step.do) ? tightening : volume)?.resolved.kind
  const additive = findEntry(context, 'oil', step.oil)?.entry.additive
  const leaf = keepStated(tightening)?.leaf
  const hasStages = leaf?.kind === 'torque' && (leaf.stages ?? []).length > 0
  const choices: Pick<StepParams, ChoiceName> = {
    ...(additive !== undefined && { additiveOrder: additive.order }),
    ...(step.level !== undefined && { level: step.level }),
    ...(step.cover !== undefined && { cover: step.cover }),
    ...(step.fluid !== undefined && { fluid: step.fluid }),
    ...(step.drive !== undefined && { drive: step.drive }),
    ...(step.filter !== undefined && { filter: step.filter }),
    ...(hasStages && { hasStages: true }),
    ...(step.beforeDraining && { beforeDraining: true }),
    ...(part?.wheelMark !== undefined && { wheelMark: part.wheelMark }),
    ...(seal !== undefined && { seal: seal.leaf.kind as StepParams['seal'] & string }),
    ...(gap !== undefined && gap !== 'stated' && { gap }),
  }
  return { pieces, choices }
}
