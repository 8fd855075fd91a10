import { type JsonPointer, joinPointer, splitPointer } from '../../base/index.js'
import { findLeafRow, resolveLeaf, type SecuredItem } from '../../spec/index.js'
import type { GearcaseInstance, GearcaseLayout, ShieldLayout } from '../layout.js'
import { findWheelMark, makeInstanceKey } from '../layout.js'
import { includesLevelCheck, type OilJob } from '../listJobs.js'
import { listNotChecked } from '../needs/closing.js'
import { draftSecuring } from '../needs/securing.js'
import { getGearcaseState } from '../stepContext.js'
import {
  chooseCheckPhase,
  chooseDrainPhase,
  chooseFillPhase,
  isRechecked,
  needsRaising,
  needsWheelTurned,
  type Phase,
} from './phases.js'
import { writeDraining, writeOpening, writeTurning } from './writeDraining.js'
import { writeFillClosing, writeLevelCheck, writePouring } from './writeFilling.js'
import { isOpen, type Writer, writePartStep, writeStep } from './writer.js'

interface Task {
  readonly job: OilJob
  readonly phase: Phase
  /** Whether this is the last task of its job, before the leak check and the shields. */
  readonly isLastOfJob: boolean
  readonly writeSteps: () => void
}

/** Writes all jobs of a visit: preparation, work on the ground, work on stands, the run, last checks, clearing up. */
export function writeOrderOfWork(writer: Writer, jobs: readonly OilJob[]): void {
  const changes = jobs.filter((job) => job.task === 'change')
  writeStep(writer, 'read the manual')
  writeStep(writer, 'wear protection')
  if (writer.context.mustNotRun) writeStep(writer, 'carry to level ground')
  else {
    if (changes.length > 0) {
      writeSecuring(writer, 'before a run')
      writeStep(writer, 'warm the oil')
    }
    writeParking(writer)
  }
  const tasks = jobs.flatMap((job) => planTasks(writer, job))
  writeTasks(writer, jobs, tasks)
  if (changes.length > 0) {
    writeRun(writer)
    const recheckedJobs = jobs.filter(isRechecked)
    for (const { emptiedInstances } of recheckedJobs)
      for (const emptiedInstance of emptiedInstances)
        writer.finishedKeys.delete(makeInstanceKey(emptiedInstance))
    const checks = recheckedJobs.flatMap((job) => planCheckTasks(writer, job))
    writeTasks(writer, jobs, checks, true)
    writeLastChecks(writer, jobs)
    writeStep(writer, 'take used oil away')
  }
  writeStep(writer, 'clear away')
  writeStep(writer, 'record')
  // If a part or figure depends on the variant, find the variant before any other step.
  const figures = new Set(writer.steps.flatMap(({ values = {} }) => Object.values(values)))
  if (
    writer.steps.some(({ values = {} }) => Object.hasOwn(values, 'onlyIf')) ||
    [...figures].some((path) => isFigureOpen(writer, path))
  ) {
    writeStep(writer, 'find the variant')
    writer.steps.unshift(...writer.steps.splice(-1))
  }
}

/** Whether a figure depends on unknown facts of the machine. */
function isFigureOpen({ sheet, identity }: Writer, path: JsonPointer): boolean {
  const kind = findLeafRow(splitPointer(path) ?? [])?.kind
  return kind !== undefined && resolveLeaf(sheet, identity, kind, path).kind === 'cannot tell'
}

function writeRun(writer: Writer): void {
  writeClearing(writer)
  writeStep(writer, 'short run')
  writeParking(writer)
}

/** Makes the machine ready to move, unless it has just moved. */
function writeClearing(writer: Writer): void {
  const { chocked, gearcases } = writer.state
  writeSecuring(writer, 'before a run')
  if (chocked.length > 0 || Object.values(gearcases).some((gearcase) => gearcase.panPlaced))
    writeStep(writer, 'clear away')
}

/** Writes the leak checks still missing after the run, and refits the shields that waited for them. */
function writeLastChecks(writer: Writer, jobs: readonly OilJob[]): void {
  const emptiedInstances = jobs.flatMap((job) => job.emptiedInstances)
  for (const emptiedInstance of emptiedInstances)
    if (!getGearcaseState(writer.state, emptiedInstance).leaksCheckedSinceRun)
      writePartStep(writer, 'check for leaks', emptiedInstance.gearcase, emptiedInstance)
  for (const shield of listShields(writer, emptiedInstances))
    if (writer.state.shields[shield.path] === 'off') writeStep(writer, 'refit shield', shield.path)
}

function writeSecuring(writer: Writer, when: SecuredItem['when']): void {
  const { indexedSheet } = writer.context
  for (const step of draftSecuring({ indexedSheet, state: writer.state }, when))
    writeStep(writer, step.do, step.on)
}

