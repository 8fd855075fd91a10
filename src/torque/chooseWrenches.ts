import { type JsonPointer, type Reason, requireKnownKeys, requireObject } from '../base/index.js'
import { readBandAsPrinted } from '../quantity/index.js'
import type { Adaptor, Id, Tightening, TorqueWrench } from '../spec/index.js'
import { torqueReason } from './codes.js'
import { findSmallestSets } from './findSmallestSets.js'
import { judgeWrench } from './judgeWrench.js'
import { makeNoTorqueReason, makeOneLimitReason } from './noBandReason.js'
import { requireDesignation, requireTightening, requireWrench, requireWrenchOptions } from './requireInput.js'
import { chooseWrenchesToBuy, type WrenchToGet } from './wrenchToGet.js'
import type { WrenchFits, WrenchOptions, WrenchVerdict } from './wrenchVerdict.js'

const MAX_WRENCHES = 20
const MAX_TASKS = 500

/** One fastener to tighten. */
export interface WrenchTask {
  /** Pointer into the sheet; it identifies the task in the result. */
  readonly on: JsonPointer
  readonly tightening: Tightening
  /** Square drive of the socket, such as `1/2 in`; absent: any. */
  readonly drive?: string
}

export interface ChooseWrenchesOptions extends Omit<WrenchOptions, 'adaptor'> {
  /** The toolbox's adaptors; those of kind `drive adaptor` connect a wrench to another square drive. */
  readonly adaptors?: Readonly<Record<Id, Adaptor>>
}

export interface CoveredTask {
  readonly on: JsonPointer
  readonly wrench: Id
  /** The drive adaptor between wrench and socket, if one is needed. */
  readonly through?: Id
  readonly fit: WrenchFits
}

export interface UncoveredReason {
  readonly on: JsonPointer
  /** `cannot tell`: a fact is missing from the sheet or the toolbox; `does not fit`: no wrench in the toolbox covers it. */
  readonly verdict: 'does not fit' | 'cannot tell'
  /**
   * The reasons for each wrench, in the order of the toolbox; a reason about the sheet is listed once,
   * without a wrench.
   */
  readonly wrenches: readonly { readonly wrench?: Id; readonly reasons: readonly Reason[] }[]
}

export interface WrenchChoice {
  /** The wrenches to bring, in the order of the toolbox. */
  readonly wrenches: readonly Id[]
  /** One for each covered task, in the order of the tasks. */
  readonly covered: readonly CoveredTask[]
  readonly uncovered: readonly UncoveredReason[]
  /** Wrenches to buy for the tasks that no wrench covers. */
  readonly toBuy: readonly WrenchToGet[]
}

interface JudgedWrench {
  readonly id: Id
  readonly through?: Id
  readonly fit: WrenchVerdict
}

type UsableWrench = JudgedWrench & { readonly fit: WrenchFits }

function coversTask(tool: JudgedWrench): tool is UsableWrench {
  return tool.fit.verdict === 'fits' || tool.fit.verdict === 'fits with care'
}

function judgeWrenches(
  wrenches: readonly (readonly [Id, TorqueWrench])[],
  task: WrenchTask,
  options: ChooseWrenchesOptions,
): JudgedWrench[] {
  const { adaptors = {}, ...wrenchOptions } = options
  return wrenches.map(([id, wrench]) => {
    const { driveFits, through } = findDriveAdaptor(wrench.drive, task.drive, adaptors)
    if (driveFits || task.drive === undefined)
      return { id, fit: judgeWrench(wrench, task.tightening, wrenchOptions), ...(through ? { through } : {}) }
    const reason = torqueReason('torque/drive-does-not-reach', { wrench: wrench.drive, required: task.drive })
    return { id, fit: { verdict: 'does not fit', reasons: [reason], stages: [] } }
  })
}

/** Prefers `fits` to `fits with care`, then a wrench without a drive adaptor, then the first in the toolbox. */
function chooseBestTool(judged: readonly JudgedWrench[], set: number): UsableWrench | undefined {
  const coveringTools = judged.filter((_, at) => (set & (1 << at)) !== 0).filter(coversTask)
  const rank = ({ fit, through }: JudgedWrench) =>
    (fit.verdict === 'fits' ? 0 : 2) + (through === undefined ? 0 : 1)
  return coveringTools.reduce<UsableWrench | undefined>(
    (chosen, next) => (chosen === undefined || rank(next) < rank(chosen) ? next : chosen),
    undefined,
  )
}

