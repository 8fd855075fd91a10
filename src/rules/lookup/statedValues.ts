import { type JsonPointer, splitPointer } from '../../base/index.js'
import type { Exact, Unit } from '../../quantity/index.js'
import {
  compareExact,
  findNearestDouble,
  findNearestQuantity,
  getStatedEnds,
  measureOf,
  readBand,
} from '../../quantity/index.js'
import type { Gearcase, SpecValue, StatedValue } from '../../spec/index.js'
import type { SheetIndex, ValuePair } from './indexSheet.js'
import { lookUp } from './lookUp.js'
import { hasFigure } from './printedValues.js'

/** Whether the printed figures of a value disagree, which another finding reports. */
export const hasDisagreement = ({ disagreements }: SheetIndex, path: JsonPointer): boolean =>
  disagreements.some((disagreement) => disagreement.path === path || disagreement.path.startsWith(`${path}/`))

/**
 * The lowest and highest of the first printed figures of a stated value, in `unit`. Undefined if the value
 * has no figure or another measure; other rules report these.
 */
export function readStatedRange(value: StatedValue, unit: Unit) {
  if (measureOf(value.unit) !== measureOf(unit) || !hasFigure(value)) return undefined
  const { low, high } = getStatedEnds(readBand(value, unit))
  return { low: findNearestDouble(low), high: findNearestDouble(high) }
}

/**
 * The low and high ends of a stated volume in exact millilitres. Undefined if it is not stated, not a volume,
 * or has no figure.
 */
export function readStatedVolume(value: SpecValue | undefined) {
  if (value === undefined || value.kind === 'not stated' || measureOf(value.unit) !== 'volume')
    return undefined
  return hasFigure(value) ? getStatedEnds(readBand(value, 'mL')) : undefined
}

/** Finds pairs whose first volume is certainly larger: its low end exceeds the other's high end. */
export const findLargerVolumes = (pairs: readonly ValuePair[]) =>
  pairs.flatMap(({ path, one, other }) => {
    const low = readStatedVolume(one)?.low
    const high = readStatedVolume(other)?.high
    if (low === undefined || high === undefined || compareExact(low, high) <= 0) return []
    return [{ path, low: toMillilitres(low), high: toMillilitres(high) }]
  })

/** A volume for params, in millilitres. */
export const toMillilitres = (volume: Exact) => findNearestQuantity(volume, 'mL', 'mL')

/** A stated value of a gearcase; `path` is the pointer as written. */
interface GearcaseValue {
  readonly path: string
  readonly value: StatedValue
  readonly gearcase: Gearcase
  readonly isOverride: boolean
}

/**
 * The stated values of all gearcases at one relative pointer, such as `oilSpace/fill/dryFill`, including
 * overrides.
 */
export const listGearcaseValues = (sheet: SheetIndex, below: string): readonly GearcaseValue[] =>
  sheet.leaves.flatMap(({ kind, leaf, path, replaces }) => {
    const place = replaces ?? path
    if (kind !== 'value' || leaf.kind === 'not stated' || !place.endsWith(`/${below}`)) return []
    const [list, id = '', ...keys] = splitPointer(place) ?? []
    const gearcase = list === 'gearcases' ? lookUp(sheet.document.gearcases, id) : undefined
    if (gearcase === undefined || keys.join('/') !== below) return []
    return [{ path, value: leaf, gearcase, isOverride: replaces !== undefined }]
  })
