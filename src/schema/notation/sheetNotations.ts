import type { Result } from '../../base/index.js'
import type { Measure, Unit } from '../../quantity/index.js'
import type { SpecCodes } from '../../spec/index.js'
import { createMistakeReporter } from '../reportMistake.js'
import { buildOnce } from '../shapes/makeShape.js'
import {
  drive,
  interval,
  oils,
  place,
  position,
  seal,
  severeUse,
  tightening,
  window,
} from './leafNotations.js'
import { type CommonSlip, makeNotations } from './notation.js'
import {
  access,
  axle,
  bolts,
  condition,
  documentSource,
  emptying,
  fasteners,
  fill,
  filterHold,
  level,
  method,
  oilSpace,
  support,
  uses,
  variant,
} from './partNotations.js'
import { readNotation } from './readNotation.js'
import { reportUnreadableText } from './reportUnreadableText.js'
import { amountOrNotStated, source, withSource } from './valuePieces.js'

const makeValueOf = (measure: Measure, units?: readonly Unit[]) => () =>
  withSource(amountOrNotStated(measure, units))

/** The notations of a sheet. */
export const sheetNotations = () =>
  makeNotations(
    {
      volume: makeValueOf('volume'),
      length: makeValueOf('length'),
      temperature: makeValueOf('temperature'),
      mass: makeValueOf('mass'),
      minutes: makeValueOf('duration', ['min']),
      tightening,
      oils,
      seal,
      interval,
      window,
      place,
      position,
      severeUse,
      access,
      oilSpace,
      fill,
      method,
      level,
      uses,
      emptying,
      filterHold,
      drive,
      fasteners,
      bolts,
      condition,
      variant,
      support,
      axle,
      documentSource,
      source,
    },
    SHEET_SLIPS,
  )

export type SheetNotationName = keyof ReturnType<typeof sheetNotations>

/** The notations of commands that answer a single question. */
const getNotations = /* @__PURE__ */ buildOnce(() =>
  makeNotations({ interval, oils, seal, severeUse, window }, SHEET_SLIPS),
)

/** Parses one text in short notation outside a document, such as a command line argument. */
export function parseNotation(
  name: keyof ReturnType<typeof getNotations>,
  text: string,
): Result<unknown, SpecCodes> {
  const notation = getNotations()[name]
  const reading = readNotation(notation, text)
  if (reading.ok) return { ok: true, value: reading.value, findings: [] }
  return {
    ok: false,
    findings: [reportUnreadableText(notation, text, reading, '', createMistakeReporter({ kind: 'text' }))],
  }
}

/** Common slips in texts of a sheet, besides those of all texts. */
const SHEET_SLIPS: readonly CommonSlip[] = [
  [/ *(\+\/?-|±) *(?=\d)/g, ' ± '],
  [/(-?\d[\d.]*)(?:-|–| - | – )(-?\d[\d.]*) ?(?=°)/g, '$1 to $2 '],
  [/^(≥|>=|at least|min\.?) *(?=\d)/, 'min. '],
  [/^(≤|<=|at most|up to|max\.?) *(?=\d)/, 'max. '],
  [/ *[+,] *(\d+ *(?:°|deg))/, ' then $1'],
  [/\b(yrs?|y)\b/, 'years'],
  [/\b(mos?|mths?)\b/, 'months'],
  [/ \[([^\]]*\d[^\]]*)\]/, ' ($1)'],
  [/ *[=/] *(\d[^,;([]*)/, ' ($1)'],
  [/\bhex (key|bit|socket)\b/, 'internal hex'],
  [/\bhex(agon)? head\b/, 'external hex'],
  [/\b(up )?to the (\w+ )?edge of the [a-z ]*hole\b/, 'to level hole'],
  [/^(\d+W?(?:-?\d+)?\b)(?!\.)/, 'SAE $1'],
  [/\b([A-Z]+)(\d+) *(?:-|–|to) *\1(\d+)/, 'serial $1 $2 to $3'],
  [/ ?\[(\d)/, ' [p. $1'],
  [/ \((p\. [^)]*)\)/, ' [$1]'],
  [/^every /i, ''],
  [/,? (or|and) (?=\d)/, ', '],
  [/,? whichever .*$/, ''],
  [/^(hand tight|n\/?a|tbd|unknown|none|not stated|not given|-|–|\?)$/i, 'not stated'],
]
