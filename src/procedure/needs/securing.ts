import { joinPointer } from '../../base/index.js'
import { findOwner, type GearcaseInstance } from '../gearcaseInstance.js'
import { wheelMarkFor } from '../layout.js'
import type { Need } from '../need.js'
import { gearcaseAt, openingAt, type StepContext, type StepDraft } from '../stepContext.js'
import { taskOf } from './filling.js'

/** The machine cannot move, fall or turn while hands are at it. */
export const SECURING_NEEDS = {
  'manual-not-read': {
    severity: 'warning',
    holds: ({ state }: StepContext) => state.manualRead,
    remedy: () => [{ do: 'read the manual' }],
  },
  'no-protection': {
    severity: 'warning',
    holds: ({ state }: StepContext) => state.protectionWorn,
    remedy: () => [{ do: 'wear protection' }],
  },
  'not-on-level-ground': {
    severity: 'error',
    holds: ({ state }: StepContext) => state.ground === 'level',
    remedy: () => [{ do: 'park on level ground' }],
    assume: ({ state }: StepContext) => {
      state.ground = 'level'
    },
  },
  'engine-running': {
    severity: 'error',
    holds: ({ state }: StepContext) => state.engine === 'stopped',
    remedy: () => [{ do: 'stop the engine' }],
  },
  'not-chocked': {
    severity: 'error',
    holds: ({ state }: StepContext) => state.chocked.length > 0,
    remedy: () => [{ do: 'chock the wheels' }],
  },
  'chocks-on-lifted-wheels': {
    severity: 'error',
    holds: (context: StepContext) => {
      const staying = listStayingAxles(context)
      return staying.length === 0 || staying.some((axle) => context.state.chocked.includes(axle))
    },
    remedy: (context: StepContext) =>
      listStayingAxles(context).map((axle) => ({
        do: 'chock the wheels',
        on: joinPointer(['machine', 'axles', axle]),
      })),
  },
  'jack-as-support': {
    severity: 'error',
    holds: ({ state }: StepContext) => state.lifted.every((support) => state.onStands.includes(support)),
    remedy: ({ state }: StepContext) =>
      state.lifted
        .filter((support) => !state.onStands.includes(support))
        .map((support) => ({ do: 'set on stands', on: joinPointer(['machine', 'supports', support]) })),
  },
  'not-raised': {
    severity: 'error',
    holds: (context: StepContext) =>
      wantedSupports(context).every((support) => context.state.lifted.includes(support)),
    remedy: (context: StepContext) => {
      const missing = wantedSupports(context).filter((support) => !context.state.lifted.includes(support))
      const onStands = context.part?.kind === 'support' ? [] : (['set on stands'] as const)
      return missing.flatMap((support) =>
        (['raise the machine', ...onStands] as const).map((action) => ({
          do: action,
          on: joinPointer(['machine', 'supports', support]),
        })),
      )
    },
  },
  'drain-not-raised': {
    severity: 'error',
    holds: (context: StepContext) => !isDrain(context) || missingSupports(context).length === 0,
    remedy: (context: StepContext) => raiseOnStands(missingSupports(context)),
  },
  'run-on-stands': {
    severity: 'error',
    holds: ({ state }: StepContext) => state.lifted.length === 0,
    remedy: () => [{ do: 'lower the machine' }],
  },
  'wheel-not-clear': {
    severity: 'error',
    holds: ({ state, gearcase }: StepContext) =>
      gearcase === undefined ||
      (gearcase.supports.length > 0 && gearcase.supports.every((support) => state.lifted.includes(support))),
    remedy: ({ state, gearcase }: StepContext) =>
      raiseOnStands((gearcase?.supports ?? []).filter((one) => !state.lifted.includes(one))),
  },
  'wheel-turned-with-plug-out': {
    severity: 'error',
    holds: (context: StepContext) => listOpenPlugs(context).length === 0,
    remedy: (context: StepContext) => listOpenPlugs(context),
  },
  'wrong-attitude': {
    severity: 'error',
    holds: (context: StepContext) => {
      const owner = attitudeOwner(context)
      if (owner === undefined) return true
      const attitude = owner.gearcase.fill?.level?.attitude
      if (attitude === 'level on its wheels') return context.state.lifted.length === 0
      if (attitude !== 'level on stands') return true
      return (
        context.state.lifted.length > 0 &&
        context.state.lifted.every((one) => context.state.onStands.includes(one))
      )
    },
    remedy: (context: StepContext) => {
      const owner = attitudeOwner(context)
      if (owner?.gearcase.fill?.level?.attitude === 'level on its wheels')
        return [{ do: 'lower the machine' }]
      return raiseOnStands(owner?.gearcase.supports ?? [])
    },
  },
} satisfies Readonly<Record<string, Need>>

function raiseOnStands(supports: readonly string[]): readonly StepDraft[] {
  return supports.flatMap((support) =>
    (['raise the machine', 'set on stands'] as const).map((action) => ({
      do: action,
      on: joinPointer(['machine', 'supports', support]),
    })),
  )
}

/** Whether this plug lets old oil out: not at a level check, and not while its wheel stands at another mark. */
function isDrain(context: StepContext): boolean {
  const { gearcase, opening, instance, state } = context
  if (gearcase === undefined || opening === undefined) return false
  const way = gearcase.emptying
  if (way?.kind !== 'drain plug' || way.opening.id !== opening.id) return false
  const here = gearcaseAt(state, { gearcase, instance })
  const mark = wheelMarkFor(opening, 'drain')
  if (mark !== undefined && here.wheelMark !== mark) return false
  return here.oil === 'old' && taskOf(context, findOwner(context.layout, gearcase, instance)) !== 'check'
}

function missingSupports({ gearcase, state }: StepContext): readonly string[] {
  return (gearcase?.supports ?? []).filter((support) => !state.lifted.includes(support))
}

/** Axles that keep the ground once this step has lifted what it lifts. */
function listStayingAxles({ layout, state, part }: StepContext): readonly string[] {
  const supports = part?.kind === 'support' ? [...state.lifted, part.id] : [...layout.axleOfSupport.keys()]
  const lifted = new Set(supports.map((support) => layout.axleOfSupport.get(support)))
  return layout.axles.filter((axle) => !lifted.has(axle))
}

function wantedSupports({ part, gearcase, state }: StepContext): readonly string[] {
  if (part?.kind === 'support') return [part.id]
  if (gearcase !== undefined) return gearcase.supports
  return state.lifted
}

function listOpenPlugs({ gearcase, instance, state }: StepContext): readonly StepDraft[] {
  if (gearcase === undefined) return []
  return gearcase.openings
    .filter((opening) => openingAt(state, opening, instance).position === 'out')
    .map((opening) => ({
      do: 'nip by hand',
      on: opening.path,
      ...(instance === undefined ? {} : { at: { instance } }),
    }))
}

/** Whose level this step depends on; pouring does only where the oil runs out at the hole. */
function attitudeOwner({ layout, gearcase, instance, step }: StepContext): GearcaseInstance | undefined {
  if (gearcase === undefined) return undefined
  const owner = findOwner(layout, gearcase, instance)
  if (step.do === 'pour the oil' && owner.gearcase.fill?.method.kind !== 'to level hole') return undefined
  return owner
}
