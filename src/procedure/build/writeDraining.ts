import { dropUndefined } from '../../base/index.js'
import { isFilterRenewed, type WheelMark } from '../../spec/index.js'
import {
  type CoverLayout,
  type FilterLayout,
  type GearcaseInstance,
  keyOf,
  type OpeningLayout,
  partOf,
  type SealLayout,
  wheelMarkFor,
} from '../layout.js'
import type { OilJob } from '../oilJob.js'
import { coverAt, filterAt, gearcaseAt, openingAt } from '../stepContext.js'
import { isOpen, type Writer, write, writeAt } from './writer.js'

/** Writes the draining of every gearcase of one oil space, and the closing of everything below the oil. */
export function writeDraining(writer: Writer, { owner, emptied }: OilJob): void {
  const fill = owner.gearcase.fillOpening
  if (fill === undefined) return
  for (const self of emptied) {
    const { gearcase } = self
    if (gearcase.gearcase.breather !== undefined) writeAt(writer, 'clear the breather', gearcase, self)
    const [way] = gearcase.ways
    if (way !== undefined && way.kind !== 'cover')
      turnTo(writer, self, way.opening, wheelMarkFor(way.opening, 'drain'))
  }
  const isSoleOpening = emptied.every(({ gearcase }) =>
    gearcase.ways.every((way) => partOf(way).path === fill.path),
  )
  if (!isSoleOpening) {
    for (const one of owner.gearcase.possibleFillOpenings) {
      crack(writer, one, owner)
      writeAt(writer, 'nip by hand', one, owner)
    }
    const hole = levelHoleOf(owner, fill)
    if (hole !== undefined) crack(writer, hole, owner)
  }
  for (const self of emptied) emptyGearcase(writer, self, owner, fill)
}

/** A separate level hole, loosened before draining since the level cannot be checked if it does not open. */
function levelHoleOf({ gearcase }: GearcaseInstance, fill: OpeningLayout): OpeningLayout | undefined {
  const { levelOpening: level } = gearcase
  if (level === undefined || gearcase.fill?.method.kind !== 'to level hole' || level.path === fill.path)
    return undefined
  return wheelMarkFor(level, 'level') === undefined ? level : undefined
}

/**
 * Opens one drain after the other and closes each before the next, since there is one pan. The oil is inspected after the
 * last.
 */
function emptyGearcase(
  writer: Writer,
  self: GearcaseInstance,
  owner: GearcaseInstance,
  fill: OpeningLayout,
): void {
  const drains = self.gearcase.ways.flatMap((way) =>
    [partOf(way), ...(way.kind === 'cover' ? [] : way.also)].map((part) => ({ way, part })),
  )
  for (const [place, { way, part }] of drains.entries()) {
    if ('opening' in part) turnTo(writer, self, part, wheelMarkFor(part, 'drain'))
    writeAt(writer, 'place the pan', part, self)
    if ('cover' in part) {
      writeAt(writer, 'clean around', part, self)
      writeAt(writer, 'take off cover', part, self)
    } else openOpening(writer, part, self)
    if (way.kind !== 'suction' && part.path !== fill.path)
      for (const one of owner.gearcase.possibleFillOpenings) openOpening(writer, one, owner)
    const isSampled = writer.context.jobs.some(({ sampled }) =>
      sampled.some((one) => keyOf(one) === keyOf(self)),
    )
    if (isSampled && place === 0) writeAt(writer, 'take an oil sample', part, self)
    writeAt(writer, way.kind === 'suction' ? 'suck out the oil' : 'let drain', part, self)
    const isLast = place === drains.length - 1
    if (isLast) writeAt(writer, 'inspect the oil', self.gearcase, self)
    if (way.kind === 'drain plug') inspectMagnet(writer, part, self)
    changeFiltersBehind(writer, self, part)
    // Oil from the filters runs out at the drain, which is still open.
    if (isLast) changeOtherFilters(writer, self)
    if (part.path !== fill.path) closePart(writer, part, self)
  }
}

/** Writes the steps that open an opening, if it is not open. */
export function openOpening(writer: Writer, opening: OpeningLayout, self: GearcaseInstance): void {
  if (isOpen(writer, opening, self)) return
  if (openingAt(writer.state, opening, self.instance).position === 'tight') crack(writer, opening, self)
  writeAt(writer, 'take out', opening, self)
}

function crack(writer: Writer, opening: OpeningLayout, self: GearcaseInstance): void {
  writeAt(writer, 'clean around', opening, self)
  writeAt(writer, 'crack loose', opening, self)
}

