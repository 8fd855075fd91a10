import { describe, expect, it } from 'vitest'
import { writeCsv } from '../../src/exchange/index.js'

describe('writeCsv', () => {
  it('quotes what would end a cell', () => {
    expect(writeCsv([['a,b', 'say "x"', 'two\nlines', 1.2, -3, undefined]])).toBe(
      '"a,b","say ""x""","two\nlines",1.2,-3,\r\n',
    )
  })

  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', ' =1', '\n=1', '＝1'])(
    '%j is no formula',
    (text) => {
      expect(writeCsv([[text]]).replace(/^"/, '')).toMatch(/^'/)
    },
  )
})
