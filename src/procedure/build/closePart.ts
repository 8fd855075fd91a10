import type { CoverLayout, GearcaseInstance, OpeningLayout } from '../layout.js'
import { coverAt, openingAt } from '../stepContext.js'
import { type Writer, writeAt } from './writer.js'

/** Old seals off, face wiped, new seals on, plug or cover in and tight. */
export function closePart(writer: Writer, part: OpeningLayout | CoverLayout, self: GearcaseInstance): void {
  const isOpening = 'opening' in part
  const { state } = writer
  const here = isOpening ? openingAt(state, part, self.instance) : coverAt(state, part, self.instance)
  const seals = isOpening ? part.seals : [part.seal]
  if (!here.magnetSeen) inspectMagnet(writer, part, self)
  for (const seal of seals)
    if (seal.treatment === 'renew' || seal.treatment === 'apply')
      writeAt(writer, 'take off old seal', seal, self)
  writeAt(writer, 'wipe the seal face', part, self)
  for (const seal of seals) {
    if (seal.treatment === 'renew') writeAt(writer, 'fit new seal', seal, self)
    if (seal.treatment === 'inspect') writeAt(writer, 'inspect the seal', seal, self)
    if (seal.treatment === 'apply') writeAt(writer, 'apply sealant', seal, self)
  }
  writeAt(writer, isOpening ? 'fit' : 'fit cover', part, self)
  writeAt(writer, isOpening ? 'tighten' : 'tighten cover', part, self)
}

export function inspectMagnet(
  writer: Writer,
  part: OpeningLayout | CoverLayout,
  self: GearcaseInstance,
): void {
  const { magnet } = 'opening' in part ? part.opening : part.cover
  if (magnet !== true) return
  writeAt(writer, 'inspect the magnet', part, self)
  writeAt(writer, 'clean the magnet', part, self)
}
