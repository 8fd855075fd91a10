import { parse } from 'yaml'
import { joinPointer, splitPointer } from '../base/index.js'
import { renderMessage } from '../message/index.js'
import { listLeafTypes, type SpecCodes } from '../spec/index.js'
import { cleanLine } from './cleanLine.js'
import type { CommandIo } from './cliIo.js'
import { findKeyByWord, findKeyExample, type KeyExample } from './keyExamples.js'
import { findTextRange, type LocatedFinding } from './makeLocator.js'
import type { CliWords, TranslatedWords } from './message/cliWords.js'
import { keys as englishKeys } from './message/en/keys.js'
import { nameFile } from './message/nameFile.js'

/** The words and texts of one language. */
export type Language = Pick<CommandIo, 'words' | 'catalogue'>

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
export function renderReport(findings: readonly LocatedFinding[], language: Language): string {
  const { words } = language
  const openFindings = findings.filter(({ accepted }) => !accepted)
  const sharedGroups = groupItems(openFindings, (finding) => makeSharedKey(finding, words))
    .filter((group) => new Set(group.map(findFileName)).size >= MIN_SHARED_FILES)
    .sort((first, second) => rankGroup(first) - rankGroup(second))
  const sharedFindings = new Set(sharedGroups.flat())
  const otherFindings = openFindings.filter((finding) => !sharedFindings.has(finding))
  const lines = [
    ...sharedGroups.flatMap((group) => renderShared(group, words)),
    ...groupItems(otherFindings, findFileName).flatMap((group) => renderFile(group, language)),
  ]
  return lines.map((line) => `${line}\n`).join('')
}

/** Maximum number of files that an entry names. */
const MAX_NAMED_FILES = 5

/** Here each missing key is a separate mistake, since the files may lack different keys. */
function makeSharedKey(finding: LocatedFinding, words: CliWords): string {
  return `${makeGroupKey(finding, words)} ${finding.code === 'spec/missing-key' ? finding.message : ''}`
}

/** One entry for a mistake in several files, with the first place in each. */
function renderShared(group: readonly LocatedFinding[], words: CliWords): readonly string[] {
  const [finding, ...others] = groupItems(group, findFileName).flatMap(([first]) => first ?? [])
  if (finding === undefined) return []
  const named = others.slice(0, MAX_NAMED_FILES).map((other) => describePosition(other, words))
  const { inFiles, alsoIn } = words.reports
  const message = inFiles({ message: finding.message, count: others.length + 1 })
  const otherPlaces = alsoIn({ places: named.join(', '), more: others.length - named.length })
  return renderEntry(finding, message, suggestFix(finding, words), otherPlaces, words)
}