function writeParking(writer: Writer): void {
  writeStep(writer, 'park on level ground')
  writeStep(writer, 'stop the engine')
}

function planTasks(writer: Writer, job: OilJob): readonly Task[] {
  if (job.task === 'check') {
    if (includesLevelCheck(job.owner.gearcase, 'check')) return planCheckTasks(writer, job)
    return [{ job, phase: 'before the lift', isLastOfJob: true, writeSteps: () => {} }]
  }
  const [draining, filling] = [chooseDrainPhase(job), chooseFillPhase(job, writer.ramps.onRamps)]
  const fill = job.owner.gearcase.fillOpening
  const isPouredFirst = writer.ramps.onRamps === 'tilted' && draining !== filling
  const writeDrainTask = (): void => {
    writeShieldRemoval(writer, job)
    writeDraining(writer, job)
    if (draining === filling || fill === undefined) return
    // A machine must have oil in its gears before it drives off the ramps.
    if (isPouredFirst) writePouring(writer, job)
    writeTurning(writer, job.owner, fill, findWheelMark(fill, 'fill'))
    for (const possibleFillOpening of job.owner.gearcase.possibleFillOpenings)
      if (isOpen(writer, possibleFillOpening, job.owner))
        writePartStep(writer, 'nip by hand', possibleFillOpening, job.owner)
  }
  const writeFillTask = (): void => {
    if (!isPouredFirst) writePouring(writer, job)
    else
      for (const possibleFillOpening of job.owner.gearcase.possibleFillOpenings)
        writeOpening(writer, possibleFillOpening, job.owner)
    writeFillClosing(writer, job)
  }
  return [
    { job, phase: draining, isLastOfJob: false, writeSteps: writeDrainTask },
    { job, phase: filling, isLastOfJob: true, writeSteps: writeFillTask },
  ]
}

function planCheckTasks(writer: Writer, job: OilJob): readonly Task[] {
  const phase = chooseCheckPhase(job, writer.ramps.onRamps)
  const level = job.owner.gearcase.levelOpening
  const check: Task = {
    job,
    phase,
    isLastOfJob: true,
    writeSteps: () => {
      writeShieldRemoval(writer, job)
      writeLevelCheck(writer, job)
    },
  }
  if (phase !== 'after the lift' || level === undefined || !needsWheelTurned(job)) return [check]
  const writeTurnTask = (): void => {
    writeShieldRemoval(writer, job)
    writeTurning(writer, job.owner, level, findWheelMark(level, 'level'))
  }
  return [{ job, phase: 'on stands', isLastOfJob: false, writeSteps: writeTurnTask }, check]
}

function writeTasks(
  writer: Writer,
  jobs: readonly OilJob[],
  tasks: readonly Task[],
  isAfterRun = false,
): void {
  const supports = listSupports(writer, tasks)
  const usesRamps = writer.ramps.axles.length > 0 && supports.length > 0
  if (!usesRamps || tasks.some(({ phase }) => phase === 'before the lift')) {
    writeChockingAndSecuring(writer, usesRamps ? [] : supports)
    if (isAfterRun && tasks.length > 0) writeStep(writer, 'let settle')
  }
  for (const phase of ['before the lift', 'on stands', 'after the lift'] as const) {
    if (phase === 'on stands') {
      if (usesRamps) {
        writeDriving(writer, 'drive onto ramps')
        writeChockingAndSecuring(writer, writer.ramps.onRamps === 'level' ? [] : supports)
      } else writeRaising(writer, supports)
    }
    const phaseTasks = tasks.filter((task) => task.phase === phase)
    if (phase === 'after the lift' && usesRamps) {
      writeDriving(writer, 'drive off ramps')
      if (phaseTasks.length > 0 || isAfterRun) writeChockingAndSecuring(writer, [])
    } else if (phase === 'after the lift' && supports.length > 0) writeStep(writer, 'lower the machine')
    for (const task of phaseTasks) {
      task.writeSteps()
      if (task.isLastOfJob) writeJobEnd(writer, jobs, task.job, isAfterRun || task.job.task === 'check')
    }
  }
}

/** Supports for the work on stands, in the order of the sheet. */
function listSupports(writer: Writer, tasks: readonly Task[]): readonly string[] {
  const needed = new Set(
    tasks
      .filter((task) => task.phase === 'on stands')
      .flatMap((task) => task.job.emptiedInstances.flatMap(({ gearcase }) => gearcase.supports)),
  )
  return [...writer.context.indexedSheet.axleOfSupport.keys()].filter((support) => needed.has(support))
}

/** Chocks the wheels that stay on the ground, and secures the items of the sheet. */
function writeChockingAndSecuring(writer: Writer, supports: readonly string[]): void {
  writeChocking(writer, supports)
  writeSecuring(writer, 'before work')
}

