import { type SealLayout, stateKey } from '../layout.js'
import { draftHere, type Need, partAt, type StepContext, type StepDraft } from '../stepContext.js'

/** A joint is closed only on a clean face, with what the manual puts between. */
export const SEALING_NEEDS = {
  'magnet-not-inspected': (context) =>
    !hasMagnet(context) ||
    (partAt(context)?.magnetSeen ?? true) || [draftHere(context, 'inspect the magnet')],
  'magnet-not-cleaned': (context) =>
    !hasMagnet(context) || (partAt(context)?.magnetClean ?? true) || [draftHere(context, 'clean the magnet')],
  'old-seal-on': (context) => {
    const old = listOldSeals(context)
    return old.length === 0 || old.map((seal) => draftHere(context, 'take off old seal', seal))
  },
  'face-not-wiped': (context) =>
    (partAt(context)?.faceWiped ?? true) || [
      draftHere(context, 'wipe the seal face', context.opening ?? context.cover),
    ],
  'seal-not-renewed': (context) => {
    const unfit = listUnfitSeals(context)
    return unfit.length === 0 || unfit.map((seal) => draftHere(context, ACTION_OF[seal.treatment], seal))
  },
  'not-fitted': (context) => {
    const position = partAt(context)?.position ?? 'in'
    if (position === 'in' || position === 'tight') return true
    return [draftHere(context, context.cover === undefined ? 'fit' : 'fit cover')]
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
  return listSeals(context).filter(({ path, treatment }) => {
    const here = context.state.seals[stateKey(path, context.instance)]
    const goes = treatment === 'renew' || treatment === 'apply' || context.step.do === 'fit new seal'
    return goes && (here === 'used' || here === 'undisturbed' || here === 'inspected')
  })
}

function listUnfitSeals(context: StepContext): readonly SealLayout[] {
  return listSeals(context).filter(({ path, treatment }) => {
    const here = context.state.seals[stateKey(path, context.instance)]
    if (treatment === 'none' || here === 'new') return false
    return !(treatment === 'inspect' && here === 'inspected')
  })
}
