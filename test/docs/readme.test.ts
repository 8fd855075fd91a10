import { readdirSync, readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { parse } from 'yaml'
import { checkDocuments } from '../../src/v1/rules.js'
import { parseSpecSheet } from '../../src/v1/spec.js'
import { updateReadme } from './support/readmeNumbers.js'

const readme = readFileSync('README.md', 'utf8')

it('has at most 120 lines', () => {
  expect(readme.trimEnd().split('\n').length).toBeLessThanOrEqual(120)
})

it('shows a whole sheet without findings in at most twelve lines', () => {
  const [, yaml = ''] = /```yaml\n([\s\S]*?)```/.exec(readme) ?? []
  expect(yaml.trimEnd().split('\n').length).toBeLessThanOrEqual(12)
  const read = parseSpecSheet(parse(yaml))
  expect(read.findings).toEqual([])
  if (!read.ok) throw new Error('no sheet')
  const others = { logs: [], toolboxes: [], stocks: [], procedures: [], records: [] }
  expect(checkDocuments({ sheets: [{ document: read.value }], ...others })).toEqual([])
})

it('has the numbers that are counted now', () => {
  expect(updateReadme(readme) === readme, 'run npm run generate').toBe(true)
})

it('names the count of rules in its list too, and links every glossary', () => {
  const [, rules] = /\| (\d+) rules, tried/.exec(readme) ?? []
  expect(readme).toContain(`**[${rules} rules](docs/rules.md)**`)
  for (const file of readdirSync('docs').filter((name) => name.startsWith('glossary-')))
    expect(readme).toContain(`(docs/${file})`)
})
