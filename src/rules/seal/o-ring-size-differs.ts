import type { JsonPointer } from '../../base/index.js'
import { checkORing } from '../../seal/index.js'
import type { Seal, SpecSheet, Stock } from '../../spec/index.js'
import type { SheetIndex } from '../lookup/indexSheet.js'
import { documentRule } from '../ruleMakers.js'

/**
 * An o-ring whose number and printed size belong to different rings. One of them was read from the wrong line
 * of the table, and the wrong ring would be bought.
 * Judges: Every o-ring of a sheet, including overrides, or of a stock, with `designation` and `size`. Finds a
 * dash number of 0xx to 2xx, or a JIS number of series P or G, whose inside diameter or section in the table
 * differs from the size. Other numbers are not judged.
 * Place: `<seal>/size`
 * Params: part: the name of the part (see terms), or the name of the ring in the stock; reason: code and params of
 * the judgement
 * Harm: job
 * Source: AS568 rows 0xx to 2xx, from a secondary source. JIS B 2401 rows from memory.
 */
export const rule = documentRule('spec-sheet', 'stock')(
  'seal/o-ring-size-differs',
  'error',
  ({ document, sheet }) =>
    listSeals(document, sheet).flatMap(({ path, seal, name }) => {
      if (seal.kind !== 'o-ring') return []
      const { verdict, reasons } = checkORing(seal)
      const [reason] = reasons
      if (verdict !== 'differs' || reason === undefined) return []
      return [{ path: `${path}/size`, params: { part: name, reason: { ...reason } } }]
    }),
)

/** The seals of a sheet or a stock, each with the name of its part or its name in the stock. */
function listSeals(
  document: SpecSheet | Stock,
  sheet: SheetIndex | undefined,
): readonly { readonly path: JsonPointer; readonly seal: Seal; readonly name: string }[] {
  if (document.kind === 'stock')
    return Object.entries(document.seals).map(([id, stockSeal]) => ({
      ...stockSeal,
      path: `/seals/${id}/seal`,
    }))
  return (sheet?.seals ?? []).map(({ path, seal, on }) => ({ path, seal, name: on.name }))
}
