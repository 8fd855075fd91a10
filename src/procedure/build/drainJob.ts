import type { GearcaseInstance } from '../gearcaseInstance.js'
import { type OpeningLayout, wheelMarkFor } from '../layout.js'
import type { OilJob } from '../listJobs.js'
import { gearcaseAt, openingAt } from '../stepContext.js'
import { closeCover, closeOpening } from './closePart.js'
import { isOpen, type Writer, write, writeAt, writeOn } from './writer.js'

/** The old oil out of every gearcase of one oil space, and everything below the oil closed again. */
export function drainJob(writer: Writer, job: OilJob): void {
  const { owner } = job
  const fill = owner.gearcase.fillOpening
  if (fill === undefined) return
  for (const unit of job.units) {
    if (unit.gearcase.gearcase.breather !== undefined)
      writeOn(writer, 'clear the breather', unit.gearcase.path, unit)
    const way = unit.gearcase.emptying
    if (way !== undefined && way.kind !== 'cover')
      turnTo(writer, unit, way.opening, wheelMarkFor(way.opening, 'drain'))
  }
  const soleOpening = job.units.every(
    ({ gearcase }) => gearcase.emptying?.kind !== 'cover' && gearcase.emptying?.opening.path === fill.path,
  )
  if (!soleOpening) {
    crack(writer, fill, owner)
    writeAt(writer, 'nip by hand', fill, owner)
  }
  for (const unit of job.units) drainInstance(writer, unit, owner, fill)
}

function drainInstance(
  writer: Writer,
  unit: GearcaseInstance,
  owner: GearcaseInstance,
  fill: OpeningLayout,
): void {
  const way = unit.gearcase.emptying
  if (way === undefined) return
  const path = unit.gearcase.path
  if (way.kind === 'cover') {
    writeOn(writer, 'place the pan', way.cover.path, unit)
    writeOn(writer, 'clean around', way.cover.path, unit)
    writeOn(writer, 'take off cover', way.cover.path, unit)
    openUp(writer, fill, owner)
    writeOn(writer, 'let drain', way.cover.path, unit)
    writeOn(writer, 'inspect the oil', path, unit)
    closeCover(writer, way.cover, unit)
    return
  }
  writeAt(writer, 'place the pan', way.opening, unit)
  openUp(writer, way.opening, unit)
  if (way.kind === 'suction') {
    writeAt(writer, 'suck out the oil', way.opening, unit)
    writeOn(writer, 'inspect the oil', path, unit)
    if (way.opening.path !== fill.path) closeOpening(writer, way.opening, unit)
    return
  }
  if (way.opening.path !== fill.path) openUp(writer, fill, owner)
  writeAt(writer, 'let drain', way.opening, unit)
  writeOn(writer, 'inspect the oil', path, unit)
  if (way.opening.opening.magnet === true) {
    writeAt(writer, 'inspect the magnet', way.opening, unit)
    writeAt(writer, 'clean the magnet', way.opening, unit)
  }
  if (way.opening.path !== fill.path) closeOpening(writer, way.opening, unit)
}

/** The opening cleaned around, loose and out, as far as it is not. */
export function openUp(writer: Writer, opening: OpeningLayout, unit: GearcaseInstance): void {
  if (isOpen(writer, opening, unit)) return
  if (openingAt(writer.state, opening, unit.instance).position === 'tight') crack(writer, opening, unit)
  writeAt(writer, 'take out', opening, unit)
}

function crack(writer: Writer, opening: OpeningLayout, unit: GearcaseInstance): void {
  writeAt(writer, 'clean around', opening, unit)
  writeAt(writer, 'crack loose', opening, unit)
}

/** The wheel turned until this opening stands where it must; every plug of the gearcase goes in by hand first. */
export function turnTo(
  writer: Writer,
  unit: GearcaseInstance,
  opening: OpeningLayout,
  mark: ReturnType<typeof wheelMarkFor>,
): void {
  if (mark === undefined || gearcaseAt(writer.state, unit).wheelMark === mark) return
  for (const one of unit.gearcase.openings)
    if (isOpen(writer, one, unit)) writeAt(writer, 'nip by hand', one, unit)
  write(writer, 'turn the wheel', opening.path, {
    ...(unit.instance === undefined ? {} : { instance: unit.instance }),
    wheelMark: mark,
  })
}
