import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { GradeOil, MakerFluid } from '../../src/spec/leaf.js'
import type { OfferedOil } from '../../src/spec/stock.js'
import { type OilFacts, oilMeets } from '../../src/v1/oil.js'
import { law } from '../support/law.js'

const permitted = (more: Partial<GradeOil> = {}): GradeOil => ({
  kind: 'grade',
  grade: '80W-90',
  system: 'SAE J306',
  limitedSlip: 'either',
  ...more,
})
const offered = (more: Partial<OfferedOil> = {}): OfferedOil => ({
  name: 'Skarn Gear',
  grade: '80W-90',
  system: 'SAE J306',
  ...more,
})
const plainFacts: OilFacts = { yellowMetal: 'not stated' }
const codes = (verdict: { reasons: readonly { code: string }[] }) => verdict.reasons.map(({ code }) => code)

describe('viscosity', () => {
  const cases: [string, Partial<GradeOil>, Partial<OfferedOil>, string, string][] = [
    ['the same grade', {}, {}, 'yes', 'oil/grade-same'],
    ['the same, spelt otherwise', {}, { grade: 'SAE 80w90' }, 'yes', 'oil/grade-same'],
    ['a multigrade for a single grade', { grade: '90' }, {}, 'yes', 'oil/multigrade-covers'],
    ['a multigrade for its W grade', { grade: '80W' }, {}, 'yes', 'oil/multigrade-covers'],
    ['thinner in the cold', {}, { grade: '75W-90' }, 'ask', 'oil/winter-grade-colder'],
    ['thicker in the cold', {}, { grade: '85W-90' }, 'no', 'oil/winter-grade-warmer'],
    ['no W grade', {}, { grade: '90' }, 'no', 'oil/winter-grade-missing'],
    ['another hot grade', {}, { grade: '80W-140' }, 'no', 'oil/grade-differs'],
    ['only a W grade', {}, { grade: '80W' }, 'no', 'oil/grade-differs'],
    ['80W-140 for 80W', { grade: '80W' }, { grade: '80W-140' }, 'ask', 'oil/hot-grade-thicker'],
    ['75W-140 for 75W', { grade: '75W' }, { grade: '75W-140' }, 'ask', 'oil/hot-grade-thicker'],
    ['75W-90 for 75W', { grade: '75W' }, { grade: '75W-90' }, 'yes', 'oil/multigrade-covers'],
    ['80W for 80W-140', { grade: '80W-140' }, { grade: '80W' }, 'no', 'oil/grade-differs'],
    ['75W for 75W-140', { grade: '75W-140' }, { grade: '75W' }, 'no', 'oil/grade-differs'],
    ['110 for 90 of 1998', { grade: '90', edition: '1998' }, { grade: '110' }, 'ask', 'oil/grade-renamed'],
    ['110 for 90 of 2012', { grade: '90', edition: '2012' }, { grade: '110' }, 'no', 'oil/grade-differs'],
    ['110 for 90 of 2025', { grade: '90', edition: '2025' }, { grade: '110' }, 'no', 'oil/grade-differs'],
    ['110 for 90, edition unnamed', { grade: '90' }, { grade: '110' }, 'ask', 'oil/grade-renamed'],
    [
      '110 for 90 of before 2005',
      { grade: '90', edition: 'before 2005' },
      { grade: '110' },
      'ask',
      'oil/grade-renamed',
    ],
    ['110 for 90 of 2019', { grade: '90', edition: '2019' }, { grade: '110' }, 'no', 'oil/grade-differs'],
    [
      '16 for 20 of J300',
      { system: 'SAE J300', grade: '20' },
      { system: 'SAE J300', grade: '16' },
      'no',
      'oil/grade-differs',
    ],
    [
      'VG 220 for VG 220',
      { system: 'ISO VG', grade: 'VG 220' },
      { system: 'ISO VG', grade: '220' },
      'yes',
      'oil/grade-same',
    ],
    [
      'VG 320 for VG 220',
      { system: 'ISO VG', grade: 'VG 220' },
      { system: 'ISO VG', grade: '320' },
      'no',
      'oil/grade-differs',
    ],
    ['another system', {}, { system: 'ISO VG', grade: '220' }, 'ask', 'oil/systems-differ'],
    ['a grade that is none', { grade: '95' }, {}, 'ask', 'oil/grade-not-known'],
    ['a label that is none', {}, { grade: '95' }, 'ask', 'oil/grade-not-known'],
    ['a label 10W-30 called J306', {}, { grade: '10W-30' }, 'ask', 'oil/grade-not-known'],
  ]
  it.each(cases)('%s', (_, requirement, label, answer, code) => {
    const judgement = oilMeets(permitted(requirement), offered(label), plainFacts)
    expect(judgement.viscosity).toBe(answer)
    expect(judgement.verdict).toBe(answer)
    expect(codes(judgement)).toContain(code)
  })

  it('a label without a grade is judged by its viscosity, which never makes it a yes', () => {
    const label = (kv100?: number): OfferedOil => ({
      name: 'Skarn Gear',
      ...(kv100 === undefined ? {} : { kv100: { value: kv100, unit: 'mm2/s' } }),
    })
    expect(oilMeets(permitted(), label(), plainFacts)).toMatchObject({ viscosity: 'cannot tell' })
    expect(codes(oilMeets(permitted(), label(), plainFacts))[0]).toBe('oil/grade-not-on-label')
    expect(codes(oilMeets(permitted({ edition: '2019' }), label(18.4), plainFacts))[0]).toBe(
      'oil/viscosity-inside-band',
    )
    expect(oilMeets(permitted({ edition: '2019' }), label(18.4), plainFacts).viscosity).toBe('ask')
    // 90 of 2019 ends below 18.5; before 2005 it ended below 24.0
    expect(oilMeets(permitted({ edition: '2019' }), label(18.5), plainFacts).viscosity).toBe('no')
    expect(oilMeets(permitted({ edition: 'before 2005' }), label(18.5), plainFacts).viscosity).toBe('ask')
    expect(oilMeets(permitted(), label(18.5), plainFacts).viscosity).toBe('ask')
  })

  it('another system with a viscosity outside the band is a no', () => {
    const iso = offered({ system: 'ISO VG', grade: '220', kv100: { value: 19, unit: 'mm2/s' } })
    const judgement = oilMeets(permitted({ edition: '2019' }), iso, plainFacts)
    expect(judgement.viscosity).toBe('no')
    expect(codes(judgement).slice(0, 2)).toEqual(['oil/systems-differ', 'oil/viscosity-outside-band'])
    const oilInRange = { ...iso, kv100: { value: 18, unit: 'mm2/s' } } as const
    expect(oilMeets(permitted({ edition: '2019' }), oilInRange, plainFacts).viscosity).toBe('ask')
  })

  it('a label whose viscosity is outside its grade is questioned', () => {
    const judgement = oilMeets(permitted(), offered({ kv100: { value: 12, unit: 'mm2/s' } }), plainFacts)
    expect(judgement.viscosity).toBe('ask')
    expect(codes(judgement)[0]).toBe('oil/label-contradicts-viscosity')
    const right = oilMeets(permitted(), offered({ kv100: { value: 14.5, unit: 'mm2/s' } }), plainFacts)
    expect(right.viscosity).toBe('yes')
  })

  it('a label of 0 mm²/s, as a document may hold it, is in no band', () => {
    const judgement = oilMeets(permitted(), offered({ kv100: { value: 0, unit: 'mm2/s' } }), plainFacts)
    expect(codes(judgement)[0]).toBe('oil/label-contradicts-viscosity')
  })

  it('an edition that is not held is named and all are considered', () => {
    const judgement = oilMeets(
      permitted({ grade: '90', edition: '1978' }),
      offered({ grade: '110' }),
      plainFacts,
    )
    expect(codes(judgement).slice(0, 2)).toEqual(['oil/edition-not-known', 'oil/grade-renamed'])
  })
})

