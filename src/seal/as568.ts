/**
 * Rows of AS568 read second hand in a chart: dash number, inside diameter and section in inches. Only the 0xx, 1xx and
 * 2xx rows: the chart's 3xx rows and its -200 contradict other sources.
 */
export const AS568_ROWS: readonly (readonly [string, number, number])[] = [
  ['001', 0.029, 0.04],
  ['004', 0.07, 0.07],
  ['008', 0.176, 0.07],
  ['010', 0.239, 0.07],
  ['012', 0.364, 0.07],
  ['014', 0.489, 0.07],
  ['016', 0.614, 0.07],
  ['020', 0.864, 0.07],
  ['024', 1.114, 0.07],
  ['030', 1.614, 0.07],
  ['110', 0.362, 0.103],
  ['120', 0.987, 0.103],
  ['210', 0.734, 0.139],
  ['214', 0.984, 0.139],
  ['218', 1.234, 0.139],
  ['222', 1.484, 0.139],
  ['226', 1.984, 0.139],
  ['230', 2.484, 0.139],
]
