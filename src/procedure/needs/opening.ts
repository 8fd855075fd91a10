import type { OpeningRole, WheelMark } from '../../spec/index.js'
import { type OpeningLayout, servesAs, stateKey, wheelMarkFor } from '../layout.js'
import type { Need } from '../need.js'
import {
  coverAt,
  findOwner,
  gearcaseAt,
  openingAt,
  ownerOf,
  type Site,
  type StepSeed,
  unitOf,
} from '../site.js'

/** Nothing is opened that could not be filled again, or that would spill or let dirt in. */
export const OPENING_NEEDS = {
  'area-not-cleaned': {
    severity: 'error',
    holds: (site: Site) => partAt(site)?.areaClean ?? true,
    mend: (site: Site) => [seedHere(site, 'clean around')],
  },
  'shield-in-the-way': {
    severity: 'error',
    holds: (site: Site) => listShieldsOn(site).length === 0,
    mend: (site: Site) => listShieldsOn(site).map((on) => ({ do: 'remove shield', on })),
  },
  'fill-not-cracked': {
    severity: 'error',
    holds: (site: Site) => {
      const fills = listOtherFills(site)
      return (
        fills.length === 0 ||
        fills.some(({ opening, instance }) => openingAt(site.state, opening, instance).everCracked)
      )
    },
    mend: (site: Site) => seedFill(site, 'crack loose'),
    assume: (site: Site) => {
      const [fill] = listOtherFills(site)
      if (fill === undefined) return
      const here = openingAt(site.state, fill.opening, fill.instance)
      here.everCracked = true
      // Cracked and nipped: a fill plug that was forgotten is one mistake, not two.
      if (here.position === 'tight') here.position = 'nipped'
      for (const seal of fill.opening.seals) site.state.seals[stateKey(seal.path, fill.instance)] = 'used'
    },
  },
  'fill-not-nipped': {
    severity: 'error',
    holds: (site: Site) =>
      listOtherFills(site).every(
        ({ opening, instance }) => openingAt(site.state, opening, instance).position !== 'cracked',
      ),
    mend: (site: Site) => seedFill(site, 'nip by hand'),
  },
  'not-cracked': {
    severity: 'error',
    holds: ({ state, opening, instance }: Site) =>
      opening === undefined || openingAt(state, opening, instance).position !== 'tight',
    mend: (site: Site) => [seedHere(site, 'crack loose')],
  },
  'no-pan': {
    severity: 'error',
    holds: (site: Site) => {
      const unit = unitOf(site)
      return unit === undefined || !letsOilOut(site) || gearcaseAt(site.state, unit).panPlaced
    },
    mend: (site: Site) => [seedHere(site, 'place the pan')],
  },
  'opening-closed': {
    severity: 'error',
    holds: (site: Site) => {
      if (site.opening === undefined) return true
      const method = ownerOf(site)?.gearcase.fill?.method
      if (
        site.step.do === 'check the level' &&
        method?.kind === 'sight glass' &&
        method.opening === site.opening.id
      )
        return true
      return openingAt(site.state, site.opening, site.instance).position === 'out'
    },
    mend: (site: Site) => [seedHere(site, 'take out')],
  },
  'drain-not-out': {
    severity: 'error',
    holds: (site: Site) => isOut(site),
    mend: (site: Site) => [seedHere(site, site.cover === undefined ? 'take out' : 'take off cover')],
  },
  'not-taken-out': {
    severity: 'error',
    holds: (site: Site) => isOut(site),
    mend: (site: Site) => {
      const on = site.cover?.path ?? site.opening?.path
      const action = site.cover === undefined ? 'take out' : 'take off cover'
      return on === undefined ? [] : [{ ...seedHere(site, action), on }]
    },
  },
  'fill-not-vented': {
    severity: 'error',
    holds: (site: Site) => {
      const fills = listOtherFills(site)
      return (
        fills.length === 0 ||
        fills.some(({ opening, instance }) => openingAt(site.state, opening, instance).position === 'out')
      )
    },
    mend: (site: Site) => seedFill(site, 'take out'),
  },
  'oil-not-warm': {
    severity: 'error',
    holds: ({ state }: Site) => state.oilWarm,
    mend: () => [{ do: 'warm the oil' }],
    assume: ({ state }: Site) => {
      state.oilWarm = true
    },
  },
  'breather-not-cleared': {
    severity: 'error',
    holds: (site: Site) => {
      const unit = unitOf(site)
      return (
        unit === undefined ||
        unit.gearcase.gearcase.breather === undefined ||
        gearcaseAt(site.state, unit).breatherClear
      )
    },
    mend: (site: Site) =>
      site.gearcase === undefined
        ? []
        : [{ ...seedHere(site, 'clear the breather'), on: site.gearcase.path }],
  },
  'wrong-wheel-mark': {
    severity: 'error',
    holds: (site: Site) => {
      const unit = unitOf(site)
      const wanted = wantedMarks(site)
      if (unit === undefined || wanted.length === 0) return true
      return wanted.some((mark) => mark === gearcaseAt(site.state, unit).wheelMark)
    },
    mend: (site: Site) =>
      wantedMarks(site)
        .slice(0, 1)
        .map((wheelMark) => ({
          do: 'turn the wheel',
          ...(site.opening === undefined ? {} : { on: site.opening.path }),
          at: { ...(site.instance === undefined ? {} : { instance: site.instance }), wheelMark },
        })),
  },
} satisfies Readonly<Record<string, Need>>

