import { asText, type Cure, joinPointer, type Params, readPointer, type Severity } from '../base/index.js'
import type { SpecSheet, Step } from '../spec/index.js'
import { ACTIONS } from './actions.js'
import { figuresOf } from './figuresOf.js'
import type { Part } from './layout.js'
import type { ProcedureContext } from './stepContext.js'

/** What is wrong with how one step is written, whatever the steps before it. */
interface StepFault {
  readonly code: string
  readonly severity: Severity
  /** Inside the step. */
  readonly at: readonly string[]
  readonly params: Params
  readonly cures?: readonly Cure[]
}

export interface StepVerdict {
  readonly faults: readonly StepFault[]
  /** Whether the step says enough to be done at all. */
  readonly canRun: boolean
}

export function judgeStep(
  sheet: SpecSheet,
  context: ProcedureContext,
  step: Step,
  place: number,
): StepVerdict {
  const id = asText(step.id)
  const fail = (fault: Omit<StepFault, 'severity'>): StepVerdict => ({
    faults: [{ severity: 'error', ...fault }],
    canRun: false,
  })
  if (typeof step.do !== 'string' || !Object.hasOwn(ACTIONS, step.do))
    return fail({
      code: 'procedure/unknown-action',
      at: ['do'],
      params: { step: id, action: asText(step.do) },
    })
  const wanted = ACTIONS[step.do].on
  const part = step.on === undefined ? undefined : context.layout.parts.get(step.on)
  if (step.on !== undefined && part === undefined)
    return fail({ code: 'procedure/unknown-part', at: ['on'], params: { step: id, on: asText(step.on) } })
  if (!wanted.includes(part?.kind ?? 'machine'))
    return fail({
      code: 'procedure/wrong-part',
      at: step.on === undefined ? [] : ['on'],
      params: { step: id, action: step.do, wanted },
    })
  const instance = judgeInstance(step, part, place)
  if (instance !== undefined) return fail(instance)
  if (step.do === 'turn the wheel' && typeof step.at?.wheelMark !== 'string')
    return fail({ code: 'procedure/mark-missing', at: [], params: { step: id, ...nameOf(part) } })
  const faults: StepFault[] = []
  if (isAbsent(part))
    faults.push({
      code: 'procedure/part-not-on-this-machine',
      severity: 'error',
      at: ['on'],
      params: { step: id, ...nameOf(part) },
      cures: [{ op: 'remove', path: joinPointer(['steps', place]) }],
    })
  faults.push(...judgeFigures(sheet, context, step, place))
  return { faults, canRun: true }
}

function judgeInstance(
  step: Step,
  part: Part | undefined,
  place: number,
): Omit<StepFault, 'severity'> | undefined {
  const given = step.at?.instance
  const gearcase = part !== undefined && 'gearcase' in part ? part.gearcase : undefined
  const known = (gearcase?.instances ?? []).filter((one) => one !== undefined)
  if (given === undefined) {
    if (gearcase === undefined || known.length === 0) return undefined
    return {
      code: 'procedure/instance-missing',
      at: [],
      params: { step: asText(step.id), gearcase: gearcase.gearcase.name, known },
      cures: known.map(
        (instance): Cure => ({
          op: 'add',
          path: joinPointer(['steps', place, 'at']),
          value: { ...step.at, instance },
        }),
      ),
    }
  }
  if (known.includes(given)) return undefined
  return {
    code: 'procedure/unknown-instance',
    at: ['at', 'instance'],
    params: {
      step: asText(step.id),
      instance: asText(given),
      ...(gearcase === undefined ? {} : { gearcase: gearcase.gearcase.name }),
      known,
    },
    cures: [
      ...known.map(
        (value): Cure => ({ op: 'replace', path: joinPointer(['steps', place, 'at', 'instance']), value }),
      ),
      ...(known.length === 0
        ? [{ op: 'remove', path: joinPointer(['steps', place, 'at', 'instance']) } as const]
        : []),
    ],
  }
}

function judgeFigures(
  sheet: SpecSheet,
  context: ProcedureContext,
  step: Step,
  place: number,
): readonly StepFault[] {
  const faults: StepFault[] = []
  const expected = new Map(Object.entries(figuresOf(sheet, context, step)))
  const found = new Map(Object.entries(step.values ?? {}))
  const id = asText(step.id)
  for (const [name, pointer] of expected) {
    const path = joinPointer(['steps', place, 'values', name])
    const given = found.get(name)
    if (given === undefined)
      faults.push({
        code: 'procedure/figure-missing',
        severity: 'warning',
        at: found.size === 0 && step.values === undefined ? [] : ['values'],
        params: { step: id, name, pointer },
        cures:
          step.values === undefined
            ? [
                {
                  op: 'add',
                  path: joinPointer(['steps', place, 'values']),
                  value: Object.fromEntries(expected),
                },
              ]
            : [{ op: 'add', path, value: pointer }],
      })
    else if (given !== pointer)
      faults.push({
        code: 'procedure/wrong-figure',
        severity: 'error',
        at: ['values', name],
        params: { step: id, name, pointer, found: asText(given) },
        cures: [{ op: 'replace', path, value: pointer }],
      })
  }
  for (const [name, given] of found) {
    if (expected.has(name) || (typeof given === 'string' && readPointer(sheet, given) !== undefined)) continue
    faults.push({
      code: 'procedure/dangling-pointer',
      severity: 'error',
      at: ['values', name],
      params: { step: id, name, found: asText(given) },
      cures: [{ op: 'remove', path: joinPointer(['steps', place, 'values', name]) }],
    })
  }
  return faults
}

function isAbsent(part: Part | undefined): boolean {
  if (part === undefined) return false
  if (part.kind === 'shield') return part.shield.applies === 'no'
  if (!('gearcase' in part)) return false
  const inner = 'opening' in part ? part.opening : 'cover' in part ? part.cover : undefined
  return part.gearcase.applies === 'no' || inner?.applies === 'no'
}

/** The part in the sheet's own names. */
export function nameOf(part: Part | undefined): { readonly part?: string; readonly gearcase?: string } {
  if (part === undefined || part.kind === 'support' || part.kind === 'axle') return {}
  if (part.kind === 'shield') return { part: part.shield.shield.name }
  const gearcase = part.gearcase.gearcase.name
  if ('opening' in part) return { part: part.opening.opening.name, gearcase }
  if ('cover' in part) return { part: part.cover.cover.name, gearcase }
  return { gearcase }
}
