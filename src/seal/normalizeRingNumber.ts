/** The number of an o-ring in a standard spelling: `214` of AS568, `P22`, `P22A` and `G45` of JIS B 2401. */
export function normalizeRingNumber(designation: string | undefined): string | undefined {
  const text = (designation ?? '').slice(0, 30).trim().toUpperCase()
  const dashNumber = /^(?:AS ?568[A-Z]?|BS|2)?[ -]*([0-9]{3})$/.exec(text)?.[1]
  const jisMatch = /^(?:JIS ?)?(?:B ?2401)?[ -]*(?:[1-4][A-D]?[ -]?)?([PG]) ?-?([0-9]{1,3}A?)$/.exec(text)
  return dashNumber ?? (jisMatch === null ? undefined : `${jisMatch[1]}${jisMatch[2]}`)
}