/**
 * Chooses the fewest torque wrenches that cover all tightenings of a visit. For one wrench and one
 * tightening, use {@link checkWrench}.
 *
 * The search tries every set of wrenches, smallest first. Of the smallest sets it prefers the one with the most `fits`,
 * then the one with the fewest drive adaptors, then the order of the toolbox. The search omits tasks that no wrench
 * covers.
 *
 * @param wrenches - the toolbox's wrenches by id, at most 20
 * @param tasks - tightenings with their pointer and the socket's square drive, at most 500
 * @param options - as for {@link checkWrench}; with `adaptors`, a wrench may reach another square drive
 *   through one adaptor
 * @returns the wrenches, each task with its wrench and setting, the tasks that are not covered with every reason, and the
 *   wrenches to buy, in the unit of the sheet (lbf·in for small torques in lbf·ft). Each has a usual range, whose highest
 *   mark is five times the lowest, so that all settings are between 20 % and 100 % of full scale
 * @throws RangeError for more than 20 wrenches or 500 tasks, TypeError for wrong types
 *
 * Source: house rule. The five-fold range follows from the 20 % practice of ISO 6789:2003. Usual ranges (5 to 25, 10 to
 * 50, 20 to 100, 40 to 200) are common practice, no source.
 *
 * @example
 * ```ts
 * import { chooseWrenches } from 'drivetrain-service/v1/torque'
 * const click = (lowest: number, highest: number) => ({
 *   name: `${lowest} to ${highest}`, type: 'click', drive: '1/2 in',
 *   scales: [{ unit: 'N.m', lowest, highest, graduation: 1 }], accuracy: { kind: 'ISO 6789' },
 * }) as const
 * const plug = (min: string, max: string) => ({
 *   kind: 'torque', threadCondition: 'dry', torque: { kind: 'limits', min, max, unit: 'N.m' },
 * }) as const
 * const tasks = [{ on: '/drain', tightening: plug('30', '40') }, { on: '/fill', tightening: plug('45', '55') }]
 * // Which of three wrenches are needed for two plugs?
 * chooseWrenches({ small: click(5, 25), middle: click(20, 100), large: click(40, 200) }, tasks, { iso6789: '2017' })
 *   .wrenches // => ['middle']
 * ```
 */
export function chooseWrenches(
  wrenches: Readonly<Record<Id, TorqueWrench>>,
  tasks: readonly WrenchTask[],
  options: ChooseWrenchesOptions,
): WrenchChoice {
  requireObject('wrenches', wrenches)
  requireWrenchOptions(options, 'adaptors')
  if (options.adaptors !== undefined) {
    requireObject('options.adaptors', options.adaptors)
    for (const [id, adaptor] of Object.entries(options.adaptors))
      requireObject(`options.adaptors.${id}`, adaptor)
  }
  const tools = Object.entries(wrenches)
  if (tools.length > MAX_WRENCHES)
    throw new RangeError(`wrenches must be at most ${MAX_WRENCHES}, got ${tools.length}`)
  for (const [id, wrench] of tools) {
    requireWrench(`wrenches.${id}`, wrench)
    requireDesignation(`wrenches.${id}.drive`, wrench.drive)
  }
  if (!Array.isArray(tasks)) throw new TypeError('tasks must be a list')
  if (tasks.length > MAX_TASKS)
    throw new RangeError(`tasks must be at most ${MAX_TASKS}, got ${tasks.length}`)
  for (const [at, task] of tasks.entries()) {
    requireKnownKeys(`tasks[${at}]`, task, ['on', 'tightening', 'drive'])
    requireTightening(`tasks[${at}].tightening`, task.tightening)
    if (task.drive !== undefined) requireDesignation(`tasks[${at}].drive`, task.drive)
  }

  const judged = tasks.map((task) => ({ task, tools: judgeWrenches(tools, task, options) }))
  const toolBits = judged.map(({ tools }) =>
    tools.reduce((sum, tool, at) => (coversTask(tool) ? sum | (1 << at) : sum), 0),
  )
  const coverableTasks = judged.filter((_, at) => toolBits[at] !== 0)
  const sets = findSmallestSets(
    toolBits.filter((toolBit) => toolBit !== 0),
    tools.length,
  )
  let chosenSet = 0
  let lowestCost = Number.POSITIVE_INFINITY
  for (const set of sets) {
    let cost = 0
    for (const { tools } of coverableTasks) {
      const tool = chooseBestTool(tools, set)
      cost += (tool?.fit.verdict === 'fits' ? 0 : MAX_TASKS + 1) + (tool?.through === undefined ? 0 : 1)
    }
    if (cost < lowestCost) {
      lowestCost = cost
      chosenSet = set
    }
  }

  const uncovered = judged.filter((_, at) => toolBits[at] === 0)
  return {
    wrenches: tools.filter((_, at) => (chosenSet & (1 << at)) !== 0).map(([id]) => id),
    covered: coverableTasks.flatMap(({ task, tools }) => {
      const tool = chooseBestTool(tools, chosenSet)
      if (tool === undefined) return []
      const through = tool.through === undefined ? {} : { through: tool.through }
      return [{ on: task.on, wrench: tool.id, ...through, fit: tool.fit }]
    }),
    uncovered: uncovered.map(({ task, tools }) => explainUncovered(task, tools)),
    toBuy: chooseWrenchesToBuy(
      uncovered
        .filter(({ task, tools }) => explainUncovered(task, tools).verdict === 'does not fit')
        .map(({ task }) => task),
      options.tolerancePercent,
    ),
  }
}

