import { expect, test } from 'vitest'
import { requireKnownKeys } from '../../src/base/requireKnownKeys.js'

test('an unknown key is refused with a similar one, or with all known keys', () => {
  const known = ['iso6789', 'tolerancePercent']
  const call = (value: object) => () => requireKnownKeys('options', value, known)
  expect(call({ iso6789: '2017', tolerancePercent: undefined })).not.toThrow()
  expect(call({ tolerancePercnt: 5 })).toThrow(
    new TypeError("options must not have the key 'tolerancePercnt'; did you mean tolerancePercent?"),
  )
  expect(call({ colour: 'red' })).toThrow(
    new TypeError("options must not have the key 'colour'; its keys are iso6789, tolerancePercent"),
  )
  // one place that differs by two letters counts as similar, two places do not
  for (const near of ['tolerancePercen', 'ttolerancePercent', 'tolerancepercent', 'tolerancePrecent'])
    expect(call({ [near]: 5 })).toThrow('did you mean tolerancePercent?')
  for (const farName of ['tolerance', 'toleranceePercentt', 'ISO6788', 'iso6789iso6789', 'i'])
    expect(call({ [farName]: 5 })).toThrow('its keys are iso6789, tolerancePercent')
})
