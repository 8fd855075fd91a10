import { readFileSync } from 'node:fs'
import { allRules } from '../../../src/rules/allRules.js'
import type { AnyRule } from '../../../src/rules/rule.js'
import { waiverWithoutFinding } from '../../../src/rules/spec/waiver-without-finding.js'
import { readVectors } from './vectors.js'

export const MANIFEST_FILE = 'schemas/v1/rules.json'

/** The published list of rules: what each is called, how grave it is, what it reads, catches, and rests on. */
export function writeManifest(): string {
  const vectors = readVectors()
  const rules = [...allRules, waiverWithoutFinding]
    .map((rule) => ({
      code: rule.code,
      severity: rule.severity,
      about: typeof rule.about === 'string' ? [rule.about] : [...rule.about],
      ...readComment(rule),
      vectors: vectors.filter(({ vector }) => vector.code === rule.code).map(({ file }) => file),
    }))
    .sort((first, second) => (first.code < second.code ? -1 : 1))
  return `${JSON.stringify({ version: '1.0', rules }, null, 2)}\n`
}

export const TABLE_FILE = 'docs/rules.md'

/** The table of rules in the documentation, between its two marks. */
export function writeTable(page: string): string {
  const rows = (JSON.parse(writeManifest()) as { readonly rules: readonly ManifestRow[] }).rules.map(
    ({ code, severity, about, catches }) =>
      `| \`${code}\` | ${severity} | ${about.join(', ')} | ${catches.split(/(?<=\.) /)[0]} |`,
  )
  const table = ['| code | severity | about | what it catches |', '| --- | --- | --- | --- |', ...rows].join(
    '\n',
  )
  return page.replace(
    /(<!-- rules -->\n)[\s\S]*(\n<!-- end of rules -->)/,
    (_all, start, end) => start + table + end,
  )
}

interface ManifestRow {
  readonly code: string
  readonly severity: string
  readonly about: readonly string[]
  readonly catches: string
}

/** A rule's doc comment in two parts: the mistake, and what the judgement rests on. */
export function readComment({ code }: Pick<AnyRule, 'code'>): {
  readonly catches: string
  readonly basis: string
} {
  const source = readFileSync(`src/rules/${code}.ts`, 'utf8')
  const comment = /\/\*\*\n?([\s\S]*?)\*\/\nexport const \w+ = defineRule/.exec(source)?.[1] ?? ''
  const text = comment
    .replaceAll(/^ *\* ?/gm, '')
    .replaceAll(/\s+/g, ' ')
    .trim()
  const at = text.search(/(?:Source:|House rule|Common practice, no source)/)
  return at === -1
    ? { catches: text, basis: '' }
    : { catches: text.slice(0, at).trim(), basis: text.slice(at).trim() }
}
