import { type SealLayout, stateKey } from '../layout.js'
import type { Need } from '../need.js'
import type { StepContext, StepDraft } from '../stepContext.js'
import { draftHere, partAt } from './opening.js'

/** A joint is closed only on a clean face, with what the manual puts between. */
export const SEALING_NEEDS = {
  'magnet-not-looked-at': {
    severity: 'error',
    holds: (context: StepContext) => !hasMagnet(context) || (partAt(context)?.magnetSeen ?? true),
    remedy: (context: StepContext) => [draftHere(context, 'inspect the magnet')],
  },
  'magnet-not-cleaned': {
    severity: 'warning',
    holds: (context: StepContext) => !hasMagnet(context) || (partAt(context)?.magnetClean ?? true),
    remedy: (context: StepContext) => [draftHere(context, 'clean the magnet')],
  },
  'old-seal-on': {
    severity: 'error',
    holds: (context: StepContext) => listOldSeals(context).length === 0,
    remedy: (context: StepContext) =>
      listOldSeals(context).map((seal) => draftAtSeal(context, seal, 'take off old seal')),
  },
  'face-not-wiped': {
    severity: 'error',
    holds: (context: StepContext) => partAt(context)?.faceWiped ?? true,
    remedy: (context: StepContext) => {
      const on = context.opening?.path ?? context.cover?.path
      return on === undefined ? [] : [{ ...draftHere(context, 'wipe the seal face'), on }]
    },
  },
  'seal-not-renewed': {
    severity: 'error',
    holds: (context: StepContext) => listUnfitSeals(context).length === 0,
    remedy: (context: StepContext) =>
      listUnfitSeals(context).map((seal) => draftAtSeal(context, seal, ACTION_OF[seal.treatment])),
  },
  'not-fitted': {
    severity: 'error',
    holds: (context: StepContext) => {
      const position = partAt(context)?.position
      return position === undefined || position === 'in' || position === 'tight'
    },
    remedy: (context: StepContext) => [draftHere(context, context.cover === undefined ? 'fit' : 'fit cover')],
  },
} satisfies Readonly<Record<string, Need>>

const ACTION_OF: Readonly<Record<SealLayout['treatment'], StepDraft['do']>> = {
  renew: 'fit new seal',
  apply: 'apply sealant',
  inspect: 'inspect the seal',
  none: 'wipe the seal face',
}

function hasMagnet({ opening, cover }: StepContext): boolean {
  return opening?.opening.magnet === true || cover?.cover.magnet === true
}

function listSeals({ opening, cover, seal }: StepContext): readonly SealLayout[] {
  if (seal !== undefined) return [seal]
  if (opening !== undefined) return opening.seals
  return cover === undefined ? [] : [cover.seal]
}

/** Seals that have to go and are still there. */
function listOldSeals(context: StepContext): readonly SealLayout[] {
  return listSeals(context).filter((seal) => {
    const here = context.state.seals[stateKey(seal.path, context.instance)]
    const goes =
      seal.treatment === 'renew' || seal.treatment === 'apply' || context.step.do === 'fit new seal'
    return goes && (here === 'used' || here === 'undisturbed' || here === 'inspected')
  })
}

function listUnfitSeals(context: StepContext): readonly SealLayout[] {
  return listSeals(context).filter((seal) => {
    const here = context.state.seals[stateKey(seal.path, context.instance)]
    if (seal.treatment === 'none' || here === 'new') return false
    return !(seal.treatment === 'inspect' && here === 'inspected')
  })
}

function draftAtSeal(context: StepContext, seal: SealLayout, action: StepDraft['do']): StepDraft {
  return { ...draftHere(context, action), on: seal.path }
}