/** Writes the steps that turn the wheel, or roll the machine, until this opening is at its mark. */
export function turnTo(
  writer: Writer,
  self: GearcaseInstance,
  opening: OpeningLayout,
  mark: WheelMark | undefined,
): void {
  if (mark === undefined || gearcaseAt(writer.state, self).wheelMark === mark) return
  for (const one of self.gearcase.openings)
    if (isOpen(writer, one, self)) writeAt(writer, 'nip by hand', one, self)
  const at = dropUndefined({ instance: self.instance, wheelMark: mark })
  if (self.gearcase.supports.length > 0) {
    write(writer, 'turn the wheel', opening.path, at)
    return
  }
  const hadPan = gearcaseAt(writer.state, self).panPlaced
  write(writer, 'clear away')
  write(writer, 'roll the machine', opening.path, at)
  write(writer, 'chock the wheels')
  if (hadPan) writeAt(writer, 'place the pan', opening, self)
}

function changeOtherFilters(writer: Writer, self: GearcaseInstance): void {
  for (const filter of self.gearcase.filters) {
    if (filter.applies === 'no' || filterAt(writer.state, filter, self.instance).wasRemoved) continue
    const { behind } = filter
    if (behind === undefined) changeFilter(writer, self, filter)
    else {
      writeAt(writer, 'place the pan', behind, self)
      if ('opening' in behind) openOpening(writer, behind, self)
      else {
        writeAt(writer, 'clean around', behind, self)
        writeAt(writer, 'take off cover', behind, self)
      }
      changeFiltersBehind(writer, self, behind)
      if (behind.path !== self.gearcase.fillOpening?.path) closePart(writer, behind, self)
    }
  }
}

function changeFiltersBehind(
  writer: Writer,
  self: GearcaseInstance,
  part: OpeningLayout | CoverLayout,
): void {
  for (const filter of self.gearcase.filters)
    if (filter.applies !== 'no' && filter.behind?.path === part.path) changeFilter(writer, self, filter)
}

/** Writes the steps that change or clean a filter. */
function changeFilter(writer: Writer, self: GearcaseInstance, filter: FilterLayout): void {
  if (filter.behind === undefined) {
    writeAt(writer, 'place the pan', filter, self)
    writeAt(writer, 'clean around', filter, self)
  }
  writeAt(writer, 'take off filter', filter, self)
  writeAt(writer, 'inspect the filter', filter, self)
  if (!isFilterRenewed(filter.filter)) writeAt(writer, 'clean the filter', filter, self)
  renewSeals(writer, filter, filter.seals, self)
  writeAt(writer, 'fit filter', filter, self)
  if (filter.behind === undefined) writeAt(writer, 'tighten filter', filter, self)
}

/** Writes the steps that renew the seals and close a plug or cover. */
export function closePart(writer: Writer, part: OpeningLayout | CoverLayout, self: GearcaseInstance): void {
  const isOpening = 'opening' in part
  const { state } = writer
  const partState = isOpening ? openingAt(state, part, self.instance) : coverAt(state, part, self.instance)
  const seals = isOpening ? part.seals : [part.seal]
  if (!partState.magnetSeen) inspectMagnet(writer, part, self)
  renewSeals(writer, part, seals, self)
  writeAt(writer, isOpening ? 'fit' : 'fit cover', part, self)
  writeAt(writer, isOpening ? 'tighten' : 'tighten cover', part, self)
}

function renewSeals(
  writer: Writer,
  part: OpeningLayout | CoverLayout | FilterLayout,
  seals: readonly SealLayout[],
  self: GearcaseInstance,
): void {
  for (const seal of seals)
    if (seal.treatment === 'renew' || seal.treatment === 'apply')
      writeAt(writer, 'take off old seal', seal, self)
  writeAt(writer, 'wipe the seal face', part, self)
  for (const seal of seals) {
    if (seal.treatment === 'renew') writeAt(writer, 'fit new seal', seal, self)
    if (seal.treatment === 'inspect') writeAt(writer, 'inspect the seal', seal, self)
    if (seal.treatment === 'apply') writeAt(writer, 'apply sealant', seal, self)
  }
}

function inspectMagnet(writer: Writer, part: OpeningLayout | CoverLayout, self: GearcaseInstance): void {
  const { magnet } = 'opening' in part ? part.opening : part.cover
  if (magnet !== true) return
  writeAt(writer, 'inspect the magnet', part, self)
  writeAt(writer, 'clean the magnet', part, self)
}
