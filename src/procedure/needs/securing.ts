import { joinPointer } from '../../base/index.js'
import type { SecuredItem } from '../../spec/index.js'
import { findOwner, findWheelMark, hasRole, type IndexedSheet } from '../layout.js'
import { findJob } from '../listJobs.js'
import type { Need, StepContext, StepDraft } from '../stepContext.js'
import { draftAt, getCoverState, getGearcaseState, getOpeningState, metIfEmpty } from '../stepContext.js'
import { listNotTightened } from './closing.js'
import { isDrainOpening } from './opening.js'

/** Safety preconditions: the machine cannot move, fall or turn during the work. */
export const SECURING_NEEDS = {
  'manual-not-read': ({ state }) => state.manualRead || [{ do: 'read the manual' }],
  'variant-not-found': ({ state, gearcase, opening, cover, filter, shield }) =>
    state.variantFound ||
    ![gearcase, opening, cover, filter, shield].some((part) => part?.applies === 'cannot tell') || [
      { do: 'find the variant' },
    ],
  'protection-not-worn': ({ state }) => state.protectionWorn || [{ do: 'wear protection' }],
  'machine-not-on-level-ground': ({ state, mustNotRun }) =>
    state.ground === 'level' || [{ do: mustNotRun ? 'carry to level ground' : 'park on level ground' }],
  'engine-running': ({ state }) => state.engine === 'stopped' || [{ do: 'stop the engine' }],
  // Chocks at the wheels on ramps do not hold the wheels on the ground.
  'wheels-not-chocked': ({ indexedSheet, state: { chocked, onRamps } }) => {
    const axlesOnGround =
      onRamps.length === 0 ? [] : indexedSheet.axles.filter((axle) => !onRamps.includes(axle))
    if (axlesOnGround.length > 0)
      return axlesOnGround.some((axle) => chocked.includes(axle)) || axlesOnGround.map(draftChocking)
    return chocked.length > 0 || [{ do: 'chock the wheels' }]
  },
  'machine-not-secured': (context) => metIfEmpty(draftSecuring(context, 'before work')),
  'machine-not-secured-for-run': (context) => metIfEmpty(draftSecuring(context, 'before a run')),
  'chocks-or-pan-in-place': ({ state }) =>
    (state.chocked.length === 0 &&
      Object.values(state.gearcases).every((gearcase) => !gearcase.panPlaced)) || [{ do: 'clear away' }],
  'guard-not-refitted': ({ indexedSheet, state }) => {
    const removedGuards = [...indexedSheet.shields.values()].filter(
      ({ path, shield }) => shield.guards === 'moving parts' && state.shields[path] === 'off',
    )
    return metIfEmpty(removedGuards.map(({ path }) => ({ do: 'refit shield', on: path })))
  },
  'chocks-on-lifted-wheels': (context) => {
    const stayingAxles = listAxlesOnGround(context)
    return (
      stayingAxles.length === 0 ||
      stayingAxles.some((axle) => context.state.chocked.includes(axle)) ||
      stayingAxles.map(draftChocking)
    )
  },
  'axle-not-chocked': (context) => {
    const stayingAxles = listAxlesOnGround(context)
    const unchockedAxles = stayingAxles.filter((axle) => !context.state.chocked.includes(axle))
    return unchockedAxles.length === stayingAxles.length || metIfEmpty(unchockedAxles.map(draftChocking))
  },
  'jack-as-support': ({ state: { lifted, onStands } }) => {
    const supportsOnJack = lifted.filter((support) => !onStands.includes(support))
    return metIfEmpty(supportsOnJack.map((support) => draftOnSupport('set on stands', support)))
  },
  'machine-not-raised': (context) => {
    const { state, part, gearcase } = context
    const needed = part?.kind === 'support' ? [part.id] : (gearcase?.supports ?? [])
    const unliftedSupports = needed.filter((support) => !state.lifted.includes(support))
    const missing =
      part?.kind === 'support' ? unliftedSupports : listSupportsOffRamps(context, unliftedSupports)
    if (missing.length === 0) return true
    if (part?.kind !== 'support') return draftRaising(missing)
    return missing.map((support) => draftOnSupport('raise the machine', support))
  },
  'drain-not-raised': (context) =>
    metIfEmpty(
      isDraining(context) ? draftRaising(listSupportsOffRamps(context, listMissingSupports(context))) : [],
    ),
  'lowered-with-drain-open': ({ indexedSheet, state }) =>
    metIfEmpty(
      indexedSheet.instances
        .filter(({ gearcase }) => gearcase.supports.some((support) => state.lifted.includes(support)))
        .flatMap(({ gearcase, instance }) =>
          gearcase.emptyingWays.flatMap((way): readonly StepDraft[] => {
            if (way.kind === 'cover')
              return getCoverState(state, way.cover, instance).position === 'off'
                ? draftAt('fit cover', way.cover, instance)
                : []
            if (way.kind === 'suction' || hasRole(way.opening, 'fill')) return []
            return [way.opening, ...way.also]
              .filter((candidate) => getOpeningState(state, candidate, instance).position === 'out')
              .flatMap((item) => draftAt('fit', item, instance))
          }),
        ),
    ),
  'run-on-stands': ({ state }) =>
    metIfEmpty([
      ...(state.lifted.length > 0 ? [{ do: 'lower the machine' } as const] : []),
      ...(state.onRamps.length > 0 ? [DRIVE_OFF_STEP] : []),
    ]),
  'ramps-and-jack': ({ state }) => state.onRamps.length === 0 || [DRIVE_OFF_STEP],
  'ramps-not-permitted': ({ indexedSheet, part }) => {
    const axles = part?.kind === 'axle' ? [part.id] : indexedSheet.axles
    return axles.every((axle) => indexedSheet.areRampsAllowed.get(axle) !== false) || []
  },
  // Fill and level plugs may be turned in by hand: they are opened again for the level on flat ground.
  'driven-with-plug-loose': ({ indexedSheet, state }) =>
    metIfEmpty(
      listNotTightened(state, indexedSheet.instances).flatMap((draft) => {
        const part = indexedSheet.parts.get(draft.on ?? '')
        if (part?.kind !== 'opening') return draft
        const { position } = getOpeningState(state, part.opening, draft.at?.instance)
        const isFillOrLevel = hasRole(part.opening, 'fill') || hasRole(part.opening, 'level')
        if (!isFillOrLevel || isDrainOpening(part.gearcase, part.opening)) return draft
        return position === 'out' || position === 'cracked' ? { ...draft, do: 'nip by hand' } : []
      }),
    ),
  'machine-must-not-run': ({ state, jobs, mustNotRun, step }) => {
    const changes = jobs.filter(({ task }) => task === 'change')
    const isOilRenewed =
      changes.length > 0 && changes.every(({ owner }) => getGearcaseState(state, owner).oil === 'new')
    if (!mustNotRun || isOilRenewed) return true
    return step.do === 'park on level ground' ? [{ do: 'carry to level ground' }] : []
  },
  'run-without-oil': ({ indexedSheet, state }) => {
    const emptyGearcases = indexedSheet.instances.filter(
      (instance) => getGearcaseState(state, instance).oil === 'out',
    )
    return metIfEmpty(
      emptyGearcases.flatMap((emptyGearcase) => {
        const { gearcase, instance } = findOwner(indexedSheet, emptyGearcase.gearcase, emptyGearcase.instance)
        return draftAt('pour the oil', gearcase.fillOpening, instance)
      }),
    )
  },
  'wheel-not-clear': (context) => {
    const missing = listMissingSupports(context)
    if (context.gearcase === undefined) return true
    if (context.gearcase.supports.length === 0) return [{ ...context.step, do: 'roll the machine' }]
    return missing.length === 0 || draftRaising(missing)
  },
  'wheel-turned-with-plug-out': ({ state, indexedSheet, target, step }) => {
    // Rolling turns all wheels.
    const turnedInstances = step.do === 'roll the machine' ? indexedSheet.instances : target ? [target] : []
    return metIfEmpty(
      turnedInstances.flatMap(({ gearcase, instance }) =>
        gearcase.openings
          .filter((opening) => getOpeningState(state, opening, instance).position === 'out')
          .flatMap((opening) => draftAt('nip by hand', opening, instance)),
      ),
    )
  },
  'wrong-attitude': ({ indexedSheet, state, owner, step }) => {
    const fill = owner?.gearcase.fill
    // Pouring depends on the attitude only if the oil runs out at a level hole.
    if (step.do === 'pour the oil' && fill?.method.kind !== 'to level hole') return true
    switch (fill?.level?.attitude) {
      case 'level on its wheels':
        if (state.lifted.length > 0) return [{ do: 'lower the machine' }]
        return !isTilted(indexedSheet, state.onRamps) || [DRIVE_OFF_STEP]
      case 'level on stands':
        return (
          (state.lifted.length > 0 &&
            state.lifted.every((candidate) => state.onStands.includes(candidate))) ||
          draftRaising(owner?.gearcase.supports ?? [])
        )
      default:
        return !isTilted(indexedSheet, state.onRamps) || [DRIVE_OFF_STEP]
    }
  },
} satisfies Readonly<Record<string, Need>>

