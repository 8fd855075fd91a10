import { joinPointer, splitPointer } from '../../base/index.js'
import { findLeafType, resolveLeaf, type SecuredItem, type Step } from '../../spec/index.js'
import {
  type GearcaseInstance,
  keyOf,
  type OpeningLayout,
  type ShieldLayout,
  servesAs,
  wheelMarkFor,
} from '../layout.js'
import { listNotCured } from '../needs/filling.js'
import { isDrainOpening } from '../needs/opening.js'
import { listUnsecured } from '../needs/securing.js'
import { isLevelJudged, type OilJob } from '../oilJob.js'
import { gearcaseAt, openingAt } from '../stepContext.js'
import {
  checkPhase,
  drainPhase,
  fillPhase,
  isRaised,
  isRechecked,
  needsWheelTurned,
  type Phase,
} from './phases.js'
import { closePart, openOpening, turnTo, writeDraining } from './writeDraining.js'
import { isOpen, type Writer, write, writeAt } from './writer.js'

interface Task {
  readonly job: OilJob
  readonly phase: Phase
  /** Whether it is the last task of its job; the leak check and shields follow. */
  readonly isLast: boolean
  readonly work: () => void
}

/** Writes all jobs of a visit: preparation, work on the ground, one lift, the run, last checks, clearing up. */
export function writeOrderOfWork(writer: Writer, jobs: readonly OilJob[]): void {
  const changes = jobs.filter((job) => job.task === 'change')
  write(writer, 'read the manual')
  write(writer, 'wear protection')
  if (writer.context.mustNotRun) write(writer, 'carry to level ground')
  else {
    if (changes.length > 0) {
      secure(writer, 'before a run')
      write(writer, 'warm the oil')
    }
    park(writer)
  }
  const tasks = jobs.flatMap((job) => planTasks(writer, job))
  writeTasks(writer, jobs, tasks)
  if (changes.length > 0) {
    runMachine(writer)
    const recheckedJobs = jobs.filter(isRechecked)
    for (const { emptied } of recheckedJobs) for (const one of emptied) writer.finished.delete(keyOf(one))
    const checks = recheckedJobs.flatMap((job) => planCheck(writer, job))
    writeTasks(writer, jobs, checks, true)
    writeLastChecks(writer, jobs)
    write(writer, 'take used oil away')
  }
  write(writer, 'clear away')
  write(writer, 'record')
  // If a part or figure depends on the variant, find the variant before any other step.
  if (
    writer.steps.some(({ values = {} }) => Object.hasOwn(values, 'onlyIf') || isFigureOpen(writer, values))
  ) {
    write(writer, 'find the variant')
    writer.steps.unshift(...writer.steps.splice(-1))
  }
}

/** Whether one of these figures depends on unknown facts of the machine. */
function isFigureOpen({ sheet, identity }: Writer, values: NonNullable<Step['values']>): boolean {
  return Object.values(values).some((path) => {
    const kind = findLeafType(splitPointer(path) ?? [])?.kind
    return kind !== undefined && resolveLeaf(sheet, identity, kind, path).kind === 'cannot tell'
  })
}

function runMachine(writer: Writer): void {
  secure(writer, 'before a run')
  write(writer, 'clear away')
  write(writer, 'short run')
  park(writer)
}

/** Writes leak checks that are missing since the run, and refits the shields that had to wait for them. */
function writeLastChecks(writer: Writer, jobs: readonly OilJob[]): void {
  const emptied = jobs.flatMap((job) => job.emptied)
  for (const one of emptied)
    if (!gearcaseAt(writer.state, one).leaksCheckedSinceRun)
      writeAt(writer, 'check for leaks', one.gearcase, one)
  for (const shield of listShields(writer, emptied))
    if (writer.state.shields[shield.path] === 'off') write(writer, 'refit shield', shield.path)
}

function secure(writer: Writer, when: SecuredItem['when']): void {
  const { layout } = writer.context
  for (const step of listUnsecured({ layout, state: writer.state }, when)) write(writer, step.do, step.on)
}

function park(writer: Writer): void {
  write(writer, 'park on level ground')
  write(writer, 'stop the engine')
}

function planTasks(writer: Writer, job: OilJob): readonly Task[] {
  if (job.task === 'check') {
    if (isLevelJudged(job.owner.gearcase, 'check')) return planCheck(writer, job)
    return [{ job, phase: 'before the lift', isLast: true, work: () => {} }]
  }
  const [draining, filling] = [drainPhase(job), fillPhase(job)]
  const fill = job.owner.gearcase.fillOpening
  const drain = (): void => {
    takeOffShields(writer, job)
    writeDraining(writer, job)
    if (draining === filling || fill === undefined) return
    turnTo(writer, job.owner, fill, wheelMarkFor(fill, 'fill'))
    for (const one of job.owner.gearcase.possibleFillOpenings)
      if (isOpen(writer, one, job.owner)) writeAt(writer, 'nip by hand', one, job.owner)
  }
  return [
    { job, phase: draining, isLast: false, work: drain },
    { job, phase: filling, isLast: true, work: () => writeFilling(writer, job) },
  ]
}

