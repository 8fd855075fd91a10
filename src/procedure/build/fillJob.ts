import { type GearcaseInstance, type OpeningLayout, servesAs, wheelMarkFor } from '../layout.js'
import { listUncured } from '../needs/filling.js'
import { isLevelJudged, type OilJob } from '../oilJob.js'
import { gearcaseAt, openingAt } from '../stepContext.js'
import { closePart } from './closePart.js'
import { openUp, turnTo } from './drainJob.js'
import { isOpen, type Writer, write, writeAt } from './writer.js'

/** New oil into one oil space, judged as the manual says, and its upper openings closed. */
export function fillJob(writer: Writer, { owner }: OilJob): void {
  const { gearcase } = owner
  const { fillOpening: fill, levelOpening: level } = gearcase
  const method = gearcase.fill?.method.kind
  if (fill === undefined) return
  const judged = isLevelJudged(gearcase, 'change') ? level : undefined
  turnTo(writer, owner, fill, wheelMarkFor(fill, 'fill'))
  const opensLevel = judged !== undefined && method !== 'sight glass' && judged.path !== fill.path
  if (opensLevel && method === 'to level hole') openUp(writer, judged, owner)
  openUp(writer, fill, owner)
  for (const wait of listUncured(writer.context.layout, writer.state, owner))
    write(writer, wait.do, wait.on, wait.at)
  writeAt(writer, 'measure the oil', gearcase, owner)
  if (gearcase.additive !== 'never') writeAt(writer, 'add the additive', gearcase, owner)
  writeAt(writer, 'pour the oil', fill, owner)
  writeAt(writer, 'wait for the hose', fill, owner)
  if (judged !== undefined) judgeLevel(writer, owner, judged)
  if (opensLevel) closePart(writer, judged, owner)
  closePart(writer, fill, owner)
}

/** A level check of its own: a service that only checks, or the second check after a run. */
export function checkJob(writer: Writer, { owner }: OilJob, toTopUp: boolean): void {
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
  judgeLevel(writer, owner, level)
  if (!glass) closePart(writer, level, owner)
  if (topUpAt !== undefined) closePart(writer, topUpAt, owner)
}

function judgeLevel(writer: Writer, owner: GearcaseInstance, level: OpeningLayout): void {
  const { gearcase, instance } = owner
  turnTo(writer, owner, level, wheelMarkFor(level, 'level'))
  if (gearcase.fill?.method.kind !== 'sight glass') openUp(writer, level, owner)
  const here = gearcaseAt(writer.state, owner)
  if ((gearcase.settles || here.ranSinceFill) && !writer.state.settled)
    writeAt(writer, 'let settle', gearcase, owner)
  writeAt(writer, 'check the level', level, owner)
  const through = servesAs(level, 'fill') ? level : gearcase.fillOpening
  if (through !== undefined && openingAt(writer.state, through, instance).position === 'out')
    writeAt(writer, 'top up', through, owner)
}