describe('category', () => {
  const cases: [
    string,
    string | undefined,
    string[] | undefined,
    'yes' | 'no' | 'not stated',
    string,
    string,
  ][] = [
    ['not named by the manual', undefined, ['GL-5'], 'yes', 'not judged', 'oil/category-not-stated'],
    ['the same', 'GL-4', ['GL-4'], 'yes', 'yes', 'oil/category-on-label'],
    ['the same, spelt otherwise', 'GL-4', ['API GL 4'], 'yes', 'yes', 'oil/category-on-label'],
    ['not on the label', 'GL-4', undefined, 'no', 'cannot tell', 'oil/category-not-on-label'],
    ['an empty label', 'GL-4', [], 'no', 'cannot tell', 'oil/category-not-on-label'],
    ['GL-5 for GL-4 with yellow metal', 'GL-4', ['GL-5'], 'yes', 'no', 'oil/category-harms-yellow-metal'],
    [
      'GL-5 for GL-4, metal not stated',
      'GL-4',
      ['GL-5'],
      'not stated',
      'cannot tell',
      'oil/category-yellow-metal-unknown',
    ],
    [
      'GL-5 for GL-4 without yellow metal',
      'GL-4',
      ['GL-5'],
      'no',
      'yes',
      'oil/category-higher-no-yellow-metal',
    ],
    ['both at once for GL-4', 'GL-4', ['GL-4', 'GL-5'], 'yes', 'ask', 'oil/category-dual-rated'],
    [
      'both at once for GL-4, not stated',
      'GL-4',
      ['GL-4', 'GL-5'],
      'not stated',
      'ask',
      'oil/category-dual-rated',
    ],
    ['both at once for GL-5', 'GL-5', ['GL-4', 'GL-5'], 'yes', 'yes', 'oil/category-on-label'],
    [
      'both for GL-5, metal not stated',
      'GL-5',
      ['GL-5', 'GL-4'],
      'not stated',
      'yes',
      'oil/category-on-label',
    ],
    ['GL-4 for GL-3', 'GL-3', ['GL-4'], 'yes', 'ask', 'oil/category-doubtful'],
    ['GL-5 for GL-3', 'GL-3', ['GL-5'], 'no', 'no', 'oil/category-differs'],
    ['MT-1 for GL-1', 'GL-1', ['MT-1'], 'no', 'ask', 'oil/category-doubtful'],
    ['GL-1 for MT-1', 'MT-1', ['GL-1'], 'no', 'no', 'oil/category-differs'],
    ['both at once, no yellow metal', 'GL-4', ['GL-4', 'GL-5'], 'no', 'yes', 'oil/category-on-label'],
    ['GL-4 for GL-5', 'GL-5', ['GL-4'], 'no', 'no', 'oil/category-differs'],
    ['MT-1 for GL-5', 'GL-5', ['MT-1'], 'no', 'no', 'oil/category-differs'],
    ['GL-5 and MT-1 for GL-5', 'GL-5', ['MT-1', 'GL-5'], 'yes', 'yes', 'oil/category-on-label'],
    ['a maker’s own category', 'Invented Axle 3', ['GL-5'], 'no', 'ask', 'oil/category-doubtful'],
    [
      'a maker’s own category on the label',
      'Invented Axle 3',
      ['Invented Axle 3'],
      'no',
      'yes',
      'oil/category-on-label',
    ],
  ]
  it.each(cases)('%s', (_, category, categories, yellowMetal, answer, code) => {
    const judgement = oilMeets(
      permitted(category === undefined ? {} : { category }),
      offered(categories === undefined ? {} : { categories }),
      { yellowMetal },
    )
    expect(judgement.category).toBe(answer)
    expect(codes(judgement)).toContain(code)
    expect(judgement.verdict).toBe(answer === 'not judged' ? 'yes' : answer)
  })
})

