import type * as z from 'zod/v4/core'
import {
  type Cure,
  cutText,
  type DocumentReference,
  type Finding,
  joinPointer,
  readPointer,
  suggestName,
} from '../base/index.js'
import type { Unit } from '../quantity/index.js'
import { READABLE_VERSIONS, type SpecCodes, type TypeName } from '../spec/index.js'
import { reportMistake } from './reportMistake.js'
import { FIGURE_PATTERN, ID_PATTERN, SIGNED_FIGURE_PATTERN } from './shapes/textShapes.js'

export type Issue = z.$ZodIssue

/** Turns one issue of the shape reader into the finding that a writer of documents understands. */
export function nameMistake(
  issue: Issue,
  data: unknown,
  tokens: readonly (string | number)[],
  document: DocumentReference,
): Finding<SpecCodes> {
  const path = joinPointer(tokens)
  const found = readPointer(data, path)
  const key = String(tokens.at(-1) ?? '')
  if (found === undefined && tokens.length > 0) {
    const cures: Cure[] = path === '/version' ? [{ op: 'add', path, value: READABLE_VERSIONS[0] }] : []
    const allowed = listAllowed(issue)
    return reportMistake(
      document,
      joinPointer(tokens.slice(0, -1)),
      'spec/missing-key',
      { key, ...(allowed.length === 0 ? {} : { allowed }) },
      cures,
    )
  }
  switch (issue.code) {
    case 'invalid_type':
      if (issue.message === 'spec/bad-figure' && typeof found === 'number') {
        const figure = String(found)
        const cures: Cure[] = FIGURE_PATTERN.test(figure) ? [{ op: 'replace', path, value: figure }] : []
        return reportMistake(document, path, 'spec/figure-without-quotes', { found }, cures)
      }
      return reportWrongType(EXPECTED[issue.expected] ?? 'object')
    case 'invalid_value':
    case 'invalid_union': {
      const allowed = listAllowed(issue)
      const isTwoForms = issue.code === 'invalid_union' && issue.errors.length > 0
      if (typeof found !== 'string')
        return reportWrongType(isTwoForms || allowed.length === 0 ? 'object' : 'text')
      const didYouMean = suggestName(found, allowed)
      return reportMistake(
        document,
        path,
        'spec/not-in-list',
        { found: cutText(found), allowed, ...(didYouMean === undefined ? {} : { didYouMean }) },
        didYouMean === undefined ? [] : [{ op: 'replace', path, value: didYouMean }],
      )
    }
    case 'invalid_key':
      return issue.issues[0]?.code === 'too_small'
        ? reportMistake(document, path, 'spec/empty-text', { key: String(tokens.at(-2) ?? '') })
        : reportBadText('spec/bad-id', key)
    case 'too_small':
      if (issue.origin === 'array') return reportMistake(document, path, 'spec/empty-list', { key })
      if (issue.origin === 'string') return reportMistake(document, path, 'spec/empty-text', { key })
      return reportMistake(document, path, 'spec/number-too-small', {
        found: Number(found),
        limit: Number(issue.minimum),
        inclusive: issue.inclusive ?? true,
      })
    case 'too_big':
      return reportMistake(document, path, 'spec/number-too-large', {
        found: Number(found),
        limit: Number(issue.maximum),
      })
    default:
      return reportBadText(issue.message, String(found))
  }

  function reportWrongType(expected: TypeName): Finding<SpecCodes> {
    return reportMistake(document, path, 'spec/wrong-type', {
      expected,
      found: nameType(found),
      ...(typeof found === 'object' ? {} : { value: cutText(String(found)) }),
    })
  }

  function reportBadText(code: string, text: string): Finding<SpecCodes> {
    const shown = { found: cutText(text) }
    switch (code) {
      case 'spec/bad-figure':
        return reportBadFigure(text)
      case 'spec/interval-too-long':
        return FIGURE_PATTERN.test(text) ? reportMistake(document, path, code, shown) : reportBadFigure(text)
      case 'spec/bad-date':
      case 'spec/bad-period':
      case 'spec/bad-pointer':
      case 'spec/bad-currency':
        return reportMistake(document, path, code, shown)
      case 'spec/forbidden-key':
        return reportMistake(document, path, code, { key: text })
      case 'spec/interval-empty':
        return reportMistake(document, path, code, {})
      case 'spec/limits-empty':
        return reportMistake(document, path, code, { unit: readPointer(data, `${path}/unit`) as Unit })
      case 'seal/zero-size':
        return reportMistake(document, path, code, { part: nameSealed(data, tokens), size: key })
      case 'interval/limit-not-above-zero': {
        // Of a distance, its figure was read.
        const limit = key === 'value' ? tokens.slice(0, -1) : tokens
        return reportMistake(document, joinPointer(limit), code, { by: String(limit.at(-1)) })
      }
      default: {
        const didYouMean = text.toLowerCase().replace(/[\s_]+/g, '-')
        const helps = ID_PATTERN.test(didYouMean) && didYouMean !== text
        return reportMistake(document, path, 'spec/bad-id', { ...shown, ...(helps ? { didYouMean } : {}) })
      }
    }
  }

  function reportBadFigure(text: string): Finding<SpecCodes> {
    const comma = /^-?[0-9]+,([0-9]+)$/.exec(text)
    if (comma === null) return reportMistake(document, path, 'spec/bad-figure', { found: cutText(text) })
    const didYouMean = text.replace(',', '.')
    // Three digits after the mark may be thousands, unless only a zero is before it.
    const clear = comma[1]?.length !== 3 || /^-?0,/.test(text)
    if (!clear || !SIGNED_FIGURE_PATTERN.test(didYouMean))
      return reportMistake(document, path, 'spec/comma-decimal', { found: cutText(text) })
    const cures: Cure[] = [{ op: 'replace', path, value: didYouMean }]
    return reportMistake(document, path, 'spec/comma-decimal', { found: cutText(text), didYouMean }, cures)
  }
}

/** The name of what a seal is for, or of the seal on the shelf; `tokens` lead into the seal. */
function nameSealed(data: unknown, tokens: readonly (string | number)[]): string {
  const replaced =
    tokens[0] === 'overrides' && readPointer(data, joinPointer([...tokens.slice(0, 4), 'path']))
  const place = typeof replaced === 'string' ? replaced.split('/').slice(1) : tokens
  const names = [2, 4]
    .map((depth) => readPointer(data, joinPointer([...place.slice(0, depth), 'name'])))
    .filter((name) => typeof name === 'string')
  return names.join(', ') || joinPointer(place)
}

const EXPECTED: Readonly<Record<string, TypeName>> = {
  object: 'object',
  record: 'object',
  array: 'list',
  string: 'text',
  number: 'number',
  int: 'whole-number',
  boolean: 'true-or-false',
}

function nameType(value: unknown): TypeName {
  if (value === null) return 'null'
  if (Array.isArray(value)) return 'list'
  if (typeof value === 'string') return 'text'
  if (typeof value === 'number') return 'number'
  return typeof value === 'boolean' ? 'true-or-false' : 'object'
}

/** The words that would have been right. */
export function listAllowed(issue: Issue): readonly string[] {
  if (issue.code === 'invalid_value') return issue.values.map(String)
  if (issue.code !== 'invalid_union') return []
  // A tag names its union's arms; of two ways to write a value, one may be a word.
  if ('options' in issue && issue.options !== undefined) return issue.options.map(String)
  return issue.errors.flatMap((arm) =>
    arm.flatMap((inner) => (inner.path.length === 0 ? listAllowed(inner) : [])),
  )
}
