import { readdirSync, readFileSync } from 'node:fs'
import { readVectors } from '../../rules/support/vectors.js'
import { cardOf, planExample } from '../../support/planExample.js'
import { countChecks, readTables } from './outsideChecks.js'

const BEGIN = '<!-- numbers -->\n'
const END = '<!-- end of numbers -->'

/** The README with the table of its numbers as counted now. */
export function updateReadme(readme: string): string {
  const [begin, end] = [readme.indexOf(BEGIN) + BEGIN.length, readme.indexOf(END)]
  if (begin < BEGIN.length || end < begin) throw new Error(`README.md has no ${BEGIN.trim()} … ${END}`)
  return readme.slice(0, begin) + renderNumbers() + readme.slice(end)
}

function renderNumbers(): string {
  const plan = planExample('tind-4')
  const spans = collectSpans(cardOf(plan))
  const count = (tone: string): number =>
    new Set(spans.flatMap((span) => (span.tone === tone ? [span.from] : []))).size
  const { rules } = JSON.parse(readFileSync('schemas/v1/rules.json', 'utf8')) as { rules: readonly unknown[] }
  const cases = readVectors().reduce((sum, { vector }) => sum + 1 + vector.also.length, 0)
  const checks = [...countChecks(readTables()).values()].reduce((sum, count) => sum + count, 0)
  const languages = readdirSync('src/v1/message').length
  return `| one visit of the example machine | by hand | here |
| --- | --- | --- |
| figures to find in the manual, for this variant | ${count('printed')} | from the sheet, each with its page |
| values to calculate and round | ${count('computed')} | calculated exactly, rounded once |
| steps to put in a safe order | ${plan.steps.length} | built, and checked step by step |
| checks of what was written | what someone thinks of | ${rules.length} rules, tried on ${cases} documents with and without a mistake |
| outside checks of the method | – | ${checks} rows of published tables and worked examples, [listed with their sources](DEVELOPERS.md#tests) |
| languages of a card | one | ${languages} |
`
}

interface Span {
  readonly from: string
  readonly tone?: string
}

/** Every span of a card that comes from the plan. */
function collectSpans(value: unknown): readonly Span[] {
  if (typeof value !== 'object' || value === null) return []
  const own = 'from' in value && typeof value.from === 'string' && 'text' in value ? [value as Span] : []
  return [...own, ...Object.values(value).flatMap(collectSpans)]
}
