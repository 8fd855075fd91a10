import { test } from 'vitest'
import { law } from '../support/law.js'
import { brokenArbitrary } from './brokenProcedures.js'
import { expectRepaired } from './expectRepaired.js'

// The other half of the 5,000 is in a separate file, so that two workers share them.
test('2,500 procedures with 1 to 3 random edits come back right', () => {
  law(2500, brokenArbitrary, expectRepaired)
})
