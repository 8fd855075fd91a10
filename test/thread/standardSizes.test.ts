import { describe, expect, it } from 'vitest'
import { isStandardHexSize } from '../../src/thread/isStandardHexSize.js'
import { isStandardSquareDrive } from '../../src/thread/isStandardSquareDrive.js'

describe('standard drive sizes (ISO 2936, ISO 272, ISO 1174 from memory)', () => {
  it('knows keys from spanners', () => {
    expect(isStandardHexSize('17 mm', 'internal hex')).toBe(true)
    expect(isStandardHexSize('13 mm', 'internal hex')).toBe(false)
    expect(isStandardHexSize('13 mm', 'external hex')).toBe(true)
    expect(isStandardHexSize('3/8 in', 'internal hex')).toBe(true)
    expect(isStandardHexSize('20 mm', 'external hex')).toBe(false)
  })

  it('matches designations exactly', () => {
    for (const near of ['17mm', '17.0 mm', '17', '17 MM', '9/16', '__proto__', ''])
      expect(isStandardHexSize(near, 'internal hex')).toBe(false)
    expect(isStandardSquareDrive('1/2 in')).toBe(true)
    expect(isStandardSquareDrive('1/2in')).toBe(false)
    expect(isStandardSquareDrive('5/8 in')).toBe(false)
  })

  it('throws TypeError for other types and kinds', () => {
    expect(() => isStandardHexSize(17 as never, 'internal hex')).toThrow(TypeError)
    expect(() => isStandardHexSize('17 mm', 'six-lobe' as never)).toThrow(TypeError)
    expect(() => isStandardSquareDrive(null as never)).toThrow(TypeError)
  })
})
