import { parse } from 'yaml'
import { joinPointer, splitPointer } from '../base/index.js'
import { listLeafTypes, type SpecCodes } from '../spec/index.js'
import { cleanLine, formatCount } from './cleanLine.js'
import { findKeyByWord, findKeyExample, type KeyExample } from './keyExamples.js'
import { findTextRange, type LocatedFinding } from './makeLocator.js'

/** Maximum lines for one document: with the summary they fill one screen. */
const MAX_LINES = 38

/** Findings that prevent reading a document, the most basic first. Other findings follow in their order. */
const BLOCKING_CODES: readonly (readonly string[])[] = [
  ['spec/not-yaml', 'spec/not-json', 'spec/duplicate-key'],
  ['spec/wrong-kind', 'spec/wrong-version'],
  ['spec/missing-key'],
  ['spec/unknown-key', 'spec/wrong-type', 'spec/bad-id', 'spec/not-in-list'],
]

/** From this number of files, the same mistake is printed once. */
const MIN_SHARED_FILES = 3

/**
 * Writes findings for people, at most one screen for each document: findings that prevent reading come first,
 * and repeated findings are merged. The same mistake in several files comes before all others.
 */
export function renderReport(findings: readonly LocatedFinding[]): string {
  const openFindings = findings.filter(({ accepted }) => !accepted)
  const sharedGroups = groupItems(openFindings, makeSharedKey)
    .filter((group) => new Set(group.map(findFileName)).size >= MIN_SHARED_FILES)
    .sort((first, second) => rankGroup(first) - rankGroup(second))
  const sharedFindings = new Set(sharedGroups.flat())
  const otherFindings = openFindings.filter((finding) => !sharedFindings.has(finding))
  const lines = [
    ...sharedGroups.flatMap(renderShared),
    ...groupItems(otherFindings, findFileName).flatMap(renderFile),
  ]
  return lines.map((line) => `${line}\n`).join('')
}

/** Maximum number of files that an entry names. */
const MAX_NAMED_FILES = 5

/** Here each missing key is a separate mistake, since the files may lack different keys. */
function makeSharedKey(finding: LocatedFinding): string {
  return `${makeGroupKey(finding)} ${finding.code === 'spec/missing-key' ? finding.message : ''}`
}

/** One entry for a mistake in several files, with the first place in each. */
function renderShared(group: readonly LocatedFinding[]): readonly string[] {
  const [finding, ...others] = groupItems(group, findFileName).flatMap(([first]) => first ?? [])
  if (finding === undefined) return []
  const named = others.slice(0, MAX_NAMED_FILES).map(describePosition)
  const moreCount = others.length - named.length
  const more = moreCount > 0 ? ` and ${formatCount(moreCount, 'more file')}` : ''
  const message = `${finding.message} (${others.length + 1} files)`
  return renderEntry(finding, message, suggestFix(finding), `; also in ${named.join(', ')}${more}`)
}

function renderFile(findings: readonly LocatedFinding[]): readonly string[] {
  const orderedFindings = findings.toSorted((first, second) => rankFinding(first) - rankFinding(second))
  const listedKeys = new Set<string>()
  const lines: string[] = []
  const groups = groupItems(orderedFindings, makeGroupKey)
  for (const [place, group] of groups.entries()) {
    const entry = describeGroup(group, listedKeys)
    if (place > 0 && lines.length + entry.length > MAX_LINES) {
      const omittedCount = groups.slice(place).flat().length
      return [...lines, `... and ${omittedCount} more: correct these first, or list all with --format json.`]
    }
    lines.push(...entry)
  }
  return lines
}

function rankGroup([finding]: readonly LocatedFinding[]): number {
  return finding === undefined ? BLOCKING_CODES.length : rankFinding(finding)
}

function rankFinding({ code }: LocatedFinding): number {
  const rank = BLOCKING_CODES.findIndex((codes) => codes.includes(code))
  return rank === -1 ? BLOCKING_CODES.length : rank
}

/** Findings with the same text are merged, and so are the missing keys of one part. */
function makeGroupKey(finding: LocatedFinding): string {
  const { code, severity, message, path, text, waived } = finding
  if (code === 'spec/missing-key') return `${code} ${path}`
  return JSON.stringify([
    code,
    severity,
    message,
    text,
    findTextRange(finding),
    suggestFix(finding),
    waived?.reason,
  ])
}

/** One entry for the places of a mistake in one file. */
function describeGroup(group: readonly LocatedFinding[], listedKeys: Set<string>): readonly string[] {
  const [finding, ...others] = group
  if (finding === undefined) return []
  if (finding.code === 'spec/missing-key') {
    const message = others.length > 0 ? describeMissingKeys(group) : finding.message
    return renderEntry(finding, message, group.flatMap(suggestFix), '')
  }
  const lines = others.map(({ position, path }) => position?.line ?? path)
  const otherPlaces = lines.length === 0 ? '' : `; also at line ${lines.join(', ')}`
  return renderEntry(finding, removeRepeatedList(finding, listedKeys), suggestFix(finding), otherPlaces)
}