const DRIVE_OFF_STEP: StepDraft = { do: 'drive off ramps' }

/** Whether some wheels are on ramps and others are not. */
export function isTilted({ axles }: IndexedSheet, onRamps: readonly string[]): boolean {
  return onRamps.length > 0 && axles.some((axle) => !onRamps.includes(axle))
}

/** The supports whose axle is not on ramps. */
function listSupportsOffRamps(
  { indexedSheet, state }: StepContext,
  supports: readonly string[],
): readonly string[] {
  return supports.filter((support) => !state.onRamps.includes(indexedSheet.axleOfSupport.get(support) ?? ''))
}

/** Steps that secure the items that are not secured. */
export function draftSecuring(
  { indexedSheet, state }: Pick<StepContext, 'indexedSheet' | 'state'>,
  when: SecuredItem['when'],
): readonly StepDraft[] {
  return indexedSheet.securedItems
    .filter(({ item, path }) => item.when === when && !state.secured.includes(path))
    .map(({ path }) => ({ do: 'secure the machine', on: path }))
}

function draftChocking(axle: string): StepDraft {
  return { do: 'chock the wheels', on: joinPointer(['machine', 'axles', axle]) }
}

function draftOnSupport(action: StepDraft['do'], support: string): StepDraft {
  return { do: action, on: joinPointer(['machine', 'supports', support]) }
}

