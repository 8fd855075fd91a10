import { type GearcaseInstance, type IndexedSheet, listOilSharers, type OpeningLayout } from '../layout.js'
import { findJob, includesLevelCheck } from '../listJobs.js'
import type { MutableState } from '../state.js'
import type { Need, StepContext, StepDraft } from '../stepContext.js'
import { draftAt, draftDraining, getCoverState, getGearcaseState, metIfEmpty } from '../stepContext.js'
import { listNotTightened } from './closing.js'

/** Preconditions of filling: an empty, closed gearcase, measured oil, and a level that is read at rest. */
export const FILLING_NEEDS = {
  'oil-not-drained': (context) => {
    const undrained = listNotDrained(context)
    return undrained.length === 0 || undrained.flatMap(draftDraining)
  },
  'oil-not-inspected': ({ state, owner }) =>
    owner === undefined ||
    getGearcaseState(state, owner).oilSeen ||
    draftAt('inspect the oil', owner.gearcase, owner.instance),
  'oil-not-measured': ({ state, owner, opening }) =>
    owner === undefined ||
    getGearcaseState(state, owner).measured ||
    // The machine has only one of the two fill plugs, so the oil is measured once.
    (opening?.applies === 'cannot tell' && getGearcaseState(state, owner).oil === 'new') ||
    draftAt('measure the oil', owner.gearcase, owner.instance),
  // At a level hole the surplus runs out; of two alternative fill plugs the machine has only one.
  'oil-poured-twice': ({ state, owner, opening }) =>
    owner === undefined ||
    getGearcaseState(state, owner).oil !== 'new' ||
    opening?.applies === 'cannot tell' ||
    owner.gearcase.fill?.method.kind === 'to level hole' ||
    [],
  'additive-missing': ({ state, owner, opening, step }) => {
    if (owner?.gearcase.additive !== 'always' || getGearcaseState(state, owner).additiveIn) return true
    const { oilFirst, fillOpenings } = owner.gearcase
    const isClosingFill = step.do === 'fit' && fillOpenings.some((fill) => fill.path === opening?.path)
    const isLate = oilFirst
      ? isClosingFill && getGearcaseState(state, owner).oil === 'new'
      : step.do === 'pour the oil'
    return !isLate || draftAt('add the additive', owner.gearcase, owner.instance)
  },
  'drain-not-tightened': (context) => metIfEmpty(listOpenDrains(context)),
  'cover-not-cured': ({ indexedSheet, state, owner }) =>
    owner === undefined || metIfEmpty(listNotCured(indexedSheet, state, owner)),
  'hose-not-empty': ({ state, owner, opening, step }) => {
    if (owner === undefined || getGearcaseState(state, owner).hoseEmpty) return true
    const { fillOpening, fillOpenings } = owner.gearcase
    const isFillOpening = fillOpenings.some((fill) => fill.path === opening?.path)
    if (step.do !== 'check the level' && !isFillOpening) return true
    return draftAt('wait for the hose', fillOpening, owner.instance)
  },
  'oil-not-settled': ({ state, owner }) => {
    if (owner === undefined || state.settled || owner.gearcase.fill?.level?.engine === 'running') return true
    const mustWait = owner.gearcase.hasSettlingTime || getGearcaseState(state, owner).ranSinceFill
    return !mustWait || [{ do: 'let settle' }]
  },
  'level-not-checked': (context) => {
    const { state, jobs, owner } = context
    if (owner === undefined || !isLevelCheckOpening(context)) return true
    const ownerState = getGearcaseState(state, owner)
    const task = findJob(jobs, owner)?.task
    const isJudged =
      includesLevelCheck(owner.gearcase, task) && (ownerState.oil === 'new' || task === 'check')
    return (
      !isJudged ||
      ownerState.levelChecked ||
      draftAt('check the level', owner.gearcase.levelOpening, owner.instance)
    )
  },
  'level-not-rechecked': ({ state, owner, opening }) => {
    if (owner === undefined || !isRecheckedAt(owner, opening)) return true
    const { oil, ranSinceFill, levelCheckedSinceRun } = getGearcaseState(state, owner)
    if (oil !== 'new' || !ranSinceFill || !includesLevelCheck(owner.gearcase, 'change')) return true
    return levelCheckedSinceRun || draftAt('check the level', opening, owner.instance)
  },
  'oil-not-topped-up': ({ state, owner, opening }) => {
    if (owner === undefined || !isRecheckedAt(owner, opening)) return true
    const { oil, levelCheckedSinceRun, toppedUp } = getGearcaseState(state, owner)
    if (oil !== 'new' || !levelCheckedSinceRun) return true
    return toppedUp || draftAt('top up', owner.gearcase.fillOpening, owner.instance)
  },
} satisfies Readonly<Record<string, Need>>

/** Whether the level is checked again at this opening after the run. */
function isRecheckedAt({ gearcase }: GearcaseInstance, opening: OpeningLayout | undefined): boolean {
  return gearcase.levelOpening?.path === opening?.path && gearcase.fill?.level?.recheckAfterRun === true
}

/** Whether this is the opening through which the level is checked; with a sight glass, the fill plug. */
function isLevelCheckOpening({ owner, opening }: StepContext): boolean {
  if (owner?.gearcase.fill?.method.kind === 'sight glass')
    return owner.gearcase.fillOpenings.some((fill) => fill.path === opening?.path)
  return owner?.gearcase.levelOpening?.path === opening?.path
}

/** Gearcases of the job that still have old oil. */
export function listNotDrained({ state, jobs, owner }: StepContext): readonly GearcaseInstance[] {
  if (owner === undefined) return []
  return (findJob(jobs, owner)?.emptiedInstances ?? [owner]).filter(
    (emptiedInstance) => getGearcaseState(state, emptiedInstance).oil === 'old',
  )
}

function listOpenDrains({ indexedSheet, state, owner }: StepContext): readonly StepDraft[] {
  if (owner === undefined) return []
  const { fillOpenings, levelOpening } = owner.gearcase
  const allowedOpenPaths = new Set([
    ...fillOpenings.map((fillOpening) => fillOpening.path),
    levelOpening?.path,
  ])
  return listNotTightened(
    state,
    listOilSharers(indexedSheet, owner),
    (path, wasOpened) => wasOpened && !allowedOpenPaths.has(path),
  )
}

/** Steps that wait for the uncured sealant of covers. */
export function listNotCured(
  indexedSheet: IndexedSheet,
  state: MutableState,
  owner: GearcaseInstance,
): readonly StepDraft[] {
  return listOilSharers(indexedSheet, owner).flatMap(({ gearcase, instance }) =>
    gearcase.covers.flatMap((cover) => {
      const { wasRemoved, cured } = getCoverState(state, cover, instance)
      return cover.seal.mustCure && wasRemoved && !cured ? draftAt('wait for the cure', cover, instance) : []
    }),
  )
}
