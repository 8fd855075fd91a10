import { dropUndefined, type Reason, readPointer, splitPointer } from '../base/index.js'
import { ACTIONS, findCautions, showsFigure, type ToolKind } from '../procedure/index.js'
import { compareQuantities, type TemperatureUnit } from '../quantity/index.js'
import {
  type Condition,
  isFilterRenewed,
  type Leaf,
  type Resolved,
  type SecuredItem,
  type SpecSheet,
  type SpecValue,
  type Step,
  type Support,
} from '../spec/index.js'
import { serviceReason } from './codes.js'
import { listDrives } from './drives.js'
import { findOilOwner } from './gearcases.js'
import { describePart } from './names.js'
import type { PlannedStep } from './plannedStep.js'
import { hasGrease } from './planOil.js'
import { findGearcaseId, findUpperEnd, type WaitPlan } from './planWaits.js'
import type { VisitContext } from './visitContext.js'
import type { PlannedOil, PlannedTightening, VisitPlan } from './visitPlan.js'

export interface StepPlan {
  readonly steps: readonly PlannedStep[]
  readonly time: VisitPlan['time']
  readonly consumables: readonly Reason[]
  readonly handTools: Reason | undefined
}

/** Tools that are in no toolbox, so each visit that uses them lists them. */
const HAND_TOOLS: ReadonlySet<ToolKind> = new Set(['chocks', 'jack', 'brush', 'scraper'])

const HOT_OIL_CODE = 'procedure/caution-hot-oil'

const makeInstanceKey = (step: Step): string => `${findGearcaseId(step) ?? ''} ${step.at?.instance ?? ''}`

/**
 * Joins the steps of a procedure to their figures, settings, oils and waits. A caution is shown at the first
 * step that needs it and not repeated, since people read few cautions. The hot-oil caution is shown again at
 * each gearcase.
 */
export function planSteps(
  visit: VisitContext,
  tightenings: readonly PlannedTightening[],
  oil: readonly PlannedOil[],
  waits: WaitPlan,
): StepPlan {
  const { sheet, procedure, figures } = visit
  const shownCautions = new Set<string>()
  const supplies = new Set<string>()
  const handTools = new Set<ToolKind>()
  const topUpSteps = listTopUpSteps(procedure.steps)
  const refittedShields = new Set<string>()
  const makePointer = (list: string, place: number) => (place >= 0 ? `/${list}/${place}` : undefined)
  const isOilHot = figures.figures.some(
    ({ role, resolved }) => role === 'drain temperature' && isHot(resolved),
  )
  const steps = procedure.steps.map((step, place): PlannedStep => {
    const { id, do: action, on, at, note, values = {} } = step
    const row = ACTIONS[action]
    // The oil is hot again after each run, and the work may be interrupted between two gearcases.
    if (row.changes.includes('oil warm') || row.changes.includes('oil runs through'))
      for (const key of shownCautions) if (key.startsWith(`${HOT_OIL_CODE} `)) shownCautions.delete(key)
    const onlyIf =
      describeCondition(sheet, step) ??
      (topUpSteps.has(step) ? serviceReason('service/only-if-low', {}) : undefined)
    // A caution at a conditional step is shown again at other steps, since the step may be skipped.
    const condition = onlyIf === undefined ? '' : JSON.stringify(onlyIf)
    const makeShownKey = (code: string) => (code === HOT_OIL_CODE ? `${code} ${makeInstanceKey(step)}` : code)
    const cautions = findCautions(sheet, step, isOilHot).filter(
      ({ code }) =>
        !shownCautions.has(makeShownKey(code)) && !shownCautions.has(`${makeShownKey(code)} ${condition}`),
    )
    for (const { code } of cautions)
      shownCautions.add(condition === '' ? makeShownKey(code) : `${makeShownKey(code)} ${condition}`)
    for (const supply of row.supplies) supplies.add(supply)
    // A toolbox has no pumps, so the pump is listed with the supplies.
    if (row.tools.includes('suction pump')) supplies.add('suction pump')
    if (action === 'refit shield' && on !== undefined) refittedShields.add(on)
    if (action === 'remove shield' && on !== undefined) refittedShields.delete(on)
    const tightening = tightenings.findIndex(({ part }) => part.path === on)
    const drive = findToollessDrive(visit, step)
    // A wrench with a setting is already a tool of the plan; a wrench for an unknown torque is a hand tool.
    const hasSetting = drive !== undefined || tightenings[tightening]?.verdict !== 'cannot tell'
    for (const tool of row.tools)
      if (
        HAND_TOOLS.has(tool) ||
        (tool === 'breaker bar' && drive === undefined) ||
        (tool === 'torque wrench' && !hasSetting)
      )
        handTools.add(tool)
    return dropUndefined({
      id,
      do: action,
      onlyIf,
      part: on === undefined ? undefined : describePart(sheet, on, at),
      ...describeMachinePart(sheet, step, procedure.steps[place + 1]),
      shield: findRefittedShield(sheet, step, refittedShields),
      figures: Object.fromEntries(
        Object.entries(values).flatMap(([name, path]) => {
          const found = figures.pointerTo(path)
          return found === undefined ? [] : [[name, found]]
        }),
      ),
      tightening: showsFigure(action, 'tightening') ? makePointer('tightenings', tightening) : undefined,
      wait: waits.pointerTo(step),
      oil: showsFigure(action, 'oils') ? makePointer('oil', findOilPlace(sheet, oil, step)) : undefined,
      level: describeLevel(sheet, step, procedure.steps.slice(0, place)),
      cover: describeCover(sheet, step),
      fluid: hasGrease(oil, findGearcaseId(step)) ? 'grease' : undefined,
      drive,
      filter: describeFilter(sheet, step),
      beforeDraining: isLoosenedOnly(step, procedure.steps[place + 1]) ? true : undefined,
      cautions,
      minutes: row.minutes === 'planned' ? 0 : row.minutes,
      note,
    })
  })
  return {
    steps,
    time: sumTime(steps, waits),
    consumables: [...supplies].map((supply) => serviceReason('service/supply', { supply })),
    handTools:
      handTools.size > 0 ? serviceReason('service/hand-tools', { tools: [...handTools] }) : undefined,
  }
}