function writeChocking(writer: Writer, supports: readonly string[]): void {
  const { indexedSheet } = writer.context
  const liftedAxles = new Set(supports.map((support) => indexedSheet.axleOfSupport.get(support)))
  const [stayingAxle, ...others] = indexedSheet.axles.filter((axle) => !liftedAxles.has(axle))
  const isOneAxleStaying = stayingAxle !== undefined && others.length === 0 && indexedSheet.axles.length > 1
  writeStep(
    writer,
    'chock the wheels',
    isOneAxleStaying ? joinPointer(['machine', 'axles', stayingAxle]) : undefined,
  )
}

function writeRaising(writer: Writer, supports: readonly string[]): void {
  for (const support of supports) {
    writeStep(writer, 'raise the machine', joinPointer(['machine', 'supports', support]))
    writeStep(writer, 'set on stands', joinPointer(['machine', 'supports', support]))
  }
}

/** Drives onto or off the ramps, and stops. */
function writeDriving(writer: Writer, action: 'drive onto ramps' | 'drive off ramps'): void {
  const { axles, onRamps } = writer.ramps
  const [axle] = onRamps === 'tilted' && action === 'drive onto ramps' ? axles : []
  writeClearing(writer)
  writeStep(writer, action, axle === undefined ? undefined : joinPointer(['machine', 'axles', axle]))
  writeStep(writer, 'stop the engine')
}

function writeShieldRemoval(writer: Writer, job: OilJob): void {
  for (const { path } of listShields(writer, job.emptiedInstances))
    if (writer.state.shields[path] === 'on') writeStep(writer, 'remove shield', path)
}

function listShields(writer: Writer, instances: readonly GearcaseInstance[]): readonly ShieldLayout[] {
  const needed = new Set(instances.flatMap(({ gearcase }) => gearcase.shields))
  return [...writer.context.indexedSheet.shields.values()].filter(
    (shield) => needed.has(shield.id) && shield.applies !== 'no',
  )
}

/** Writes the last steps of a job: wiping down, the leak check if no run follows, and refitting shields. */
function writeJobEnd(writer: Writer, jobs: readonly OilJob[], job: OilJob, isLastCheck: boolean): void {
  const shieldsToRefit = listShields(writer, job.emptiedInstances).filter(
    (shield) => isLastCheck || isRefittedBeforeRun(jobs, shield),
  )
  for (const emptiedInstance of job.emptiedInstances) {
    const isBehindShield = shieldsToRefit.some(({ id }) => emptiedInstance.gearcase.shields.includes(id))
    const isOpenedAgain = !isLastCheck && !isBehindShield && isRechecked(job)
    if (!isOpenedAgain && !getGearcaseState(writer.state, emptiedInstance).wipedDown)
      writePartStep(writer, 'wipe down', emptiedInstance.gearcase, emptiedInstance)
    const isBehindPlate = shieldsToRefit.some(({ shield }) => shield.guards === 'the underside')
    if (isBehindShield && isBehindPlate && !isLastCheck)
      writePartStep(writer, 'let a leak show', emptiedInstance.gearcase, emptiedInstance)
    if (isBehindShield || isLastCheck)
      writePartStep(writer, 'check for leaks', emptiedInstance.gearcase, emptiedInstance)
    writer.finishedKeys.add(makeInstanceKey(emptiedInstance))
  }
  const unfinishedJobs = jobs.filter(({ emptiedInstances }) =>
    emptiedInstances.some((emptiedInstance) => !writer.finishedKeys.has(makeInstanceKey(emptiedInstance))),
  )
  const shieldsNeededOff = new Set(
    unfinishedJobs.flatMap(({ emptiedInstances }) => listShields(writer, emptiedInstances)),
  )
  // Another job behind the shield may wait for its last leak check.
  const uncheckedPaths = listNotChecked(writer.state, writer.context.indexedSheet.instances).map(
    ({ on }) => on,
  )
  const isUnchecked = ({ path, shields }: GearcaseLayout, { id }: ShieldLayout) =>
    shields.includes(id) && uncheckedPaths.includes(path)
  for (const shield of shieldsToRefit)
    if (
      writer.state.shields[shield.path] === 'off' &&
      !shieldsNeededOff.has(shield) &&
      ![...writer.context.indexedSheet.gearcases.values()].some((gearcase) => isUnchecked(gearcase, shield))
    )
      writeStep(writer, 'refit shield', shield.path)
}

/** A plate under the machine is refitted after the last leak check, unless this needs the machine raised. */
function isRefittedBeforeRun(jobs: readonly OilJob[], { id, shield }: ShieldLayout): boolean {
  if (shield.guards !== 'the underside') return true
  const jobsBehindShield = jobs.filter(({ emptiedInstances }) =>
    emptiedInstances.some(({ gearcase }) => gearcase.shields.includes(id)),
  )
  return jobsBehindShield.some(needsRaising) && !jobsBehindShield.some(isRechecked)
}
