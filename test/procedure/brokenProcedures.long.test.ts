import { test } from 'vitest'
import { law } from '../support/law.js'
import { brokenArbitrary } from './brokenProcedures.js'
import { expectRepaired } from './expectRepaired.js'

test('5,000 procedures with 1 to 3 random edits come back right', () => {
  law(5000, brokenArbitrary, expectRepaired)
})