/** The drive of a part that needs no tool: hand or clip. */
function findToollessDrive(
  { sheet, identity }: VisitContext,
  { do: action, on = '' }: Step,
): 'hand' | 'clip' | undefined {
  const isTurned = action === 'crack loose' || showsFigure(action, 'tightening')
  const drives = isTurned ? listDrives(sheet, identity, on) : undefined
  const [kind, ...others] = new Set(drives?.map((drive) => drive.kind))
  if (others.length > 0) return undefined
  return kind === 'hand' || kind === 'clip' ? kind : undefined
}

/** Whether this plug is only loosened and turned back in by the next step. */
const isLoosenedOnly = (step: Step, next: Step | undefined): boolean =>
  step.do === 'crack loose' && next?.do === 'nip by hand' && next.on === step.on

/**
 * The jacking point, how an item is secured, or the items that must be released before the machine is driven.
 * Nothing is released before the machine is rolled to a mark.
 */
function describeMachinePart({ machine }: SpecSheet, { do: action, on = '' }: Step, next: Step | undefined) {
  if (action === 'clear away' && next?.do !== 'roll the machine') {
    const secured = (machine.secure ?? []).filter(({ when }) => when === 'before work')
    return { how: secured.length === 0 ? undefined : secured.map(({ item }) => item).join(', ') }
  }
  const found = readPointer(machine, on.slice('/machine'.length))
  if (action === 'raise the machine') return { jack: (found as Support | undefined)?.jack }
  return action === 'secure the machine' ? { how: (found as SecuredItem | undefined)?.how } : {}
}

/** The shield of this gearcase that was refitted before this step, or stays on. */
function findRefittedShield(
  sheet: SpecSheet,
  { do: action, on }: Step,
  refittedShields: ReadonlySet<string>,
) {
  const gearcase = action === 'check for leaks' && on?.split('/')[2]
  const shields = (gearcase && sheet.gearcases[gearcase]?.shields) || []
  const refittedId = shields.find(
    (id) => refittedShields.has(`/shields/${id}`) || sheet.shields?.[id]?.reachedThrough === true,
  )
  return refittedId === undefined ? undefined : sheet.shields?.[refittedId]?.name
}

/**
 * Water of 60 °C scalds in about 3 s (web pages that quote scald times, excerpts read); the same for oil is a
 * house rule.
 */
const BURN_TEMPERATURE = { value: 60, unit: 'degC' } as const

/** Whether oil at this drain temperature, or at a candidate for it, can burn the skin. */
function isHot(resolved: Resolved<Leaf>): boolean {
  if (resolved.kind === 'not stated') return false
  const values =
    resolved.kind === 'cannot tell' ? resolved.candidates.map(({ value }) => value) : [resolved.value]
  return values.some((value) => {
    const highest = findUpperEnd(value as SpecValue<TemperatureUnit>)
    return highest !== undefined && compareQuantities(highest, BURN_TEMPERATURE) >= 0
  })
}

