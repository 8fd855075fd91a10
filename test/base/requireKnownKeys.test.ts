import { expect, test } from 'vitest'
import { requireKnownKeys } from '../../src/base/requireKnownKeys.js'

test('an unknown key is refused with the near one, or with all known keys', () => {
  const known = ['iso6789', 'tolerancePercent']
  const call = (value: object) => () => requireKnownKeys('options', value, known)
  expect(call({ iso6789: '2017', tolerancePercent: undefined })).not.toThrow()
  expect(call({ tolerancePercnt: 5 })).toThrow(
    new TypeError("options must not have the key 'tolerancePercnt'; did you mean tolerancePercent?"),
  )
  expect(call({ colour: 'red' })).toThrow(
    new TypeError("options must not have the key 'colour'; its keys are iso6789, tolerancePercent"),
  )
})
