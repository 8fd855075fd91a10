import { joinPointer } from '../../base/index.js'
import { wheelMarkFor } from '../layout.js'
import type { Need } from '../need.js'
import { findOwner, gearcaseAt, openingAt, type Site, type StepSeed, type Unit } from '../site.js'
import { taskOf } from './filling.js'

/** The machine cannot move, fall or turn while hands are at it. */
export const SECURING_NEEDS = {
  'manual-not-read': {
    severity: 'warning',
    holds: ({ state }: Site) => state.manualRead,
    mend: () => [{ do: 'read the manual' }],
  },
  'no-protection': {
    severity: 'warning',
    holds: ({ state }: Site) => state.protectionWorn,
    mend: () => [{ do: 'wear protection' }],
  },
  'not-on-level-ground': {
    severity: 'error',
    holds: ({ state }: Site) => state.ground === 'level',
    mend: () => [{ do: 'park on level ground' }],
    assume: ({ state }: Site) => {
      state.ground = 'level'
    },
  },
  'engine-running': {
    severity: 'error',
    holds: ({ state }: Site) => state.engine === 'stopped',
    mend: () => [{ do: 'stop the engine' }],
  },
  'not-chocked': {
    severity: 'error',
    holds: ({ state }: Site) => state.chocked.length > 0,
    mend: () => [{ do: 'chock the wheels' }],
  },
  'chocks-on-lifted-wheels': {
    severity: 'error',
    holds: (site: Site) => {
      const staying = listStayingAxles(site)
      return staying.length === 0 || staying.some((axle) => site.state.chocked.includes(axle))
    },
    mend: (site: Site) =>
      listStayingAxles(site).map((axle) => ({
        do: 'chock the wheels',
        on: joinPointer(['machine', 'axles', axle]),
      })),
  },
  'jack-as-support': {
    severity: 'error',
    holds: ({ state }: Site) => state.lifted.every((support) => state.onStands.includes(support)),
    mend: ({ state }: Site) =>
      state.lifted
        .filter((support) => !state.onStands.includes(support))
        .map((support) => ({ do: 'set on stands', on: joinPointer(['machine', 'supports', support]) })),
  },
  'not-raised': {
    severity: 'error',
    holds: (site: Site) => wantedSupports(site).every((support) => site.state.lifted.includes(support)),
    mend: (site: Site) => {
      const missing = wantedSupports(site).filter((support) => !site.state.lifted.includes(support))
      const onStands = site.part?.kind === 'support' ? [] : (['set on stands'] as const)
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
    holds: (site: Site) => !isDrain(site) || missingSupports(site).length === 0,
    mend: (site: Site) => raiseOnStands(missingSupports(site)),
  },
  'run-on-stands': {
    severity: 'error',
    holds: ({ state }: Site) => state.lifted.length === 0,
    mend: () => [{ do: 'lower the machine' }],
  },
  'wheel-not-clear': {
    severity: 'error',
    holds: ({ state, gearcase }: Site) =>
      gearcase === undefined ||
      (gearcase.supports.length > 0 && gearcase.supports.every((support) => state.lifted.includes(support))),
    mend: ({ state, gearcase }: Site) =>
      raiseOnStands((gearcase?.supports ?? []).filter((one) => !state.lifted.includes(one))),
  },
  'wheel-turned-with-plug-out': {
    severity: 'error',
    holds: (site: Site) => listOpenPlugs(site).length === 0,
    mend: (site: Site) => listOpenPlugs(site),
  },
  'wrong-attitude': {
    severity: 'error',
    holds: (site: Site) => {
      const owner = attitudeOwner(site)
      if (owner === undefined) return true
      const attitude = owner.gearcase.fill?.level?.attitude
      if (attitude === 'level on its wheels') return site.state.lifted.length === 0
      if (attitude !== 'level on stands') return true
      return (
        site.state.lifted.length > 0 && site.state.lifted.every((one) => site.state.onStands.includes(one))
      )
    },
    mend: (site: Site) => {
      const owner = attitudeOwner(site)
      if (owner?.gearcase.fill?.level?.attitude === 'level on its wheels')
        return [{ do: 'lower the machine' }]
      return raiseOnStands(owner?.gearcase.supports ?? [])
    },
  },
} satisfies Readonly<Record<string, Need>>

function raiseOnStands(supports: readonly string[]): readonly StepSeed[] {
  return supports.flatMap((support) =>
    (['raise the machine', 'set on stands'] as const).map((action) => ({
      do: action,
      on: joinPointer(['machine', 'supports', support]),
    })),
  )
}

/** Whether this plug lets old oil out: not at a level check, and not while its wheel stands at another mark. */
function isDrain(site: Site): boolean {
  const { gearcase, opening, instance, state } = site
  if (gearcase === undefined || opening === undefined) return false
  const way = gearcase.emptying
  if (way?.kind !== 'drain plug' || way.opening.id !== opening.id) return false
  const here = gearcaseAt(state, { gearcase, instance })
  const mark = wheelMarkFor(opening, 'drain')
  if (mark !== undefined && here.wheelMark !== mark) return false
  return here.oil === 'old' && taskOf(site, findOwner(site.layout, gearcase, instance)) !== 'check'
}

function missingSupports({ gearcase, state }: Site): readonly string[] {
  return (gearcase?.supports ?? []).filter((support) => !state.lifted.includes(support))
}

/** Axles that keep the ground once this step has lifted what it lifts. */
function listStayingAxles({ layout, state, part }: Site): readonly string[] {
  const supports = part?.kind === 'support' ? [...state.lifted, part.id] : [...layout.axleOfSupport.keys()]
  const lifted = new Set(supports.map((support) => layout.axleOfSupport.get(support)))
  return layout.axles.filter((axle) => !lifted.has(axle))
}

function wantedSupports({ part, gearcase, state }: Site): readonly string[] {
  if (part?.kind === 'support') return [part.id]
  if (gearcase !== undefined) return gearcase.supports
  return state.lifted
}

function listOpenPlugs({ gearcase, instance, state }: Site): readonly StepSeed[] {
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
function attitudeOwner({ layout, gearcase, instance, step }: Site): Unit | undefined {
  if (gearcase === undefined) return undefined
  const owner = findOwner(layout, gearcase, instance)
  if (step.do === 'pour the oil' && owner.gearcase.fill?.method.kind !== 'to level hole') return undefined
  return owner
}
