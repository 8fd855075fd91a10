import { findFastening } from '../lookup/fastenings.js'
import { documentRule } from '../ruleMakers.js'

/**
 * A size of a drive or tool with another spelling: `10mm` for `10 mm`, `3/8in` for `3/8 in`. Sizes are
 * compared as text, so the right socket would not be found.
 * Judges: On a sheet: the `size` of the drive of every opening, of the bolts of covers, of screwed filters and of the
 * fasteners of shields. In a toolbox: the `drive` of wrenches, `from` and `to` of adaptors, `size` and `drive` of
 * sockets. Finds a number, or a fraction with or without a whole number before it, followed by `mm` or `in` without
 * exactly one space, or by `MM`, `"`, `IN`, `inch` or `''`.
 * Place: the size
 * Params: size: as written; meant: the size with one space and `mm` or `in`
 * Harm: job
 * House rule: the spelling of the documentation, `10 mm` and `3/8 in`.
 */
export const rule = documentRule('spec-sheet', 'toolbox')(
  'spec/size-spelling',
  'warning',
  ({ document, sheet }) => {
    const sizes =
      document.kind === 'toolbox'
        ? [
            ...listSizes('/wrenches', document.wrenches, 'drive'),
            ...listSizes('/adaptors', document.adaptors ?? {}, 'from', 'to'),
            ...listSizes('/sockets', document.sockets, 'size', 'drive'),
          ]
        : (sheet?.parts ?? [])
            .map(findFastening)
            .flatMap(({ path, fastening: { drive } }) =>
              drive === undefined || drive.kind === 'not stated' ? [] : listSizes(path, { drive }, 'size'),
            )
    return sizes.flatMap(({ path, size }) => {
      const [, number, unit = ''] = SIZE_PATTERN.exec(size) ?? []
      const meant = number === undefined ? size : `${number} ${/^mm$/i.test(unit) ? 'mm' : 'in'}`
      if (meant === size) return []
      return [{ path, params: { size, meant }, cures: [{ op: 'replace' as const, path, value: meant }] }]
    })
  },
)

const SIZE_PATTERN = /^((?:[0-9]+ )?[0-9]+(?:\.[0-9]+|\/[0-9]+)?) *(mm|in|inch|"|'')$/i

/** The texts under the given keys of each entry of a list. */
function listSizes<Key extends string>(
  list: string,
  entries: Readonly<Record<string, { readonly [K in Key]?: string }>>,
  ...keys: readonly Key[]
) {
  return Object.entries(entries).flatMap(([id, entry]) =>
    keys.flatMap((key) => {
      const size = entry[key]
      return size === undefined ? [] : [{ path: `${list}/${id}/${key}`, size }]
    }),
  )
}
