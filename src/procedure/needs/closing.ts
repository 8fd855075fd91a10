import { type GearcaseInstance, makeStateKey, type SealLayout } from '../layout.js'
import type { MutableState } from '../state.js'
import type { Need, StepContext, StepDraft } from '../stepContext.js'
import {
  draftAt,
  draftForSamePart,
  getCoverState,
  getFilterState,
  getGearcaseState,
  getOpeningState,
  getPartState,
  metIfEmpty,
} from '../stepContext.js'

/** Preconditions of closing joints: a clean face, the right seal, everything tight. */
export const CLOSING_NEEDS = {
  'magnet-not-inspected': (context) =>
    !hasMagnet(context) ||
    (getPartState(context)?.magnetSeen ?? true) || [draftForSamePart(context, 'inspect the magnet')],
  'magnet-not-cleaned': (context) =>
    !hasMagnet(context) ||
    (getPartState(context)?.magnetClean ?? true) || [draftForSamePart(context, 'clean the magnet')],
  'old-seal-not-removed': (context) =>
    metIfEmpty(listOldSeals(context).map((seal) => draftForSamePart(context, 'take off old seal', seal))),
  'face-not-wiped': (context) =>
    (getPartState(context)?.faceWiped ?? true) || [
      draftForSamePart(context, 'wipe the seal face', context.opening ?? context.cover ?? context.filter),
    ],
  'seal-not-renewed': (context) =>
    metIfEmpty(
      listSealsNotReady(context).map((seal) =>
        draftForSamePart(context, ACTION_BY_TREATMENT[seal.treatment], seal),
      ),
    ),
  'part-not-fitted': (context) => {
    const position = getPartState(context)?.position ?? 'in'
    if (position === 'in' || position === 'tight') return true
    return [draftForSamePart(context, context.cover ? 'fit cover' : context.filter ? 'fit filter' : 'fit')]
  },
  'part-not-tightened': (context) =>
    metIfEmpty(listNotTightened(context.state, listAffectedInstances(context))),
  'cover-not-tightened': (context) =>
    context.cover === undefined ||
    getCoverState(context.state, context.cover, context.instance).position === 'tight' || [
      draftForSamePart(context, 'tighten cover'),
    ],
  'gearcase-not-wiped': (context) =>
    listAffectedInstances(context).every(
      (affectedInstance) =>
        getGearcaseState(context.state, affectedInstance).wipedDown ||
        (context.gearcase === undefined && !wasOpened(context.state, affectedInstance)),
    ) || [draftForSamePart(context, 'wipe down')],
  'leaks-not-checked': (context) => metIfEmpty(listNotChecked(context.state, listAffectedInstances(context))),
} satisfies Readonly<Record<string, Need>>

/** The gearcase of the step, those behind its shield, or all. */
export function listAffectedInstances({
  indexedSheet,
  target,
  shield,
}: StepContext): readonly GearcaseInstance[] {
  if (target !== undefined) return [target]
  const allInstances = indexedSheet.instances
  return shield === undefined
    ? allInstances
    : allInstances.filter(({ gearcase }) => gearcase.shields.includes(shield.id))
}

/** Steps that tighten the openings, covers and filters that are not tight. */
export function listNotTightened(
  state: MutableState,
  instances: readonly GearcaseInstance[],
  isIncluded: (path: string, wasOpened: boolean) => boolean = () => true,
): readonly StepDraft[] {
  return instances.flatMap(({ gearcase, instance }) => [
    ...gearcase.openings.flatMap((opening) => {
      const { position, everCracked } = getOpeningState(state, opening, instance)
      return position !== 'tight' && isIncluded(opening.path, everCracked)
        ? draftAt('tighten', opening, instance)
        : []
    }),
    ...gearcase.covers.flatMap((cover) => {
      const { position, wasRemoved } = getCoverState(state, cover, instance)
      return position !== 'tight' && isIncluded(cover.path, wasRemoved)
        ? draftAt('tighten cover', cover, instance)
        : []
    }),
    ...gearcase.filters.flatMap((filter) => {
      const { position, wasRemoved } = getFilterState(state, filter, instance)
      const action = filter.filter.held.kind === 'screwed' ? 'tighten filter' : 'fit filter'
      return position !== 'tight' && isIncluded(filter.path, wasRemoved)
        ? draftAt(action, filter, instance)
        : []
    }),
  ])
}

/** Steps that check for leaks at gearcases that were opened and not checked since. */
export function listNotChecked(
  state: MutableState,
  instances: readonly GearcaseInstance[],
): readonly StepDraft[] {
  return instances
    .filter((instance) => wasOpened(state, instance) && !getGearcaseState(state, instance).leaksChecked)
    .flatMap(({ gearcase, instance }) => draftAt('check for leaks', gearcase, instance))
}

/** Steps that check for leaks at gearcases that were not checked since the run: warm oil shows leaks. */
export function listUncheckedSinceRun(
  state: MutableState,
  instances: readonly GearcaseInstance[],
): readonly StepDraft[] {
  return instances
    .filter((instance) => {
      const { ranSinceFill, leaksChecked, leaksCheckedSinceRun } = getGearcaseState(state, instance)
      return wasOpened(state, instance) && ranSinceFill && leaksChecked && !leaksCheckedSinceRun
    })
    .flatMap(({ gearcase, instance }) => draftAt('check for leaks', gearcase, instance))
}

function wasOpened(state: MutableState, { gearcase, instance }: GearcaseInstance): boolean {
  return (
    gearcase.openings.some((opening) => getOpeningState(state, opening, instance).everCracked) ||
    gearcase.covers.some((cover) => getCoverState(state, cover, instance).wasRemoved) ||
    gearcase.filters.some((filter) => getFilterState(state, filter, instance).wasRemoved)
  )
}

const ACTION_BY_TREATMENT: Readonly<Record<SealLayout['treatment'], StepDraft['do']>> = {
  renew: 'fit new seal',
  apply: 'apply sealant',
  inspect: 'inspect the seal',
  none: 'wipe the seal face',
}

function hasMagnet({ opening, cover }: StepContext): boolean {
  return opening?.opening.magnet === true || cover?.cover.magnet === true
}

function listSeals({ opening, cover, filter, seal }: StepContext): readonly SealLayout[] {
  if (seal !== undefined) return [seal]
  if (opening !== undefined) return opening.seals
  return cover === undefined ? (filter?.seals ?? []) : [cover.seal]
}

/** Old seals that must be removed. */
function listOldSeals(context: StepContext): readonly SealLayout[] {
  return listSeals(context).filter(({ path, treatment }) => {
    const sealState = context.state.seals[makeStateKey(path, context.instance)]
    const mustBeRemoved = treatment === 'renew' || treatment === 'apply' || context.step.do === 'fit new seal'
    return mustBeRemoved && (sealState === 'used' || sealState === 'undisturbed' || sealState === 'inspected')
  })
}

function listSealsNotReady(context: StepContext): readonly SealLayout[] {
  return listSeals(context).filter(({ path, treatment }) => {
    const sealState = context.state.seals[makeStateKey(path, context.instance)]
    if (treatment === 'none' || sealState === 'new') return false
    return !(treatment === 'inspect' && sealState === 'inspected')
  })
}
