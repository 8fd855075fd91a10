import { findSharers, type GearcaseInstance, type IndexedSheet, type OpeningLayout } from '../layout.js'
import { findJob, isLevelJudged } from '../oilJob.js'
import type { MutableState } from '../state.js'
import {
  coverAt,
  draftAt,
  draftDrain,
  gearcaseAt,
  type Need,
  noneOf,
  type StepContext,
  type StepDraft,
} from '../stepContext.js'
import { listNotTightened } from './closing.js'

/** New oil goes into an empty, closed gearcase, in the right amount, and its level is read once it is at rest. */
export const FILLING_NEEDS = {
  'not-drained': (context) => {
    const undrained = listNotDrained(context)
    return undrained.length === 0 || undrained.flatMap(draftDrain)
  },
  'oil-not-inspected': ({ state, owner }) =>
    owner === undefined ||
    gearcaseAt(state, owner).oilSeen ||
    draftAt('inspect the oil', owner.gearcase, owner.instance),
  'oil-not-measured': ({ state, owner, opening }) =>
    owner === undefined ||
    gearcaseAt(state, owner).measured ||
    // The measured oil goes in through one of two plugs of which the machine has one.
    (opening?.applies === 'cannot tell' && gearcaseAt(state, owner).oil === 'new') ||
    draftAt('measure the oil', owner.gearcase, owner.instance),
  'additive-missing': ({ state, owner, opening, step }) => {
    if (owner?.gearcase.additive !== 'always' || gearcaseAt(state, owner).additiveIn) return true
    const { oilFirst, fillOpenings } = owner.gearcase
    const closes = step.do === 'fit' && fillOpenings.some((fill) => fill.path === opening?.path)
    const isLate = oilFirst ? closes && gearcaseAt(state, owner).oil === 'new' : step.do === 'pour the oil'
    return !isLate || draftAt('add the additive', owner.gearcase, owner.instance)
  },
  'drain-not-tightened': (context) => noneOf(listOpenDrains(context)),
  'cover-not-cured': ({ layout, state, owner }) =>
    owner === undefined || noneOf(listNotCured(layout, state, owner)),
  'hose-not-empty': ({ state, owner, opening, step }) => {
    if (owner === undefined || gearcaseAt(state, owner).hoseEmpty) return true
    const { fillOpening, fillOpenings } = owner.gearcase
    const atFill = fillOpenings.some((fill) => fill.path === opening?.path)
    if (step.do !== 'check the level' && !atFill) return true
    return draftAt('wait for the hose', fillOpening, owner.instance)
  },
  'oil-not-settled': ({ state, owner }) => {
    if (owner === undefined || state.settled || owner.gearcase.fill?.level?.engine === 'running') return true
    const waits = owner.gearcase.settles || gearcaseAt(state, owner).ranSinceFill
    return !waits || [{ do: 'let settle' }]
  },
  'level-not-checked': (context) => {
    const { state, jobs, owner } = context
    if (owner === undefined || !closesLevel(context)) return true
    const here = gearcaseAt(state, owner)
    const task = findJob(jobs, owner)?.task
    const judged = isLevelJudged(owner.gearcase, task) && (here.oil === 'new' || task === 'check')
    return (
      !judged || here.levelChecked || draftAt('check the level', owner.gearcase.levelOpening, owner.instance)
    )
  },
  'not-rechecked': ({ state, owner, opening }) => {
    if (owner === undefined || !isRecheckedAt(owner, opening)) return true
    const { oil, ranSinceFill, levelCheckedSinceRun } = gearcaseAt(state, owner)
    if (oil !== 'new' || !ranSinceFill || !isLevelJudged(owner.gearcase, 'change')) return true
    return levelCheckedSinceRun || draftAt('check the level', opening, owner.instance)
  },
  'no-top-up': ({ state, owner, opening }) => {
    if (owner === undefined || !isRecheckedAt(owner, opening)) return true
    const { oil, levelCheckedSinceRun, toppedUp } = gearcaseAt(state, owner)
    if (oil !== 'new' || !levelCheckedSinceRun) return true
    return toppedUp || draftAt('top up', owner.gearcase.fillOpening, owner.instance)
  },
} satisfies Readonly<Record<string, Need>>

/** Whether this is the opening at which the level is checked again after the run. */
function isRecheckedAt({ gearcase }: GearcaseInstance, opening: OpeningLayout | undefined): boolean {
  return gearcase.levelOpening?.path === opening?.path && gearcase.fill?.level?.recheckAfterRun === true
}

/** Closing this opening ends the chance to judge the level; a sight glass shows it until the fill plug is in. */
function closesLevel({ owner, opening }: StepContext): boolean {
  if (owner?.gearcase.fill?.method.kind === 'sight glass')
    return owner.gearcase.fillOpenings.some((fill) => fill.path === opening?.path)
  return owner?.gearcase.levelOpening?.path === opening?.path
}

/** Gearcases that this pour would top up on old oil: the owner, and what the job empties with it. */
export function listNotDrained({ state, jobs, owner }: StepContext): readonly GearcaseInstance[] {
  if (owner === undefined) return []
  return (findJob(jobs, owner)?.emptied ?? [owner]).filter((one) => gearcaseAt(state, one).oil === 'old')
}

/** Everything below the oil that was opened and is not tight; the fill and the level opening stay open. */
function listOpenDrains({ layout, state, owner }: StepContext): readonly StepDraft[] {
  if (owner === undefined) return []
  const { fillOpenings, levelOpening } = owner.gearcase
  const stays = new Set([...fillOpenings.map((one) => one.path), levelOpening?.path])
  return listNotTightened(
    state,
    findSharers(layout, owner),
    (path, wasOpened) => wasOpened && !stays.has(path),
  )
}

/** Covers whose sealant has not cured, as the steps that wait for it. */
export function listNotCured(
  layout: IndexedSheet,
  state: MutableState,
  owner: GearcaseInstance,
): readonly StepDraft[] {
  return findSharers(layout, owner).flatMap(({ gearcase, instance }) =>
    gearcase.covers.flatMap((cover) => {
      const { everOff, cured } = coverAt(state, cover, instance)
      return cover.seal.cures && everOff && !cured ? draftAt('wait for the cure', cover, instance) : []
    }),
  )
}
