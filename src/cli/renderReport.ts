import { parse } from 'yaml'
import { joinPointer, splitPointer } from '../base/index.js'
import { listLeafTypes, type SpecCodes } from '../spec/index.js'
import { findKeyExample, findMeantKey, type KeyExample } from './keyExamples.js'
import { type LocatedFinding, rangeOf } from './locatedFinding.js'
import { safeLine } from './safeLine.js'

/** Lines that the findings of one document may have: one screen with the summary. */
const MAX_LINES = 38

/** What blocks the reading of a document, the most first. Other findings stay in their order after them. */
const BLOCKING: readonly (readonly string[])[] = [
  ['spec/not-yaml', 'spec/not-json', 'spec/duplicate-key'],
  ['spec/wrong-kind', 'spec/wrong-version'],
  ['spec/missing-key'],
  ['spec/unknown-key', 'spec/wrong-type', 'spec/bad-id', 'spec/not-in-list'],
]

/**
 * Writes findings for people: of each document what blocks its reading first, what is found at several places once, and at
 * most one screen.
 */
export function renderReport(findings: readonly LocatedFinding[]): string {
  const lines = groupBy(findings, fileOf).flatMap(reportFile)
  return lines.map((line) => `${line}\n`).join('')
}

function reportFile(findings: readonly LocatedFinding[]): readonly string[] {
  const ordered = findings.toSorted((first, second) => rankOf(first) - rankOf(second))
  const listed = new Set<string>()
  const lines: string[] = []
  const groups = groupBy(ordered, sameness)
  for (const [place, group] of groups.entries()) {
    const entry = describeGroup(group, listed)
    if (place > 0 && lines.length + entry.length > MAX_LINES) {
      const left = groups.slice(place).flat().length
      return [...lines, `... and ${left} more: correct these first, or list all with --format json.`]
    }
    lines.push(...entry)
  }
  return lines
}

function rankOf({ code }: LocatedFinding): number {
  const rank = BLOCKING.findIndex((codes) => codes.includes(code))
  return rank === -1 ? BLOCKING.length : rank
}

/** Findings with the same text are shown together, and so are the keys that one part lacks. */
function sameness(finding: LocatedFinding): string {
  const { code, severity, message, path, text, waived } = finding
  if (code === 'spec/missing-key') return `${code} ${path}`
  return JSON.stringify([code, severity, message, text, rangeOf(finding), teach(finding), waived?.reason])
}

/** One entry: where, what, what to write, and the code. */
function describeGroup(group: readonly LocatedFinding[], listed: Set<string>): readonly string[] {
  const [finding, ...others] = group
  if (finding === undefined) return []
  const isMissing = finding.code === 'spec/missing-key'
  const message =
    isMissing && others.length > 0 ? describeMissing(group) : withoutRepeatedList(finding, listed)
  const waived = finding.waived === undefined ? '' : ` (waived: ${safeLine(finding.waived.reason)})`
  const place = finding.path === '' ? '' : ` at ${safeLine(finding.path)}`
  const elsewhere = isMissing ? [] : others.map(({ position, path }) => position?.line ?? path)
  return [
    `${whereOf(finding)}: ${finding.severity}: ${message}${waived}`,
    ...excerptOf(finding),
    ...group
      .slice(0, isMissing ? undefined : 1)
      .flatMap(teach)
      .map((line) => `    ${line}`),
    `    ${finding.code}${place}${elsewhere.length === 0 ? '' : `; also at line ${elsewhere.join(', ')}`}`,
  ]
}

function fileOf({ document }: LocatedFinding): string {
  return safeLine(document.name ?? document.kind)
}

function whereOf(finding: LocatedFinding): string {
  const { line, column } = finding.position ?? {}
  return line === undefined ? fileOf(finding) : `${fileOf(finding)}:${line}:${column}`
}

function describeMissing(group: readonly LocatedFinding[]): string {
  const keys = group.map(({ params }) => `"${(params as SpecCodes['spec/missing-key']).key}"`)
  return `Missing keys ${keys.slice(0, -1).join(', ')} and ${keys.at(-1)}.`
}

