import type { Condition, SpecSheet } from '../../spec/index.js'

/**
 * Whether one machine of this sheet could meet both conditions. The machine must also meet the condition of a
 * variant that both permit. Serials that cannot be compared count as compatible.
 */
export function canBothBeMet(sheet: SpecSheet, first: Condition, second: Condition): boolean {
  const variants = Object.entries(sheet.machine.variants).filter(
    ([id]) => (first.variants?.includes(id) ?? true) && (second.variants?.includes(id) ?? true),
  )
  if (Object.keys(sheet.machine.variants).length === 0) return areCompatible([first, second])
  return variants.some(([, { when }]) =>
    areCompatible(when === undefined ? [first, second] : [first, second, when]),
  )
}

function areCompatible(conditions: readonly Condition[]): boolean {
  return conditions.every((condition, place) =>
    conditions
      .slice(place + 1)
      .every(
        (other) =>
          canShareMarket(condition, other) &&
          canShareModelYear(condition, other) &&
          canShareSerial(condition, other),
      ),
  )
}

function canShareMarket(first: Condition, second: Condition): boolean {
  const secondMarkets = second.market
  return (
    first.market === undefined ||
    secondMarkets === undefined ||
    first.market.some((candidate) => secondMarkets.includes(candidate))
  )
}

function canShareModelYear(first: Condition, second: Condition): boolean {
  const from = Math.max(first.modelYears?.from ?? 0, second.modelYears?.from ?? 0)
  const to = Math.min(first.modelYears?.to ?? 9999, second.modelYears?.to ?? 9999)
  return from <= to
}

function canShareSerial(first: Condition, second: Condition): boolean {
  if (first.serials === undefined || second.serials === undefined) return true
  const prefixes = [first.serials.prefix ?? '', second.serials.prefix ?? '']
  const [shortPrefix = '', longPrefix = ''] = prefixes.sort((prefix, other) => prefix.length - other.length)
  if (shortPrefix !== longPrefix)
    return /^[0-9]+$/.test(longPrefix.slice(shortPrefix.length)) && longPrefix.startsWith(shortPrefix)
  return (
    !endsBeforeStart(first.serials.to, second.serials.from) &&
    !endsBeforeStart(second.serials.to, first.serials.from)
  )
}

function endsBeforeStart(to: string | undefined, from: string | undefined): boolean {
  if (to === undefined || from === undefined) return false
  return to.length === from.length && to < from
}