function draftRaising(supports: readonly string[]): readonly StepDraft[] {
  return supports.flatMap((support) => [
    draftOnSupport('raise the machine', support),
    draftOnSupport('set on stands', support),
  ])
}

/** Whether old oil runs out of this plug: not at a level check or at another mark of the wheel. */
function isDraining({ state, jobs, gearcase, instance, owner, opening }: StepContext): boolean {
  if (gearcase === undefined || owner === undefined || opening === undefined) return false
  const way = gearcase.emptying
  if (way?.kind !== 'drain plug' || way.opening.id !== opening.id) return false
  const gearcaseState = getGearcaseState(state, { gearcase, instance })
  const mark = findWheelMark(opening, 'drain')
  if (mark !== undefined && gearcaseState.wheelMark !== mark) return false
  return gearcaseState.oil === 'old' && findJob(jobs, owner)?.task !== 'check'
}

function listMissingSupports({ gearcase, state }: StepContext): readonly string[] {
  return (gearcase?.supports ?? []).filter((support) => !state.lifted.includes(support))
}

/** Axles that stay on the ground after this step. */
function listAxlesOnGround({ indexedSheet, state, part }: StepContext): readonly string[] {
  const supports =
    part?.kind === 'support' ? [...state.lifted, part.id] : [...indexedSheet.axleOfSupport.keys()]
  const lifted = new Set(supports.map((support) => indexedSheet.axleOfSupport.get(support)))
  return indexedSheet.axles.filter((axle) => !lifted.has(axle))
}
