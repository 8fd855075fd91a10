/**
 * Laminar flow out of vessels.
 *
 * White, Fluid Mechanics, 5th ed.: problem 6.27 (solution read, R): a cylindrical reservoir (diameter D, depth Z)
 * drains through a laminar tube (d, L) whose outlet is h below the floor: t0 = (1/C)·ln(1 + Z0/h), C =
 * ρ·g·d⁴/(32·µ·L·D²). The numbers of `WHITE_6_27` are calculated from it outside this project's code (C), with the
 * book's g = 9.81 m/s². This library uses standard gravity, 9.80665 m/s², so times are multiplied by 9.80665/9.81
 * before they are compared.
 */
export const BOOK_GRAVITY = 9.81

export const WHITE_6_27 = {
  viscosity: 100,
  boreMm: 12,
  diameterMm: 120,
  lengthM: 1.5,
  depthM: 0.1,
  seconds: '21.930',
  firstFlow: '53.255',
  reynolds: '56.5',
  millilitres: '1131.0',
} as const

/**
 * White problem 6.17(b) (solution read, R): a bulb of 8 cm³, ρ 998 kg/m³, µ 0.001 Pa·s, tube of 0.12 m, head 0.14 m in
 * all, empty in 6 s: the tube is about 1.5 mm wide (1.4768 mm from t = 128·µ·L·V/(π·ρ·g·d⁴·(L + l)), C).
 */
export const WHITE_6_17B = {
  millilitres: 8,
  density: 998,
  dynamic: 0.001,
  lengthM: 0.12,
  headM: 0.14,
  seconds: 6,
  boreMm: '1.5',
  boreMmWorked: '1.4768',
} as const

/**
 * A course homework (inputs R, numbers C): water from a tank 1 m wide and 0.3 m deep through 1.1 m of 5 mm tube with
 * 0.15 m of drop. The laminar formula gives 3.135 m/s and Re 15,677, which is far from laminar, so the input must be
 * refused.
 */
export const WATER_TANK = {
  diameterM: 1,
  depthM: 0.3,
  dropM: 0.15,
  lengthM: 1.1,
  boreMm: 5,
  viscosity: 1,
} as const
