import { describe, expect, it } from 'vitest'
import { formatOilName } from '../../src/spec/formatOilName.js'
import type { GradeOil } from '../../src/v1/spec.js'

const named = (grade: string, system: GradeOil['system'], category?: string) =>
  formatOilName({
    kind: 'grade',
    grade,
    system,
    limitedSlip: 'not stated',
    ...(category === undefined ? {} : { category }),
  })

describe('formatOilName', () => {
  it.each([
    // How labels and manuals write them: common practice, no source.
    ['80W-90', 'SAE J306', 'GL-5', 'SAE 80W-90, API GL-5'],
    ['90', 'SAE J306', 'GL-4', 'SAE 90, API GL-4'],
    ['30', 'SAE J300', 'SJ', 'SAE 30, API SJ'],
    ['10W-30', 'SAE J300', 'CK-4', 'SAE 10W-30, API CK-4'],
    ['80W', 'SAE J306', undefined, 'SAE 80W'],
    ['VG 220', 'ISO VG', undefined, 'ISO VG 220'],
    ['220', 'ISO VG', 'CLP', 'ISO VG 220, CLP'],
    ['SAE 90', 'SAE J306', 'API GL-4', 'SAE 90, API GL-4'],
  ] as const)('%s by %s with %s', (grade, system, category, name) => {
    expect(named(grade, system, category)).toBe(name)
  })

  it('a fluid by its maker’s name', () => {
    expect(formatOilName({ kind: 'maker fluid', name: 'Brodmark WB-4', limitedSlip: 'not stated' })).toBe(
      'Brodmark WB-4',
    )
  })
})
