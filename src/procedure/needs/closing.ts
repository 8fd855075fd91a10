import { type GearcaseInstance, listGearcaseInstances } from '../layout.js'
import type { MutableState } from '../state.js'
import {
  coverAt,
  draftAt,
  draftHere,
  gearcaseAt,
  type Need,
  openingAt,
  type StepContext,
  type StepDraft,
} from '../stepContext.js'

/** What was opened is closed before oil moves or eyes look for it. */
export const CLOSING_NEEDS = {
  'not-tightened': (context) => {
    const untight = listUntight(context.state, listInstancesConcerned(context))
    return untight.length === 0 || untight
  },
  'cover-not-tightened': (context) =>
    context.cover === undefined ||
    coverAt(context.state, context.cover, context.instance).position === 'tight' || [
      draftHere(context, 'tighten cover'),
    ],
  'not-wiped-down': (context) =>
    listInstancesConcerned(context).every(
      (one) =>
        gearcaseAt(context.state, one).wipedDown ||
        (context.gearcase === undefined && !wasOpened(context.state, one)),
    ) || [draftHere(context, 'wipe down')],
  'leaks-not-checked': (context) => {
    const unchecked = listUnchecked(context.state, listInstancesConcerned(context))
    return unchecked.length === 0 || unchecked
  },
} satisfies Readonly<Record<string, Need>>

/** The step's own gearcase, those behind its shield, or all. */
export function listInstancesConcerned({ layout, self, shield }: StepContext): readonly GearcaseInstance[] {
  if (self !== undefined) return [self]
  const all = listGearcaseInstances(layout)
  return shield === undefined ? all : all.filter(({ gearcase }) => gearcase.shields.includes(shield.id))
}

/** Openings and covers that are not tight, as the steps that close them. */
export function listUntight(
  state: MutableState,
  instances: readonly GearcaseInstance[],
  isMeant: (path: string, wasOpened: boolean) => boolean = () => true,
): readonly StepDraft[] {
  return instances.flatMap(({ gearcase, instance }) => [
    ...gearcase.openings.flatMap((one) => {
      const { position, everCracked } = openingAt(state, one, instance)
      return position !== 'tight' && isMeant(one.path, everCracked) ? draftAt('tighten', one, instance) : []
    }),
    ...gearcase.covers.flatMap((one) => {
      const { position, everOff } = coverAt(state, one, instance)
      return position !== 'tight' && isMeant(one.path, everOff) ? draftAt('tighten cover', one, instance) : []
    }),
  ])
}

/** Gearcases that were opened and not checked for leaks since. */
export function listUnchecked(
  state: MutableState,
  instances: readonly GearcaseInstance[],
): readonly StepDraft[] {
  return instances
    .filter((one) => wasOpened(state, one) && !gearcaseAt(state, one).leaksChecked)
    .flatMap(({ gearcase, instance }) => draftAt('check for leaks', gearcase, instance))
}

function wasOpened(state: MutableState, { gearcase, instance }: GearcaseInstance): boolean {
  return (
    gearcase.openings.some((one) => openingAt(state, one, instance).everCracked) ||
    gearcase.covers.some((one) => coverAt(state, one, instance).everOff)
  )
}
