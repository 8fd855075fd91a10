import { quoteValue, type Reason, requireShape, type Shape } from '../base/index.js'
import { specReason } from './codes.js'
import type { Condition, Id, Identity } from './leaf.js'
import type { IdentityFact, Judgement } from './resolved.js'

/** The facts of a machine in the order in which they are listed as missing. */
export const IDENTITY_FACTS: readonly IdentityFact[] = ['variant', 'modelYear', 'serial', 'market']

const CONDITION: Shape = {
  'variants?': ['string'],
  'modelYears?': { 'from?': 'number', 'to?': 'number' },
  'serials?': { 'prefix?': 'string', 'from?': 'string', 'to?': 'string' },
  'market?': ['string'],
}

/**
 * Whether a condition of a sheet holds for one machine: `no` if any part of it fails, else `cannot tell` if any is open,
 * else `yes`; an empty condition holds. Both ends of years and serials belong to it. A serial is a prefix plus a number of
 * fixed width; anything else, and a prefix or market in the other case, is `cannot tell`. `candidates` are the variants
 * that the machine may be; undefined: not one is ruled out, and none can be taken for granted.
 */
export function judgeFacts(
  condition: Condition,
  identity: Identity,
  candidates: readonly Id[] | undefined,
): Judgement {
  requireShape('condition', condition, CONDITION)
  const parts: Judgement[] = []
  if (condition.variants !== undefined) parts.push(judgeListed(condition.variants, candidates))
  if (condition.modelYears !== undefined) parts.push(judgeModelYear(condition.modelYears, identity.modelYear))
  if (condition.serials !== undefined) parts.push(judgeSerial(condition.serials, identity.serial))
  if (condition.market !== undefined) parts.push(judgeMarket(condition.market, identity.market))
  return joinJudgements(parts)
}

/** All must hold: one `no` decides, else one `cannot tell` leaves it open. */
export function joinJudgements(parts: readonly Judgement[]): Judgement {
  const refusals = parts.filter((part) => part.verdict === 'no')
  if (refusals.length > 0) return { verdict: 'no', reasons: refusals.flatMap((part) => part.reasons) }
  const open = parts.filter((part) => part.verdict === 'cannot tell')
  if (open.length === 0) return { verdict: 'yes', reasons: parts.flatMap((part) => part.reasons) }
  const missing = new Set(open.flatMap((part) => part.missing))
  return {
    verdict: 'cannot tell',
    missing: IDENTITY_FACTS.filter((fact) => missing.has(fact)),
    reasons: open.flatMap((part) => part.reasons),
  }
}

function judgeListed(listed: readonly Id[], candidates: readonly Id[] | undefined): Judgement {
  if (candidates === undefined || candidates.length === 0) return missingFact('variant')
  const inside = candidates.filter((variant) => listed.includes(variant))
  if (inside.length > 0 && inside.length < candidates.length) return missingFact('variant')
  const params = { variants: candidates, listed }
  return inside.length > 0
    ? { verdict: 'yes', reasons: [specReason('spec/variant-listed', params)] }
    : { verdict: 'no', reasons: [specReason('spec/variant-not-listed', params)] }
}

function judgeModelYear(
  years: NonNullable<Condition['modelYears']>,
  modelYear: number | undefined,
): Judgement {
  if (years.from === undefined && years.to === undefined) return { verdict: 'yes', reasons: [] }
  if (modelYear === undefined) return missingFact('modelYear')
  if (!Number.isSafeInteger(modelYear))
    throw new RangeError(`identity.modelYear must be a whole number, got ${quoteValue(modelYear)}`)
  const outside =
    (years.from !== undefined && modelYear < years.from) || (years.to !== undefined && modelYear > years.to)
  const params = { modelYear, ...years }
  const reasons: Reason[] = [
    outside ? specReason('spec/model-year-outside', params) : specReason('spec/model-year-inside', params),
  ]
  return { verdict: outside ? 'no' : 'yes', reasons }
}

function judgeMarket(listed: readonly string[], market: string | undefined): Judgement {
  if (market === undefined) return missingFact('market')
  const params = { market, listed }
  if (listed.includes(market)) return { verdict: 'yes', reasons: [specReason('spec/market-listed', params)] }
  if (listed.some((one) => one.toLowerCase() === market.toLowerCase()))
    return {
      verdict: 'cannot tell',
      missing: ['market'],
      reasons: [specReason('spec/market-case-differs', params)],
    }
  return { verdict: 'no', reasons: [specReason('spec/market-not-listed', params)] }
}

/**
 * Judges a serial number against a range. A range is a prefix plus a number of fixed width, so that the digits
 * compare as they are; any other form is `cannot tell`. Both ends of the range belong to it.
 */
function judgeSerial(range: NonNullable<Condition['serials']>, serial: string | undefined): Judgement {
  const { prefix = '', from, to } = range
  if (prefix === '' && from === undefined && to === undefined) return { verdict: 'yes', reasons: [] }
  const ends = [from, to].filter((end) => end !== undefined)
  const width = ends[0]?.length
  if (ends.some((end) => !isNumberText(end) || end.length !== width))
    return {
      verdict: 'cannot tell',
      missing: [],
      reasons: [specReason('spec/serial-range-unreadable', { ...range, prefix })],
    }
  if (serial === undefined) return missingFact('serial')
  const number = serial.slice(prefix.length)
  const start = serial.slice(0, prefix.length)
  const sameBuild = isNumberText(number) && (width === undefined || number.length === width)
  const otherCase = start !== prefix && start.toLowerCase() === prefix.toLowerCase()
  if (!sameBuild || otherCase)
    return {
      verdict: 'cannot tell',
      missing: ['serial'],
      reasons: [
        specReason('spec/serial-form-differs', { serial, prefix, ...(width === undefined ? {} : { width }) }),
      ],
    }
  const params = { ...range, serial, prefix }
  const inside =
    start === prefix && (from === undefined || number >= from) && (to === undefined || number <= to)
  return inside
    ? { verdict: 'yes', reasons: [specReason('spec/serial-inside', params)] }
    : { verdict: 'no', reasons: [specReason('spec/serial-outside', params)] }
}

function isNumberText(text: string): boolean {
  return /^[0-9]+$/.test(text) && !text.endsWith('\n')
}

/** The answer for a missing fact. */
function missingFact(fact: IdentityFact): Judgement {
  return { verdict: 'cannot tell', missing: [fact], reasons: [specReason('spec/fact-missing', { fact })] }
}
