import { quoteValue, requireObject } from '../base/index.js'
import { type Quantity, requireQuantity } from '../quantity/index.js'

/** The constants of an oil in log10 log10 (ν + 0.7 + …) = `intercept` − `slope` · log10 T. */
export interface ViscosityLine {
  readonly intercept: number
  readonly slope: number
  /** The value of 0 °C in kelvin for these constants. */
  readonly zeroCelsius: 273.15 | 273
}

interface MeasuredViscosity {
  readonly temperature: Quantity<'degC'>
  readonly viscosity: Quantity<'mm2/s'>
}

/**
 * A and B from two measured viscosities: log10 log10 Z = A − B·log10 T, with Z = ν + 0.7 + exp(−1.47 − 1.84ν − 0.51ν²).
 * Source: ASTM D341, equations as quoted in an engineering-software wiki and in a published spreadsheet whose example
 * (T = t + 273) prints A 9.5259 and B 3.7449.
 */
export function fitViscosityLine(
  cold: MeasuredViscosity,
  warm: MeasuredViscosity,
  zeroCelsius: 273.15 | 273,
): ViscosityLine {
  for (const [name, point] of [['cold', cold] as const, ['warm', warm] as const]) {
    requireObject(name, point)
    requireQuantity(`${name}.temperature`, point.temperature, 'temperature', {
      above: -273,
      max: Number.MAX_VALUE,
    })
    requireQuantity(`${name}.viscosity`, point.viscosity, 'kinematicViscosity', {
      above: 0,
      max: Number.MAX_VALUE,
    })
    if (point.temperature.unit !== 'degC')
      throw new TypeError(`${name}.temperature.unit must be degC, got ${point.temperature.unit}`)
    if (point.viscosity.value < 0.21)
      throw new RangeError(`${name}.viscosity.value must be 0.21 or more, got ${point.viscosity.value}`)
  }
  if (zeroCelsius !== 273.15 && zeroCelsius !== 273)
    throw new RangeError(`zeroCelsius must be 273.15 or 273, got ${quoteValue(zeroCelsius)}`)
  if (warm.temperature.value <= cold.temperature.value || warm.viscosity.value >= cold.viscosity.value)
    throw new RangeError('warm must be warmer and thinner than cold')
  const coldLog = Math.log10(cold.temperature.value + zeroCelsius)
  const warmLog = Math.log10(warm.temperature.value + zeroCelsius)
  const coldDoubleLog = calculateDoubleLog(cold.viscosity.value)
  const slope = (coldDoubleLog - calculateDoubleLog(warm.viscosity.value)) / (warmLog - coldLog)
  return { intercept: coldDoubleLog + slope * coldLog, slope, zeroCelsius }
}

/** Viscosity in mm²/s on the line; Infinity if it exceeds every double. */
export function calculateOnLine(line: ViscosityLine, celsius: number): number {
  const z = 10 ** (10 ** (line.intercept - line.slope * Math.log10(celsius + line.zeroCelsius)))
  // Newton's method: the published inverse is only an approximation below 2 mm²/s
  let viscosity = Math.max(z - 0.7, 0.01)
  for (let step = 0; step < 8 && viscosity < 20; step += 1) {
    const correction = Math.exp(-1.47 - 1.84 * viscosity - 0.51 * viscosity ** 2)
    viscosity -= (viscosity + 0.7 + correction - z) / (1 + correction * (-1.84 - 1.02 * viscosity))
  }
  return viscosity
}

function calculateDoubleLog(viscosity: number): number {
  return Math.log10(Math.log10(viscosity + 0.7 + Math.exp(-1.47 - 1.84 * viscosity - 0.51 * viscosity ** 2)))
}