function explainUncovered({ on, tightening }: WrenchTask, tools: readonly JudgedWrench[]): UncoveredReason {
  if (tightening.kind !== 'torque')
    return { on, verdict: 'cannot tell', wrenches: [{ reasons: [makeNoTorqueReason(tightening)] }] }
  for (const torque of [tightening.torque, ...(tightening.stages ?? [])]) {
    const band = readBandAsPrinted(torque)
    if (band.basis !== 'one limit') continue
    const reason = makeOneLimitReason(band, torque.unit)
    return { on, verdict: 'cannot tell', wrenches: [{ reasons: [reason] }] }
  }
  const hasUnknownFit = tools.some(({ fit }) => fit.verdict === 'cannot tell')
  return {
    on,
    verdict: hasUnknownFit ? 'cannot tell' : 'does not fit',
    wrenches: tools.map(({ id, fit }) => ({ wrench: id, reasons: fit.reasons })),
  }
}

/**
 * Square drives in millimetres, as JIS and ISO 1174-1 print them, and the same squares in inches; from memory.
 */
const SQUARE_DRIVES: Readonly<Record<string, string>> = {
  '6.3 mm': '1/4 in',
  '6.35 mm': '1/4 in',
  '9.5 mm': '3/8 in',
  '10 mm': '3/8 in',
  '12.5 mm': '1/2 in',
  '12.7 mm': '1/2 in',
  '19 mm': '3/4 in',
  '20 mm': '3/4 in',
  '25 mm': '1 in',
  '25.4 mm': '1 in',
}

function isSameDrive(first: string, second: string): boolean {
  const [firstDrive, secondDrive] = [first, second].map((drive) =>
    Object.hasOwn(SQUARE_DRIVES, drive) ? SQUARE_DRIVES[drive] : drive,
  )
  return firstDrive === secondDrive
}

/** Finds the drive adaptor, if one is needed. A concentric adaptor does not change the torque. */
function findDriveAdaptor(
  wrenchDrive: string,
  neededDrive: string | undefined,
  adaptors: Readonly<Record<Id, Adaptor>>,
): { readonly driveFits: boolean; readonly through?: Id } {
  if (neededDrive === undefined || isSameDrive(neededDrive, wrenchDrive)) return { driveFits: true }
  for (const [id, adaptor] of Object.entries(adaptors))
    if (
      adaptor.kind === 'drive adaptor' &&
      isSameDrive(adaptor.from, wrenchDrive) &&
      isSameDrive(adaptor.to, neededDrive)
    )
      return { driveFits: true, through: id }
  return { driveFits: false }
}
