import { readPointer } from '../../base/index.js'
import type { Action, Opening, Step, WheelMark } from '../../spec/index.js'
import { describePart, type PartName } from '../names.js'
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
    steps.filter((step, place) => {
      if (step.do !== action || !rolesOf(visit, step).includes(role)) return false
      // A gearcase that shares the oil of another has no such step of its own.
      const all = any(before)(steps, visit)
      const own = all.filter((other) => findGearcaseId(other) === findGearcaseId(step))
      const ends = own.length > 0 ? own : all
      const isLater = (end: Step) => steps.indexOf(end) > place
      return (
        ends.some(isLater) && !ends.some((end) => !isLater(end) && end.at?.instance === step.at?.instance)
      )
    })

const isRun = ({ do: action }: Step) => action === 'short run'

/** Steps of one action that come after the run. */
const afterRun =
  (action: Action): Find =>
  (steps) => {
    const run = steps.findIndex(isRun)
    return run < 0 ? [] : steps.slice(run).filter(({ do: one }) => one === action)
  }

/** Steps of one action before the last run. */
const beforeRun =
  (action: Action): Find =>
  (steps) =>
    steps.slice(0, Math.max(0, steps.findLastIndex(isRun))).filter(({ do: one }) => one === action)

/** Steps of one action before the run, or all if the job has none. */
const beforeAnyRun =
  (action: Action): Find =>
  (steps, visit) =>
    (steps.some(isRun) ? beforeRun(action) : any(action))(steps, visit)

/** Steps that tighten a fill opening with the new oil in. */
const onFillAfterPouring: Find = (steps, visit) => {
  const pour = steps.findIndex(({ do: action }) => action === 'pour the oil')
  return beforeAnyRun('tighten')(steps, visit).filter(
    (step) => pour >= 0 && steps.indexOf(step) > pour && rolesOf(visit, step).includes('fill'),
  )
}

/** Steps that come before draining on the same gearcase, or only after it. */
const byDraining =
  (place: 'before' | 'after', find: Find): Find =>
  (steps, visit) => {
    const drains = any('let drain')(steps, visit)
    return find(steps, visit).filter((step) => {
      const isBefore = drains.some(
        (drain) =>
          findGearcaseId(drain) === findGearcaseId(step) &&
          drain.at?.instance === step.at?.instance &&
          steps.indexOf(drain) > steps.indexOf(step),
      )
      return isBefore === (place === 'before')
    })
  }

/** Turning a wheel to a mark before the run. */
const turn =
  (mark: WheelMark): Find =>
  (steps, visit) =>
    [
      ...beforeAnyRun('turn the wheel')(steps, visit),
      ...beforeAnyRun('roll the machine')(steps, visit),
    ].filter(({ at }) => at?.wheelMark === mark)

const withLevel = (steps: readonly Step[], visit: VisitContext) =>
  new Set(any('check the level')(steps, visit).map(findGearcaseId))

/** Pouring into gearcases that have no level to read. */
const pourByQuantity: Find = (steps, visit) => {
  const gearcases = withLevel(steps, visit)
  return any('pour the oil')(steps, visit).filter((step) => !gearcases.has(findGearcaseId(step)))
}

/** Waiting for the level of one gearcase; after the run the whole machine settles. */
const settleBeforeRun = beforeAnyRun('let settle')

const LOWERING: readonly Action[] = ['lower the machine', 'drive off ramps']
/** The steps on gearcases that are finished before the machine is raised, if others are raised. */
const finishedBeforeLift: Find = (steps) => {
  const lift = steps.findIndex(
    ({ do: action }) => action === 'raise the machine' || action === 'drive onto ramps',
  )
  const run = steps.findIndex(isRun)
  const later = new Set(steps.slice(lift, run < 0 ? undefined : run).map(findGearcaseId))
  return lift < 0
    ? []
    : steps
        .slice(0, lift)
        .filter((step) => findGearcaseId(step) !== undefined && !later.has(findGearcaseId(step)))
}

