/** Standard gravity, m/s². */
const GRAVITY = 9.80665

/** Hagenbach's factor for a square-edged entry: kinetic energy and entrance loss together, in units of V²/g. */
export const KINETIC_FACTOR = 1.1

/** A funnel and its hose in metres and m²/s. `kineticFactor` is 0 for the plain laminar law. */
export interface HoseFlow {
  readonly bottomDiameter: number
  readonly topDiameter: number
  readonly depth: number
  readonly bore: number
  readonly length: number
  readonly drop: number
  readonly viscosity: number
  readonly kineticFactor: number
}

/** Mean speed in a wetted length of hose under a head: g·H = 32·ν·x·V/d² + m·V². */
export function calculateSpeed(flow: HoseFlow, head: number, wettedLength: number): number {
  const viscousTerm = (32 * flow.viscosity * wettedLength) / flow.bore ** 2
  if (flow.kineticFactor === 0) return (GRAVITY * head) / viscousTerm
  return (
    (2 * GRAVITY * head) /
    (viscousTerm + Math.sqrt(viscousTerm ** 2 + 4 * flow.kineticFactor * GRAVITY * head))
  )
}

export function calculateHoseArea(flow: HoseFlow): number {
  return (Math.PI / 4) * flow.bore ** 2
}

export function calculateFunnelVolume(flow: HoseFlow, level = flow.depth): number {
  const diameter = calculateDiameter(flow, level)
  return (Math.PI / 12) * level * (flow.bottomDiameter ** 2 + flow.bottomDiameter * diameter + diameter ** 2)
}

/** Level of a volume of oil in the funnel. */
export function calculateLevel(flow: HoseFlow, volume: number): number {
  const { bottomDiameter, topDiameter, depth } = flow
  if (bottomDiameter === topDiameter) return Math.max(0, volume) / ((Math.PI / 4) * topDiameter ** 2)
  const widening = (topDiameter - bottomDiameter) / depth
  // V = π/12·(D³ − d³)/widening for the frustum with diameters d at the floor and D at the level, and D − d =
  // (D³ − d³)/(D² + D·d + d²) stays accurate at a low level
  const cubeDifference = (12 * widening * Math.max(0, volume)) / Math.PI
  const diameter = Math.cbrt(bottomDiameter ** 3 + cubeDifference)
  return cubeDifference / (diameter ** 2 + diameter * bottomDiameter + bottomDiameter ** 2) / widening
}

function calculateDiameter(flow: HoseFlow, level: number): number {
  return flow.bottomDiameter + ((flow.topDiameter - flow.bottomDiameter) * level) / flow.depth
}

/** Time in s for the oil to run from one length of the hose to another, fed by the funnel. */
export function calculateHoseFillingTime(
  flow: HoseFlow,
  fromLength: number,
  toLength: number,
  volume: number,
): number {
  const area = calculateHoseArea(flow)
  const pathLength = toLength - fromLength
  // near the end of a cone the level falls as a cube root; with s³ = (toLength − x)/pathLength it is smooth
  return integrate((s) => {
    const frontLength = toLength - pathLength * s ** 3
    const level = calculateLevel(flow, volume - area * (frontLength - fromLength))
    const speed = calculateSpeed(flow, level + (flow.drop * frontLength) / flow.length, frontLength)
    return (3 * pathLength * s * s) / speed
  })
}

/** Time in s for a volume in the funnel to run out through the full hose. */
export function calculateFunnelEmptyingTime(flow: HoseFlow, volume: number): number {
  const { bottomDiameter, topDiameter, drop, length } = flow
  const level = calculateLevel(flow, volume)
  if (bottomDiameter === topDiameter) {
    const ratio = (topDiameter / flow.bore) ** 2
    const viscousTerm = (32 * flow.viscosity * length) / flow.bore ** 2
    if (flow.kineticFactor === 0) return ((ratio * viscousTerm) / GRAVITY) * Math.log1p(level / drop)
    const firstSpeed = calculateSpeed(flow, drop + level, length)
    const lastSpeed = calculateSpeed(flow, drop, length)
    return (
      (ratio / GRAVITY) *
      (viscousTerm * Math.log(firstSpeed / lastSpeed) + 2 * flow.kineticFactor * (firstSpeed - lastSpeed))
    )
  }
  return integrate((share) => {
    const currentLevel = share * level
    const ratio = (calculateDiameter(flow, currentLevel) / flow.bore) ** 2
    return (level * ratio) / calculateSpeed(flow, drop + currentLevel, length)
  })
}

/** Time in s for the hose to empty: no oil enters, so no oil is accelerated. */
export function calculateHoseEmptyingTime(flow: HoseFlow): number {
  return (32 * flow.viscosity * flow.length ** 2) / (GRAVITY * flow.bore ** 2 * flow.drop)
}

/**
 * Nodes and weights of the seven-point Gauss–Legendre rule on −1 … 1 (Abramowitz & Stegun, table 25.4; from memory).
 */
const QUADRATURE: readonly (readonly [number, number])[] = [
  [0, 0.4179591836734694],
  [0.4058451513773972, 0.3818300505051189],
  [0.7415311855993945, 0.2797053914892767],
  [0.9491079123427585, 0.1294849661688697],
]

/** Bounds the loop: rounding errors may be larger than the tolerance. */
const MAX_HALVINGS = 500

/**
 * The integral of a smooth positive function over 0 … 1. A piece is halved if its two estimates differ by more than 1e-13 of
 * the whole.
 */
function integrate(f: (at: number) => number): number {
  const first = estimateIntegral(f, 0, 1)
  const pieces = [{ from: 0, to: 1, value: first }]
  let total = 0
  let halvings = 0
  for (let piece = pieces.pop(); piece !== undefined; piece = pieces.pop()) {
    const { from, to, value } = piece
    const middle = (from + to) / 2
    const left = { from, to: middle, value: estimateIntegral(f, from, middle) }
    const right = { from: middle, to, value: estimateIntegral(f, middle, to) }
    const refinedSum = left.value + right.value
    halvings += 1
    if (Math.abs(refinedSum - value) <= 1e-13 * first || halvings > MAX_HALVINGS) total += refinedSum
    else pieces.push(right, left)
  }
  return total
}

function estimateIntegral(f: (at: number) => number, from: number, to: number): number {
  const middle = (from + to) / 2
  const halfWidth = (to - from) / 2
  let sum = 0
  for (const [node, weight] of QUADRATURE)
    sum +=
      node === 0 ? weight * f(middle) : weight * (f(middle - halfWidth * node) + f(middle + halfWidth * node))
  return halfWidth * sum
}