function findOilPlace(sheet: SpecSheet, oil: readonly PlannedOil[], step: Step): number {
  const gearcase = findGearcaseId(step)
  const owner = gearcase && findOilOwner(sheet, gearcase)
  return oil.findIndex(({ part }) => part.path === `/gearcases/${owner}`)
}

/** The machines that have the part of a step; undefined if this machine certainly has it. */
function describeCondition(sheet: SpecSheet, { values }: Step): Reason | undefined {
  const path = values?.['onlyIf']
  const condition = path === undefined ? undefined : (readPointer(sheet, path) as Condition | undefined)
  if (condition === undefined) return undefined
  const { variants, modelYears, serials, market } = condition
  const names = variants?.map((id) => sheet.machine.variants[id]?.name ?? id)
  return serviceReason(
    'service/only-on-some-machines',
    dropUndefined({ variants: names, modelYears, serials, market }),
  )
}

/** Steps on a plug that is opened only for topping up, after the level was checked elsewhere. */
function listTopUpSteps(steps: readonly Step[]): ReadonlySet<Step> {
  const found = new Set<Step>()
  let levelStep: Step | undefined
  let openedPath: string | undefined
  for (const step of steps) {
    const { do: action, on = '' } = step
    if (action === 'check the level') {
      levelStep = step
      openedPath = undefined
    }
    if (levelStep === undefined || makeInstanceKey(step) !== makeInstanceKey(levelStep)) continue
    if (action === 'clean around' && on !== levelStep.on && /\/openings\//.test(on)) openedPath = on
    if (openedPath === undefined || action === 'top up') continue
    if (on === openedPath || on.startsWith(`${openedPath}/`)) found.add(step)
  }
  return found
}

function describeLevel(sheet: SpecSheet, step: Step, earlierSteps: readonly Step[]): PlannedStep['level'] {
  if (step.do !== 'pour the oil' && step.do !== 'check the level' && step.do !== 'top up') return undefined
  const owner = findOilOwner(sheet, findGearcaseId(step) ?? '')
  const space = sheet.gearcases[owner]?.oilSpace
  if (space?.kind !== 'own') return undefined
  const { method, level } = space.fill
  return dropUndefined({
    method: method.kind,
    reading: method.kind === 'dipstick' ? method.reading : undefined,
    attitude: level?.attitude ?? 'not stated',
    engine: level?.engine ?? 'not stated',
    afterFilling: earlierSteps.some(
      (earlierStep) =>
        earlierStep.do === 'pour the oil' &&
        findGearcaseId(earlierStep) === owner &&
        (earlierStep.at?.instance === step.at?.instance || findGearcaseId(step) !== owner),
    ),
  })
}

function describeCover(sheet: SpecSheet, { on }: Step): PlannedStep['cover'] {
  const [section, gearcase = '', kind, id = ''] = on === undefined ? [] : (splitPointer(on) ?? [])
  const cover =
    section === 'gearcases' && kind === 'covers' ? sheet.gearcases[gearcase]?.covers?.[id] : undefined
  if (cover === undefined) return undefined
  const { position, carriesBearings, bolts } = cover
  const count = bolts.count === 'not stated' ? undefined : bolts.count
  return dropUndefined({ bolts: count, pattern: bolts.pattern, position, carriesBearings })
}

function describeFilter(sheet: SpecSheet, { on }: Step): PlannedStep['filter'] {
  const [section, gearcase = '', list, id = ''] = on === undefined ? [] : (splitPointer(on) ?? [])
  const filter =
    section === 'gearcases' && list === 'filters' ? sheet.gearcases[gearcase]?.filters?.[id] : undefined
  if (filter === undefined) return undefined
  const { kind, held } = filter
  return { kind, screwed: held.kind === 'screwed', renewed: isFilterRenewed(filter) }
}

function sumTime(steps: readonly PlannedStep[], { waits }: WaitPlan): VisitPlan['time'] {
  const minutes = Math.ceil(steps.reduce((sum, step) => sum + step.minutes, 0))
  const stepWaits = steps.flatMap(({ wait }) => waits[Number(wait?.slice('/waits/'.length) ?? -1)] ?? [])
  const waitMinutes = Math.ceil(stepWaits.reduce((sum, { seconds }) => sum + (seconds ?? 0), 0) / 60)
  const unknownWaits = stepWaits.filter(({ seconds }) => seconds === undefined).length
  return {
    minutes,
    basis: 'house estimate',
    reasons: [
      serviceReason('service/time-sum', { steps: steps.length, minutes, waitMinutes }),
      ...(unknownWaits > 0 ? [serviceReason('service/waiting-time-not-known', { count: unknownWaits })] : []),
    ],
  }
}
