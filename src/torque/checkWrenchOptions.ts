import { shown } from '../base/index.js'
import { checkNumber, checkObject, checkQuantity } from './checkInput.js'
import type { WrenchOptions } from './wrenchVerdict.js'

/** Throws for anything but options of {@link checkWrench}. Internal. */
export function checkWrenchOptions(options: WrenchOptions): void {
  checkObject('options', options)
  if (options.iso6789 !== '2017' && options.iso6789 !== '2003')
    throw new TypeError(`options.iso6789 must be '2017' or '2003', got ${shown(options.iso6789)}`)
  if (options.tolerancePercent !== undefined) {
    checkNumber('options.tolerancePercent', options.tolerancePercent, 0, true)
    if (options.tolerancePercent >= 100)
      throw new RangeError(`options.tolerancePercent must be below 100, got ${options.tolerancePercent}`)
  }
  if (options.adaptor === undefined) return
  checkObject('options.adaptor', options.adaptor)
  const { kind, extension, angle } = options.adaptor
  if (kind !== undefined && !['crowfoot', 'straight extension', 'drive adaptor'].includes(kind))
    throw new TypeError(
      `options.adaptor.kind must be crowfoot, straight extension or drive adaptor, got ${shown(kind)}`,
    )
  if (extension !== undefined) checkQuantity('options.adaptor.extension', extension, 'length', 0, false)
  if (angle === undefined) return
  checkQuantity('options.adaptor.angle', angle, 'angle', 0, false)
  if (angle.value > 180)
    throw new RangeError(`options.adaptor.angle.value must be 0 to 180, got ${angle.value}`)
}
