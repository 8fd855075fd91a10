import { dropUndefined } from '../../base/index.js'
import { isFilterRenewed, type WheelMark } from '../../spec/index.js'
import type { CoverLayout, FilterLayout, GearcaseInstance, OpeningLayout, SealLayout } from '../layout.js'
import { findWheelMark, getPartToOpen, makeInstanceKey } from '../layout.js'
import type { OilJob } from '../listJobs.js'
import { getCoverState, getFilterState, getGearcaseState, getOpeningState } from '../stepContext.js'
import { isOpen, type Writer, writePartStep, writeStep } from './writer.js'

/** Writes the steps that drain every gearcase of one oil space and close everything below the oil. */
export function writeDraining(writer: Writer, { owner, emptiedInstances }: OilJob): void {
  const fill = owner.gearcase.fillOpening
  if (fill === undefined) return
  for (const target of emptiedInstances) {
    const { gearcase } = target
    if (gearcase.gearcase.breather !== undefined)
      writePartStep(writer, 'clear the breather', gearcase, target)
    const [way] = gearcase.emptyingWays
    if (way !== undefined && way.kind !== 'cover')
      writeTurning(writer, target, way.opening, findWheelMark(way.opening, 'drain'))
  }
  const isOnlyOpening = emptiedInstances.every(({ gearcase }) =>
    gearcase.emptyingWays.every((way) => getPartToOpen(way).path === fill.path),
  )
  if (!isOnlyOpening) {
    for (const possibleFillOpening of owner.gearcase.possibleFillOpenings) {
      writeLoosening(writer, possibleFillOpening, owner)
      writePartStep(writer, 'nip by hand', possibleFillOpening, owner)
    }
    const levelHole = findLevelHole(owner, fill)
    if (levelHole !== undefined) writeLoosening(writer, levelHole, owner)
  }
  for (const target of emptiedInstances) writeEmptying(writer, target, owner, fill)
}

/**
 * A separate level hole; its plug is loosened before draining, since a seized plug would prevent the level check.
 */
function findLevelHole({ gearcase }: GearcaseInstance, fill: OpeningLayout): OpeningLayout | undefined {
  const { levelOpening: level } = gearcase
  if (level === undefined || gearcase.fill?.method.kind !== 'to level hole' || level.path === fill.path)
    return undefined
  return findWheelMark(level, 'level') === undefined ? level : undefined
}

/**
 * Opens the drains one by one and closes each before the next, since there is one pan. Inspects the oil after
 * the last.
 */
function writeEmptying(
  writer: Writer,
  target: GearcaseInstance,
  owner: GearcaseInstance,
  fill: OpeningLayout,
): void {
  const drainParts = target.gearcase.emptyingWays.flatMap((way) =>
    [getPartToOpen(way), ...(way.kind === 'cover' ? [] : way.also)].map((part) => ({ way, part })),
  )
  for (const [place, { way, part }] of drainParts.entries()) {
    if ('opening' in part) writeTurning(writer, target, part, findWheelMark(part, 'drain'))
    writePartStep(writer, 'place the pan', part, target)
    if ('cover' in part) {
      writePartStep(writer, 'clean around', part, target)
      writePartStep(writer, 'take off cover', part, target)
    } else writeOpening(writer, part, target)
    if (way.kind !== 'suction' && part.path !== fill.path)
      for (const possibleFillOpening of owner.gearcase.possibleFillOpenings)
        writeOpening(writer, possibleFillOpening, owner)
    const isSampled = writer.context.jobs.some(({ sampledInstances }) =>
      sampledInstances.some(
        (sampledInstance) => makeInstanceKey(sampledInstance) === makeInstanceKey(target),
      ),
    )
    if (isSampled && place === 0) writePartStep(writer, 'take an oil sample', part, target)
    writePartStep(writer, way.kind === 'suction' ? 'suck out the oil' : 'let drain', part, target)
    const isLast = place === drainParts.length - 1
    if (isLast) writePartStep(writer, 'inspect the oil', target.gearcase, target)
    if (way.kind === 'drain plug') writeMagnetInspection(writer, part, target)
    writeFilterChangesBehind(writer, target, part)
    // Oil from the filters runs out at the drain, which is still open.
    if (isLast) writeOtherFilterChanges(writer, target)
    if (part.path !== fill.path) writeClosing(writer, part, target)
  }
}

/** Writes the steps that take out a plug, if it is not out. */
export function writeOpening(writer: Writer, opening: OpeningLayout, target: GearcaseInstance): void {
  if (isOpen(writer, opening, target)) return
  if (getOpeningState(writer.state, opening, target.instance).position === 'tight')
    writeLoosening(writer, opening, target)
  writePartStep(writer, 'take out', opening, target)
}

function writeLoosening(writer: Writer, opening: OpeningLayout, target: GearcaseInstance): void {
  writePartStep(writer, 'clean around', opening, target)
  writePartStep(writer, 'crack loose', opening, target)
}

