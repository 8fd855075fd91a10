import type { OpeningRole, WheelMark } from '../../spec/index.js'
import { type GearcaseLayout, keyOf, type OpeningLayout, partOf, servesAs, wheelMarkFor } from '../layout.js'
import {
  draftAt,
  draftHere,
  gearcaseAt,
  metIfNone,
  type Need,
  openingAt,
  partAt,
  type StepContext,
  type StepDraft,
} from '../stepContext.js'

const isRemoved: Need = (context) => {
  const position = partAt(context)?.position ?? 'out'
  if (position === 'out' || position === 'off') return true
  const { opening, cover, filter } = context
  const action = cover ? 'take off cover' : filter ? 'take off filter' : 'take out'
  return [draftHere(context, action, cover ?? filter ?? opening)]
}

/** Needs for opening: it can be filled again, spills nothing, and lets no dirt in. */
export const OPENING_NEEDS = {
  // A filter behind a plug or cover has no outside to clean.
  'area-not-cleaned': (context) =>
    context.filter?.behind !== undefined ||
    (partAt(context)?.areaClean ?? true) || [draftHere(context, 'clean around')],
  'shield-in-the-way': ({ gearcase, layout, state }) => {
    const on = (gearcase?.shields ?? [])
      .flatMap((id) => layout.shields.get(id) ?? [])
      .filter(({ path, applies }) => applies !== 'no' && state.shields[path] === 'on')
    return metIfNone(on.map(({ path }) => ({ do: 'remove shield', on: path })))
  },
  'fill-not-cracked': (context) =>
    otherFillPassesOrNone(context, ({ everCracked }) => everCracked) || draftAtFill(context, 'crack loose'),
  'fill-not-nipped': (context) =>
    listOtherFills(context).every(
      ({ opening, instance }) => openingAt(context.state, opening, instance).position !== 'cracked',
    ) || draftAtFill(context, 'nip by hand'),
  'fill-not-vented': (context) =>
    otherFillPassesOrNone(context, ({ position }) => position === 'out') || draftAtFill(context, 'take out'),
  'not-cracked': (context) =>
    context.opening === undefined ||
    openingAt(context.state, context.opening, context.instance).position !== 'tight' || [
      draftHere(context, 'crack loose'),
    ],
  'no-pan': (context) =>
    context.self === undefined ||
    !letsOilOut(context) ||
    gearcaseAt(context.state, context.self).panPlaced || [draftHere(context, 'place the pan')],
  'opening-closed': (context) => {
    const { state, step, owner, opening, instance } = context
    if (opening === undefined) return true
    const method = owner?.gearcase.fill?.method
    // A sight glass shows the level with its plug in.
    if (step.do === 'check the level' && method?.kind === 'sight glass' && method.opening === opening.id)
      return true
    return openingAt(state, opening, instance).position === 'out' || [draftHere(context, 'take out')]
  },
  'drain-not-out': isRemoved,
  'not-removed': isRemoved,
  'oil-not-warm': ({ state, mustNotRun }) => mustNotRun || state.oilWarm || [{ do: 'warm the oil' }],
  'sample-not-taken': (context) => {
    const { state, self, jobs, opening } = context
    if (self === undefined || opening === undefined || gearcaseAt(state, self).sampled) return true
    const isAsked = jobs.some(({ sampled }) => sampled.some((one) => keyOf(one) === keyOf(self)))
    return !isAsked || gearcaseAt(state, self).oil !== 'old' || [draftHere(context, 'take an oil sample')]
  },
  // Oil from the pan, or the dregs in the case, says nothing about the gears.
  'sample-too-late': ({ state, self }) => self === undefined || gearcaseAt(state, self).oil === 'old' || [],
  'breather-not-cleared': ({ state, self }) =>
    self === undefined ||
    self.gearcase.gearcase.breather === undefined ||
    gearcaseAt(state, self).breatherClear ||
    draftAt('clear the breather', self.gearcase, self.instance),
  'wrong-wheel-mark': (context) => {
    const { state, self, opening, instance } = context
    const [mark, ...others] = listMarks(context)
    if (self === undefined || mark === undefined) return true
    const currentMark = gearcaseAt(state, self).wheelMark
    if ([mark, ...others].some((one) => one === currentMark)) return true
    const at = { ...(instance !== undefined && { instance }), wheelMark: mark }
    const action = self.gearcase.supports.length === 0 ? 'roll the machine' : 'turn the wheel'
    return [{ do: action, ...(opening && { on: opening.path }), at }]
  },
} satisfies Readonly<Record<string, Need>>

/**
 * Fill openings that must be loosened before this part lets the oil out. None if the part is the only fill opening, if the
 * oil is already out, or if the part lets no oil out.
 */
export function listOtherFills(
  context: StepContext,
): readonly { readonly opening: OpeningLayout; readonly instance: string | undefined }[] {
  const { self, owner, opening, cover, state } = context
  if (self === undefined || owner === undefined) return []
  const letsDrain = cover !== undefined || (opening !== undefined && isDrainOpening(self.gearcase, opening))
  if (!letsDrain || gearcaseAt(state, self).oil === 'out') return []
  return owner.gearcase.fillOpenings
    .filter((fill) => fill.path !== opening?.path)
    .map((fill) => ({ opening: fill, instance: owner.instance }))
}

/** Whether one of the other fill openings passes the test, or there is none. */
function otherFillPassesOrNone(
  context: StepContext,
  test: (opening: { readonly everCracked: boolean; readonly position: string }) => boolean,
): boolean {
  const fills = listOtherFills(context).map((fill) => openingAt(context.state, fill.opening, fill.instance))
  return fills.length === 0 || fills.some(test)
}

function draftAtFill(context: StepContext, action: StepDraft['do']): readonly StepDraft[] {
  const [fill] = listOtherFills(context)
  return draftAt(action, fill?.opening, fill?.instance)
}

/** Whether oil runs out of this opening. */
export function isDrainOpening({ ways }: GearcaseLayout, opening: OpeningLayout): boolean {
  return (
    servesAs(opening, 'drain') || ways.some((way) => way.kind === 'drain plug' && partOf(way) === opening)
  )
}

function letsOilOut({ gearcase, owner, opening, cover, filter, step }: StepContext): boolean {
  if (cover !== undefined || filter !== undefined || step.do === 'suck out the oil') return true
  if (gearcase === undefined || opening === undefined) return false
  return (
    isDrainOpening(gearcase, opening) ||
    // A level hole that is only loosened lets nothing out.
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
  return (ROLES_BY_ACTION[step.do] ?? []).flatMap((role) => wheelMarkFor(opening, role) ?? [])
}
