/**
 * Whether a lubricant is a grease by its name: it is pressed in, sinks slowly, and neither pours nor drips. NLGI grades
 * 000 to 6 are grades of grease alone. Source: common practice, no source.
 */
export function isGrease(name: string): boolean {
  return /\b(NLGI|grease)\b/i.test(name)
}