function renderFile(findings: readonly LocatedFinding[], language: Language): readonly string[] {
  const { words } = language
  const orderedFindings = findings.toSorted((first, second) => rankFinding(first) - rankFinding(second))
  const listedKeys = new Set<string>()
  const lines: string[] = []
  const groups = groupItems(orderedFindings, (finding) => makeGroupKey(finding, words))
  for (const [place, group] of groups.entries()) {
    const entry = describeGroup(group, listedKeys, language)
    if (place > 0 && lines.length + entry.length > MAX_LINES) {
      const omittedCount = groups.slice(place).flat().length
      return [...lines, words.reports.more({ count: omittedCount })]
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
function makeGroupKey(finding: LocatedFinding, words: CliWords): string {
  const { code, severity, message, path, text, waived } = finding
  if (code === 'spec/missing-key') return `${code} ${path}`
  return JSON.stringify([
    code,
    severity,
    message,
    text,
    findTextRange(finding),
    suggestFix(finding, words),
    waived?.reason,
  ])
}

/** One entry for the places of a mistake in one file. */
function describeGroup(
  group: readonly LocatedFinding[],
  listedKeys: Set<string>,
  language: Language,
): readonly string[] {
  const { words } = language
  const [finding, ...others] = group
  if (finding === undefined) return []
  if (finding.code === 'spec/missing-key') {
    const message = others.length > 0 ? describeMissingKeys(group, words) : finding.message
    const fixes = group.flatMap((missing) => suggestFix(missing, words))
    return renderEntry(finding, message, fixes, '', words)
  }
  const lines = others.map(({ position, path }) => position?.line ?? path)
  const otherPlaces = lines.length === 0 ? '' : words.reports.alsoAtLines({ lines: lines.join(', ') })
  const message = removeRepeatedList(finding, listedKeys, language)
  return renderEntry(finding, message, suggestFix(finding, words), otherPlaces, words)
}

/** Position, message, suggestion and code. */
function renderEntry(
  finding: LocatedFinding,
  message: string,
  suggestions: readonly string[],
  otherPlaces: string,
  words: CliWords,
): readonly string[] {
  const { reports, severities } = words
  const { code, severity, path } = finding
  const waived = finding.waived && ` ${reports.waived({ reason: cleanLine(finding.waived.reason) })}`
  const place = path === '' ? code : reports.at({ code, path: cleanLine(path) })
  return [
    reports.entry({
      position: describePosition(finding, words),
      severity: severities[severity],
      message: `${message}${waived ?? ''}`,
    }),
    ...renderExcerpt(finding, words),
    ...suggestions.map((line) => `    ${line}`),
    `    ${place}${otherPlaces}`,
  ]
}

function findFileName({ document }: LocatedFinding): string {
  return cleanLine(document.name ?? document.kind)
}

function describePosition(finding: LocatedFinding, words: CliWords): string {
  const { line, column } = finding.position ?? {}
  const name = nameFile(findFileName(finding), words)
  return line === undefined ? name : `${name}:${line}:${column}`
}

function describeMissingKeys(group: readonly LocatedFinding[], { reports }: CliWords): string {
  const keys = group.map(({ params }) => `"${(params as SpecCodes['spec/missing-key']).key}"`)
  return reports.missingKeys({ keys: keys.slice(0, -1).join(', '), last: keys.at(-1) ?? '' })
}

/** The known keys of a part are listed once. */
function removeRepeatedList(
  finding: LocatedFinding,
  listedKeys: Set<string>,
  { catalogue }: Language,
): string {
  const { code, message, params } = finding
  if (code !== 'spec/unknown-key') return message
  const list = (params as SpecCodes['spec/unknown-key']).known.join()
  const isListed = listedKeys.has(list)
  listedKeys.add(list)
  if (!isListed) return message
  // A table writes the column before the message.
  const short = renderMessage({ code, params: { ...params, known: [] } }, catalogue)
  return message.replace(renderMessage(finding, catalogue), () => short)
}

/** The text, carets under the mistake, and the suggestion. */
function renderExcerpt(finding: LocatedFinding, { reports }: CliWords): readonly string[] {
  const range = findTextRange(finding)
  const { text } = finding
  if (range === undefined || text === undefined) return []
  const [from, to] = range
  const before = ' '.repeat(cleanLine(text.slice(0, from)).length)
  const carets = '^'.repeat(Math.max(1, cleanLine(text.slice(from, to)).length))
  const fixes = (finding.cures ?? []).flatMap((fix) =>
    fix.op === 'replace' && typeof fix.value === 'string'
      ? [`    ${reports.write({ text: cleanLine(fix.value) })}`]
      : [],
  )
  return [`    ${cleanLine(text)}`, `    ${before}${carets}`, ...fixes]
}

/** The shortest correct form, to copy. */
function suggestFix(finding: LocatedFinding, words: CliWords): readonly string[] {
  const { reports } = words
  const keys = findKeyMeanings(words)
  const { code, path, params, cures, document } = finding
  const name = splitPointer(path)?.at(-1) ?? ''
  switch (code) {
    case 'spec/missing-key': {
      const { key: name } = params as SpecCodes['spec/missing-key']
      const example = findKeyExample(joinPointer([...(splitPointer(path) ?? []), name]), document.kind)
      return example === undefined
        ? []
        : [
            `${reports.write({ text: renderExample(example, finding)[0] ?? '' })}   (${keys[example.meaning]})`,
          ]
    }
    case 'spec/unknown-key': {
      if ((params as SpecCodes['spec/unknown-key']).didYouMean !== undefined) return []
      if (/^\/overrides\/\d+\/set\/[^/]*$/.test(path)) return listLeavesBelow(name, words)
      const suggestedKey = findKeyByWord(name)
      return suggestedKey === undefined
        ? []
        : [
            reports.belongsAt({ meaning: keys[suggestedKey.meaning], place: suggestedKey.place }),
            ...indent(renderExample(suggestedKey, finding)),
          ]
    }
    case 'spec/wrong-type': {
      const { expected, value } = params as SpecCodes['spec/wrong-type']
      if (expected === 'text' && value !== undefined)
        return [reports.write({ text: cleanLine(JSON.stringify(value)) })]
      return suggestExample(path, finding, words)
    }
    case 'spec/wrong-kind':
      return cures === undefined ? suggestExample(path, finding, words) : []
    case 'spec/bad-notation':
      return cures === undefined ? suggestExample(path, finding, words) : []
    case 'spec/not-yaml':
      return /tab/i.test((params as SpecCodes['spec/not-yaml']).problem) ? [reports.indentWithSpaces] : []
    default:
      return []
  }
}

const findKeyMeanings = (words: CliWords | TranslatedWords): TranslatedWords['keys'] =>
  'keys' in words ? words.keys : englishKeys

/** An override sets the leaves below the path that it names. */
function listLeavesBelow(written: string, { reports }: CliWords): readonly string[] {
  const tokens = splitPointer(written) ?? []
  const below = listLeafTypes().filter(({ place }) =>
    tokens.every((token, at) => place[at] === '*' || place[at] === token),
  )
  if (tokens.length === 0 || below.length === 0) return []
  const places = below.map(({ place }) => joinPointer([...tokens, ...place.slice(tokens.length)]))
  return [reports.overrideSetsOne, ...indent(places)]
}

function suggestExample(path: string, finding: LocatedFinding, words: CliWords): readonly string[] {
  const example = findKeyExample(path, finding.document.kind)
  return example === undefined
    ? []
    : [
        words.reports.writeMeaning({ meaning: findKeyMeanings(words)[example.meaning] }),
        ...indent(renderExample(example, finding)),
      ]
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
