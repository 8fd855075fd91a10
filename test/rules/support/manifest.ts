import { readFileSync } from 'node:fs'
import { joinPointer } from '../../../src/base/pointers.js'
import { RETIRED_CODES } from '../../../src/base/retiredCodes.js'
import { GRADE_EDITIONS, type GradeSystem, listRows } from '../../../src/oil/gradeTables.js'
import { allRules } from '../../../src/rules/allRules.js'
import { rule as waiverWithoutFinding } from '../../../src/rules/spec/waiver-without-finding.js'
import { listLeafTypes } from '../../../src/spec/leafTable.js'
import { THREAD_PATTERNS } from '../../../src/thread/parseThread.js'
import {
  COARSE_PITCHES,
  CONSTANT_THREADS_PER_INCH,
  PIPE_LETTERS,
  PIPE_THREADS_PER_INCH,
  UNIFIED_THREADS_PER_INCH,
} from '../../../src/thread/threadSizes.js'
import { printJson } from '../../support/printJson.js'
import { ruleCodes, SHAPE_RULES_FILE, shapeRuleCodes } from './registry.js'
import { RULE_TERMS } from './ruleTerms.js'
import { readVectors } from './vectors.js'

export const MANIFEST_FILE = 'schemas/v1/rules.json'

/** The published list of rules, each precise enough to be written in another language. */
export function writeManifest(): string {
  const vectors = readVectors()
  const all = new Map([...allRules, waiverWithoutFinding].map((rule) => [rule.code, rule]))
  const shownBy = (code: string) =>
    vectors.filter(({ vector }) => vector.code === code).map(({ file }) => file)
  const rules = [
    ...ruleCodes().map((code) => {
      const rule = all.get(code)
      if (rule === undefined) throw new Error(`no rule is called ${code}`)
      const { severity, about } = rule
      const kinds = typeof about === 'string' ? [about] : [...about]
      return { code, severity, about: kinds, ...readComment(code), vectors: shownBy(code) }
    }),
    ...shapeRuleCodes().map((code) => {
      const { about, ...text } = readComment(code)
      return { code, severity: 'error', about, refusedBy: 'schema', ...text, vectors: shownBy(code) }
    }),
  ]
  const leaves = listLeafTypes().map(({ kind, place }) => ({ kind, place: joinPointer(place) }))
  const manifest = {
    version: '1.0',
    terms: RULE_TERMS,
    leaves,
    grades: writeGrades(),
    threads: {
      patterns: Object.fromEntries(
        Object.entries(THREAD_PATTERNS).map(([family, { source }]) => [family, source]),
      ),
      coarsePitches: COARSE_PITCHES,
      pipe: PIPE_THREADS_PER_INCH,
      pipeLetters: PIPE_LETTERS,
      unified: UNIFIED_THREADS_PER_INCH,
      constantPitch: CONSTANT_THREADS_PER_INCH,
    },
    retired: RETIRED_CODES,
    rules,
  }
  return printJson(manifest)
}

/** Systems, their editions in the order in which findings list them, and the limits of each grade. */
function writeGrades(): readonly object[] {
  return Object.entries(GRADE_EDITIONS).map(([name, editions]) => {
    const system = name as GradeSystem
    const iso = system === 'ISO VG'
    return {
      system,
      limits: `mm2/s at ${iso ? '40' : '100'} degC; min belongs to the grade, max ${iso ? 'too' : 'does not'}`,
      editions: editions.map((edition) => ({
        edition,
        grades: Object.fromEntries(
          Object.entries(listRows(system, edition)).map(([grade, { min, max }]) => [grade, { min, max }]),
        ),
      })),
    }
  })
}

export const TABLE_FILE = 'docs/rules.md'

/** The table of rules in the documentation, between its two comments. */
export function writeTable(page: string): string {
  const { rules } = JSON.parse(writeManifest()) as { readonly rules: readonly ManifestRow[] }
  const rows = [...rules]
    .sort((rule, other) => (rule.code < other.code ? -1 : 1))
    .map(
      ({ code, severity, harm, about, catches, basis }) =>
        `| \`${code}\` | ${severity} | ${harm} | ${about.join(', ')} | ${catches
          .split(/(?<=\.) /)
          .slice(0, 2)
          .join(' ')} | ${basis.replace(/^Source: /, '')} |`,
    )
  const head = ['| code | severity | harm | about | what it catches | source |', `|${' --- |'.repeat(6)}`]
  const table = [...head, ...rows].join('\n')
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
  readonly harm: string
  readonly basis: string
}

export interface RuleText {
  /** Only for a rule that a shape checks: the kinds of document that it checks. */
  readonly about?: readonly string[]
  readonly catches: string
  readonly judges: string
  readonly place: string
  readonly params: Readonly<Record<string, string>>
  /** A word of `harm` in the terms. */
  readonly harm: string
  readonly basis: string
}

/**
 * A rule's doc comment: the mistake and its effect, then paragraphs on what it judges, its place, its params, the harm
 * and the source.
 */
export function readComment(code: string): RuleText {
  const isHeldByShape = shapeRuleCodes().includes(code)
  const source = readFileSync(isHeldByShape ? SHAPE_RULES_FILE : `src/rules/${code}.ts`, 'utf8')
  const ruleStart = isHeldByShape ? ` *'${code}':` : 'export const rule = '
  const comment = new RegExp(`/\\*\\*\\n?((?:(?!\\*/)[\\s\\S])*)\\*/\\n${ruleStart}`).exec(source)?.[1] ?? ''
  const text = comment.replaceAll(/^ *\* ?/gm, '').trim()
  const [catches = '', ...rest] = text.split(
    /\n+(?=About: |Judges: |Place: |Params: |Harm: |Source: |House rule|Common practice)/,
  )
  const paragraph = (start: RegExp): string =>
    oneLine(rest.find((candidate) => start.test(candidate)) ?? '').replace(
      /^(?:About|Judges|Place|Params|Harm): /,
      '',
    )
  const params = paragraph(/^Params: /)
    .split('; ')
    .filter((candidate) => candidate !== '')
    .map((item) => [item.slice(0, item.indexOf(': ')), item.slice(item.indexOf(': ') + 2)])
  return {
    ...(isHeldByShape && { about: paragraph(/^About: /).split(', ') }),
    catches: oneLine(catches),
    judges: paragraph(/^Judges: /),
    place: paragraph(/^Place: /),
    params: Object.fromEntries(params),
    harm: paragraph(/^Harm: /),
    basis: paragraph(/^(?:Source|House rule|Common practice)/),
  }
}

const oneLine = (text: string): string => text.replaceAll(/\s+/g, ' ').trim()
