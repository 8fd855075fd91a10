import type { OpeningRole, WheelMark } from '../../spec/index.js'
import { findOwner } from '../gearcaseInstance.js'
import { type OpeningLayout, servesAs, stateKey, wheelMarkFor } from '../layout.js'
import type { Need } from '../need.js'
import {
  coverAt,
  gearcaseAt,
  gearcaseInstanceOf,
  openingAt,
  ownerOf,
  type StepContext,
  type StepDraft,
} from '../stepContext.js'

/** Nothing is opened that could not be filled again, or that would spill or let dirt in. */
export const OPENING_NEEDS = {
  'area-not-cleaned': {
    severity: 'error',
    holds: (context: StepContext) => partAt(context)?.areaClean ?? true,
    remedy: (context: StepContext) => [draftHere(context, 'clean around')],
  },
  'shield-in-the-way': {
    severity: 'error',
    holds: (context: StepContext) => listShieldsOn(context).length === 0,
    remedy: (context: StepContext) => listShieldsOn(context).map((on) => ({ do: 'remove shield', on })),
  },
  'fill-not-cracked': {
    severity: 'error',
    holds: (context: StepContext) => {
      const fills = listOtherFills(context)
      return (
        fills.length === 0 ||
        fills.some(({ opening, instance }) => openingAt(context.state, opening, instance).everCracked)
      )
    },
    remedy: (context: StepContext) => draftAtFill(context, 'crack loose'),
    assume: (context: StepContext) => {
      const [fill] = listOtherFills(context)
      if (fill === undefined) return
      const here = openingAt(context.state, fill.opening, fill.instance)
      here.everCracked = true
      // Cracked and nipped: a fill plug that was forgotten is one mistake, not two.
      if (here.position === 'tight') here.position = 'nipped'
      for (const seal of fill.opening.seals) context.state.seals[stateKey(seal.path, fill.instance)] = 'used'
    },
  },
  'fill-not-nipped': {
    severity: 'error',
    holds: (context: StepContext) =>
      listOtherFills(context).every(
        ({ opening, instance }) => openingAt(context.state, opening, instance).position !== 'cracked',
      ),
    remedy: (context: StepContext) => draftAtFill(context, 'nip by hand'),
  },
  'not-cracked': {
    severity: 'error',
    holds: ({ state, opening, instance }: StepContext) =>
      opening === undefined || openingAt(state, opening, instance).position !== 'tight',
    remedy: (context: StepContext) => [draftHere(context, 'crack loose')],
  },
  'no-pan': {
    severity: 'error',
    holds: (context: StepContext) => {
      const unit = gearcaseInstanceOf(context)
      return unit === undefined || !letsOilOut(context) || gearcaseAt(context.state, unit).panPlaced
    },
    remedy: (context: StepContext) => [draftHere(context, 'place the pan')],
  },
  'opening-closed': {
    severity: 'error',
    holds: (context: StepContext) => {
      if (context.opening === undefined) return true
      const method = ownerOf(context)?.gearcase.fill?.method
      if (
        context.step.do === 'check the level' &&
        method?.kind === 'sight glass' &&
        method.opening === context.opening.id
      )
        return true
      return openingAt(context.state, context.opening, context.instance).position === 'out'
    },
    remedy: (context: StepContext) => [draftHere(context, 'take out')],
  },
  'drain-not-out': {
    severity: 'error',
    holds: (context: StepContext) => isOut(context),
    remedy: (context: StepContext) => [
      draftHere(context, context.cover === undefined ? 'take out' : 'take off cover'),
    ],
  },
  'not-taken-out': {
    severity: 'error',
    holds: (context: StepContext) => isOut(context),
    remedy: (context: StepContext) => {
      const on = context.cover?.path ?? context.opening?.path
      const action = context.cover === undefined ? 'take out' : 'take off cover'
      return on === undefined ? [] : [{ ...draftHere(context, action), on }]
    },
  },
  'fill-not-vented': {
    severity: 'error',
    holds: (context: StepContext) => {
      const fills = listOtherFills(context)
      return (
        fills.length === 0 ||
        fills.some(({ opening, instance }) => openingAt(context.state, opening, instance).position === 'out')
      )
    },
    remedy: (context: StepContext) => draftAtFill(context, 'take out'),
  },
  'oil-not-warm': {
    severity: 'error',
    holds: ({ state }: StepContext) => state.oilWarm,
    remedy: () => [{ do: 'warm the oil' }],
    assume: ({ state }: StepContext) => {
      state.oilWarm = true
    },
  },
  'breather-not-cleared': {
    severity: 'error',
    holds: (context: StepContext) => {
      const unit = gearcaseInstanceOf(context)
      return (
        unit === undefined ||
        unit.gearcase.gearcase.breather === undefined ||
        gearcaseAt(context.state, unit).breatherClear
      )
    },
    remedy: (context: StepContext) =>
      context.gearcase === undefined
        ? []
        : [{ ...draftHere(context, 'clear the breather'), on: context.gearcase.path }],
  },
  'wrong-wheel-mark': {
    severity: 'error',
    holds: (context: StepContext) => {
      const unit = gearcaseInstanceOf(context)
      const wanted = wantedMarks(context)
      if (unit === undefined || wanted.length === 0) return true
      return wanted.some((mark) => mark === gearcaseAt(context.state, unit).wheelMark)
    },
    remedy: (context: StepContext) =>
      wantedMarks(context)
        .slice(0, 1)
        .map((wheelMark) => ({
          do: 'turn the wheel',
          ...(context.opening === undefined ? {} : { on: context.opening.path }),
          at: { ...(context.instance === undefined ? {} : { instance: context.instance }), wheelMark },
        })),
  },
} satisfies Readonly<Record<string, Need>>

