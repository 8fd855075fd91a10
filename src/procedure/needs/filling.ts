import { findSharers, type GearcaseInstance } from '../gearcaseInstance.js'
import type { GearcaseLayout } from '../layout.js'
import type { Need } from '../need.js'
import { coverAt, gearcaseAt, openingAt, ownerOf, type StepContext, type StepDraft } from '../stepContext.js'

/** New oil goes into an empty, closed gearcase, in the right amount, and the level is read when it stands still. */
export const FILLING_NEEDS = {
  'not-drained': {
    severity: 'error',
    holds: (context: StepContext) => listUndrained(context).length === 0,
    remedy: (context: StepContext) => listUndrained(context).flatMap(draftDrain),
    assume: (context: StepContext) => {
      for (const unit of listUndrained(context)) gearcaseAt(context.state, unit).oil = 'out'
      if (context.state.usedOil === 'none') context.state.usedOil = 'in the pan'
    },
  },
  'oil-not-looked-at': {
    severity: 'warning',
    holds: (context: StepContext) => {
      const owner = ownerOf(context)
      return owner === undefined || gearcaseAt(context.state, owner).oilSeen
    },
    remedy: (context: StepContext) => draftAtOwner(context, 'inspect the oil'),
  },
  'oil-not-measured': {
    severity: 'error',
    holds: (context: StepContext) => {
      const owner = ownerOf(context)
      return owner === undefined || gearcaseAt(context.state, owner).measured
    },
    remedy: (context: StepContext) => draftAtOwner(context, 'measure the oil'),
  },
  'additive-missing': {
    severity: 'error',
    holds: (context: StepContext) => {
      const owner = ownerOf(context)
      return owner?.gearcase.additive !== 'always' || gearcaseAt(context.state, owner).additiveIn
    },
    remedy: (context: StepContext) => draftAtOwner(context, 'add the additive'),
  },
  'drain-not-tightened': {
    severity: 'error',
    holds: (context: StepContext) => listOpenDrains(context).length === 0,
    remedy: (context: StepContext) => listOpenDrains(context),
  },
  'cover-not-cured': {
    severity: 'error',
    holds: (context: StepContext) => listUncured(context).length === 0,
    remedy: (context: StepContext) => listUncured(context),
  },
  'hose-not-waited-for': {
    severity: 'error',
    holds: (context: StepContext) => {
      const owner = ownerOf(context)
      if (owner === undefined || gearcaseAt(context.state, owner).hoseEmpty) return true
      const atFill = owner.gearcase.fillOpenings.some((fill) => fill.path === context.opening?.path)
      return context.step.do !== 'check the level' && !atFill
    },
    remedy: (context: StepContext) => {
      const owner = ownerOf(context)
      const fill = owner?.gearcase.fillOpening
      return fill === undefined ? [] : [at('wait for the hose', fill.path, owner?.instance)]
    },
  },
  'oil-not-settled': {
    severity: 'error',
    holds: (context: StepContext) => {
      const owner = ownerOf(context)
      if (owner === undefined) return true
      const waits = owner.gearcase.settles || gearcaseAt(context.state, owner).ranSinceFill
      return !waits || context.state.settled || owner.gearcase.fill?.level?.engine === 'running'
    },
    remedy: () => [{ do: 'let settle' }],
  },
  'level-not-checked': {
    severity: 'error',
    holds: (context: StepContext) => {
      const owner = ownerOf(context)
      if (owner === undefined || !closesLevel(owner.gearcase, context.opening?.path)) return true
      const here = gearcaseAt(context.state, owner)
      if (here.levelChecked || !isLevelJudged(owner.gearcase, taskOf(context, owner))) return true
      return here.oil !== 'new' && taskOf(context, owner) !== 'check'
    },
    remedy: (context: StepContext) => draftAtLevel(context, 'check the level'),
  },
  'not-rechecked': {
    severity: 'error',
    holds: (context: StepContext) => {
      const owner = ownerOf(context)
      if (owner === undefined || owner.gearcase.levelOpening?.path !== context.opening?.path) return true
      const here = gearcaseAt(context.state, owner)
      return !isRecheckOpen(owner, here)
    },
    remedy: (context: StepContext) => draftAtLevel(context, 'check the level'),
    assume: (context: StepContext) => {
      const owner = ownerOf(context)
      if (owner !== undefined) gearcaseAt(context.state, owner).levelCheckedSinceRun = true
    },
  },
  'no-top-up': {
    severity: 'error',
    holds: (context: StepContext) => {
      const owner = ownerOf(context)
      if (owner === undefined || owner.gearcase.levelOpening?.path !== context.opening?.path) return true
      const here = gearcaseAt(context.state, owner)
      const rechecked =
        here.oil === 'new' &&
        here.levelCheckedSinceRun &&
        owner.gearcase.fill?.level?.recheckAfterRun === true
      return !rechecked || here.toppedUp
    },
    remedy: (context: StepContext) => {
      const owner = ownerOf(context)
      const fill = owner?.gearcase.fillOpening
      return fill === undefined ? [] : [at('top up', fill.path, owner?.instance)]
    },
  },
} satisfies Readonly<Record<string, Need>>

