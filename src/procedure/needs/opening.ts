import type { OpeningRole, WheelMark } from '../../spec/index.js'
import type { GearcaseLayout, OpeningLayout } from '../layout.js'
import { findWheelMark, getPartToOpen, hasRole, makeInstanceKey } from '../layout.js'
import type { Need, StepContext, StepDraft } from '../stepContext.js'
import {
  draftAt,
  draftForSamePart,
  getGearcaseState,
  getOpeningState,
  getPartState,
  metIfEmpty,
} from '../stepContext.js'

const isRemoved: Need = (context) => {
  const position = getPartState(context)?.position ?? 'out'
  if (position === 'out' || position === 'off') return true
  const { opening, cover, filter } = context
  const action = cover ? 'take off cover' : filter ? 'take off filter' : 'take out'
  return [draftForSamePart(context, action, cover ?? filter ?? opening)]
}

/** Preconditions of opening a gearcase: it can be filled again, spills no oil, and lets no dirt in. */
export const OPENING_NEEDS = {
  // A filter behind a plug or cover has no outside to clean.
  'area-not-cleaned': (context) =>
    context.filter?.behind !== undefined ||
    (getPartState(context)?.areaClean ?? true) || [draftForSamePart(context, 'clean around')],
  'shield-in-the-way': ({ gearcase, indexedSheet, state }) => {
    const on = (gearcase?.shields ?? [])
      .flatMap((id) => indexedSheet.shields.get(id) ?? [])
      .filter(({ path, applies }) => applies !== 'no' && state.shields[path] === 'on')
    return metIfEmpty(on.map(({ path }) => ({ do: 'remove shield', on: path })))
  },
  'fill-not-cracked': (context) =>
    isMetByOtherFill(context, ({ everCracked }) => everCracked) || draftOnOtherFill(context, 'crack loose'),
  'fill-plug-loose': (context) =>
    listOtherFillOpenings(context).every(
      ({ opening, instance }) => getOpeningState(context.state, opening, instance).position !== 'cracked',
    ) || draftOnOtherFill(context, 'nip by hand'),
  'fill-not-vented': (context) =>
    isMetByOtherFill(context, ({ position }) => position === 'out') || draftOnOtherFill(context, 'take out'),
  'plug-not-cracked': (context) =>
    context.opening === undefined ||
    getOpeningState(context.state, context.opening, context.instance).position !== 'tight' || [
      draftForSamePart(context, 'crack loose'),
    ],
  'no-pan': (context) =>
    context.target === undefined ||
    !letsOilOut(context) ||
    getGearcaseState(context.state, context.target).panPlaced || [draftForSamePart(context, 'place the pan')],
  'opening-closed': (context) => {
    const { state, step, owner, opening, instance } = context
    if (opening === undefined) return true
    const method = owner?.gearcase.fill?.method
    // A sight glass shows the level with its plug in.
    if (step.do === 'check the level' && method?.kind === 'sight glass' && method.opening === opening.id)
      return true
    return (
      getOpeningState(state, opening, instance).position === 'out' || [draftForSamePart(context, 'take out')]
    )
  },
  'drain-not-out': isRemoved,
  'part-not-removed': isRemoved,
  'oil-not-warm': ({ state, mustNotRun }) => mustNotRun || state.oilWarm || [{ do: 'warm the oil' }],
  'sample-not-taken': (context) => {
    const { state, target, jobs, opening } = context
    if (target === undefined || opening === undefined || getGearcaseState(state, target).sampled) return true
    const isSampleRequired = jobs.some(({ sampledInstances }) =>
      sampledInstances.some(
        (sampledInstance) => makeInstanceKey(sampledInstance) === makeInstanceKey(target),
      ),
    )
    return (
      !isSampleRequired ||
      getGearcaseState(state, target).oil !== 'old' || [draftForSamePart(context, 'take an oil sample')]
    )
  },
  // A sample from the pan, or of the sediment in the case, shows nothing about the gears.
  'sample-too-late': ({ state, target }) =>
    target === undefined || getGearcaseState(state, target).oil === 'old' || [],
  'breather-not-cleared': ({ state, target }) =>
    target === undefined ||
    target.gearcase.gearcase.breather === undefined ||
    getGearcaseState(state, target).breatherClear ||
    draftAt('clear the breather', target.gearcase, target.instance),
  'wrong-wheel-mark': (context) => {
    const { state, target, opening, instance } = context
    const [mark, ...others] = listMarks(context)
    if (target === undefined || mark === undefined) return true
    const currentMark = getGearcaseState(state, target).wheelMark
    if ([mark, ...others].some((candidate) => candidate === currentMark)) return true
    const at = { ...(instance !== undefined && { instance }), wheelMark: mark }
    const action = target.gearcase.supports.length === 0 ? 'roll the machine' : 'turn the wheel'
    return [{ do: action, ...(opening && { on: opening.path }), at }]
  },
} satisfies Readonly<Record<string, Need>>

