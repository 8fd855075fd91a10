import { findSharers } from '../gearcaseInstance.js'
import { servesAs, wheelMarkFor } from '../layout.js'
import type { OilJob } from '../listJobs.js'
import { isLevelJudged } from '../needs/filling.js'
import { coverAt, gearcaseAt, openingAt } from '../stepContext.js'
import { closeOpening } from './closePart.js'
import { openUp, turnTo } from './drainJob.js'
import { isOpen, type Writer, writeAt, writeOn } from './writer.js'

/** New oil into one oil space, judged as the manual says, and its upper openings closed. */
export function fillJob(writer: Writer, job: OilJob): void {
  const { owner } = job
  const { fillOpening: fill, levelOpening: level } = owner.gearcase
  if (fill === undefined) return
  const judged = isLevelJudged(owner.gearcase, 'change') ? level : undefined
  const glass = owner.gearcase.fill?.method.kind === 'sight glass'
  turnTo(writer, owner, fill, wheelMarkFor(fill, 'fill'))
  const opensLevel = judged !== undefined && !glass && judged.path !== fill.path
  if (opensLevel && owner.gearcase.fill?.method.kind === 'to level hole') openUp(writer, judged, owner)
  openUp(writer, fill, owner)
  waitForCures(writer, job)
  writeOn(writer, 'measure the oil', owner.gearcase.path, owner)
  if (owner.gearcase.additive !== 'never') writeOn(writer, 'add the additive', owner.gearcase.path, owner)
  writeAt(writer, 'pour the oil', fill, owner)
  writeAt(writer, 'wait for the hose', fill, owner)
  if (judged !== undefined) judgeLevel(writer, job)
  if (opensLevel) closeOpening(writer, judged, owner)
  closeOpening(writer, fill, owner)
}

/** A level check of its own: a service that only checks, or the second look after a run. */
export function checkJob(writer: Writer, job: OilJob, toTopUp: boolean): void {
  const { owner } = job
  const { fillOpening: fill, levelOpening: level } = owner.gearcase
  if (level === undefined) return
  turnTo(writer, owner, level, wheelMarkFor(level, 'level'))
  const glass = owner.gearcase.fill?.method.kind === 'sight glass'
  const topUpAt = fill !== undefined && toTopUp && !glass && !servesAs(level, 'fill') ? fill : undefined
  if (!glass) {
    if (!isOpen(writer, level, owner)) writeAt(writer, 'place the pan', level, owner)
    openUp(writer, level, owner)
  }
  if (topUpAt !== undefined) openUp(writer, topUpAt, owner)
  judgeLevel(writer, job)
  if (!glass) closeOpening(writer, level, owner)
  if (topUpAt !== undefined) closeOpening(writer, topUpAt, owner)
}

function judgeLevel(writer: Writer, job: OilJob): void {
  const { owner } = job
  const { fillOpening: fill, levelOpening: level } = owner.gearcase
  if (level === undefined) return
  const glass = owner.gearcase.fill?.method.kind === 'sight glass'
  turnTo(writer, owner, level, wheelMarkFor(level, 'level'))
  if (!glass) openUp(writer, level, owner)
  const here = gearcaseAt(writer.state, owner)
  if ((owner.gearcase.settles || here.ranSinceFill) && !writer.state.settled)
    writeOn(writer, 'let settle', owner.gearcase.path, owner)
  writeAt(writer, 'check the level', level, owner)
  const through = servesAs(level, 'fill') ? level : fill
  if (through !== undefined && openingAt(writer.state, through, owner.instance).position === 'out')
    writeAt(writer, 'top up', through, owner)
}

function waitForCures(writer: Writer, job: OilJob): void {
  for (const unit of findSharers(writer.context.layout, job.owner))
    for (const cover of unit.gearcase.covers) {
      const here = coverAt(writer.state, cover, unit.instance)
      if (cover.seal.cures && here.everOff && !here.cured)
        writeOn(writer, 'wait for the cure', cover.path, unit)
    }
}
