import { quoteValue, requireShape, type Shape } from '../base/index.js'
import { type SpecCodes, specReason } from './codes.js'
import type { Condition, Identity } from './leaf.js'
import type { IdentityFact, Judgement } from './resolved.js'
import type { Id } from './specValue.js'

/** The facts of a machine, in the order of lists of missing facts. */
export const IDENTITY_FACTS: readonly IdentityFact[] = ['variant', 'modelYear', 'serial', 'market']

const CONDITION_SHAPE: Shape = {
  'variants?': ['string'],
  'modelYears?': { 'from?': 'number', 'to?': 'number' },
  'serials?': { 'prefix?': 'string', 'from?': 'string', 'to?': 'string' },
  'market?': ['string'],
}

/**
 * Whether a machine meets a condition of a sheet: `no` if any part fails, else `cannot tell` if any part is
 * open, else `yes`. Every machine meets an empty condition. Ranges of years and serials include both ends. A
 * serial is a prefix plus a number of fixed width; another form, or a difference in case, gives `cannot
 * tell`. `candidates` are the possible variants of the machine; undefined if unknown.
 */
export function judgeFacts(
  condition: Condition,
  identity: Identity,
  candidates: readonly Id[] | undefined,
): Judgement {
  requireShape('condition', condition, CONDITION_SHAPE)
  const parts: Judgement[] = []
  if (condition.variants !== undefined) parts.push(judgeListed(condition.variants, candidates))
  if (condition.modelYears !== undefined) parts.push(judgeModelYear(condition.modelYears, identity.modelYear))
  if (condition.serials !== undefined) parts.push(judgeSerial(condition.serials, identity.serial))
  if (condition.market !== undefined) parts.push(judgeMarket(condition.market, identity.market))
  return combineJudgements(parts)
}

/** `no` if any part is `no`, else `cannot tell` if any part is open, else `yes`. */
export function combineJudgements(parts: readonly Judgement[]): Judgement {
  const failedParts = parts.filter((part) => part.verdict === 'no')
  if (failedParts.length > 0) return { verdict: 'no', reasons: failedParts.flatMap((part) => part.reasons) }
  const openParts = parts.filter((part) => part.verdict === 'cannot tell')
  if (openParts.length === 0) return { verdict: 'yes', reasons: parts.flatMap((part) => part.reasons) }
  const missing = new Set(openParts.flatMap((part) => part.missing))
  return {
    verdict: 'cannot tell',
    missing: IDENTITY_FACTS.filter((fact) => missing.has(fact)),
    reasons: openParts.flatMap((part) => part.reasons),
  }
}

function judgeListed(listed: readonly Id[], variants: readonly Id[] | undefined): Judgement {
  const matchCount = variants?.filter((variant) => listed.includes(variant)).length ?? 0
  if (variants === undefined || variants.length === 0 || (matchCount > 0 && matchCount < variants.length))
    return makeMissingFact('variant')
  const params = { variants, listed }
  return matchCount > 0
    ? makeJudgement('yes', 'spec/variant-listed', params)
    : makeJudgement('no', 'spec/variant-not-listed', params)
}

function judgeModelYear(
  years: NonNullable<Condition['modelYears']>,
  modelYear: number | undefined,
): Judgement {
  const { from, to } = years
  if (from === undefined && to === undefined) return { verdict: 'yes', reasons: [] }
  if (modelYear === undefined) return makeMissingFact('modelYear')
  if (!Number.isSafeInteger(modelYear))
    throw new RangeError(`identity.modelYear must be a whole number, got ${quoteValue(modelYear)}`)
  const params = { modelYear, ...years }
  return (from !== undefined && modelYear < from) || (to !== undefined && modelYear > to)
    ? makeJudgement('no', 'spec/model-year-out-of-range', params)
    : makeJudgement('yes', 'spec/model-year-in-range', params)
}

function judgeMarket(listed: readonly string[], market: string | undefined): Judgement {
  if (market === undefined) return makeMissingFact('market')
  const params = { market, listed }
  if (listed.includes(market)) return makeJudgement('yes', 'spec/market-listed', params)
  return listed.some((listedMarket) => listedMarket.toLowerCase() === market.toLowerCase())
    ? makeUndecidedJudgement(['market'], 'spec/market-case-differs', params)
    : makeJudgement('no', 'spec/market-not-listed', params)
}

/**
 * Compares a serial number with a range. It has a prefix plus a number of fixed width, so digits compare as
 * text. Any other form gives `cannot tell`. Both ends are included.
 */
function judgeSerial(range: NonNullable<Condition['serials']>, serial: string | undefined): Judgement {
  const { prefix = '', from, to } = range
  if (prefix === '' && from === undefined && to === undefined) return { verdict: 'yes', reasons: [] }
  const ends = [from, to].filter((end) => end !== undefined)
  const width = ends[0]?.length
  if (ends.some((end) => !isDigits(end) || end.length !== width))
    return makeUndecidedJudgement([], 'spec/serial-range-unreadable', { ...range, prefix })
  if (serial === undefined) return makeMissingFact('serial')
  const number = serial.slice(prefix.length)
  const serialPrefix = serial.slice(0, prefix.length)
  const hasSameForm = isDigits(number) && (width === undefined || number.length === width)
  const differsInCase = serialPrefix !== prefix && serialPrefix.toLowerCase() === prefix.toLowerCase()
  if (!hasSameForm || differsInCase) {
    const params = { serial, prefix, ...(width === undefined ? {} : { width }) }
    return makeUndecidedJudgement(['serial'], 'spec/serial-form-differs', params)
  }
  const params = { ...range, serial, prefix }
  return serialPrefix === prefix &&
    (from === undefined || number >= from) &&
    (to === undefined || number <= to)
    ? makeJudgement('yes', 'spec/serial-in-range', params)
    : makeJudgement('no', 'spec/serial-out-of-range', params)
}

function isDigits(text: string): boolean {
  return /^[0-9]+$/.test(text)
}

const makeJudgement = <Code extends keyof SpecCodes>(
  verdict: 'yes' | 'no',
  code: Code,
  params: SpecCodes[Code],
): Judgement => ({ verdict, reasons: [specReason(code, params)] })

const makeUndecidedJudgement = <Code extends keyof SpecCodes>(
  missing: readonly IdentityFact[],
  code: Code,
  params: SpecCodes[Code],
): Judgement => ({ verdict: 'cannot tell', missing, reasons: [specReason(code, params)] })

const makeMissingFact = (fact: IdentityFact) => makeUndecidedJudgement([fact], 'spec/fact-missing', { fact })
