import { readFileSync } from 'node:fs'
import { type Law, readLaws } from '../../support/lawIndex.js'

/** The public functions, as `docs/api.md` lists them. */
export function readFunctionNames(): readonly string[] {
  const page = readFileSync('docs/api.md', 'utf8')
  return [...new Set([...page.matchAll(/^\| `(\w+)` \| /gm)].map(([, name = '']) => name))].sort()
}

/** Public functions that no law is about. */
export function listWithoutLaw(laws: readonly Law[]): readonly string[] {
  return readFunctionNames().filter((name) => !laws.some(({ functions }) => functions.includes(name)))
}

export function renderLaws(laws: readonly Law[] = readLaws()): string {
  const names = readFunctionNames()
  const models = laws.filter(({ isModel }) => isModel)
  const rows = names.flatMap((name) => {
    const own = laws.filter(({ functions }) => functions.includes(name))
    // A law of few functions says more about each of them.
    const sorted = own.toSorted((one, other) => one.functions.length - other.functions.length)
    return sorted.map((law, place) => `| ${place === 0 ? `\`${name}\`` : ''} | ${renderLaw(law)} |`)
  })
  return `# Laws

What holds for every input, by function: ${laws.length} laws, checked with drawn inputs (fast-check). Generated from the calls of \`law\`,
\`lawAsync\` and \`modelLaw\` in the tests by \`npm run generate\`; a test compares this page with them, and fails for a public function
without a law.

A law is listed with each public function that its check calls, itself or through functions of the tests; the laws that are most of all about the
function come first. **Cases** is the number that the test states: \`npm test\` draws half of them, \`npm run test:all\` six times, \`npm run test:laws\`
ten times as many with a new seed. A name there is a number that the test calculates.

\`\`\`sh
npm run test:laws -- 10 test/record/
\`\`\`

## Models

Commands in any order, up to twenty, on the real thing and on a simple model of it; each command compares the two.

| model | cases | test |
| --- | --- | --- |
${models.map(({ title, cases, file }) => `| ${escapeCell(title)} | ${plainNumber(cases)} | \`${file.slice('test/'.length)}\` |`).join('\n')}

## Functions

| function | law | cases | test |
| --- | --- | --- | --- |
${rows.join('\n')}
`
}

function renderLaw({ title, cases, file }: Law): string {
  return `${escapeCell(title)} | ${plainNumber(cases)} | \`${file.slice('test/'.length)}\``
}

/** `11_000` as in a text. */
function plainNumber(cases: string): string {
  return /^[0-9_]+$/.test(cases)
    ? Number(cases.replaceAll('_', '')).toLocaleString('en')
    : `\`${escapeCell(cases)}\``
}

function escapeCell(text: string): string {
  return text
    .replace(/ \(law\)$/, '')
    .replaceAll('|', '\\|')
    .replaceAll('*', '\\*')
    .replaceAll('<', '&lt;')
}
