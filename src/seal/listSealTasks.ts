import { type JsonPointer, type Reason, refuse, requireObject } from '../base/index.js'
import type { Id, NoSeal, Seal } from '../spec/index.js'
import { type SealCodes, sealReason } from './codes.js'
import { requireSeal } from './requireSeal.js'

/** An opening or a cover that a job opens, with its seals as resolved for this machine. */
export interface OpenedPart {
  /** Pointer to the opening or the cover in the sheet. */
  readonly path: JsonPointer
  readonly seals: readonly Seal[]
  /**
   * A cover has one seal, at `<path>/seal`; an opening has them at `<path>/seals/0` and up. Default
   * `opening`.
   */
  readonly part?: 'opening' | 'cover'
  readonly instance?: Id
  /** Cracking a plug loose and a level check also open it. Default `taken out`. */
  readonly how?: 'taken out' | 'cracked loose' | 'level check'
}

export interface SealTask {
  /** Pointer to the seal in the sheet. */
  readonly path: JsonPointer
  readonly instance?: Id
  readonly seal: Exclude<Seal, NoSeal>
  /**
   * `new`: fit a new seal; `inspect`: fit a new seal if in doubt; `apply`: clean off the old and apply fresh;
   * `look up`: not stated.
   */
  readonly action: 'new' | 'inspect' | 'apply' | 'look up'
  /** Faults to look for. */
  readonly inspection: readonly Reason<keyof SealCodes>[]
  readonly reasons: readonly Reason<keyof SealCodes>[]
}

/**
 * Lists the task for every seal that a job opens; a part listed twice gives one task for each instance. Crush
 * washers: a new one at every opening, unless the sheet says `on condition`. Bonded seals, o-rings and cut
 * gaskets: as the sheet says. Sealants and liquid gaskets: always fresh. Common practice, no source: no
 * standard that we read calls crush washers `single use`.
 */
export function listSealTasks(opened: readonly OpenedPart[]): readonly SealTask[] {
  if (!Array.isArray(opened)) throw refuse('opened', opened, 'a list')
  const tasks = new Map<string, SealTask>()
  opened.forEach((part: OpenedPart, index) => {
    const name = `opened[${index}]`
    requireObject(name, part)
    if (typeof part.path !== 'string') throw refuse(`${name}.path`, part.path, 'a string')
    if (!Array.isArray(part.seals)) throw refuse(`${name}.seals`, part.seals, 'a list')
    part.seals.forEach((seal: Seal, index) => {
      requireSeal(`${name}.seals[${index}]`, seal)
      if (seal.kind === 'none') return
      const path = part.part === 'cover' ? `${part.path}/seal` : `${part.path}/seals/${index}`
      const key = JSON.stringify([path, part.instance ?? null])
      if (tasks.has(key)) return
      const instance = part.instance === undefined ? {} : { instance: part.instance }
      tasks.set(key, { path, ...instance, seal, ...judgeSeal(seal, part.how ?? 'taken out') })
    })
  })
  return [...tasks.values()]
}

function judgeSeal(
  seal: Exclude<Seal, NoSeal>,
  how: string,
): Pick<SealTask, 'action' | 'inspection' | 'reasons'> {
  if (seal.kind === 'not stated')
    return { action: 'look up', inspection: [], reasons: [sealReason('seal/not-stated', {})] }
  if (seal.kind === 'thread sealant' || seal.kind === 'liquid gasket') {
    const code = seal.kind === 'thread sealant' ? 'seal/apply-new-sealant' : 'seal/apply-new-liquid-gasket'
    return { action: 'apply', inspection: [], reasons: [sealReason(code, { product: seal.product })] }
  }
  if (seal.replace === 'on condition') {
    const stated =
      seal.kind === 'crush washer'
        ? sealReason('seal/reuse-stated', {})
        : sealReason('seal/sheet-says-on-condition', { kind: seal.kind })
    return { action: 'inspect', inspection: listInspections(seal.kind), reasons: [stated] }
  }
  if (seal.replace === 'not stated' && seal.kind !== 'crush washer')
    return {
      action: 'new',
      inspection: [],
      reasons: [sealReason('seal/replace-not-stated', { kind: seal.kind })],
    }
  const reason =
    seal.kind === 'crush washer'
      ? sealReason('seal/crush-washer-every-opening', { how })
      : sealReason('seal/sheet-says-every-opening', { kind: seal.kind })
  return { action: 'new', inspection: [], reasons: [reason] }
}

function listInspections(kind: 'crush washer' | 'bonded seal' | 'o-ring' | 'gasket') {
  const makeInspectionReason = (
    code: 'seal/look-for-cuts' | 'seal/look-for-flattening' | 'seal/look-at-faces',
  ) => sealReason(code, {})
  if (kind === 'o-ring') {
    return [
      makeInspectionReason('seal/look-for-cuts'),
      makeInspectionReason('seal/look-for-flattening'),
      sealReason('seal/look-for-hardness', {}),
      sealReason('seal/look-for-swelling', {}),
    ]
  }
  if (kind === 'bonded seal')
    return [sealReason('seal/look-at-bonded-lip', {}), makeInspectionReason('seal/look-at-faces')]
  return kind === 'gasket'
    ? [makeInspectionReason('seal/look-for-cuts'), makeInspectionReason('seal/look-at-faces')]
    : [makeInspectionReason('seal/look-for-flattening'), makeInspectionReason('seal/look-at-faces')]
}
