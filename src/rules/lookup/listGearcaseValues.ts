import { splitPointer } from '../../base/index.js'
import type { Gearcase, StatedValue } from '../../spec/index.js'
import type { SheetIndex } from './indexSheet.js'
import { lookUp } from './lookUp.js'

/** A stated value of a gearcase; `path` is the pointer as written. */
export interface GearcaseValue {
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
    if (kind !== 'value' || leaf.kind === 'not stated') return []
    const [list, id = '', ...keys] = splitPointer(replaces ?? path) ?? []
    const gearcase = list === 'gearcases' ? lookUp(sheet.document.gearcases, id) : undefined
    if (gearcase === undefined || keys.join('/') !== below) return []
    return [{ path, value: leaf, gearcase, isOverride: replaces !== undefined }]
  })