/** Position, message, suggestion and code. */
function renderEntry(
  finding: LocatedFinding,
  message: string,
  suggestions: readonly string[],
  otherPlaces: string,
): readonly string[] {
  const waived = finding.waived === undefined ? '' : ` (waived: ${cleanLine(finding.waived.reason)})`
  const place = finding.path === '' ? '' : ` at ${cleanLine(finding.path)}`
  return [
    `${describePosition(finding)}: ${finding.severity}: ${message}${waived}`,
    ...renderExcerpt(finding),
    ...suggestions.map((line) => `    ${line}`),
    `    ${finding.code}${place}${otherPlaces}`,
  ]
}

function findFileName({ document }: LocatedFinding): string {
  return cleanLine(document.name ?? document.kind)
}

function describePosition(finding: LocatedFinding): string {
  const { line, column } = finding.position ?? {}
  return line === undefined ? findFileName(finding) : `${findFileName(finding)}:${line}:${column}`
}

function describeMissingKeys(group: readonly LocatedFinding[]): string {
  const keys = group.map(({ params }) => `"${(params as SpecCodes['spec/missing-key']).key}"`)
  return `Missing keys ${keys.slice(0, -1).join(', ')} and ${keys.at(-1)}.`
}

/** The known keys of a part are listed once. */
function removeRepeatedList({ code, message, params }: LocatedFinding, listedKeys: Set<string>): string {
  if (code !== 'spec/unknown-key') return message
  const list = (params as SpecCodes['spec/unknown-key']).known.join()
  const isListed = listedKeys.has(list)
  listedKeys.add(list)
  return isListed ? message.replace(/ Known: .*$/, '') : message
}

/** The text, carets under the mistake, and the suggestion. */
function renderExcerpt(finding: LocatedFinding): readonly string[] {
  const range = findTextRange(finding)
  const { text } = finding
  if (range === undefined || text === undefined) return []
  const [from, to] = range
  const before = ' '.repeat(cleanLine(text.slice(0, from)).length)
  const carets = '^'.repeat(Math.max(1, cleanLine(text.slice(from, to)).length))
  const fixes = (finding.cures ?? []).flatMap((fix) =>
    fix.op === 'replace' && typeof fix.value === 'string' ? [`    write: ${cleanLine(fix.value)}`] : [],
  )
  return [`    ${cleanLine(text)}`, `    ${before}${carets}`, ...fixes]
}

/** The shortest correct form, to copy. */
function suggestFix(finding: LocatedFinding): readonly string[] {
  const { code, path, params, cures, document } = finding
  const name = splitPointer(path)?.at(-1) ?? ''
  switch (code) {
    case 'spec/missing-key': {
      const { key: name } = params as SpecCodes['spec/missing-key']
      const example = findKeyExample(joinPointer([...(splitPointer(path) ?? []), name]), document.kind)
      return example === undefined
        ? []
        : [`write: ${renderExample(example, finding)[0]}   (${example.meaning})`]
    }
    case 'spec/unknown-key': {
      if ((params as SpecCodes['spec/unknown-key']).didYouMean !== undefined) return []
      if (/^\/overrides\/\d+\/set\/[^/]*$/.test(path)) return listLeavesBelow(name)
      const suggestedKey = findKeyByWord(name)
      return suggestedKey === undefined
        ? []
        : [
            `${suggestedKey.meaning} belongs at ${suggestedKey.place}, such as`,
            ...indent(renderExample(suggestedKey, finding)),
          ]
    }
    case 'spec/wrong-type': {
      const { expected, value } = params as SpecCodes['spec/wrong-type']
      if (expected === 'text' && value !== undefined) return [`write: ${cleanLine(JSON.stringify(value))}`]
      return suggestExample(path, finding)
    }
    case 'spec/wrong-kind':
      return cures === undefined ? suggestExample(path, finding) : []
    case 'spec/bad-notation':
      return cures === undefined ? suggestExample(path, finding) : []
    case 'spec/not-yaml':
      return /tab/i.test((params as SpecCodes['spec/not-yaml']).problem) ? ['indent with spaces'] : []
    default:
      return []
  }
}

/** An override sets the leaves below the path that it names. */
function listLeavesBelow(written: string): readonly string[] {
  const tokens = splitPointer(written) ?? []
  const below = listLeafTypes().filter(({ place }) =>
    tokens.every((token, at) => place[at] === '*' || place[at] === token),
  )
  if (tokens.length === 0 || below.length === 0) return []
  const places = below.map(({ place }) => joinPointer([...tokens, ...place.slice(tokens.length)]))
  return ['an override sets a single value, such as', ...indent(places)]
}

function suggestExample(path: string, finding: LocatedFinding): readonly string[] {
  const example = findKeyExample(path, finding.document.kind)
  return example === undefined
    ? []
    : [`write ${example.meaning}, such as`, ...indent(renderExample(example, finding))]
}

/** Lines to copy, in the format of the document. */
function renderExample({ examples }: KeyExample, { document }: LocatedFinding): readonly string[] {
  return document.name?.endsWith('.json')
    ? examples.map((example) => JSON.stringify(parse(example)).slice(1, -1))
    : examples.flatMap((example) => example.split('\n'))
}

const indent = (lines: readonly string[]): readonly string[] => lines.map((line) => `  ${line}`)

function groupItems<Item>(
  items: readonly Item[],
  makeKey: (item: Item) => string,
): readonly (readonly Item[])[] {
  const groups = new Map<string, Item[]>()
  for (const item of items) {
    const key = makeKey(item)
    const group = groups.get(key)
    if (group === undefined) groups.set(key, [item])
    else group.push(item)
  }
  return [...groups.values()]
}
