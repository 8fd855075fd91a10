import { en } from '../message/en/index.js'
import { explain } from '../message/index.js'
import type { OilLoss } from '../service/index.js'
import { cleanLine } from './cleanLine.js'

/** One line for each gearcase to which oil was added since its last oil change. */
export const describeLosses = (losses: readonly OilLoss[]): readonly string[] =>
  losses
    .filter(({ count }) => count > 0)
    .map(({ verdict, reasons }) =>
      cleanLine(`${verdict.toUpperCase()}  ${explain({ reasons }, en).join(' ')}`),
    )
