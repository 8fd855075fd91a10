import type { GearcaseInstance } from '../gearcaseInstance.js'
import type { GearcaseLayout } from '../layout.js'
import type { Need } from '../need.js'
import { coverAt, gearcaseAt, openingAt, type StepContext, type StepDraft } from '../stepContext.js'
import { at } from './filling.js'

/** What was opened is closed before oil moves or eyes look for it. */
export const CLOSING_NEEDS = {
  'not-tightened': {
    severity: 'error',
    holds: (context: StepContext) => listUntight(context, instancesConcerned(context)).length === 0,
    remedy: (context: StepContext) => listUntight(context, instancesConcerned(context)),
    // What is still out is left to the steps that close it; what only lacks its tightening counts as tight from here.
    assume: (context: StepContext) => {
      for (const { gearcase, instance } of instancesConcerned(context)) {
        for (const opening of gearcase.openings) {
          const here = openingAt(context.state, opening, instance)
          if (here.position !== 'out') here.position = 'tight'
        }
        for (const cover of gearcase.covers) {
          const here = coverAt(context.state, cover, instance)
          if (here.position !== 'off') here.position = 'tight'
        }
      }
    },
  },
  'cover-not-tightened': {
    severity: 'error',
    holds: ({ state, cover, instance }: StepContext) =>
      cover === undefined || coverAt(state, cover, instance).position === 'tight',
    remedy: (context: StepContext) => [
      {
        do: 'tighten cover',
        ...(context.step.on === undefined ? {} : { on: context.step.on }),
        ...atOf(context),
      },
    ],
  },
  'not-wiped-down': {
    severity: 'warning',
    holds: (context: StepContext) =>
      instancesConcerned(context).every(
        (unit) =>
          gearcaseAt(context.state, unit).wipedDown ||
          (context.gearcase === undefined && !isWorked(context, unit)),
      ),
    remedy: (context: StepContext) => [
      {
        do: 'wipe down',
        ...(context.step.on === undefined ? {} : { on: context.step.on }),
        ...atOf(context),
      },
    ],
  },
  'leaks-not-checked': {
    severity: 'error',
    holds: (context: StepContext) => listUnlooked(context, instancesConcerned(context)).length === 0,
    remedy: (context: StepContext) => listUnlooked(context, instancesConcerned(context)),
  },
} satisfies Readonly<Record<string, Need>>

function atOf(context: StepContext): Pick<StepDraft, 'at'> {
  return context.instance === undefined ? {} : { at: { instance: context.instance } }
}

/** The step's own gearcase, those behind its shield, or all. */
function instancesConcerned(context: StepContext): readonly GearcaseInstance[] {
  if (context.gearcase !== undefined) return [{ gearcase: context.gearcase, instance: context.instance }]
  const shield = context.shield
  return listGearcaseInstances(
    context,
    (gearcase) => shield === undefined || gearcase.shields.includes(shield.id),
  )
}

export function listGearcaseInstances(
  context: Pick<StepContext, 'layout'>,
  wanted: (gearcase: GearcaseLayout) => boolean = () => true,
): readonly GearcaseInstance[] {
  return [...context.layout.gearcases.values()]
    .filter(wanted)
    .flatMap((gearcase) => gearcase.instances.map((instance) => ({ gearcase, instance })))
}

/** Openings and covers that were opened and are not tight again, as the steps that close them. */
export function listUntight(
  context: Pick<StepContext, 'state'>,
  units: readonly GearcaseInstance[],
): readonly StepDraft[] {
  return units.flatMap(({ gearcase, instance }) => [
    ...gearcase.openings
      .filter((one) => openingAt(context.state, one, instance).position !== 'tight')
      .map((one) => at('tighten', one.path, instance)),
    ...gearcase.covers
      .filter((one) => coverAt(context.state, one, instance).position !== 'tight')
      .map((one) => at('tighten cover', one.path, instance)),
  ])
}

/** Gearcases that were worked on and not looked at for leaks since. */
export function listUnlooked(
  context: Pick<StepContext, 'state'>,
  units: readonly GearcaseInstance[],
): readonly StepDraft[] {
  return units
    .filter((unit) => isWorked(context, unit) && !gearcaseAt(context.state, unit).leaksChecked)
    .map(({ gearcase, instance }) => at('check for leaks', gearcase.path, instance))
}

/** Whether anything of this gearcase was opened. */
function isWorked(context: Pick<StepContext, 'state'>, { gearcase, instance }: GearcaseInstance): boolean {
  return (
    gearcase.openings.some((one) => openingAt(context.state, one, instance).everCracked) ||
    gearcase.covers.some((one) => coverAt(context.state, one, instance).everOff)
  )
}