function planCheck(writer: Writer, job: OilJob): readonly Task[] {
  const phase = checkPhase(job)
  const level = job.owner.gearcase.levelOpening
  const check: Task = {
    job,
    phase,
    isLast: true,
    work: () => {
      takeOffShields(writer, job)
      writeLevelCheck(writer, job)
    },
  }
  if (phase !== 'after the lift' || level === undefined || !needsWheelTurned(job)) return [check]
  const turn = (): void => {
    takeOffShields(writer, job)
    turnTo(writer, job.owner, level, wheelMarkFor(level, 'level'))
  }
  return [{ job, phase: 'on stands', isLast: false, work: turn }, check]
}

function writeTasks(writer: Writer, jobs: readonly OilJob[], tasks: readonly Task[], afterRun = false): void {
  const supports = listSupports(writer, tasks)
  chock(writer, supports)
  secure(writer, 'before work')
  if (afterRun && tasks.length > 0) write(writer, 'let settle')
  for (const phase of ['before the lift', 'on stands', 'after the lift'] as const) {
    if (phase === 'on stands') raise(writer, supports)
    if (phase === 'after the lift' && supports.length > 0) write(writer, 'lower the machine')
    for (const task of tasks.filter((one) => one.phase === phase)) {
      task.work()
      if (task.isLast) finish(writer, jobs, task.job, afterRun || task.job.task === 'check')
    }
  }
}

/** Supports for the work on stands, in the order of the sheet. */
function listSupports(writer: Writer, tasks: readonly Task[]): readonly string[] {
  const needed = new Set(
    tasks
      .filter((task) => task.phase === 'on stands')
      .flatMap((task) => task.job.emptied.flatMap(({ gearcase }) => gearcase.supports)),
  )
  return [...writer.context.layout.axleOfSupport.keys()].filter((support) => needed.has(support))
}

function chock(writer: Writer, supports: readonly string[]): void {
  const { layout } = writer.context
  const lifted = new Set(supports.map((support) => layout.axleOfSupport.get(support)))
  const [staying, ...others] = layout.axles.filter((axle) => !lifted.has(axle))
  const isSingle = staying !== undefined && others.length === 0 && layout.axles.length > 1
  write(writer, 'chock the wheels', isSingle ? joinPointer(['machine', 'axles', staying]) : undefined)
}

function raise(writer: Writer, supports: readonly string[]): void {
  for (const support of supports) {
    write(writer, 'raise the machine', joinPointer(['machine', 'supports', support]))
    write(writer, 'set on stands', joinPointer(['machine', 'supports', support]))
  }
}

function takeOffShields(writer: Writer, job: OilJob): void {
  for (const { path } of listShields(writer, job.emptied))
    if (writer.state.shields[path] === 'on') write(writer, 'remove shield', path)
}

function listShields(writer: Writer, instances: readonly GearcaseInstance[]): readonly ShieldLayout[] {
  const needed = new Set(instances.flatMap(({ gearcase }) => gearcase.shields))
  return [...writer.context.layout.shields.values()].filter(
    (shield) => needed.has(shield.id) && shield.applies !== 'no',
  )
}

/** Writes the last steps of a job: wiping, the leak check if no run follows, and refitting shields. */
function finish(writer: Writer, jobs: readonly OilJob[], job: OilJob, isLastCheck: boolean): void {
  const shieldsToRefit = listShields(writer, job.emptied).filter(
    (shield) => isLastCheck || isRefittedBeforeRun(jobs, shield),
  )
  for (const one of job.emptied) {
    const isHidden = shieldsToRefit.some(({ id }) => one.gearcase.shields.includes(id))
    const isOpenedAgain = !isLastCheck && !isHidden && isRechecked(job)
    if (!isOpenedAgain && !gearcaseAt(writer.state, one).wipedDown)
      writeAt(writer, 'wipe down', one.gearcase, one)
    const isUnderPlate = shieldsToRefit.some(({ shield }) => shield.guards === 'the underside')
    if (isHidden && isUnderPlate && !isLastCheck) writeAt(writer, 'let a leak show', one.gearcase, one)
    if (isHidden || isLastCheck) writeAt(writer, 'check for leaks', one.gearcase, one)
    writer.finished.add(keyOf(one))
  }
  const openJobs = jobs.filter(({ emptied }) => emptied.some((one) => !writer.finished.has(keyOf(one))))
  const shieldsStillOff = new Set(openJobs.flatMap(({ emptied }) => listShields(writer, emptied)))
  for (const shield of shieldsToRefit)
    if (writer.state.shields[shield.path] === 'off' && !shieldsStillOff.has(shield))
      write(writer, 'refit shield', shield.path)
}

