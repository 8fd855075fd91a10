import type { GearcaseInstance } from '../gearcaseInstance.js'
import type { CoverLayout, OpeningLayout, SealLayout } from '../layout.js'
import { coverAt, openingAt } from '../stepContext.js'
import { type Writer, writeAt, writeOn } from './writer.js'

/** Old seals off, face wiped, new seals on, plug in and tight. */
export function closeOpening(writer: Writer, opening: OpeningLayout, unit: GearcaseInstance): void {
  const here = openingAt(writer.state, opening, unit.instance)
  if (opening.opening.magnet === true && !here.magnetSeen) {
    writeAt(writer, 'inspect the magnet', opening, unit)
    writeAt(writer, 'clean the magnet', opening, unit)
  }
  takeOffSeals(writer, opening.seals, unit)
  writeAt(writer, 'wipe the seal face', opening, unit)
  putOnSeals(writer, opening.seals, unit)
  writeAt(writer, 'fit', opening, unit)
  writeAt(writer, 'tighten', opening, unit)
}

/** The same for a cover. */
export function closeCover(writer: Writer, cover: CoverLayout, unit: GearcaseInstance): void {
  const here = coverAt(writer.state, cover, unit.instance)
  if (cover.cover.magnet === true && !here.magnetSeen) {
    writeOn(writer, 'inspect the magnet', cover.path, unit)
    writeOn(writer, 'clean the magnet', cover.path, unit)
  }
  takeOffSeals(writer, [cover.seal], unit)
  writeOn(writer, 'wipe the seal face', cover.path, unit)
  putOnSeals(writer, [cover.seal], unit)
  writeOn(writer, 'fit cover', cover.path, unit)
  writeOn(writer, 'tighten cover', cover.path, unit)
}

function takeOffSeals(writer: Writer, seals: readonly SealLayout[], unit: GearcaseInstance): void {
  for (const seal of seals)
    if (seal.treatment === 'renew' || seal.treatment === 'apply')
      writeOn(writer, 'take off old seal', seal.path, unit)
}

function putOnSeals(writer: Writer, seals: readonly SealLayout[], unit: GearcaseInstance): void {
  for (const seal of seals) {
    if (seal.treatment === 'renew') writeOn(writer, 'fit new seal', seal.path, unit)
    if (seal.treatment === 'inspect') writeOn(writer, 'inspect the seal', seal.path, unit)
    if (seal.treatment === 'apply') writeOn(writer, 'apply sealant', seal.path, unit)
  }
}
