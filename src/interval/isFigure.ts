/**
 * Whether a text is a printed figure: one to nine digits, and a point with one to six digits where there is one. Scanned by hand,
 * since it runs for every limit of every machine and a pattern takes several times as long.
 */
export function isFigure(text: unknown): text is string {
  if (typeof text !== 'string' || text.length > 16) return false
  let point = 0
  for (let at = 0; at < text.length; at++) {
    const digit = text.charCodeAt(at) - 48
    if (digit >= 0 && digit <= 9) continue
    if (digit !== -2 || point > 0 || at === 0 || at > 9) return false
    point = at
  }
  return point > 0 ? text.length - point > 1 && text.length - point <= 7 : text.length > 0 && text.length <= 9
}
