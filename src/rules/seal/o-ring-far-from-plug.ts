import { convert } from '../../quantity/index.js'
import { checkORing } from '../../seal/index.js'
import { parseThread } from '../../thread/index.js'
import { sealRule } from '../ruleMakers.js'

/**
 * An o-ring that cannot belong to its plug: its hole is less than half the thread's diameter, or more than
 * twice as large. It was copied from the wrong line of the parts list.
 * Judges: Every o-ring of an opening with a metric or unified thread that can be read, including overrides.
 * Its inside diameter is that of `size`, else that of its dash number if the table of
 * `seal/o-ring-size-differs` has it. Finds a diameter below 0.5 or above 2 times the thread's nominal
 * diameter. Pipe threads are not judged.
 * Place: the seal
 * Params: part: the name of the part (see terms); inside: in mm; thread: as written
 * Harm: job
 * Common practice, no source: a ring is stretched a little over the neck of the thread. The limits are our
 * own estimates.
 */
export const rule = sealRule('seal/o-ring-far-from-plug', 'warning', ({ path, seal, on }) => {
  if (seal.kind !== 'o-ring' || on.kind !== 'opening' || on.part.thread === undefined) return []
  const thread = parseThread(on.part.thread)
  if (!thread.ok || thread.value.kind === 'pipe') return []
  const { size } = seal
  const inside =
    size === undefined
      ? checkORing(seal).row?.inside.value
      : convert({ value: Number(size.inside), unit: size.unit }, 'mm').value
  const diameter = convert(thread.value.majorDiameter, 'mm').value
  if (inside === undefined || (inside >= 0.5 * diameter && inside <= 2 * diameter)) return []
  const params = { part: on.name, inside: { value: inside, unit: 'mm' as const }, thread: on.part.thread }
  return [{ path, params }]
})