/** A plate under the machine waits for the check after the run, unless refitting it needs the lift. */
function isRefittedBeforeRun(jobs: readonly OilJob[], { id, shield }: ShieldLayout): boolean {
  if (shield.guards !== 'the underside') return true
  const jobsBehind = jobs.filter(({ emptied }) =>
    emptied.some(({ gearcase }) => gearcase.shields.includes(id)),
  )
  return jobsBehind.some(isRaised) && !jobsBehind.some(isRechecked)
}

/** Writes the filling of one oil space, its level check, and the closing of its upper openings. */
function writeFilling(writer: Writer, { owner }: OilJob): void {
  const { gearcase } = owner
  const { fillOpening: fill, levelOpening: level } = gearcase
  const method = gearcase.fill?.method.kind
  if (fill === undefined) return
  const judged = isLevelJudged(gearcase, 'change') ? level : undefined
  turnTo(writer, owner, fill, wheelMarkFor(fill, 'fill'))
  const opensLevel = judged !== undefined && method !== 'sight glass' && judged.path !== fill.path
  if (opensLevel && method === 'to level hole') openOpening(writer, judged, owner)
  for (const one of gearcase.possibleFillOpenings) openOpening(writer, one, owner)
  for (const wait of listNotCured(writer.context.layout, writer.state, owner))
    write(writer, wait.do, wait.on, wait.at)
  writeAt(writer, 'measure the oil', gearcase, owner)
  const addAdditive = (oilIsIn: boolean): void => {
    if (gearcase.additive !== 'never' && gearcase.oilFirst === oilIsIn)
      writeAt(writer, 'add the additive', gearcase, owner)
  }
  addAdditive(false)
  for (const one of gearcase.possibleFillOpenings) {
    writeAt(writer, 'pour the oil', one, owner)
    writeAt(writer, 'wait for the hose', one, owner)
  }
  addAdditive(true)
  if (judged !== undefined) judgeLevel(writer, owner, judged)
  if (opensLevel) closePart(writer, judged, owner)
  for (const one of gearcase.possibleFillOpenings) closePart(writer, one, owner)
}

/** Writes a level check without an oil change, or the second check after a run. */
function writeLevelCheck(writer: Writer, { owner }: OilJob): void {
  const { fillOpening: fill, levelOpening: level } = owner.gearcase
  if (level === undefined) return
  turnTo(writer, owner, level, wheelMarkFor(level, 'level'))
  const hasSightGlass = owner.gearcase.fill?.method.kind === 'sight glass'
  const topUpAt = fill !== undefined && !servesAs(level, 'fill') ? fill : undefined
  if (!hasSightGlass) {
    if (!isOpen(writer, level, owner)) writeAt(writer, 'place the pan', level, owner)
    openOpening(writer, level, owner)
  } else if (topUpAt !== undefined && isDrainOpening(owner.gearcase, topUpAt))
    // A sight glass is not opened, but the plug for topping up may let oil out.
    writeAt(writer, 'place the pan', topUpAt, owner)
  judgeLevel(writer, owner, level)
  if (topUpAt !== undefined) {
    openOpening(writer, topUpAt, owner)
    writeAt(writer, 'top up', topUpAt, owner)
  }
  if (!hasSightGlass) closePart(writer, level, owner)
  if (topUpAt !== undefined) closePart(writer, topUpAt, owner)
}

function judgeLevel(writer: Writer, owner: GearcaseInstance, level: OpeningLayout): void {
  const { gearcase, instance } = owner
  turnTo(writer, owner, level, wheelMarkFor(level, 'level'))
  if (gearcase.fill?.method.kind !== 'sight glass') openOpening(writer, level, owner)
  const ownerState = gearcaseAt(writer.state, owner)
  if ((gearcase.settles || ownerState.ranSinceFill) && !writer.state.settled)
    writeAt(writer, 'let settle', gearcase, owner)
  writeAt(writer, 'check the level', level, owner)
  const topUpOpening = servesAs(level, 'fill') ? level : gearcase.fillOpening
  if (topUpOpening !== undefined && openingAt(writer.state, topUpOpening, instance).position === 'out')
    writeAt(writer, 'top up', topUpOpening, owner)
}