type Phrases = readonly (readonly [WallPhrase, Find])[]

/** Filling and closing: on stands, or after the machine is lowered. */
const FILL: Phrases = [
  ['mark down', byDraining('after', turn('mark down'))],
  ['mark level', byDraining('after', turn('mark level'))],
  ['mark up', byDraining('after', turn('mark up'))],
  ['measure', any('measure the oil')],
  ['additive', any('add the additive')],
  ['pour', any('pour the oil')],
  ['hose', any('wait for the hose')],
  ['settle', settleBeforeRun],
  ['level', beforeAnyRun('check the level')],
  ['no level', pourByQuantity],
]
const SHUT: Phrases = [
  ['fill tight', onFillAfterPouring],
  ['tighten', beforeAnyRun('tighten')],
]

/** The steps that each phrase needs in the procedure. */
const LINES: Readonly<Record<WallJobName, Phrases>> = {
  prepare: [
    ['warm the oil', any('warm the oil')],
    ['park', any('park on level ground', 'carry to level ground')],
    ['engine off', any('stop the engine')],
    ['chock', any('chock the wheels')],
    ['secure', any('secure the machine')],
  ],
  raise: [
    ['finish first', finishedBeforeLift],
    ['stands', any('set on stands')],
    ['ramps', any('drive onto ramps')],
    ['shields off', any('remove shield')],
  ],
  open: [
    ['mark down', byDraining('before', turn('mark down'))],
    ['mark level', byDraining('before', turn('mark level'))],
    ['mark up', byDraining('before', turn('mark up'))],
    ['breather', any('clear the breather')],
    ['clean', any('clean around')],
    ['fill first', findOnOpeningBefore('crack loose', 'fill', 'let drain')],
    ['crack loose', any('crack loose')],
  ],
  drain: [
    ['pan', any('place the pan')],
    ['drain', findOnOpeningBefore('take out', 'drain', 'let drain')],
    ['cover off', byDraining('before', any('take off cover'))],
    ['vent', findOnOpeningBefore('take out', 'fill', 'pour the oil')],
    ['suck out', any('suck out the oil')],
    ['let drain', any('let drain')],
    ['cover off', byDraining('after', any('take off cover'))],
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
    ['cover tight', any('tighten cover')],
    ['drain tight', findOnOpeningBefore('tighten', 'drain', 'pour the oil')],
    ['cure', any('wait for the cure')],
  ],
  fill: FILL,
  shut: [
    ...SHUT,
    ['dry behind shield', beforeRun('check for leaks')],
    ['shields on', beforeRun('refit shield')],
    ['lower', any(...LOWERING)],
  ],
  run: [
    ['all clear', beforeRun('clear away')],
    ['run', any('short run')],
    ['settle', afterRun('let settle')],
    ['recheck', afterRun('check the level')],
    ['tight again', afterRun('tighten')],
  ],
  finish: [
    ['leak check', (steps, visit) => (steps.some(isRun) ? afterRun : any)('check for leaks')(steps, visit)],
    ['shields on', (steps, visit) => (steps.some(isRun) ? afterRun : any)('refit shield')(steps, visit)],
    ['used oil', any('take used oil away')],
    ['record', any('record')],
  ],
}
/** The longer phrase that replaces this one. */
const REPLACED: Partial<Record<WallPhrase, WallPhrase>> = {
  'crack loose': 'fill first',
  tighten: 'fill tight',
}

/** Phrases that name their parts or gearcases if the others do not have this work. */
const NAMED: ReadonlySet<WallPhrase> = new Set([
  'finish first',
  'stands',
  'ramps',
  'shields off',
  'mark down',
  'mark level',
  'mark up',
  'drain',
  'cover off',
  'suck out',
  'drain tight',
  'cover tight',
  'additive',
  'settle',
  'level',
  'no level',
  'recheck',
])

type Phrase = WallJobLine['phrases'][number]

/**
 * The job in at most ten lines: each phrase has its steps in the procedure, so no line names work that this
 * machine does not need. A level that is read on the wheels is after the lowering: what is filled then has a line of
 * its own.
 */
