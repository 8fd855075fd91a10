import { expect, test } from 'vitest'
import { findDetectingCase, listDeletions, STATE_ONLY } from './deletions.js'

// `DRIVETRAIN_LONG=1 npx vitest run --config test/vitest.config.ts test/procedure/deletions.long` prints the table.
test('every need, change and changed field of the table of actions is missed if it is deleted', () => {
  const rows = listDeletions().map(
    (deletion) => [deletion.entry, findDetectingCase(deletion) ?? 'NOTHING'] as const,
  )
  console.log(rows.map(([entry, witness]) => `${entry} | ${witness}`).join('\n'))
  expect(rows.filter(([, witness]) => witness === 'NOTHING').map(([entry]) => entry)).toEqual(STATE_ONLY)
})
