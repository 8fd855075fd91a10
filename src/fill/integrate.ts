/** Nodes and weights of the seven-point Gauss–Legendre rule on −1 … 1 (Abramowitz & Stegun, table 25.4; from memory). */
const RULE: readonly (readonly [number, number])[] = [
  [0, 0.4179591836734694],
  [0.4058451513773972, 0.3818300505051189],
  [0.7415311855993945, 0.2797053914892767],
  [0.9491079123427585, 0.1294849661688697],
]

/** Halvings at most: rounding noise must not be chased for ever. */
const MAX_HALVINGS = 500

/**
 * The integral of a smooth positive function over 0 … 1, a piece being halved where its two estimates differ by more
 * than 1e-13 of the whole.
 */
export function integrate(f: (at: number) => number): number {
  const first = estimate(f, 0, 1)
  const pieces = [{ from: 0, to: 1, value: first }]
  let total = 0
  let halvings = 0
  for (let piece = pieces.pop(); piece !== undefined; piece = pieces.pop()) {
    const { from, to, value } = piece
    const middle = (from + to) / 2
    const left = { from, to: middle, value: estimate(f, from, middle) }
    const right = { from: middle, to, value: estimate(f, middle, to) }
    const both = left.value + right.value
    halvings += 1
    if (Math.abs(both - value) <= 1e-13 * first || halvings > MAX_HALVINGS) total += both
    else pieces.push(right, left)
  }
  return total
}

function estimate(f: (at: number) => number, from: number, to: number): number {
  const middle = (from + to) / 2
  const half = (to - from) / 2
  let sum = 0
  for (const [node, weight] of RULE) {
    sum += node === 0 ? weight * f(middle) : weight * (f(middle - half * node) + f(middle + half * node))
  }
  return half * sum
}
