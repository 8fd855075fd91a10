import type * as z from 'zod/v4/core'
import { cutText, type Finding, type Fix, joinPointer, readPointer, suggestName } from '../base/index.js'
import type { Unit } from '../quantity/index.js'
import { READABLE_VERSIONS, type SpecCodes, type TypeName } from '../spec/index.js'
import type { MistakeParams, ReportMistake } from './reportMistake.js'
import { FIGURE_PATTERN, ID_PATTERN, SIGNED_FIGURE_PATTERN } from './shapes/textShapes.js'

/** A path in the data. The data is plain JSON, so no token is a symbol. */
export type Tokens = readonly (string | number)[]
export type Issue = z.$ZodIssue & { readonly path: Tokens }

/** Converts an issue of the shape reader into a finding. */
export function convertIssue(
  issue: Issue,
  data: unknown,
  tokens: Tokens,
  reportMistake: ReportMistake,
): Finding<SpecCodes> {
  const path = joinPointer(tokens)
  const found = readPointer(data, path)
  const key = String(tokens.at(-1) ?? '')
  const allowed = listAllowed(issue)
  const report = <Code extends keyof SpecCodes>(code: Code, params: MistakeParams<Code>, fix?: Fix) =>
    reportMistake(path, code, params, fix)
  const reportWrongType = (expected: TypeName) =>
    report('spec/wrong-type', {
      expected,
      found: getTypeName(found),
      value: typeof found === 'object' ? undefined : cutText(String(found)),
    })
  if (found === undefined && tokens.length > 0) {
    const params = { key, allowed: allowed.length === 0 ? undefined : allowed }
    const version = { op: 'add', path, value: READABLE_VERSIONS[0] } as const
    const holder = joinPointer(tokens.slice(0, -1))
    return reportMistake(holder, 'spec/missing-key', params, path === '/version' ? version : undefined)
  }
  switch (issue.code) {
    case 'invalid_type': {
      if (issue.message !== 'spec/bad-figure' || typeof found !== 'number')
        return reportWrongType(TYPE_NAMES[issue.expected] ?? 'object')
      const value = String(found)
      const fix = FIGURE_PATTERN.test(value) ? ({ op: 'replace', path, value } as const) : undefined
      return report('spec/figure-without-quotes', { found }, fix)
    }
    case 'invalid_value':
    case 'invalid_union': {
      const hasTwoForms = issue.code === 'invalid_union' && issue.errors.length > 0
      // The value is a number or a word. A figure in quotes was meant as a number.
      const expected =
        hasTwoForms &&
        issue.errors
          .flat()
          .map(readExpectedType)
          .find((type) => type?.includes('number'))
      if (expected && (typeof found !== 'string' || /^[0-9]/.test(found))) return reportWrongType(expected)
      if (typeof found !== 'string')
        return reportWrongType(hasTwoForms || allowed.length === 0 ? 'object' : 'text')
      const didYouMean = suggestName(found, allowed)
      const fix = didYouMean === undefined ? undefined : ({ op: 'replace', path, value: didYouMean } as const)
      return report('spec/not-in-list', { found: cutText(found), allowed, didYouMean }, fix)
    }
    case 'invalid_key':
      return issue.issues[0]?.code === 'too_small'
        ? report('spec/empty-text', { key: String(tokens.at(-2) ?? '') })
        : reportBadText('spec/bad-id', key)
    case 'too_small': {
      if (issue.origin === 'array') return report('spec/empty-list', { key })
      if (issue.origin === 'string') return report('spec/empty-text', { key })
      const { minimum, inclusive = true } = issue
      return report('spec/number-too-small', { found: Number(found), limit: Number(minimum), inclusive })
    }
    case 'too_big':
      return report('spec/number-too-large', { found: Number(found), limit: Number(issue.maximum) })
    default:
      return reportBadText(issue.message, String(found))
  }

  function reportBadText(code: string, text: string): Finding<SpecCodes> {
    const foundParams = { found: cutText(text) }
    switch (code) {
      case 'spec/bad-figure':
        return reportBadFigure(text)
      case 'spec/interval-too-long':
        return FIGURE_PATTERN.test(text) ? report(code, foundParams) : reportBadFigure(text)
      case 'spec/bad-date':
      case 'spec/bad-period':
      case 'spec/bad-pointer':
      case 'spec/bad-currency':
      case 'spec/bad-sha256':
        return report(code, foundParams)
      case 'spec/forbidden-key':
        return report(code, { key: text })
      case 'spec/interval-empty':
        return report(code, {})
      case 'spec/limits-empty':
        return report(code, { unit: readPointer(data, `${path}/unit`) as Unit })
      case 'seal/zero-size':
        return report(code, { part: describeSealedPart(data, tokens), size: key })
      case 'interval/limit-not-above-zero': {
        // The issue of a distance is at its figure.
        const limit = key === 'value' ? tokens.slice(0, -1) : tokens
        return reportMistake(joinPointer(limit), code, { by: String(limit.at(-1)) })
      }
      default: {
        const meant = text.toLowerCase().replace(/[\s_]+/g, '-')
        const didYouMean = ID_PATTERN.test(meant) && meant !== text ? meant : undefined
        return report('spec/bad-id', { ...foundParams, didYouMean })
      }
    }
  }

  function reportBadFigure(text: string): Finding<SpecCodes> {
    const foundParams = { found: cutText(text) }
    const commaMatch = /^-?[0-9]+,([0-9]+)$/.exec(text)
    if (commaMatch === null) return report('spec/bad-figure', foundParams)
    const didYouMean = text.replace(',', '.')
    // Three digits after the comma may be thousands, except after a single zero.
    const isDecimal = commaMatch[1]?.length !== 3 || /^-?0,/.test(text)
    if (!isDecimal || !SIGNED_FIGURE_PATTERN.test(didYouMean))
      return report('spec/comma-decimal', foundParams)
    return report(
      'spec/comma-decimal',
      { ...foundParams, didYouMean },
      { op: 'replace', path, value: didYouMean },
    )
  }
}

