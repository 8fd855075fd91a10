import type { StepParams } from '../message/index.js'
import type { PlannedFigure, PlannedStep } from '../service/index.js'
import { type CardContext, durationLine, entryAt, quantityLine } from './cardContext.js'
import type { Line } from './cardParts.js'
import { type FigureLines, figureLines, turnsLine } from './figureLines.js'
import { quoted } from './spans.js'

/** Params of a step that are pieces of the plan, and those that only choose words. */
type PieceName = Exclude<keyof StepParams, 'wheelMark' | 'seal' | 'gap'>
export type StepPieces = Readonly<Partial<Record<PieceName, Line | undefined>>>
export type StepChoices = Pick<StepParams, 'wheelMark' | 'seal' | 'gap'>

const TIGHTENS: ReadonlySet<PlannedStep['do']> = new Set(['tighten', 'tighten cover', 'refit shield'])

interface FoundFigure {
  /** Pointer to the resolved leaf. */
  readonly from: string
  readonly figure: PlannedFigure
  readonly lines: FigureLines
}

/** The figures that a step names, by their role. */
function figuresOf(context: CardContext, step: PlannedStep): Map<PlannedFigure['role'], FoundFigure> {
  const { figures } = context.plan
  const pointers = [
    ...Object.values(step.figures),
    entryAt(context.plan.tightenings, 'tightenings', step.tightening)?.entry.figure,
    entryAt(context.plan.oil, 'oil', step.oil)?.entry.refill,
  ]
  const found = new Map<PlannedFigure['role'], FoundFigure>()
  for (const pointer of pointers) {
    const at = entryAt(figures, 'figures', pointer)
    if (at === undefined || found.has(at.entry.role)) continue
    found.set(at.entry.role, {
      from: `${at.from}/resolved/value`,
      figure: at.entry,
      lines: figureLines(context, at.entry, at.index),
    })
  }
  return found
}

function gapOf(found: FoundFigure | undefined): StepParams['gap'] {
  if (found === undefined) return undefined
  const { resolved } = found.figure
  return resolved.kind === 'stated' ? undefined : resolved.kind
}

const statedLine = (found: FoundFigure | undefined): Line | undefined =>
  gapOf(found) === undefined ? found?.lines.main : undefined

/** Torque with its angle behind it, or turns: what the hand does at a tightening step. */
function tighteningPieces(
  found: FoundFigure | undefined,
  step: PlannedStep,
  context: CardContext,
): StepPieces {
  const leaf = found?.figure.resolved.kind === 'stated' ? found.figure.resolved.value : undefined
  const at = entryAt(context.plan.tightenings, 'tightenings', step.tightening)
  const setting =
    at?.entry.setting === undefined
      ? undefined
      : quantityLine(context, at.entry.setting, `${at.from}/setting`)
  const wrench =
    at?.entry.wrench === undefined ? undefined : quoted(at.entry.wrench.name, `${at.from}/wrench/name`)
  if (leaf?.kind === 'turns') return { turns: turnsLine(context, leaf, found?.from ?? '') }
  return { torque: statedLine(found), setting, wrench }
}

function volumePieces(context: CardContext, step: PlannedStep, found: FoundFigure | undefined): StepPieces {
  const oil = entryAt(context.plan.oil, 'oil', step.oil)
  const choice = oil?.entry.choice === undefined ? undefined : quoted(oil.entry.choice, `${oil.from}/choice`)
  const additive =
    oil?.entry.additive === undefined
      ? undefined
      : quoted(oil.entry.additive.name, `${oil.from}/additive/name`)
  const needed = oil?.entry.additive?.needed
  const measured =
    step.do !== 'add the additive' || needed === undefined
      ? statedLine(found)
      : quantityLine(context, needed, `${oil?.from}/additive/needed`)
  return { volume: measured, oil: choice, additive }
}

function placePieces(step: PlannedStep, index: number, gearcase: boolean): StepPieces {
  const { part } = step
  if (part === undefined) return {}
  const from = `/steps/${index}/part`
  const piece = (text: string | undefined, at: string) => (text === undefined ? undefined : quoted(text, at))
  return {
    part: piece(part.part, `${from}/part`),
    gearcase: gearcase ? piece(part.gearcase, `${from}/gearcase`) : undefined,
    instance: piece(part.instance?.name, `${from}/instance/name`),
  }
}

/** What a step's text may name, each piece with its place in the plan. */
export function stepPieces(
  context: CardContext,
  step: PlannedStep,
  index: number,
  place: 'under its heading' | 'alone',
): { readonly pieces: StepPieces; readonly choices: StepChoices } {
  const found = figuresOf(context, step)
  const tightening = found.get('tightening')
  const volume = step.do === 'add the additive' ? found.get('additive') : found.get('refill')
  const seal = found.get('seal')?.figure.resolved
  const leaf = seal?.kind === 'stated' ? seal.value : undefined
  const wait = entryAt(context.plan.waits, 'waits', step.wait)
  const gap = gapOf(TIGHTENS.has(step.do) ? tightening : volume)
  const mark = step.part?.wheelMark
  return {
    pieces: {
      ...placePieces(step, index, place === 'alone'),
      ...tighteningPieces(tightening, step, context),
      ...volumePieces(context, step, volume),
      place: statedLine(found.get('place')),
      sealant:
        leaf !== undefined && 'product' in leaf
          ? quoted(leaf.product, `${found.get('seal')?.from}/product`)
          : undefined,
      temperature: statedLine(found.get('drain temperature')),
      wait:
        wait?.entry.seconds === undefined
          ? undefined
          : durationLine(context, wait.entry.seconds, `${wait.from}/seconds`, 'computed'),
    },
    choices: {
      ...(mark !== undefined && { wheelMark: mark }),
      ...(leaf !== undefined && { seal: leaf.kind as StepParams['seal'] & string }),
      ...(gap !== undefined && { gap }),
    },
  }
}