export function partAt(context: StepContext) {
  if (context.opening !== undefined) return openingAt(context.state, context.opening, context.instance)
  if (context.cover !== undefined) return coverAt(context.state, context.cover, context.instance)
  return undefined
}

/** The same part and instance with another action; wheel marks stay behind. */
export function draftHere(context: StepContext, action: StepDraft['do']): StepDraft {
  return {
    do: action,
    ...(context.step.on === undefined ? {} : { on: context.step.on }),
    ...(context.instance === undefined ? {} : { at: { instance: context.instance } }),
  }
}

function isOut(context: StepContext): boolean {
  const here = partAt(context)
  return here === undefined || here.position === 'out' || here.position === 'off'
}

/**
 * Fill openings that must be known to open before this part lets the oil out. None where the part is itself its oil
 * space's sole fill opening, where the oil is out already, or where the part lets none out.
 */
function listOtherFills(
  context: StepContext,
): readonly { readonly opening: OpeningLayout; readonly instance: string | undefined }[] {
  const { gearcase, instance, opening, cover, layout, state } = context
  if (gearcase === undefined) return []
  const drains =
    cover !== undefined ||
    (opening !== undefined &&
      (servesAs(opening, 'drain') ||
        (gearcase.emptying?.kind === 'drain plug' && gearcase.emptying.opening.id === opening.id)))
  if (!drains || gearcaseAt(state, { gearcase, instance }).oil === 'out') return []
  const owner = findOwner(layout, gearcase, instance)
  return owner.gearcase.fillOpenings
    .filter((fill) => fill.path !== opening?.path)
    .map((fill) => ({ opening: fill, instance: owner.instance }))
}

function draftAtFill(context: StepContext, action: StepDraft['do']): readonly StepDraft[] {
  const [fill] = listOtherFills(context)
  if (fill === undefined) return []
  return [
    {
      do: action,
      on: fill.opening.path,
      ...(fill.instance === undefined ? {} : { at: { instance: fill.instance } }),
    },
  ]
}

function letsOilOut(context: StepContext): boolean {
  const { gearcase, opening, cover } = context
  if (cover !== undefined || context.step.do === 'suck out the oil') return true
  if (gearcase === undefined || opening === undefined) return false
  if (servesAs(opening, 'drain')) return true
  if (gearcase.emptying?.kind === 'drain plug' && gearcase.emptying.opening.id === opening.id) return true
  return (
    ownerOf(context)?.gearcase.fill?.method.kind === 'to level hole' &&
    gearcase.levelOpening?.id === opening.id
  )
}

const ROLES: Readonly<Partial<Record<StepDraft['do'], readonly OpeningRole[]>>> = {
  'let drain': ['drain'],
  'pour the oil': ['fill'],
  'check the level': ['level'],
  'top up': ['level', 'fill'],
}

function wantedMarks(context: StepContext): readonly WheelMark[] {
  const { opening, step } = context
  if (opening === undefined) return []
  return (ROLES[step.do] ?? []).flatMap((role) => wheelMarkFor(opening, role) ?? [])
}

function listShieldsOn({ gearcase, layout, state }: StepContext): readonly string[] {
  return [...layout.shields.values()]
    .filter((shield) => shield.applies !== 'no' && gearcase?.shields.includes(shield.id) === true)
    .filter((shield) => state.shields[shield.path] === 'on')
    .map((shield) => shield.path)
}