/** The keys of a part are listed once. */
function withoutRepeatedList({ code, message, params }: LocatedFinding, listed: Set<string>): string {
  if (code !== 'spec/unknown-key') return message
  const list = (params as SpecCodes['spec/unknown-key']).known.join()
  const isListed = listed.has(list)
  listed.add(list)
  return isListed ? message.replace(/ Known: .*$/, '') : message
}

/** The text, the place in it under a caret line, and what to write instead. */
function excerptOf(finding: LocatedFinding): readonly string[] {
  const range = rangeOf(finding)
  const { text } = finding
  if (range === undefined || text === undefined) return []
  const [from, to] = range
  const before = ' '.repeat(safeLine(text.slice(0, from)).length)
  const carets = '^'.repeat(Math.max(1, safeLine(text.slice(from, to)).length))
  const cures = (finding.cures ?? []).flatMap((cure) =>
    cure.op === 'replace' && typeof cure.value === 'string' ? [`    write: ${safeLine(cure.value)}`] : [],
  )
  return [`    ${safeLine(text)}`, `    ${before}${carets}`, ...cures]
}

/** The smallest correct form, to copy. */
function teach(finding: LocatedFinding): readonly string[] {
  const { code, path, params, cures, document } = finding
  const key = splitPointer(path)?.at(-1) ?? ''
  switch (code) {
    case 'spec/missing-key': {
      const { key } = params as SpecCodes['spec/missing-key']
      const example = findKeyExample(joinPointer([...(splitPointer(path) ?? []), key]), document.kind)
      return example === undefined ? [] : [`write: ${show(example, finding)[0]}   (${example.meaning})`]
    }
    case 'spec/unknown-key': {
      if ((params as SpecCodes['spec/unknown-key']).didYouMean !== undefined) return []
      if (/^\/overrides\/\d+\/set\/[^/]*$/.test(path)) return leavesBelow(key)
      const meant = findMeantKey(key)
      return meant === undefined
        ? []
        : [`${meant.meaning} belongs at ${meant.place}, such as`, ...indent(show(meant, finding))]
    }
    case 'spec/wrong-type': {
      const { expected, value } = params as SpecCodes['spec/wrong-type']
      if (expected === 'text' && value !== undefined) return [`write: ${safeLine(JSON.stringify(value))}`]
      return suchAs(path, finding)
    }
    case 'spec/wrong-kind':
      return cures === undefined ? suchAs(path, finding) : []
    case 'spec/bad-notation':
      return cures === undefined ? suchAs(path, finding) : []
    case 'spec/not-yaml':
      return /tab/i.test((params as SpecCodes['spec/not-yaml']).problem) ? ['indent with spaces'] : []
    default:
      return []
  }
}

/** An override replaces leaves: those below the place that was written. */
function leavesBelow(written: string): readonly string[] {
  const tokens = splitPointer(written) ?? []
  const below = listLeafTypes().filter(({ place }) =>
    tokens.every((token, at) => place[at] === '*' || place[at] === token),
  )
  if (tokens.length === 0 || below.length === 0) return []
  const places = below.map(({ place }) => joinPointer([...tokens, ...place.slice(tokens.length)]))
  return ['an override sets one value, here one of', ...indent(places)]
}

function suchAs(path: string, finding: LocatedFinding): readonly string[] {
  const example = findKeyExample(path, finding.document.kind)
  return example === undefined ? [] : [`write ${example.meaning}, such as`, ...indent(show(example, finding))]
}

/** Lines to copy, in the language of the document. */
function show({ examples }: KeyExample, { document }: LocatedFinding): readonly string[] {
  return document.name?.endsWith('.json')
    ? examples.map((example) => JSON.stringify(parse(example)).slice(1, -1))
    : examples.flatMap((example) => example.split('\n'))
}

const indent = (lines: readonly string[]): readonly string[] => lines.map((line) => `  ${line}`)

function groupBy<Item>(items: readonly Item[], keyOf: (item: Item) => string): readonly (readonly Item[])[] {
  const groups = new Map<string, Item[]>()
  for (const item of items) {
    const key = keyOf(item)
    const group = groups.get(key)
    if (group === undefined) groups.set(key, [item])
    else group.push(item)
  }
  return [...groups.values()]
}
