import { published } from '../support/published.js'

/** The acceleration of the books, m/s². This library uses standard gravity, 9.80665 m/s², so times differ by the ratio. */
export const BOOK_GRAVITY = 9.81

/**
 * A cylindrical reservoir (diameter D, depth Z) drains through a laminar tube (d, L) whose outlet is h below the floor:
 * t0 = (1/C)·ln(1 + Z0/h), C = ρ·g·d⁴/(32·µ·L·D²).
 */
export const WHITE_6_27 = published(
  {
    room: 'fill',
    source: 'F. M. White, Fluid Mechanics',
    edition: '5th',
    place: 'problem 6.27',
    read: 'calculated',
    agrees: 'to the digits shown',
    note: 'the formula was read in a copy of the solutions; its numbers were calculated from it outside this code',
  },
  {
    viscosity: 100,
    boreMm: 12,
    diameterMm: 120,
    lengthM: 1.5,
    depthM: 0.1,
    seconds: '21.930',
    firstFlow: '53.255',
    reynolds: '56.5',
    millilitres: '1131.0',
  },
)

/** A bulb of 8 cm³, ρ 998 kg/m³, µ 0.001 Pa·s, tube of 0.12 m, head 0.14 m in all, empty in 6 s. */
export const WHITE_6_17B = published(
  {
    room: 'fill',
    source: 'F. M. White, Fluid Mechanics',
    edition: '5th',
    place: 'problem 6.17(b), copy of the solutions, studylib.net/doc/12446364',
    read: 'in the source',
    agrees: 'to the printed digits',
    note: 'the bore of 1.5 mm is printed; 1.4768 mm was calculated from t = 128·µ·L·V/(π·ρ·g·d⁴·(L + l))',
  },
  {
    millilitres: 8,
    density: 998,
    dynamic: 0.001,
    lengthM: 0.12,
    headM: 0.14,
    seconds: 6,
    boreMm: '1.5',
    boreMmWorked: '1.4768',
  },
)

/**
 * Water from a tank 1 m wide and 0.3 m deep through 1.1 m of 5 mm tube with 0.15 m of drop: the laminar formula gives
 * 3.135 m/s and Re 15,677, which is far from laminar, so the input must be refused.
 */
export const WATER_TANK = published(
  {
    room: 'fill',
    source: 'a course homework',
    edition: 'not dated',
    place: 'inputs',
    read: 'calculated',
    agrees: 'refused',
    note: 'only the inputs were read; the homework asks whether the flow is laminar',
  },
  { diameterM: 1, depthM: 0.3, dropM: 0.15, lengthM: 1.1, boreMm: 5, viscosity: 1 },
)

/**
 * Laminar flow in a tube of `bore` and `length` in m, all of it developed: no kinetic energy, no loss at the entrance.
 * `dynamic` in Pa·s, `density` in kg/m³. Either the pressure along the tube (Pa) or the flow (m³/s) is given; `printed` has
 * what the source finds, in the same units, with the speed in m/s and the Reynolds number.
 */
export interface TubeExample {
  readonly place: string
  readonly bore: number
  readonly length: number
  readonly density: number
  readonly dynamic: number
  readonly given: { readonly pressure: number } | { readonly flow: number }
  readonly printed: Partial<Record<'pressure' | 'flow' | 'speed' | 'reynolds', string>>
}

const values = ({ printed }: TubeExample): number => Object.keys(printed).length

export const TEXTBOOK_TUBES: readonly TubeExample[] = published(
  {
    room: 'fill',
    source: 'Y. A. Çengel, J. M. Cimbala, Fluid Mechanics, and its solutions',
    edition: '2006',
    place:
      'example 8-1 (a), page 333, scribd.com/document/645341563; problem 8-30, scribd.com/document/354213093',
    read: 'in the source',
    agrees: 'to the printed digits',
    values,
  },
  [
    {
      place: 'example 8-1 (a)',
      bore: 0.05,
      length: 40,
      density: 888,
      dynamic: 0.8,
      given: { pressure: 648_000 },
      printed: { flow: '0.00311' },
    },
    {
      // a tank of oil 3 m deep: the printed 25.02 kPa
      place: 'problem 8-30',
      bore: 0.005,
      length: 40,
      density: 850,
      dynamic: 0.527,
      given: { pressure: 25_020 },
      printed: { flow: '1.821e-8', speed: '9.27e-4', reynolds: '0.0075' },
    },
  ],
)

