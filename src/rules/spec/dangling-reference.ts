import { unknownName } from '../lookup/unknownName.js'
import { defineRule } from '../rule.js'

/**
 * A sheet that names a source, axle, support, gearcase, opening, cover, shield or service that it does not
 * have: mistyped, or taken out and forgotten here. Nothing that hangs on it could be found. House rule.
 */
export const danglingReference = defineRule({
  code: 'spec/dangling-reference',
  severity: 'error',
  about: 'spec-sheet',
  check: ({ sheet }) =>
    sheet.references.flatMap(({ path, to, id, known }) => {
      if (known.includes(id)) return []
      const complaint = unknownName(path, id, known)
      return [{ ...complaint, params: { to, ...complaint.params } }]
    }),
})
