import { findWheelMark, type GearcaseInstance, hasRole, type OpeningLayout } from '../layout.js'
import { includesLevelCheck, type OilJob } from '../listJobs.js'
import { listNotCured } from '../needs/filling.js'
import { isDrainOpening } from '../needs/opening.js'
import { getGearcaseState, getOpeningState } from '../stepContext.js'
import { writeClosing, writeOpening, writeTurning } from './writeDraining.js'
import { isOpen, type Writer, writePartStep, writeStep } from './writer.js'

/** Writes the filling of one oil space. */
export function writePouring(writer: Writer, { owner }: OilJob): void {
  const { gearcase } = owner
  const { fillOpening: fill, levelOpening: level } = gearcase
  const method = gearcase.fill?.method.kind
  if (fill === undefined) return
  const levelToCheck = includesLevelCheck(gearcase, 'change') ? level : undefined
  writeTurning(writer, owner, fill, findWheelMark(fill, 'fill'))
  const isLevelOpened =
    levelToCheck !== undefined && method !== 'sight glass' && levelToCheck.path !== fill.path
  if (isLevelOpened && method === 'to level hole') writeOpening(writer, levelToCheck, owner)
  for (const possibleFillOpening of gearcase.possibleFillOpenings)
    writeOpening(writer, possibleFillOpening, owner)
  for (const wait of listNotCured(writer.context.indexedSheet, writer.state, owner))
    writeStep(writer, wait.do, wait.on, wait.at)
  writePartStep(writer, 'measure the oil', gearcase, owner)
  const addAdditive = (isOilIn: boolean): void => {
    if (gearcase.additive !== 'never' && gearcase.oilFirst === isOilIn)
      writePartStep(writer, 'add the additive', gearcase, owner)
  }
  addAdditive(false)
  for (const possibleFillOpening of gearcase.possibleFillOpenings) {
    writePartStep(writer, 'pour the oil', possibleFillOpening, owner)
    writePartStep(writer, 'wait for the hose', possibleFillOpening, owner)
  }
  addAdditive(true)
}

/** Writes the level check after filling, and the closing of the upper openings. */
export function writeFillClosing(writer: Writer, { owner }: OilJob): void {
  const { gearcase } = owner
  const { fillOpening: fill, levelOpening: level } = gearcase
  if (fill === undefined) return
  const levelToCheck = includesLevelCheck(gearcase, 'change') ? level : undefined
  const isLevelOpened =
    levelToCheck !== undefined &&
    gearcase.fill?.method.kind !== 'sight glass' &&
    levelToCheck.path !== fill.path
  if (levelToCheck !== undefined) writeLevelReading(writer, owner, levelToCheck)
  if (isLevelOpened) writeClosing(writer, levelToCheck, owner)
  for (const possibleFillOpening of gearcase.possibleFillOpenings)
    writeClosing(writer, possibleFillOpening, owner)
}

/** Writes a level check without an oil change, or the second check after a run. */
export function writeLevelCheck(writer: Writer, { owner }: OilJob): void {
  const { fillOpening: fill, levelOpening: level } = owner.gearcase
  if (level === undefined) return
  writeTurning(writer, owner, level, findWheelMark(level, 'level'))
  const hasSightGlass = owner.gearcase.fill?.method.kind === 'sight glass'
  const separateFillOpening = fill !== undefined && !hasRole(level, 'fill') ? fill : undefined
  if (!hasSightGlass) {
    if (!isOpen(writer, level, owner)) writePartStep(writer, 'place the pan', level, owner)
    writeOpening(writer, level, owner)
  } else if (separateFillOpening !== undefined && isDrainOpening(owner.gearcase, separateFillOpening))
    // A sight glass is not opened, but the plug for topping up may let oil out.
    writePartStep(writer, 'place the pan', separateFillOpening, owner)
  writeLevelReading(writer, owner, level)
  if (separateFillOpening !== undefined) {
    writeOpening(writer, separateFillOpening, owner)
    writePartStep(writer, 'top up', separateFillOpening, owner)
  }
  if (!hasSightGlass) writeClosing(writer, level, owner)
  if (separateFillOpening !== undefined) writeClosing(writer, separateFillOpening, owner)
}

function writeLevelReading(writer: Writer, owner: GearcaseInstance, level: OpeningLayout): void {
  const { gearcase, instance } = owner
  writeTurning(writer, owner, level, findWheelMark(level, 'level'))
  if (gearcase.fill?.method.kind !== 'sight glass') writeOpening(writer, level, owner)
  const ownerState = getGearcaseState(writer.state, owner)
  if ((gearcase.hasSettlingTime || ownerState.ranSinceFill) && !writer.state.settled)
    writePartStep(writer, 'let settle', gearcase, owner)
  writePartStep(writer, 'check the level', level, owner)
  const topUpOpening = hasRole(level, 'fill') ? level : gearcase.fillOpening
  if (topUpOpening !== undefined && getOpeningState(writer.state, topUpOpening, instance).position === 'out')
    writePartStep(writer, 'top up', topUpOpening, owner)
}
