import type { VisitPlan } from '../../../src/v1/service.js'
import type {
  RecordEntry,
  RecordedFilter,
  RecordedSeal,
  RecordedTightening,
  ServiceRecord,
} from '../../../src/v1/spec.js'
import type { GoodMachine } from './goodMachine.js'

/** The record of a visit that went as planned. */
export function recordOf({ log }: GoodMachine, plan: VisitPlan): ServiceRecord {
  return {
    kind: 'service-record',
    version: '1.0',
    id: 'as-planned',
    machine: log.id,
    sheet: log.sheet,
    detail: 'full',
    date: plan.today,
    readings: { hours: { value: 640.5, unit: 'h' } },
    entries: plan.work.map((work) => entryOf(plan, work)),
    shields: stepsOf(plan, ['refit shield'], '/shields/').flatMap((step) => tighteningOf(plan, step)),
    usedOil: 'used-oil drum',
  }
}

function entryOf(plan: VisitPlan, { service, part }: VisitPlan['work'][number]): RecordEntry {
  const myRecord = (actions: readonly string[]) =>
    stepsOf(plan, actions, `${part.path}/`).filter((step) => step.part?.instance?.id === part.instance?.id)
  const oil = plan.oil.find((line) => line.part.path === part.path)
  const needed = oil?.needed
  const shares = plan.work.filter((work) => work.part.path === part.path).length
  const volume = { value: (needed?.value ?? 0) / shares, unit: needed?.unit ?? 'mL' }
  const [take] = oil?.take ?? []
  const isSuckedOut = myRecord(['suck out the oil']).length > 0
  const seals = myRecord(['fit new seal', 'apply sealant', 'inspect the seal']).map(
    ({ do: action, part: seal }): RecordedSeal => ({
      on: seal?.path ?? '',
      done: action === 'inspect the seal' ? 'inspected and used again' : 'new',
    }),
  )
  const cleaned = myRecord(['clean the filter']).map((step) => step.part?.path)
  const filters = myRecord(['fit filter']).map(
    ({ part: filter }): RecordedFilter => ({
      on: filter?.path ?? '',
      done: cleaned.includes(filter?.path) ? 'cleaned' : 'new',
      found: 'clean',
    }),
  )
  return {
    service,
    gearcase: part.path.split('/')[2] ?? '',
    ...(part.instance && { instance: part.instance.id }),
    drained: isSuckedOut ? 'not judged' : volume,
    refilled: volume,
    oil: { name: take?.name ?? '', ...(take && { container: take.container }) },
    oilFinding: 'dark',
    opened: [...new Set(myRecord(['take out', 'take off cover']).map((step) => step.part?.path ?? ''))],
    tightened: myRecord(['tighten', 'tighten cover', 'tighten filter']).flatMap((step) =>
      tighteningOf(plan, step),
    ),
    seals,
    ...(filters.length > 0 && { filters }),
    ...(myRecord(['check the level']).length > 0 && { level: 'at the mark' }),
    leaks: 'dry',
  }
}

const stepsOf = (plan: VisitPlan, actions: readonly string[], under: string) =>
  plan.steps.filter(({ do: action, part }) => actions.includes(action) && part?.path.startsWith(under))

function tighteningOf(
  plan: VisitPlan,
  { part, tightening }: VisitPlan['steps'][number],
): readonly RecordedTightening[] {
  if (part === undefined) return []
  const planned = plan.tightenings[Number(tightening?.split('/')[2])]
  const on = part.path
  if (planned?.setting !== undefined && planned.wrench !== undefined)
    return [{ kind: 'torque set', on, torque: planned.setting, tool: planned.wrench.id }]
  return planned?.verdict === 'by turns'
    ? [{ kind: 'turns', on, turns: on.includes('/filters/') ? 0.75 : 2 }]
    : [{ kind: 'by the manual', on }]
}