/** The name of the sealed part, or of the seal in stock. `tokens` point into the seal. */
function describeSealedPart(data: unknown, tokens: Tokens): string {
  const overriddenPath =
    tokens[0] === 'overrides' && readPointer(data, joinPointer([...tokens.slice(0, 4), 'path']))
  const place = typeof overriddenPath === 'string' ? overriddenPath.split('/').slice(1) : tokens
  const names = [2, 4]
    .map((depth) => readPointer(data, joinPointer([...place.slice(0, depth), 'name'])))
    .filter((name) => typeof name === 'string')
  return names.join(', ') || joinPointer(place)
}

const TYPE_NAMES: Readonly<Record<string, TypeName>> = {
  object: 'object',
  record: 'object',
  array: 'list',
  string: 'text',
  number: 'number',
  int: 'whole-number',
  boolean: 'true-or-false',
}

const readExpectedType = (issue: z.$ZodIssue): TypeName | undefined =>
  issue.code === 'invalid_type' ? TYPE_NAMES[issue.expected] : undefined

export function getTypeName(value: unknown): TypeName {
  if (value === null) return 'null'
  return Array.isArray(value) ? 'list' : (TYPE_NAMES[typeof value] ?? 'object')
}

/** The allowed words. */
export function listAllowed(issue: z.$ZodIssue): readonly string[] {
  if (issue.code === 'invalid_value') return issue.values.map(String)
  if (issue.code !== 'invalid_union') return []
  // A tagged union lists its words. A union of two forms may have a word as one form.
  if ('options' in issue && issue.options !== undefined) return issue.options.map(String)
  return issue.errors.flatMap((alternative) =>
    alternative.flatMap((inner) => (inner.path.length === 0 ? listAllowed(inner) : [])),
  )
}