describe('limited slip', () => {
  const additive = { name: 'Skarn LS', volume: { kind: 'not stated' }, includedInRefill: true } as const
  const cases: [string, Partial<GradeOil>, OfferedOil['limitedSlip'], string, string][] = [
    ['either', { limitedSlip: 'either' }, 'contains additive', 'yes', 'oil/limited-slip-fits'],
    ['required, contained', { limitedSlip: 'required' }, 'contains additive', 'yes', 'oil/limited-slip-fits'],
    [
      'required, absent',
      { limitedSlip: 'required' },
      'no additive',
      'no',
      'oil/limited-slip-additive-missing',
    ],
    [
      'required, unknown',
      { limitedSlip: 'required' },
      'not stated',
      'cannot tell',
      'oil/limited-slip-not-on-label',
    ],
    [
      'required, added apart',
      { limitedSlip: 'required', additive },
      'no additive',
      'yes',
      'oil/limited-slip-additive-separate',
    ],
    [
      'added apart and contained',
      { limitedSlip: 'required', additive },
      'contains additive',
      'ask',
      'oil/limited-slip-additive-twice',
    ],
    [
      'not permitted, contained',
      { limitedSlip: 'not permitted' },
      'contains additive',
      'no',
      'oil/limited-slip-not-permitted',
    ],
    [
      'not permitted, absent',
      { limitedSlip: 'not permitted' },
      'no additive',
      'yes',
      'oil/limited-slip-fits',
    ],
    [
      'not permitted, unknown',
      { limitedSlip: 'not permitted' },
      undefined,
      'cannot tell',
      'oil/limited-slip-not-on-label',
    ],
    [
      'manual silent, contained',
      { limitedSlip: 'not stated' },
      'contains additive',
      'ask',
      'oil/limited-slip-not-mentioned',
    ],
    [
      'manual silent, absent',
      { limitedSlip: 'not stated' },
      'no additive',
      'not judged',
      'oil/limited-slip-not-stated',
    ],
  ]
  it.each(cases)('%s', (_, requirement, limitedSlip, answer, code) => {
    const label = offered(limitedSlip === undefined ? {} : { limitedSlip })
    const judgement = oilMeets(permitted(requirement), label, plainFacts)
    expect(judgement.limitedSlip).toBe(answer)
    expect(codes(judgement)).toContain(code)
  })
})