export function partAt(site: Site) {
  if (site.opening !== undefined) return openingAt(site.state, site.opening, site.instance)
  if (site.cover !== undefined) return coverAt(site.state, site.cover, site.instance)
  return undefined
}

/** The same part and instance with another action; wheel marks stay behind. */
export function seedHere(site: Site, action: StepSeed['do']): StepSeed {
  return {
    do: action,
    ...(site.step.on === undefined ? {} : { on: site.step.on }),
    ...(site.instance === undefined ? {} : { at: { instance: site.instance } }),
  }
}

function isOut(site: Site): boolean {
  const here = partAt(site)
  return here === undefined || here.position === 'out' || here.position === 'off'
}

/**
 * Fill openings that must be known to open before this part lets the oil out. None where the part is itself its oil
 * space's sole fill opening, where the oil is out already, or where the part lets none out.
 */
function listOtherFills(
  site: Site,
): readonly { readonly opening: OpeningLayout; readonly instance: string | undefined }[] {
  const { gearcase, instance, opening, cover, layout, state } = site
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

function seedFill(site: Site, action: StepSeed['do']): readonly StepSeed[] {
  const [fill] = listOtherFills(site)
  if (fill === undefined) return []
  return [
    {
      do: action,
      on: fill.opening.path,
      ...(fill.instance === undefined ? {} : { at: { instance: fill.instance } }),
    },
  ]
}

function letsOilOut(site: Site): boolean {
  const { gearcase, opening, cover } = site
  if (cover !== undefined || site.step.do === 'suck out the oil') return true
  if (gearcase === undefined || opening === undefined) return false
  if (servesAs(opening, 'drain')) return true
  if (gearcase.emptying?.kind === 'drain plug' && gearcase.emptying.opening.id === opening.id) return true
  return (
    ownerOf(site)?.gearcase.fill?.method.kind === 'to level hole' && gearcase.levelOpening?.id === opening.id
  )
}

const ROLES: Readonly<Partial<Record<StepSeed['do'], readonly OpeningRole[]>>> = {
  'let drain': ['drain'],
  'pour the oil': ['fill'],
  'check the level': ['level'],
  'top up': ['level', 'fill'],
}

function wantedMarks(site: Site): readonly WheelMark[] {
  const { opening, step } = site
  if (opening === undefined) return []
  return (ROLES[step.do] ?? []).flatMap((role) => wheelMarkFor(opening, role) ?? [])
}

function listShieldsOn({ gearcase, layout, state }: Site): readonly string[] {
  return [...layout.shields.values()]
    .filter((shield) => shield.applies !== 'no' && gearcase?.shields.includes(shield.id) === true)
    .filter((shield) => state.shields[shield.path] === 'on')
    .map((shield) => shield.path)
}