/** Closing this opening ends the chance to judge the level; a sight glass shows it through the fill plug's time. */
function closesLevel(owner: GearcaseLayout, path: string | undefined): boolean {
  if (owner.fill?.method.kind === 'sight glass') return owner.fillOpenings.some((fill) => fill.path === path)
  return owner.levelOpening?.path === path
}

/** Whether this gearcase's fill is judged by a level, for this task. */
export function isLevelJudged(owner: GearcaseLayout, task: 'check' | 'change' | undefined): boolean {
  if (owner.fill === undefined || owner.levelOpening === undefined) return false
  return owner.fill.method.kind !== 'by quantity' || task === 'check'
}

/** New oil has been run through where the manual asks for a second look, and nobody has looked yet. */
function isRecheckOpen(
  owner: GearcaseInstance,
  here: { readonly oil: string; readonly ranSinceFill: boolean; readonly levelCheckedSinceRun: boolean },
): boolean {
  return (
    owner.gearcase.fill?.level?.recheckAfterRun === true &&
    isLevelJudged(owner.gearcase, 'change') &&
    here.oil === 'new' &&
    here.ranSinceFill &&
    !here.levelCheckedSinceRun
  )
}

export function taskOf(context: StepContext, owner: GearcaseInstance): 'check' | 'change' | undefined {
  return context.jobs.find(
    (job) => job.owner.gearcase.id === owner.gearcase.id && job.owner.instance === owner.instance,
  )?.task
}

export function at(action: StepDraft['do'], on: string, instance: string | undefined): StepDraft {
  return { do: action, on, ...(instance === undefined ? {} : { at: { instance } }) }
}

/** The step that lets this gearcase's oil out. */
export function draftDrain({ gearcase, instance }: GearcaseInstance): readonly StepDraft[] {
  const way = gearcase.emptying
  if (way === undefined) return []
  if (way.kind === 'cover') return [at('let drain', way.cover.path, instance)]
  return [at(way.kind === 'suction' ? 'suck out the oil' : 'let drain', way.opening.path, instance)]
}

function draftAtOwner(context: StepContext, action: StepDraft['do']): readonly StepDraft[] {
  const owner = ownerOf(context)
  return owner === undefined ? [] : [at(action, owner.gearcase.path, owner.instance)]
}

function draftAtLevel(context: StepContext, action: StepDraft['do']): readonly StepDraft[] {
  const owner = ownerOf(context)
  const level = owner?.gearcase.levelOpening
  return level === undefined ? [] : [at(action, level.path, owner?.instance)]
}

/** Gearcases that this pour would top up on old oil: the owner, and what the job empties with it. */
function listUndrained(context: StepContext): readonly GearcaseInstance[] {
  const owner = ownerOf(context)
  if (owner === undefined) return []
  const job = context.jobs.find(
    (one) => one.owner.gearcase.id === owner.gearcase.id && one.owner.instance === owner.instance,
  )
  return (job?.units ?? [owner]).filter((unit) => gearcaseAt(context.state, unit).oil === 'old')
}

/** Everything below the oil that was opened and is not tight; the fill and the level opening stay open. */
function listOpenDrains(context: StepContext): readonly StepDraft[] {
  const owner = ownerOf(context)
  if (owner === undefined) return []
  const stays = new Set([
    ...owner.gearcase.fillOpenings.map((one) => one.path),
    owner.gearcase.levelOpening?.path,
  ])
  return findSharers(context.layout, owner).flatMap(({ gearcase, instance }) => [
    ...gearcase.openings
      .filter((one) => !stays.has(one.path))
      .filter((one) => {
        const here = openingAt(context.state, one, instance)
        return here.everCracked && here.position !== 'tight'
      })
      .map((one) => at('tighten', one.path, instance)),
    ...gearcase.covers
      .filter((one) => {
        const here = coverAt(context.state, one, instance)
        return here.everOff && here.position !== 'tight'
      })
      .map((one) => at('tighten cover', one.path, instance)),
  ])
}

function listUncured(context: StepContext): readonly StepDraft[] {
  const owner = ownerOf(context)
  if (owner === undefined) return []
  return findSharers(context.layout, owner).flatMap(({ gearcase, instance }) =>
    gearcase.covers
      .filter((one) => {
        const here = coverAt(context.state, one, instance)
        return one.seal.cures && here.everOff && !here.cured
      })
      .map((one) => at('wait for the cure', one.path, instance)),
  )
}
