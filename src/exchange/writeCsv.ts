/**
 * Rows as CSV (RFC 4180, from memory), for a spreadsheet. A text that a spreadsheet would read as a formula gets an
 * apostrophe in front (practice of OWASP, "CSV Injection", from memory).
 */
export function writeCsv(rows: readonly (readonly (string | number | undefined)[])[]): string {
  return rows.map((row) => `${row.map(writeCell).join(',')}\r\n`).join('')
}

function writeCell(cell: string | number | undefined = ''): string {
  if (typeof cell === 'number') return String(cell)
  const safeCell = /^\s*[=+\-@\t\r＝＋－＠]/u.test(cell) ? `'${cell}` : cell
  return /[",\r\n]/.test(safeCell) ? `"${safeCell.replaceAll('"', '""')}"` : safeCell
}
