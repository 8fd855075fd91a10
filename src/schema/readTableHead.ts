const SEPARATORS = [',', ';', '\t'] as const
/** The name of a column. A colon would mean YAML. */
const COLUMN_PATTERN = /^"?[\p{L}_][\p{L}\p{N}_ .()/°%-]{0,60}"?$/u

/**
 * The columns of a table (CSV): its first two lines have the same number of cells. Undefined if the text is
 * not a table.
 */
export function readTableHead(text: string): readonly string[] | undefined {
  const [head = '', second = ''] = text.slice(0, 4000).split(/\r?\n/, 2)
  for (const separator of SEPARATORS) {
    const columns = head.replace(/^\uFEFF/, '').split(separator)
    if (
      columns.length > 1 &&
      columns.every((column) => COLUMN_PATTERN.test(column)) &&
      second.split(separator).length === columns.length
    )
      return columns.map((column) => column.replaceAll('"', ''))
  }
  return undefined
}
