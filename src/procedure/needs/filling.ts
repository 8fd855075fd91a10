import type { GearcaseLayout } from '../layout.js'
import type { Need } from '../need.js'
import {
  coverAt,
  findSharers,
  gearcaseAt,
  openingAt,
  ownerOf,
  type Site,
  type StepSeed,
  type Unit,
} from '../site.js'

/** New oil goes into an empty, closed gearcase, in the right amount, and the level is read when it stands still. */
export const FILLING_NEEDS = {
  'not-drained': {
    severity: 'error',
    holds: (site: Site) => listUndrained(site).length === 0,
    mend: (site: Site) => listUndrained(site).flatMap(seedDrain),
    assume: (site: Site) => {
      for (const unit of listUndrained(site)) gearcaseAt(site.state, unit).oil = 'out'
      if (site.state.usedOil === 'none') site.state.usedOil = 'in the pan'
    },
  },
  'oil-not-looked-at': {
    severity: 'warning',
    holds: (site: Site) => {
      const owner = ownerOf(site)
      return owner === undefined || gearcaseAt(site.state, owner).oilSeen
    },
    mend: (site: Site) => seedOwner(site, 'inspect the oil'),
  },
  'oil-not-measured': {
    severity: 'error',
    holds: (site: Site) => {
      const owner = ownerOf(site)
      return owner === undefined || gearcaseAt(site.state, owner).measured
    },
    mend: (site: Site) => seedOwner(site, 'measure the oil'),
  },
  'additive-missing': {
    severity: 'error',
    holds: (site: Site) => {
      const owner = ownerOf(site)
      return owner?.gearcase.additive !== 'always' || gearcaseAt(site.state, owner).additiveIn
    },
    mend: (site: Site) => seedOwner(site, 'add the additive'),
  },
  'drain-not-tightened': {
    severity: 'error',
    holds: (site: Site) => listOpenDrains(site).length === 0,
    mend: (site: Site) => listOpenDrains(site),
  },
  'cover-not-cured': {
    severity: 'error',
    holds: (site: Site) => listUncured(site).length === 0,
    mend: (site: Site) => listUncured(site),
  },
  'hose-not-waited-for': {
    severity: 'error',
    holds: (site: Site) => {
      const owner = ownerOf(site)
      if (owner === undefined || gearcaseAt(site.state, owner).hoseEmpty) return true
      const atFill = owner.gearcase.fillOpenings.some((fill) => fill.path === site.opening?.path)
      return site.step.do !== 'check the level' && !atFill
    },
    mend: (site: Site) => {
      const owner = ownerOf(site)
      const fill = owner?.gearcase.fillOpening
      return fill === undefined ? [] : [at('wait for the hose', fill.path, owner?.instance)]
    },
  },
  'oil-not-settled': {
    severity: 'error',
    holds: (site: Site) => {
      const owner = ownerOf(site)
      if (owner === undefined) return true
      const waits = owner.gearcase.settles || gearcaseAt(site.state, owner).ranSinceFill
      return !waits || site.state.settled || owner.gearcase.fill?.level?.engine === 'running'
    },
    mend: () => [{ do: 'let settle' }],
  },
  'level-not-checked': {
    severity: 'error',
    holds: (site: Site) => {
      const owner = ownerOf(site)
      if (owner === undefined || !closesLevel(owner.gearcase, site.opening?.path)) return true
      const here = gearcaseAt(site.state, owner)
      if (here.levelChecked || !isLevelJudged(owner.gearcase, taskOf(site, owner))) return true
      return here.oil !== 'new' && taskOf(site, owner) !== 'check'
    },
    mend: (site: Site) => seedLevel(site, 'check the level'),
  },
  'not-rechecked': {
    severity: 'error',
    holds: (site: Site) => {
      const owner = ownerOf(site)
      if (owner === undefined || owner.gearcase.levelOpening?.path !== site.opening?.path) return true
      const here = gearcaseAt(site.state, owner)
      return !isRecheckOpen(owner, here)
    },
    mend: (site: Site) => seedLevel(site, 'check the level'),
    assume: (site: Site) => {
      const owner = ownerOf(site)
      if (owner !== undefined) gearcaseAt(site.state, owner).levelCheckedSinceRun = true
    },
  },
  'no-top-up': {
    severity: 'error',
    holds: (site: Site) => {
      const owner = ownerOf(site)
      if (owner === undefined || owner.gearcase.levelOpening?.path !== site.opening?.path) return true
      const here = gearcaseAt(site.state, owner)
      const rechecked =
        here.oil === 'new' &&
        here.levelCheckedSinceRun &&
        owner.gearcase.fill?.level?.recheckAfterRun === true
      return !rechecked || here.toppedUp
    },
    mend: (site: Site) => {
      const owner = ownerOf(site)
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
  owner: Unit,
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

export function taskOf(site: Site, owner: Unit): 'check' | 'change' | undefined {
  return site.jobs.find(
    (job) => job.owner.gearcase.id === owner.gearcase.id && job.owner.instance === owner.instance,
  )?.task
}

export function at(action: StepSeed['do'], on: string, instance: string | undefined): StepSeed {
  return { do: action, on, ...(instance === undefined ? {} : { at: { instance } }) }
}

/** The step that lets this gearcase's oil out. */
export function seedDrain({ gearcase, instance }: Unit): readonly StepSeed[] {
  const way = gearcase.emptying
  if (way === undefined) return []
  if (way.kind === 'cover') return [at('let drain', way.cover.path, instance)]
  return [at(way.kind === 'suction' ? 'suck out the oil' : 'let drain', way.opening.path, instance)]
}

function seedOwner(site: Site, action: StepSeed['do']): readonly StepSeed[] {
  const owner = ownerOf(site)
  return owner === undefined ? [] : [at(action, owner.gearcase.path, owner.instance)]
}

function seedLevel(site: Site, action: StepSeed['do']): readonly StepSeed[] {
  const owner = ownerOf(site)
  const level = owner?.gearcase.levelOpening
  return level === undefined ? [] : [at(action, level.path, owner?.instance)]
}

/** Gearcases that this pour would top up on old oil: the owner, and what the job empties with it. */
function listUndrained(site: Site): readonly Unit[] {
  const owner = ownerOf(site)
  if (owner === undefined) return []
  const job = site.jobs.find(
    (one) => one.owner.gearcase.id === owner.gearcase.id && one.owner.instance === owner.instance,
  )
  return (job?.units ?? [owner]).filter((unit) => gearcaseAt(site.state, unit).oil === 'old')
}

/** Everything below the oil that was opened and is not tight; the fill and the level opening stay open. */
function listOpenDrains(site: Site): readonly StepSeed[] {
  const owner = ownerOf(site)
  if (owner === undefined) return []
  const stays = new Set([
    ...owner.gearcase.fillOpenings.map((one) => one.path),
    owner.gearcase.levelOpening?.path,
  ])
  return findSharers(site.layout, owner).flatMap(({ gearcase, instance }) => [
    ...gearcase.openings
      .filter((one) => !stays.has(one.path))
      .filter((one) => {
        const here = openingAt(site.state, one, instance)
        return here.everCracked && here.position !== 'tight'
      })
      .map((one) => at('tighten', one.path, instance)),
    ...gearcase.covers
      .filter((one) => {
        const here = coverAt(site.state, one, instance)
        return here.everOff && here.position !== 'tight'
      })
      .map((one) => at('tighten cover', one.path, instance)),
  ])
}

function listUncured(site: Site): readonly StepSeed[] {
  const owner = ownerOf(site)
  if (owner === undefined) return []
  return findSharers(site.layout, owner).flatMap(({ gearcase, instance }) =>
    gearcase.covers
      .filter((one) => {
        const here = coverAt(site.state, one, instance)
        return one.seal.cures && here.everOff && !here.cured
      })
      .map((one) => at('wait for the cure', one.path, instance)),
  )
}
