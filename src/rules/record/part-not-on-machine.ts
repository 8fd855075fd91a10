import { judgePart } from '../../spec/index.js'
import { entryRule } from '../ruleMakers.js'

/**
 * Work recorded on a part that this machine does not have, by its variant, serial, model year or market. The
 * record belongs to another machine, or the wrong plug was recorded.
 * Judges: Every judged entry: the `appliesTo` of its gearcase, else of each opened opening or cover and of
 * each filter, against the log's `identity`. Finds each part whose answer is `no`. A missing gearcase gives
 * one finding, not one for each of its parts.
 * Place: `/entries/<place>/gearcase`, `/entries/<place>/opened/<place>` or
 * `/entries/<place>/filters/<place>/on`
 * Params: part: name of the gearcase or of the part
 * Harm: record
 * House rule.
 */
export const rule = entryRule(
  'record/part-not-on-machine',
  'error',
  ({ path, entry, sheet, gearcase, identity }) => {
    const isAbsent = (part: string) => judgePart(sheet.document, identity, part).verdict === 'no'
    if (isAbsent(`/gearcases/${entry.gearcase}`))
      return [{ path: `${path}/gearcase`, params: { part: gearcase.name } }]
    const recordedParts = [
      ...entry.opened.map((on, place) => ({ on, at: `opened/${place}` })),
      ...(entry.filters ?? []).map(({ on }, place) => ({ on, at: `filters/${place}/on` })),
    ]
    return recordedParts.flatMap(({ on, at }) => {
      const part = sheet.parts.find((sheetPart) => sheetPart.path === on)
      if (part === undefined || !isAbsent(part.path)) return []
      return [{ path: `${path}/${at}`, params: { part: part.name } }]
    })
  },
)