export function listJob(visit: VisitContext): readonly WallJobLine[] {
  const { steps } = visit.procedure
  const find = (phrases: Phrases, chosen: (step: Step) => boolean = () => true): readonly Phrase[] => {
    const found = phrases.flatMap(([phrase, findSteps]) => {
      const own = findSteps(steps, visit).filter(chosen)
      return own.length === 0 ? [] : { phrase, steps: own }
    })
    return found
      .filter(({ phrase }) => !found.some((other) => other.phrase === REPLACED[phrase]))
      .map(({ phrase, steps: own }) => ({
        phrase,
        steps: own.map(({ id }) => id),
        ...nameParts(visit, phrase, own),
      }))
  }
  const run = steps.findIndex(isRun)
  const lowering = steps.findIndex(
    ({ do: action }, place) => LOWERING.includes(action) && (run < 0 || place < run),
  )
  const isLate = (step: Step) =>
    lowering >= 0 && steps.indexOf(step) > lowering && (run < 0 || steps.indexOf(step) < run)
  const late = find([...FILL, ...SHUT], isLate)
  const lines: Readonly<Record<WallJobName, readonly Phrase[]>> = {
    ...(Object.fromEntries(Object.entries(LINES).map(([line, phrases]) => [line, find(phrases)])) as Record<
      WallJobName,
      readonly Phrase[]
    >),
    ...(late.length > 0 && {
      fill: nameAll(
        visit,
        find([...FILL, ...SHUT], (step) => !isLate(step)),
      ),
      shut: [...find(LINES.shut.slice(SHUT.length)), ...nameAll(visit, late)],
    }),
  }
  return (Object.keys(LINES) as WallJobName[]).flatMap((line) =>
    lines[line].length === 0 ? [] : { line, phrases: lines[line] },
  )
}

/** The parts or gearcases of a phrase, unless all that the work is about have it. */
function nameParts(visit: VisitContext, phrase: WallPhrase, own: readonly Step[]): Pick<Phrase, 'only'> {
  if (!NAMED.has(phrase)) return {}
  const { steps } = visit.procedure
  const isOil = FILL.some(([name]) => name === phrase) || phrase === 'recheck'
  const filled = listGearcases(any('pour the oil', 'check the level')(steps, visit))
  const all = isOil && filled.length > 0 ? filled : listGearcases(steps)
  const lifted = phrase === 'stands' || phrase === 'ramps' || phrase === 'shields off'
  const gearcases = lifted ? listLifted(visit, all) : listGearcases(own)
  if (gearcases.length === 0 || gearcases.length === all.length) return {}
  const areParts = phrase.startsWith('drain') || phrase.startsWith('cover')
  const paths = areParts
    ? [...new Set(own.flatMap(({ on = [] }) => on))]
    : gearcases.map((id) => `/gearcases/${id}`)
  return { only: paths.map((path) => describePart(visit.sheet, path)) }
}

/** The same gearcases for all phrases of a line. */
function nameAll({ sheet, procedure }: VisitContext, phrases: readonly Phrase[]): readonly Phrase[] {
  const steps = new Map(procedure.steps.map((step) => [step.id, step]))
  return phrases.map(({ phrase, steps: ids }) => {
    const own = listGearcases(ids.flatMap((id) => steps.get(id) ?? []))
    const only: readonly PartName[] = own.map((id) => describePart(sheet, `/gearcases/${id}`))
    return { phrase, steps: ids, only }
  })
}

const listGearcases = (steps: readonly Step[]): readonly string[] => [
  ...new Set(steps.flatMap((step) => findGearcaseId(step) ?? [])),
]

/** The gearcases that are raised, or behind a shield. */
const listLifted = ({ sheet }: VisitContext, ids: readonly string[]): readonly string[] =>
  ids.filter((id) => {
    const { access, shields = [] } = sheet.gearcases[id] ?? {}
    return access?.kind === 'raised' || shields.length > 0
  })