export const SCHOOL_TUBES: readonly TubeExample[] = published(
  {
    room: 'fill',
    source: 'exercises with answers: University of Leeds, CIVE 1400; NCERT, Physics, class 11',
    edition: 'not dated',
    place:
      'efm.leeds.ac.uk/CIVE/CIVE1400/Examples/eg7_ans.htm, 7.2; ncertqna.com, glycerine in a horizontal tube',
    read: 'in the source',
    agrees: 'to the printed digits',
    values,
  },
  [
    {
      // 0.6 m/s through 0.1 m: π/4·0.1²·0.6 m³/s; the density has no part in the answer
      place: 'Leeds 7.2',
      bore: 0.1,
      length: 120,
      density: 900,
      dynamic: 0.05,
      given: { flow: (Math.PI / 4) * 0.01 * 0.6 },
      printed: { pressure: '11520' },
    },
    {
      place: 'NCERT',
      bore: 0.02,
      length: 1.5,
      density: 1300,
      dynamic: 0.83,
      given: { flow: 4e-3 / 1300 },
      printed: { flow: '3.08e-6', pressure: '9.8e2', reynolds: '0.3' },
    },
  ],
)

export const NOTEBOOK_TUBES: readonly TubeExample[] = published(
  {
    room: 'fill',
    source: 'examples of two textbooks of fluid mechanics, worked by public notebooks that do not name them',
    edition: 'not named',
    place: '3.4 (page 67), 3.5 (page 69) and 8.8-1 (page 349), data set nvidia/Nemotron-CC-Math-v1',
    read: 'where it is quoted',
    agrees: 'to the printed digits',
    note: 'page 69 prints the radius, 0.013 m, as the diameter; its Reynolds number is of the whole diameter',
    values,
  },
  [
    {
      place: 'page 67',
      bore: 0.126,
      length: 60,
      density: 1260,
      dynamic: 1.2,
      given: { pressure: 90_000 },
      printed: { flow: '0.0077', reynolds: '82.047' },
    },
    {
      // the bore for 4 L/min at 100 Pa/m, 2·(8·µ·Q/(π·100))^¼, calculated outside this code
      place: 'page 69',
      bore: 0.025_264_75,
      length: 1,
      density: 1100,
      dynamic: 0.015,
      given: { pressure: 100 },
      printed: { flow: '6.667e-5', reynolds: '246.38' },
    },
    {
      place: 'page 349',
      bore: 0.04,
      length: 70,
      density: 1252,
      dynamic: 0.3073,
      given: { flow: (Math.PI / 4) * 0.04 ** 2 * 3 },
      printed: { pressure: '1291e3' },
    },
  ],
)

/** Holes without friction: depths in m, diameters of hole and tank in m. */
export const FREE_HOLES = published(
  {
    room: 'fill',
    source: 'exercises on the law of Torricelli with answers',
    edition: 'not dated',
    place:
      'engineeringprep.com/problems/435; answer.ya.guru, 5472457; mashalscienceacademy.com and uonbi.ac.ke, 26260626',
    read: 'in the source',
    agrees: 'to the printed digits; within 0.7 % where the source rounds early (94 s)',
    note: 'a thin hole and hardly any viscosity, so `drainTime` is the limit of its equation',
  },
  [
    // 4 ft wide, a hole of 5 in², from 6 ft to 2 ft: the source rounds each step, without that it is 93.4 s
    {
      asks: 'time between two levels',
      hole: 0.064_087_6,
      tank: 1.2192,
      from: 1.8288,
      to: 0.6096,
      printed: '94',
    },
    // a gallon (3.785 L) through 6 mm, 2 m below the surface
    { asks: 'time for a gallon', hole: 0.006, litres: 3.785, depth: 2, printed: '21.4' },
    { asks: 'speed', hole: 0.006, litres: 1, depth: 14, printed: '16.6' },
  ],
)
