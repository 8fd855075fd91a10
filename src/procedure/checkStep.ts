import {
  asText,
  type Cure,
  type DocumentReference,
  type Finding,
  joinPointer,
  readPointer,
  type Severity,
} from '../base/index.js'
import type { SpecSheet, Step } from '../spec/index.js'
import { ACTIONS } from './actions.js'
import { type ProcedureCodes, procedureFinding } from './codes.js'
import { figuresOf } from './figuresOf.js'
import { namePart, type Part } from './layout.js'
import type { ProcedureContext } from './stepContext.js'

interface CheckedStep {
  readonly findings: readonly Finding<ProcedureCodes>[]
  /** Whether the step says enough to be done at all. */
  readonly canRun: boolean
}

/** What is wrong with how one step is written, whatever the steps before it. */
export function checkStep(
  sheet: SpecSheet,
  context: ProcedureContext,
  step: Step,
  place: number,
  document: DocumentReference,
): CheckedStep {
  const here: WrittenStep = { step, place, document }
  const stop = (finding: Finding<ProcedureCodes>): CheckedStep => ({ findings: [finding], canRun: false })
  const id = asText(step.id)
  if (typeof step.do !== 'string' || !Object.hasOwn(ACTIONS, step.do))
    return stop(report(here, 'procedure/unknown-action', ['do'], { step: id, action: asText(step.do) }))
  const expected = ACTIONS[step.do].on
  const part = step.on === undefined ? undefined : context.layout.parts.get(step.on)
  if (step.on !== undefined && part === undefined)
    return stop(report(here, 'procedure/unknown-part', ['on'], { step: id, on: asText(step.on) }))
  if (!expected.includes(part?.kind ?? 'machine')) {
    const at = step.on === undefined ? [] : ['on']
    return stop(report(here, 'procedure/wrong-part', at, { step: id, action: step.do, required: expected }))
  }
  const instance = checkInstance(here, part)
  if (instance !== undefined) return stop(instance)
  const params = { step: id, ...namePart(part) }
  if (step.do === 'turn the wheel' && typeof step.at?.wheelMark !== 'string')
    return stop(report(here, 'procedure/mark-missing', [], params))
  const absent = isAbsent(part)
    ? [
        report(here, 'procedure/part-not-on-this-machine', ['on'], params, [
          { op: 'remove', path: joinPointer(['steps', place]) },
        ]),
      ]
    : []
  return { findings: [...absent, ...checkFigures(sheet, context, here)], canRun: true }
}

interface WrittenStep {
  readonly step: Step
  readonly place: number
  readonly document: DocumentReference
}

/** A finding at this place inside the step. */
function report<Code extends keyof ProcedureCodes>(
  { place, document }: WrittenStep,
  code: Code,
  at: readonly string[],
  params: ProcedureCodes[Code],
  cures: readonly Cure[] = [],
  severity: Severity = 'error',
): Finding<Pick<ProcedureCodes, Code>> {
  const path = joinPointer(['steps', place, ...at])
  return procedureFinding(code, severity, document, path, params, cures.length === 0 ? {} : { cures })
}

function checkInstance(here: WrittenStep, part: Part | undefined): Finding<ProcedureCodes> | undefined {
  const { step, place } = here
  const given = step.at?.instance
  const gearcase = part !== undefined && 'gearcase' in part ? part.gearcase : undefined
  const name = gearcase?.gearcase.name
  const known = (gearcase?.instances ?? []).filter((one) => one !== undefined)
  const id = asText(step.id)
  if (given === undefined) {
    if (name === undefined || known.length === 0) return undefined
    const path = joinPointer(['steps', place, 'at'])
    const cures = known.map((instance): Cure => ({ op: 'add', path, value: { ...step.at, instance } }))
    return report(here, 'procedure/instance-missing', [], { step: id, gearcase: name, known }, cures)
  }
  if (known.includes(given)) return undefined
  const path = joinPointer(['steps', place, 'at', 'instance'])
  return report(
    here,
    'procedure/unknown-instance',
    ['at', 'instance'],
    { step: id, instance: asText(given), ...(name === undefined ? {} : { gearcase: name }), known },
    known.length === 0
      ? [{ op: 'remove', path }]
      : known.map((value): Cure => ({ op: 'replace', path, value })),
  )
}

function checkFigures(
  sheet: SpecSheet,
  context: ProcedureContext,
  here: WrittenStep,
): readonly Finding<ProcedureCodes>[] {
  const { step, place } = here
  const id = asText(step.id)
  const figures = figuresOf(sheet, context, step)
  const found = new Map(Object.entries(step.values ?? {}))
  const values = joinPointer(['steps', place, 'values'])
  const findings: Finding<ProcedureCodes>[] = []
  for (const [name, pointer] of Object.entries(figures)) {
    const path = joinPointer(['steps', place, 'values', name])
    const given = found.get(name)
    const params = { step: id, name, pointer }
    if (given === undefined) {
      const isFirst = step.values === undefined
      const cure: Cure = isFirst
        ? { op: 'add', path: values, value: figures }
        : { op: 'add', path, value: pointer }
      findings.push(
        report(here, 'procedure/figure-missing', isFirst ? [] : ['values'], params, [cure], 'warning'),
      )
    } else if (given !== pointer) {
      const cure: Cure = { op: 'replace', path, value: pointer }
      const wrong = { ...params, found: asText(given) }
      findings.push(report(here, 'procedure/wrong-figure', ['values', name], wrong, [cure]))
    }
  }
  for (const [name, given] of found) {
    if (Object.hasOwn(figures, name)) continue
    if (typeof given === 'string' && readPointer(sheet, given) !== undefined) continue
    const cure: Cure = { op: 'remove', path: joinPointer(['steps', place, 'values', name]) }
    const params = { step: id, name, found: asText(given) }
    findings.push(report(here, 'procedure/dangling-pointer', ['values', name], params, [cure]))
  }
  return findings
}

function isAbsent(part: Part | undefined): boolean {
  if (part?.kind === 'shield') return part.shield.applies === 'no'
  if (part === undefined || !('gearcase' in part)) return false
  const inner = 'opening' in part ? part.opening : 'cover' in part ? part.cover : undefined
  return part.gearcase.applies === 'no' || inner?.applies === 'no'
}
