import type { DocumentReference, Finding, Fix, Severity } from '../base/index.js'
import { asText, dropUndefined, joinPointer, readPointer } from '../base/index.js'
import type { SpecSheet, Step } from '../spec/index.js'
import { ACTIONS } from './actions.js'
import { type ProcedureCodes, procedureFinding } from './codes.js'
import { findStepFigures } from './findStepFigures.js'
import { type Part, readPartNames } from './layout.js'
import type { ProcedureContext } from './stepContext.js'

interface CheckedStep {
  readonly findings: readonly Finding<ProcedureCodes>[]
  /** Whether the step is complete enough to be run. */
  readonly canRun: boolean
}

interface WrittenStep {
  readonly step: Step
  readonly place: number
  readonly document: DocumentReference
}

/** Finds mistakes in one step, without regard to the steps before it. */
export function checkStep(sheet: SpecSheet, context: ProcedureContext, written: WrittenStep): CheckedStep {
  const { step, place } = written
  const reject = (finding: Finding<ProcedureCodes>): CheckedStep => ({ findings: [finding], canRun: false })
  const id = asText(step.id)
  const { do: action, on } = step
  if (typeof action !== 'string' || !Object.hasOwn(ACTIONS, action))
    return reject(report(written, 'procedure/unknown-action', ['do'], { step: id, action: asText(action) }))
  const expected = ACTIONS[action].on
  const part = on === undefined ? undefined : context.indexedSheet.parts.get(on)
  if (on !== undefined && part === undefined)
    return reject(report(written, 'procedure/unknown-part', ['on'], { step: id, on: asText(on) }))
  if (!expected.includes(part?.kind ?? 'machine'))
    return reject(
      report(written, 'procedure/wrong-part', on === undefined ? [] : ['on'], {
        step: id,
        action,
        required: expected,
      }),
    )
  const instance = checkInstance(written, part)
  if (instance !== undefined) return reject(instance)
  const params = { step: id, ...readPartNames(part) }
  if (
    (action === 'turn the wheel' || action === 'roll the machine') &&
    typeof step.at?.wheelMark !== 'string'
  )
    return reject(report(written, 'procedure/wheel-mark-missing', [], params))
  const removal: Fix = { op: 'remove', path: joinPointer(['steps', place]) }
  const absentPartFindings = isAbsent(part)
    ? [report(written, 'procedure/part-not-on-this-machine', ['on'], params, [removal])]
    : []
  return { findings: [...absentPartFindings, ...checkFigures(sheet, context, written)], canRun: true }
}

function report<Code extends keyof ProcedureCodes>(
  { place, document }: WrittenStep,
  code: Code,
  at: readonly string[],
  params: ProcedureCodes[Code],
  fixes: readonly Fix[] = [],
  severity: Severity = 'error',
): Finding<Pick<ProcedureCodes, Code>> {
  const path = joinPointer(['steps', place, ...at])
  return procedureFinding(code, severity, document, path, params, fixes.length === 0 ? {} : { cures: fixes })
}

function checkInstance(written: WrittenStep, part: Part | undefined): Finding<ProcedureCodes> | undefined {
  const { step, place } = written
  const given = step.at?.instance
  const { gearcase: indexedSheet, instances = [] } =
    part !== undefined && 'gearcase' in part ? part.gearcase : {}
  const known = instances.filter((instance) => instance !== undefined)
  const id = asText(step.id)
  if (given === undefined) {
    if (indexedSheet === undefined || known.length === 0) return undefined
    const path = joinPointer(['steps', place, 'at'])
    const fixes = known.map((instance): Fix => ({ op: 'add', path, value: { ...step.at, instance } }))
    const params = { step: id, gearcase: indexedSheet.name, known }
    return report(written, 'procedure/instance-missing', [], params, fixes)
  }
  if (known.includes(given)) return undefined
  const path = joinPointer(['steps', place, 'at', 'instance'])
  const fixes = known.map((value): Fix => ({ op: 'replace', path, value }))
  const params = dropUndefined({ step: id, instance: asText(given), gearcase: indexedSheet?.name, known })
  const fixesOrRemoval = fixes.length === 0 ? [{ op: 'remove', path } as const] : fixes
  return report(written, 'procedure/unknown-instance', ['at', 'instance'], params, fixesOrRemoval)
}

function checkFigures(
  sheet: SpecSheet,
  context: ProcedureContext,
  written: WrittenStep,
): readonly Finding<ProcedureCodes>[] {
  const { step, place } = written
  const id = asText(step.id)
  const figures = findStepFigures(sheet, context, step)
  const given = new Map(Object.entries(step.values ?? {}))
  const values = joinPointer(['steps', place, 'values'])
  const wrongFigures = Object.entries(figures).flatMap(
    ([name, value]): Finding<ProcedureCodes> | readonly [] => {
      const path = `${values}${joinPointer([name])}`
      const found = given.get(name)
      if (found === value) return []
      const params = { step: id, name, pointer: value }
      if (found !== undefined) {
        const wrongParams = { ...params, found: asText(found) }
        return report(written, 'procedure/wrong-figure', ['values', name], wrongParams, [
          { op: 'replace', path, value },
        ])
      }
      const [at, fix]: [readonly string[], Fix] =
        step.values === undefined
          ? [[], { op: 'add', path: values, value: figures }]
          : [['values'], { op: 'add', path, value }]
      return report(written, 'procedure/figure-missing', at, params, [fix], 'warning')
    },
  )
  const danglingPointers = [...given].flatMap(([name, found]): Finding<ProcedureCodes> | readonly [] => {
    if (Object.hasOwn(figures, name)) return []
    if (typeof found === 'string' && readPointer(sheet, found) !== undefined) return []
    const fix = { op: 'remove', path: `${values}${joinPointer([name])}` } as const
    const params = { step: id, name, found: asText(found) }
    return report(written, 'procedure/dangling-pointer', ['values', name], params, [fix])
  })
  return [...wrongFigures, ...danglingPointers]
}

function isAbsent(part: Part | undefined): boolean {
  if (part?.kind === 'shield') return part.shield.applies === 'no'
  if (part === undefined || !('gearcase' in part)) return false
  const innerPart =
    'opening' in part
      ? part.opening
      : 'cover' in part
        ? part.cover
        : 'filter' in part
          ? part.filter
          : undefined
  return part.gearcase.applies === 'no' || innerPart?.applies === 'no'
}
