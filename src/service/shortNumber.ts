/**
 * A sum or product of printed figures, worked in doubles, with the 15 digits that a figure can have: three times 0.1 L is
 * 0.3 L, which a container of 0.3 L holds.
 */
export function shortNumber(value: number): number {
  return Number(value.toPrecision(15))
}
