import { type ConversionStep, makeConversionStep } from './conversionStep.js'
import type { Unit } from './unit.js'

const steps = /* @__PURE__ */ new Map<string, Map<string, ConversionStep>>()

/** The conversion step between two units, made once for each pair. */
export function findConversionStep(from: Unit, to: Unit): ConversionStep {
  const known = steps.get(from)?.get(to)
  return known ?? cacheStep(from, to)
}

function cacheStep(from: Unit, to: Unit): ConversionStep {
  const step = makeConversionStep(from, to)
  const row = steps.get(from)
  if (row) row.set(to, step)
  else steps.set(from, new Map([[to, step]]))
  return step
}
