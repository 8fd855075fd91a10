import type { Slip } from './notation.js'

/** Common slips in texts of a sheet, besides those of all texts. */
export const SHEET_SLIPS: readonly Slip[] = [
  [/ *(?:\+\/?-|±) *(?=\d)/g, ' ± '],
  [/(-?\d[\d.]*)(?:-|–| - | – )(-?\d[\d.]*) ?(?=°)/g, '$1 to $2 '],
  [/^(?:≥|>=|at least|min\.?) *(?=\d)/, 'min. '],
  [/^(?:≤|<=|at most|up to|max\.?) *(?=\d)/, 'max. '],
  [/ *[+,] *(\d+ *(?:°|deg))/, ' then $1'],
  [/\b(?:yrs?|y)\b/, 'years'],
  [/\b(?:mos?|mths?)\b/, 'months'],
  [/ \[([^\]]*\d[^\]]*)\]/, ' ($1)'],
  [/ *[=/] *(\d[^,;([]*)/, ' ($1)'],
  [/\bhex (?:key|bit|socket)\b/, 'internal hex'],
  [/\bhex(?:agon)? head\b/, 'external hex'],
  [/\b(?:up )?to the (?:\w+ )?edge of the [a-z ]*hole\b/, 'to level hole'],
  [/^(\d+W?(?:-?\d+)?\b)(?!\.)/, 'SAE $1'],
  [/\b([A-Z]+)(\d+) *(?:-|–|to) *\1(\d+)/, 'serial $1 $2 to $3'],
  [/ ?\[(\d)/, ' [p. $1'],
  [/ \((p\. [^)]*)\)/, ' [$1]'],
  [/^every /i, ''],
  [/,? (?:or|and) (?=\d)/, ', '],
  [/,? whichever .*$/, ''],
  [/^(?:hand tight|n\/?a|tbd|unknown|none|not stated|not given|-|–|\?)$/i, 'not stated'],
]
