import { readPointer } from '../../base/index.js'
import type { Action, Gearcase, Opening, Step } from '../../spec/index.js'
import { describePart } from '../names.js'
import { findGearcaseId } from '../planWaits.js'
import type { VisitContext } from '../visitContext.js'
import type { WallJobLine, WallJobName, WallPhrase } from './wallFactsTypes.js'

/** A procedure with the index of each step. */
type Find = (steps: readonly Step[], visit: VisitContext) => readonly Step[]

const any =
  (...actions: readonly Action[]): Find =>
  (steps) =>
    steps.filter(({ do: action }) => actions.includes(action))

const rolesOf = ({ sheet }: VisitContext, { on = '' }: Step) =>
  /^\/gearcases\/[^/]+\/openings\/[^/]+$/.test(on)
    ? ((readPointer(sheet, on) as Opening | undefined)?.uses.map(({ role }) => role) ?? [])
    : []

/** Steps of one action on openings with this role that come before the first step of `before` on the gearcase. */
const findOnOpeningBefore =
  (action: Action, role: 'fill' | 'drain', before: Action): Find =>
  (steps, visit) =>
    steps.filter(
      (step, place) =>
        step.do === action &&
        rolesOf(visit, step).includes(role) &&
        steps
          .slice(place)
          .some((later) => later.do === before && findGearcaseId(later) === findGearcaseId(step)) &&
        !steps
          .slice(0, place)
          .some(
            (earlier) =>
              earlier.do === before &&
              findGearcaseId(earlier) === findGearcaseId(step) &&
              earlier.at?.instance === step.at?.instance,
          ),
    )

/** Steps of one action that come after the run. */
const afterRun =
  (...actions: readonly Action[]): Find =>
  (steps) => {
    const run = steps.findIndex(({ do: action }) => action === 'short run')
    return run < 0 ? [] : steps.slice(run).filter(({ do: action }) => actions.includes(action))
  }

const beforeRun =
  (action: Action): Find =>
  (steps) => {
    const run = steps.findLastIndex(({ do: one }) => one === 'short run')
    return run < 0 ? [] : steps.slice(0, run).filter(({ do: one }) => one === action)
  }

/** Steps that tighten a fill opening with the new oil in. */
const onFillAfterPouring: Find = (steps, visit) => {
  const pour = steps.findIndex(({ do: action }) => action === 'pour the oil')
  return steps.filter(
    (step, place) =>
      place > pour && pour >= 0 && step.do === 'tighten' && rolesOf(visit, step).includes('fill'),
  )
}

/** The steps that each phrase needs in the procedure. */
const LINES: Readonly<Record<WallJobName, readonly (readonly [WallPhrase, Find])[]>> = {
  prepare: [
    ['warm the oil', any('warm the oil')],
    ['park', any('park on level ground', 'carry to level ground')],
    ['engine off', any('stop the engine')],
    ['chock', any('chock the wheels')],
    ['secure', any('secure the machine')],
  ],
  raise: [
    ['stands', any('set on stands')],
    ['ramps', any('drive onto ramps')],
    ['shields off', any('remove shield')],
  ],
  open: [
    ['breather', any('clear the breather')],
    ['clean', any('clean around')],
    ['fill first', findOnOpeningBefore('crack loose', 'fill', 'let drain')],
    ['crack loose', any('crack loose')],
  ],
  drain: [
    ['pan', any('place the pan')],
    ['drain', findOnOpeningBefore('take out', 'drain', 'let drain')],
    ['vent', findOnOpeningBefore('take out', 'fill', 'pour the oil')],
    ['cover off', any('take off cover')],
    ['suck out', any('suck out the oil')],
    ['let drain', any('let drain')],
    ['sample', any('take an oil sample')],
    ['filter', any('take off filter')],
  ],
  inspect: [
    ['look at the oil', any('inspect the oil')],
    ['look at the magnet', any('inspect the magnet')],
    ['clean the magnet', any('clean the magnet')],
  ],
  close: [
    ['old seals', any('take off old seal')],
    ['faces', any('wipe the seal face')],
    ['new seals', any('fit new seal')],
    ['inspect seals', any('inspect the seal')],
    ['sealant', any('apply sealant')],
    ['drain tight', findOnOpeningBefore('tighten', 'drain', 'pour the oil')],
    ['cover tight', any('tighten cover')],
    ['cure', any('wait for the cure')],
  ],
  fill: [
    ['turn the wheel', any('turn the wheel', 'roll the machine')],
    ['measure', any('measure the oil')],
    ['additive', any('add the additive')],
    ['pour', any('pour the oil')],
    ['hose', any('wait for the hose')],
    ['level', any('check the level')],
  ],
  shut: [
    ['fill tight', onFillAfterPouring],
    ['tighten', any('tighten')],
    ['lower', any('lower the machine', 'drive off ramps')],
  ],
  run: [
    ['all clear', beforeRun('clear away')],
    ['run', any('short run')],
    ['settle', any('let settle')],
    ['recheck', afterRun('check the level')],
  ],
  finish: [
    ['leak check', any('check for leaks')],
    ['shields on', any('refit shield')],
    ['used oil', any('take used oil away')],
    ['record', any('record')],
  ],
}

/** The longer phrase that replaces this one. */
const REPLACED: Partial<Record<WallPhrase, WallPhrase>> = {
  'crack loose': 'fill first',
  tighten: 'fill tight',
}

/**
 * The job in at most ten lines: each phrase has its steps in the procedure, so no line names work that this
 * machine does not need.
 */
export function listJob(visit: VisitContext): readonly WallJobLine[] {
  const { sheet, procedure } = visit
  return (Object.keys(LINES) as WallJobName[]).flatMap((line): WallJobLine | readonly [] => {
    const found = LINES[line]
      .map(([phrase, find]) => ({ phrase, steps: find(procedure.steps, visit).map(({ id }) => id) }))
      .filter(({ steps }) => steps.length > 0)
    const phrases = found.filter(({ phrase }) => !found.some((other) => other.phrase === REPLACED[phrase]))
    if (phrases.length === 0) return []
    if (line !== 'raise') return { line, phrases }
    const raised = Object.entries(sheet.gearcases).filter(
      ([id, { access, shields = [] }]: readonly [string, Gearcase]) =>
        (access.kind === 'raised' || shields.length > 0) &&
        procedure.steps.some((step) => findGearcaseId(step) === id),
    )
    return { line, phrases, only: raised.map(([id]) => describePart(sheet, `/gearcases/${id}`)) }
  })
}
