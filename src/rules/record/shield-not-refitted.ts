import { judgePart } from '../../spec/index.js'
import { listRecordedTightenings } from '../lookup/indexRecord.js'
import { lookUp } from '../lookup/lookUp.js'
import { recordRule } from '../ruleMakers.js'

/**
 * A shield that must be removed for the work but is not recorded as refitted. Without its guard a machine can
 * injure someone; without its skid plate it can lose the drain plug.
 * Judges: Every judged entry with an `opened` part: each of the `shields` of its gearcase that is on the
 * sheet and that the machine certainly has. Finds a shield if no recorded tightening has its pointer
 * `/shields/<id>` as `on`; one finding for each shield of a record. Skipped if `shields` of the record names
 * a part that the sheet does not have.
 * Place: `/entries/<place>/gearcase` of the first entry for which it is removed
 * Params: shield: its name; gearcase: name of the gearcase
 * Harm: injury
 * Common practice, no source.
 */
export const rule = recordRule('record/shield-not-refitted', 'error', ({ document, record }) => {
  const refittedShields = new Set(listRecordedTightenings(document).map(({ done }) => done.on))
  return record.entries.flatMap(({ path, entry, gearcase, sheet, identity }) => {
    const isKnown = (on: string) => sheet.parts.some(({ path: part }) => part === on)
    if (!(document.shields ?? []).every(({ on }) => isKnown(on))) return []
    if (entry.opened.length === 0) return []
    return (gearcase.shields ?? []).flatMap((id) => {
      const on = `/shields/${id}`
      const shield = lookUp(sheet.document.shields, id)
      if (shield === undefined || shield.reachedThrough === true || refittedShields.has(on)) return []
      if (judgePart(sheet.document, identity, on).verdict !== 'yes') return []
      refittedShields.add(on)
      return [{ path: `${path}/gearcase`, params: { shield: shield.name, gearcase: gearcase.name } }]
    })
  })
})