/** Writes the steps that turn the wheel or roll the machine to bring this opening to its mark. */
export function writeTurning(
  writer: Writer,
  target: GearcaseInstance,
  opening: OpeningLayout,
  mark: WheelMark | undefined,
): void {
  if (mark === undefined || getGearcaseState(writer.state, target).wheelMark === mark) return
  for (const anyOpening of target.gearcase.openings)
    if (isOpen(writer, anyOpening, target)) writePartStep(writer, 'nip by hand', anyOpening, target)
  const at = dropUndefined({ instance: target.instance, wheelMark: mark })
  if (target.gearcase.supports.length > 0) {
    writeStep(writer, 'turn the wheel', opening.path, at)
    return
  }
  const wasPanPlaced = getGearcaseState(writer.state, target).panPlaced
  writeStep(writer, 'clear away')
  writeStep(writer, 'roll the machine', opening.path, at)
  writeStep(writer, 'chock the wheels')
  if (wasPanPlaced) writePartStep(writer, 'place the pan', opening, target)
}

function writeOtherFilterChanges(writer: Writer, target: GearcaseInstance): void {
  for (const filter of target.gearcase.filters) {
    if (filter.applies === 'no' || getFilterState(writer.state, filter, target.instance).wasRemoved) continue
    const { behind } = filter
    if (behind === undefined) writeFilterChange(writer, target, filter)
    else {
      writePartStep(writer, 'place the pan', behind, target)
      if ('opening' in behind) writeOpening(writer, behind, target)
      else {
        writePartStep(writer, 'clean around', behind, target)
        writePartStep(writer, 'take off cover', behind, target)
      }
      writeFilterChangesBehind(writer, target, behind)
      if (behind.path !== target.gearcase.fillOpening?.path) writeClosing(writer, behind, target)
    }
  }
}

function writeFilterChangesBehind(
  writer: Writer,
  target: GearcaseInstance,
  part: OpeningLayout | CoverLayout,
): void {
  for (const filter of target.gearcase.filters)
    if (filter.applies !== 'no' && filter.behind?.path === part.path)
      writeFilterChange(writer, target, filter)
}

/** Writes the steps that change or clean a filter. */
function writeFilterChange(writer: Writer, target: GearcaseInstance, filter: FilterLayout): void {
  if (filter.behind === undefined) {
    writePartStep(writer, 'place the pan', filter, target)
    writePartStep(writer, 'clean around', filter, target)
  }
  writePartStep(writer, 'take off filter', filter, target)
  writePartStep(writer, 'inspect the filter', filter, target)
  if (!isFilterRenewed(filter.filter)) writePartStep(writer, 'clean the filter', filter, target)
  writeSealRenewal(writer, filter, filter.seals, target)
  writePartStep(writer, 'fit filter', filter, target)
  if (filter.behind === undefined) writePartStep(writer, 'tighten filter', filter, target)
}

/** Writes the steps that renew the seals and close a plug or cover. */
export function writeClosing(
  writer: Writer,
  part: OpeningLayout | CoverLayout,
  target: GearcaseInstance,
): void {
  const isOpening = 'opening' in part
  const { state } = writer
  const partState = isOpening
    ? getOpeningState(state, part, target.instance)
    : getCoverState(state, part, target.instance)
  const seals = isOpening ? part.seals : [part.seal]
  if (!partState.magnetSeen) writeMagnetInspection(writer, part, target)
  writeSealRenewal(writer, part, seals, target)
  writePartStep(writer, isOpening ? 'fit' : 'fit cover', part, target)
  writePartStep(writer, isOpening ? 'tighten' : 'tighten cover', part, target)
}

function writeSealRenewal(
  writer: Writer,
  part: OpeningLayout | CoverLayout | FilterLayout,
  seals: readonly SealLayout[],
  target: GearcaseInstance,
): void {
  for (const seal of seals)
    if (seal.treatment === 'renew' || seal.treatment === 'apply')
      writePartStep(writer, 'take off old seal', seal, target)
  writePartStep(writer, 'wipe the seal face', part, target)
  for (const seal of seals) {
    if (seal.treatment === 'renew') writePartStep(writer, 'fit new seal', seal, target)
    if (seal.treatment === 'inspect') writePartStep(writer, 'inspect the seal', seal, target)
    if (seal.treatment === 'apply') writePartStep(writer, 'apply sealant', seal, target)
  }
}

function writeMagnetInspection(
  writer: Writer,
  part: OpeningLayout | CoverLayout,
  target: GearcaseInstance,
): void {
  const { magnet } = 'opening' in part ? part.opening : part.cover
  if (magnet !== true) return
  writePartStep(writer, 'inspect the magnet', part, target)
  writePartStep(writer, 'clean the magnet', part, target)
}
