import { type GearcaseInstance, type SealLayout, stateKey } from '../layout.js'
import type { MutableState } from '../state.js'
import {
  coverAt,
  draftAt,
  draftHere,
  filterAt,
  gearcaseAt,
  metIfNone,
  type Need,
  openingAt,
  partAt,
  type StepContext,
  type StepDraft,
} from '../stepContext.js'

/** Needs for closing joints: a clean face, the right seal, everything tight. */
export const CLOSING_NEEDS = {
  'magnet-not-inspected': (context) =>
    !hasMagnet(context) ||
    (partAt(context)?.magnetSeen ?? true) || [draftHere(context, 'inspect the magnet')],
  'magnet-not-cleaned': (context) =>
    !hasMagnet(context) || (partAt(context)?.magnetClean ?? true) || [draftHere(context, 'clean the magnet')],
  'old-seal-not-removed': (context) =>
    metIfNone(listOldSeals(context).map((seal) => draftHere(context, 'take off old seal', seal))),
  'face-not-wiped': (context) =>
    (partAt(context)?.faceWiped ?? true) || [
      draftHere(context, 'wipe the seal face', context.opening ?? context.cover ?? context.filter),
    ],
  'seal-not-renewed': (context) =>
    metIfNone(
      listUnfitSeals(context).map((seal) => draftHere(context, ACTION_BY_TREATMENT[seal.treatment], seal)),
    ),
  'not-fitted': (context) => {
    const position = partAt(context)?.position ?? 'in'
    if (position === 'in' || position === 'tight') return true
    return [draftHere(context, context.cover ? 'fit cover' : context.filter ? 'fit filter' : 'fit')]
  },
  'not-tightened': (context) => metIfNone(listNotTightened(context.state, listAffectedInstances(context))),
  'cover-not-tightened': (context) =>
    context.cover === undefined ||
    coverAt(context.state, context.cover, context.instance).position === 'tight' || [
      draftHere(context, 'tighten cover'),
    ],
  'not-wiped-down': (context) =>
    listAffectedInstances(context).every(
      (one) =>
        gearcaseAt(context.state, one).wipedDown ||
        (context.gearcase === undefined && !wasOpened(context.state, one)),
    ) || [draftHere(context, 'wipe down')],
  'leaks-not-checked': (context) => metIfNone(listNotChecked(context.state, listAffectedInstances(context))),
} satisfies Readonly<Record<string, Need>>

/** The gearcase of the step, those behind its shield, or all. */
export function listAffectedInstances({ layout, self, shield }: StepContext): readonly GearcaseInstance[] {
  if (self !== undefined) return [self]
  const all = layout.instances
  return shield === undefined ? all : all.filter(({ gearcase }) => gearcase.shields.includes(shield.id))
}

/** Steps that tighten the openings, covers and filters that are not tight. */
export function listNotTightened(
  state: MutableState,
  instances: readonly GearcaseInstance[],
  isIncluded: (path: string, wasOpened: boolean) => boolean = () => true,
): readonly StepDraft[] {
  return instances.flatMap(({ gearcase, instance }) => [
    ...gearcase.openings.flatMap((one) => {
      const { position, everCracked } = openingAt(state, one, instance)
      return position !== 'tight' && isIncluded(one.path, everCracked)
        ? draftAt('tighten', one, instance)
        : []
    }),
    ...gearcase.covers.flatMap((one) => {
      const { position, wasRemoved } = coverAt(state, one, instance)
      return position !== 'tight' && isIncluded(one.path, wasRemoved)
        ? draftAt('tighten cover', one, instance)
        : []
    }),
    ...gearcase.filters.flatMap((one) => {
      const { position, wasRemoved } = filterAt(state, one, instance)
      const action = one.filter.held.kind === 'screwed' ? 'tighten filter' : 'fit filter'
      return position !== 'tight' && isIncluded(one.path, wasRemoved) ? draftAt(action, one, instance) : []
    }),
  ])
}

/** Steps that check for leaks at gearcases that were opened and not checked since. */
export function listNotChecked(
  state: MutableState,
  instances: readonly GearcaseInstance[],
): readonly StepDraft[] {
  return instances
    .filter((one) => wasOpened(state, one) && !gearcaseAt(state, one).leaksChecked)
    .flatMap(({ gearcase, instance }) => draftAt('check for leaks', gearcase, instance))
}

/** Steps that check for leaks at gearcases that were not checked since the run: warm oil shows leaks. */
export function listUncheckedSinceRun(
  state: MutableState,
  instances: readonly GearcaseInstance[],
): readonly StepDraft[] {
  return instances
    .filter((one) => {
      const { ranSinceFill, leaksChecked, leaksCheckedSinceRun } = gearcaseAt(state, one)
      return wasOpened(state, one) && ranSinceFill && leaksChecked && !leaksCheckedSinceRun
    })
    .flatMap(({ gearcase, instance }) => draftAt('check for leaks', gearcase, instance))
}

function wasOpened(state: MutableState, { gearcase, instance }: GearcaseInstance): boolean {
  return (
    gearcase.openings.some((one) => openingAt(state, one, instance).everCracked) ||
    gearcase.covers.some((one) => coverAt(state, one, instance).wasRemoved) ||
    gearcase.filters.some((one) => filterAt(state, one, instance).wasRemoved)
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
    const sealState = context.state.seals[stateKey(path, context.instance)]
    const mustGo = treatment === 'renew' || treatment === 'apply' || context.step.do === 'fit new seal'
    return mustGo && (sealState === 'used' || sealState === 'undisturbed' || sealState === 'inspected')
  })
}

function listUnfitSeals(context: StepContext): readonly SealLayout[] {
  return listSeals(context).filter(({ path, treatment }) => {
    const sealState = context.state.seals[stateKey(path, context.instance)]
    if (treatment === 'none' || sealState === 'new') return false
    return !(treatment === 'inspect' && sealState === 'inspected')
  })
}
