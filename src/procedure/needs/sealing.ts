import { type SealLayout, stateKey } from '../layout.js'
import type { Need } from '../need.js'
import type { Site, StepSeed } from '../site.js'
import { partAt, seedHere } from './opening.js'

/** A joint is closed only on a clean face, with what the manual puts between. */
export const SEALING_NEEDS = {
  'magnet-not-looked-at': {
    severity: 'error',
    holds: (site: Site) => !hasMagnet(site) || (partAt(site)?.magnetSeen ?? true),
    mend: (site: Site) => [seedHere(site, 'inspect the magnet')],
  },
  'magnet-not-cleaned': {
    severity: 'warning',
    holds: (site: Site) => !hasMagnet(site) || (partAt(site)?.magnetClean ?? true),
    mend: (site: Site) => [seedHere(site, 'clean the magnet')],
  },
  'old-seal-on': {
    severity: 'error',
    holds: (site: Site) => listOldSeals(site).length === 0,
    mend: (site: Site) => listOldSeals(site).map((seal) => seedSeal(site, seal, 'take off old seal')),
  },
  'face-not-wiped': {
    severity: 'error',
    holds: (site: Site) => partAt(site)?.faceWiped ?? true,
    mend: (site: Site) => {
      const on = site.opening?.path ?? site.cover?.path
      return on === undefined ? [] : [{ ...seedHere(site, 'wipe the seal face'), on }]
    },
  },
  'seal-not-renewed': {
    severity: 'error',
    holds: (site: Site) => listUnfitSeals(site).length === 0,
    mend: (site: Site) => listUnfitSeals(site).map((seal) => seedSeal(site, seal, ACTION_OF[seal.treatment])),
  },
  'not-fitted': {
    severity: 'error',
    holds: (site: Site) => {
      const position = partAt(site)?.position
      return position === undefined || position === 'in' || position === 'tight'
    },
    mend: (site: Site) => [seedHere(site, site.cover === undefined ? 'fit' : 'fit cover')],
  },
} satisfies Readonly<Record<string, Need>>

const ACTION_OF: Readonly<Record<SealLayout['treatment'], StepSeed['do']>> = {
  renew: 'fit new seal',
  apply: 'apply sealant',
  inspect: 'inspect the seal',
  none: 'wipe the seal face',
}

function hasMagnet({ opening, cover }: Site): boolean {
  return opening?.opening.magnet === true || cover?.cover.magnet === true
}

function listSeals({ opening, cover, seal }: Site): readonly SealLayout[] {
  if (seal !== undefined) return [seal]
  if (opening !== undefined) return opening.seals
  return cover === undefined ? [] : [cover.seal]
}

/** Seals that have to go and are still there. */
function listOldSeals(site: Site): readonly SealLayout[] {
  return listSeals(site).filter((seal) => {
    const here = site.state.seals[stateKey(seal.path, site.instance)]
    const goes = seal.treatment === 'renew' || seal.treatment === 'apply' || site.step.do === 'fit new seal'
    return goes && (here === 'used' || here === 'undisturbed' || here === 'inspected')
  })
}

function listUnfitSeals(site: Site): readonly SealLayout[] {
  return listSeals(site).filter((seal) => {
    const here = site.state.seals[stateKey(seal.path, site.instance)]
    if (seal.treatment === 'none' || here === 'new') return false
    return !(seal.treatment === 'inspect' && here === 'inspected')
  })
}

function seedSeal(site: Site, seal: SealLayout, action: StepSeed['do']): StepSeed {
  return { ...seedHere(site, action), on: seal.path }
}
