/** The grade systems on sheets and labels. */
export type GradeSystem = 'SAE J306' | 'SAE J300' | 'ISO VG'

/**
 * Editions with limits in this library. The editions of SAE J306 and J300 have different limits. The year of
 * ISO 3448 is from memory; its rule (midpoint ±10 %) is the same in every source read.
 */
export const GRADE_EDITIONS = {
  'SAE J306': ['2019', '2005', 'before 2005'],
  'SAE J300': ['since 2013', 'before 2013'],
  'ISO VG': ['1992'],
} as const

export type GradeEdition = (typeof GRADE_EDITIONS)[GradeSystem][number]

/** Limits in mm²/s at 100 °C (SAE) or 40 °C (ISO); SAE maxima are exclusive, ISO maxima inclusive. */
interface GradeRow {
  readonly min: number
  readonly max?: number
  /** SAE J306 W grades: highest temperature, °C, at which the viscosity may be 150,000 mPa·s. */
  readonly cold?: number
  /** `secondary source`: charts that quote the standard; `from memory`: not read in any source. */
  readonly basis: 'secondary source' | 'from memory'
}

type GradeRows = Readonly<Record<string, GradeRow>>
const basis = 'secondary source'

const J306_2019: GradeRows = {
  '70W': { min: 3.8, cold: -55, basis },
  '75W': { min: 3.8, cold: -40, basis },
  '80W': { min: 8.5, cold: -26, basis },
  '85W': { min: 11, cold: -12, basis },
  '65': { min: 3.8, max: 5, basis },
  '70': { min: 5, max: 6.5, basis },
  '75': { min: 6.5, max: 8.5, basis },
  '80': { min: 8.5, max: 11, basis },
  '85': { min: 11, max: 13.5, basis },
  '90': { min: 13.5, max: 18.5, basis },
  '110': { min: 18.5, max: 24, basis },
  '140': { min: 24, max: 32.5, basis },
  '190': { min: 32.5, max: 41, basis },
  '250': { min: 41, basis },
}

const J306_2005: GradeRows = {
  '70W': { min: 4.1, cold: -55, basis },
  '75W': { min: 4.1, cold: -40, basis },
  '80W': { min: 7, cold: -26, basis },
  '85W': { min: 11, cold: -12, basis },
  '80': { min: 7, max: 11, basis },
  '85': { min: 11, max: 13.5, basis },
  '90': { min: 13.5, max: 18.5, basis },
  '110': { min: 18.5, max: 24, basis },
  '140': { min: 24, max: 32.5, basis },
  '190': { min: 32.5, max: 41, basis },
  '250': { min: 41, basis },
}

const J306_BEFORE_2005: GradeRows = {
  '70W': { min: 4.1, cold: -55, basis: 'from memory' },
  '75W': { min: 4.1, cold: -40, basis: 'from memory' },
  '80W': { min: 7, cold: -26, basis: 'from memory' },
  '85W': { min: 11, cold: -12, basis: 'from memory' },
  '90': { min: 13.5, max: 24, basis },
  '140': { min: 24, max: 41, basis },
  '250': { min: 41, basis },
}

const J300_BEFORE_2013: GradeRows = {
  '0W': { min: 3.8, basis },
  '5W': { min: 3.8, basis },
  '10W': { min: 4.1, basis },
  '15W': { min: 5.6, basis },
  '20W': { min: 5.6, basis },
  '25W': { min: 9.3, basis },
  '20': { min: 5.6, max: 9.3, basis },
  '30': { min: 9.3, max: 12.5, basis },
  '40': { min: 12.5, max: 16.3, basis },
  '50': { min: 16.3, max: 21.9, basis },
  '60': { min: 21.9, max: 26.1, basis },
}

const J300_SINCE_2013: GradeRows = /* @__PURE__ */ Object.assign({}, J300_BEFORE_2013, {
  '8': { min: 4, max: 6.1, basis },
  '12': { min: 5, max: 7.1, basis: 'from memory' },
  '16': { min: 6.1, max: 8.2, basis },
  '20': { min: 6.9, max: 9.3, basis },
})

const ISO_VG: GradeRows = {
  '2': { min: 1.98, max: 2.42, basis },
  '3': { min: 2.88, max: 3.52, basis },
  '5': { min: 4.14, max: 5.06, basis },
  '7': { min: 6.12, max: 7.48, basis },
  '10': { min: 9, max: 11, basis },
  '15': { min: 13.5, max: 16.5, basis },
  '22': { min: 19.8, max: 24.2, basis },
  '32': { min: 28.8, max: 35.2, basis },
  '46': { min: 41.4, max: 50.6, basis },
  '68': { min: 61.2, max: 74.8, basis },
  '100': { min: 90, max: 110, basis },
  '150': { min: 135, max: 165, basis },
  '220': { min: 198, max: 242, basis },
  '320': { min: 288, max: 352, basis },
  '460': { min: 414, max: 506, basis },
  '680': { min: 612, max: 748, basis },
  '1000': { min: 900, max: 1100, basis },
  '1500': { min: 1350, max: 1650, basis: 'from memory' },
  '2200': { min: 1980, max: 2420, basis: 'from memory' },
  '3200': { min: 2880, max: 3520, basis: 'from memory' },
}

/**
 * Grades that an edition added and whose limits were not read: 62W to 65W of SAE J306:2025, named in a
 * laboratory's summary (excerpt of a page read). They are accepted as grades, but their viscosity is not
 * judged.
 */
export const GRADES_WITHOUT_LIMITS: Readonly<Record<GradeSystem, readonly string[]>> = {
  'SAE J306': ['62W', '63W', '64W', '65W'],
  'SAE J300': [],
  'ISO VG': [],
}

/** The rows of one edition, for {@link findGradeBand}. */
export function listRows(system: GradeSystem, edition: string): GradeRows {
  if (system === 'ISO VG') return ISO_VG
  if (system === 'SAE J300') return edition === 'before 2013' ? J300_BEFORE_2013 : J300_SINCE_2013
  return edition === '2019' ? J306_2019 : edition === '2005' ? J306_2005 : J306_BEFORE_2005
}
