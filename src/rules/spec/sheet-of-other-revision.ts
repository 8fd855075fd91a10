import { documentRule } from '../ruleMakers.js'

/**
 * A log, procedure or record that names a revision of its sheet that is not in the set, although another
 * revision is. Its pointers may lead to other figures. Compare the revisions and use the new one. A record
 * keeps the revision that was used at the time.
 * Judges: Finds a `sheet/revision` that no sheet of that id has, if the set has a sheet of that id. It is
 * information for a record.
 * Place: `/sheet/revision`
 * Params: id: as written; revision: as written; known: the revisions in the set
 * Harm: machine
 * House rule.
 */
export const rule = documentRule('machine-log', 'procedure', 'service-record')(
  'spec/sheet-of-other-revision',
  'warning',
  ({ document: { kind, sheet }, set: { sheets } }) => {
    const revisions = sheets
      .filter(({ document }) => document.id === sheet.id)
      .map(({ document }) => document.revision)
    if (revisions.length === 0 || revisions.includes(sheet.revision)) return []
    const params = { id: sheet.id, revision: sheet.revision, known: revisions }
    const severity = kind === 'service-record' ? 'info' : 'warning'
    return [{ path: '/sheet/revision', params, severity }]
  },
)