/**
 * Fill openings that must be loosened before this part lets the oil out. None if the part is the only fill
 * opening, if the oil is already out, or if the part lets no oil out.
 */
export function listOtherFillOpenings(
  context: StepContext,
): readonly { readonly opening: OpeningLayout; readonly instance: string | undefined }[] {
  const { target, owner, opening, cover, state } = context
  if (target === undefined || owner === undefined) return []
  const letsOilDrain =
    cover !== undefined || (opening !== undefined && isDrainOpening(target.gearcase, opening))
  if (!letsOilDrain || getGearcaseState(state, target).oil === 'out') return []
  return owner.gearcase.fillOpenings
    .filter((fill) => fill.path !== opening?.path)
    .map((fill) => ({ opening: fill, instance: owner.instance }))
}

/** Whether one of the other fill openings passes the test, or there are none. */
function isMetByOtherFill(
  context: StepContext,
  isMet: (opening: { readonly everCracked: boolean; readonly position: string }) => boolean,
): boolean {
  const fillStates = listOtherFillOpenings(context).map((fill) =>
    getOpeningState(context.state, fill.opening, fill.instance),
  )
  return fillStates.length === 0 || fillStates.some(isMet)
}

function draftOnOtherFill(context: StepContext, action: StepDraft['do']): readonly StepDraft[] {
  const [fill] = listOtherFillOpenings(context)
  return draftAt(action, fill?.opening, fill?.instance)
}

/** Whether oil runs out of this opening. */
export function isDrainOpening({ emptyingWays }: GearcaseLayout, opening: OpeningLayout): boolean {
  return (
    hasRole(opening, 'drain') ||
    emptyingWays.some((way) => way.kind === 'drain plug' && getPartToOpen(way) === opening)
  )
}

function letsOilOut({ gearcase, owner, opening, cover, filter, step }: StepContext): boolean {
  if (cover !== undefined || filter !== undefined || step.do === 'suck out the oil') return true
  if (gearcase === undefined || opening === undefined) return false
  return (
    isDrainOpening(gearcase, opening) ||
    // A level plug that is only loosened lets no oil out.
    (step.do !== 'crack loose' &&
      owner?.gearcase.fill?.method.kind === 'to level hole' &&
      gearcase.levelOpening?.id === opening.id)
  )
}

const ROLES_BY_ACTION: Readonly<Partial<Record<StepDraft['do'], readonly OpeningRole[]>>> = {
  'let drain': ['drain'],
  'pour the oil': ['fill'],
  'check the level': ['level'],
  'top up': ['level', 'fill'],
}

/** Marks of the wheel at which this step can be done, if the opening turns with a wheel. */
function listMarks({ opening, step }: StepContext): readonly WheelMark[] {
  if (opening === undefined) return []
  return (ROLES_BY_ACTION[step.do] ?? []).flatMap((role) => findWheelMark(opening, role) ?? [])
}