describe('a maker’s fluid', () => {
  const fluid: MakerFluid = { kind: 'maker fluid', name: 'Tallin Wet Brake 2', limitedSlip: 'not stated' }
  it.each([
    ['named on the label', { makerFluids: ['Other', 'TALLIN  wet brake 2 '] }, 'yes'],
    ['the fluid itself', { name: 'Tallin Wet Brake 2' }, 'yes'],
    ['nearly the name', { makerFluids: ['Tallin Wet Brake'] }, 'no'],
    ['only the viscosity', { kv100: { value: 9, unit: 'mm2/s' } }, 'no'],
  ] as const)('%s', (_, label, answer) => {
    const judgement = oilMeets(fluid, offered({ categories: ['GL-4'], ...label }), plainFacts)
    expect(judgement).toMatchObject({ verdict: answer, viscosity: answer, category: answer })
  })
})

describe('ambient and the whole', () => {
  const coldRequirement = permitted({ ambient: { kind: 'limits', max: '30', unit: 'degC' } })
  it('is judged only where a temperature is given', () => {
    expect(oilMeets(coldRequirement, offered(), plainFacts)).toMatchObject({
      ambient: 'not judged',
      verdict: 'yes',
    })
    const at = (value: number) =>
      oilMeets(coldRequirement, offered(), { ...plainFacts, ambient: { value, unit: 'degC' } })
    expect(at(30)).toMatchObject({ ambient: 'yes', verdict: 'yes' })
    expect(at(30.01)).toMatchObject({ ambient: 'no', verdict: 'no' })
  })

  it('no outweighs ask, ask outweighs yes (law over all aspects)', () => {
    const categories = fc.subarray(['GL-4', 'GL-5', 'MT-1', 'X'])
    const grade = fc.constantFrom('80W-90', '75W-90', '90', '85W-140', 'nonsense')
    const slip = fc.constantFrom('required', 'not permitted', 'either', 'not stated' as const)
    const label = fc.constantFrom('contains additive', 'no additive', 'not stated' as const)
    const metal = fc.constantFrom('yes', 'no', 'not stated' as const)
    law(50, categories, grade, slip, label, metal, (listed, name, requirement, isNamed, yellowMetal) => {
      const judgement = oilMeets(
        permitted({ limitedSlip: requirement as 'either', category: 'GL-4' }),
        offered({ grade: name, categories: listed, limitedSlip: isNamed as 'not stated' }),
        { yellowMetal: yellowMetal as 'yes' },
      )
      const aspects = [judgement.viscosity, judgement.category, judgement.limitedSlip, judgement.ambient]
      const expected = (['no', 'cannot tell', 'ask'] as const).find((word) => aspects.includes(word)) ?? 'yes'
      expect(judgement.verdict).toBe(expected)
      expect(judgement.reasons.length).toBeGreaterThanOrEqual(3)
    })
  })

  it('the order of a label’s categories does not matter (law)', () => {
    const lists = fc.shuffledSubarray(['GL-4', 'GL-5', 'MT-1', 'GL-1'])
    law(50, lists, (listed) => {
      const ask = (categories: string[]) =>
        oilMeets(permitted({ category: 'GL-4' }), offered({ categories }), { yellowMetal: 'yes' }).category
      expect(ask(listed)).toBe(ask([...listed].reverse()))
    })
  })

  it('the first reason is one that decides', () => {
    const harms = oilMeets(
      permitted({ category: 'GL-4', limitedSlip: 'required' }),
      offered({ categories: ['GL-5'] }),
      {
        yellowMetal: 'yes',
        ambient: { value: 20, unit: 'degC' },
      },
    )
    expect(codes(harms)).toEqual([
      'oil/category-harms-yellow-metal',
      'oil/limited-slip-not-on-label',
      'oil/grade-same',
      'oil/ambient-not-limited',
    ])
  })

  it('does not change its arguments and survives hostile texts', () => {
    const label = Object.freeze(offered({ categories: Object.freeze(['GL-5']) as string[] }))
    const before = JSON.stringify(label)
    oilMeets(Object.freeze(permitted({ category: 'GL-4' })), label, Object.freeze({ yellowMetal: 'yes' }))
    expect(JSON.stringify(label)).toBe(before)
    const longCategory = 'G'.repeat(100_000)
    expect(
      oilMeets(permitted({ category: longCategory }), offered({ categories: ['__proto__'] }), plainFacts)
        .category,
    ).toBe('ask')
  })

  it('throws for misuse, naming the argument', () => {
    // @ts-expect-error
    expect(() => oilMeets(undefined, offered(), plainFacts)).toThrow(/permitted must be an object/)
    // @ts-expect-error
    expect(() => oilMeets(permitted(), 'oil', plainFacts)).toThrow(/offered must be an object/)
    // @ts-expect-error
    expect(() => oilMeets(permitted(), offered(), { yellowMetal: 'bronze' })).toThrow(/yellowMetal/)
    const invalidFacts = { ...plainFacts, ambient: { value: Number.NaN, unit: 'degC' } } as const
    expect(() => oilMeets(permitted(), offered(), invalidFacts)).toThrow(RangeError)
  })
})
