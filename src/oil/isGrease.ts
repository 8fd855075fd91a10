/**
 * Whether a lubricant is a grease, by its name. Grease is pressed in, sinks slowly, and neither pours nor
 * drips. Only grease has an NLGI grade (000 to 6). Source: common practice, no source.
 */
export function isGrease(name: string): boolean {
  return /\b(NLGI|grease)\b/i.test(name)
}
