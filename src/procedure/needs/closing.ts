import type { GearcaseLayout } from '../layout.js'
import type { Need } from '../need.js'
import { coverAt, gearcaseAt, openingAt, type Site, type StepSeed, type Unit } from '../site.js'
import { at } from './filling.js'

/** What was opened is closed before oil moves or eyes look for it. */
export const CLOSING_NEEDS = {
  'not-tightened': {
    severity: 'error',
    holds: (site: Site) => listUntight(site, unitsConcerned(site)).length === 0,
    mend: (site: Site) => listUntight(site, unitsConcerned(site)),
    // What is still out is left to the steps that close it; what only lacks its tightening counts as tight from here.
    assume: (site: Site) => {
      for (const { gearcase, instance } of unitsConcerned(site)) {
        for (const opening of gearcase.openings) {
          const here = openingAt(site.state, opening, instance)
          if (here.position !== 'out') here.position = 'tight'
        }
        for (const cover of gearcase.covers) {
          const here = coverAt(site.state, cover, instance)
          if (here.position !== 'off') here.position = 'tight'
        }
      }
    },
  },
  'cover-not-tightened': {
    severity: 'error',
    holds: ({ state, cover, instance }: Site) =>
      cover === undefined || coverAt(state, cover, instance).position === 'tight',
    mend: (site: Site) => [
      { do: 'tighten cover', ...(site.step.on === undefined ? {} : { on: site.step.on }), ...atOf(site) },
    ],
  },
  'not-wiped-down': {
    severity: 'warning',
    holds: (site: Site) =>
      unitsConcerned(site).every(
        (unit) =>
          gearcaseAt(site.state, unit).wipedDown || (site.gearcase === undefined && !isWorked(site, unit)),
      ),
    mend: (site: Site) => [
      { do: 'wipe down', ...(site.step.on === undefined ? {} : { on: site.step.on }), ...atOf(site) },
    ],
  },
  'leaks-not-checked': {
    severity: 'error',
    holds: (site: Site) => listUnlooked(site, unitsConcerned(site)).length === 0,
    mend: (site: Site) => listUnlooked(site, unitsConcerned(site)),
  },
} satisfies Readonly<Record<string, Need>>

function atOf(site: Site): Pick<StepSeed, 'at'> {
  return site.instance === undefined ? {} : { at: { instance: site.instance } }
}

/** The step's own gearcase, those behind its shield, or all. */
function unitsConcerned(site: Site): readonly Unit[] {
  if (site.gearcase !== undefined) return [{ gearcase: site.gearcase, instance: site.instance }]
  const shield = site.shield
  return listUnits(site, (gearcase) => shield === undefined || gearcase.shields.includes(shield.id))
}

export function listUnits(
  site: Pick<Site, 'layout'>,
  wanted: (gearcase: GearcaseLayout) => boolean = () => true,
): readonly Unit[] {
  return [...site.layout.gearcases.values()]
    .filter(wanted)
    .flatMap((gearcase) => gearcase.instances.map((instance) => ({ gearcase, instance })))
}

/** Openings and covers that were opened and are not tight again, as the steps that close them. */
export function listUntight(site: Pick<Site, 'state'>, units: readonly Unit[]): readonly StepSeed[] {
  return units.flatMap(({ gearcase, instance }) => [
    ...gearcase.openings
      .filter((one) => openingAt(site.state, one, instance).position !== 'tight')
      .map((one) => at('tighten', one.path, instance)),
    ...gearcase.covers
      .filter((one) => coverAt(site.state, one, instance).position !== 'tight')
      .map((one) => at('tighten cover', one.path, instance)),
  ])
}

/** Gearcases that were worked on and not looked at for leaks since. */
export function listUnlooked(site: Pick<Site, 'state'>, units: readonly Unit[]): readonly StepSeed[] {
  return units
    .filter((unit) => isWorked(site, unit) && !gearcaseAt(site.state, unit).leaksChecked)
    .map(({ gearcase, instance }) => at('check for leaks', gearcase.path, instance))
}

/** Whether anything of this gearcase was opened. */
function isWorked(site: Pick<Site, 'state'>, { gearcase, instance }: Unit): boolean {
  return (
    gearcase.openings.some((one) => openingAt(site.state, one, instance).everCracked) ||
    gearcase.covers.some((one) => coverAt(site.state, one, instance).everOff)
  )
}
