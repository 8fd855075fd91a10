import fc from 'fast-check'
import { test } from 'vitest'
import { law } from '../support/law.js'
import { brokenArbitrary } from './brokenProcedures.js'
import { expectRepaired } from './expectRepaired.js'

test('2,500 others come back right', () => {
  // The number in front gives other cases from the same seed.
  law(2500, fc.nat(), brokenArbitrary, (_place, broken) => expectRepaired(broken))
})
