import { en } from '../message/en/index.js'
import { explain } from '../message/index.js'
import type { OilLoss } from '../service/index.js'
import { safeLine } from './safeLine.js'

/** One line for each gearcase to which oil was added since its last change. */
export const lossLines = (losses: readonly OilLoss[]): readonly string[] =>
  losses
    .filter(({ count }) => count > 0)
    .map(({ verdict, reasons }) =>
      safeLine(`${verdict.toUpperCase()}  ${explain({ reasons }, en).join(' ')}`),
    )
