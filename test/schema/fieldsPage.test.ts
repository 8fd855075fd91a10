import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { DOCUMENT_NAMES } from '../../src/spec/documents.js'
import { toJsonSchema } from '../support/toJsonSchema.js'
import { describeSchema, type SchemaNode } from './support/describeSchema.js'
import { renderFieldsPage } from './support/fieldsPage.js'

const schemas = new Map(DOCUMENT_NAMES.map((kind) => [kind, describeSchema(kind, toJsonSchema(kind))]))
const page = readFileSync('docs/fields.md', 'utf8')
const rows = page.split('\n').filter((line) => line.startsWith('| `'))

test('docs/fields.md is what generate writes', () => {
  expect(renderFieldsPage(schemas) === page, 'run npm run generate').toBe(true)
})

test('every field has a description, a type and an example, or a link to where they are', () => {
  expect(rows.length).toBeGreaterThan(300)
  const incompleteRows = rows.filter((row) => row.split(/(?<!\\)\|/).length !== 7 || /\|\s*\|/.test(row))
  expect(incompleteRows).toEqual([])
  expect(rows.filter((row) => row.includes('undefined') || row.includes('[object'))).toEqual([])
})

test('every property of the schemas has a row', () => {
  const keys = new Set<string>()
  const walk = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return
    const { properties = {} } = value as SchemaNode
    for (const key of Object.keys(properties)) keys.add(key)
    for (const inner of Object.values(value)) walk(inner)
  }
  for (const { schema } of schemas.values()) walk({ ...schema, examples: undefined })
  const shownFields = new Set(rows.flatMap((row) => /^\| `([^`]+)`/.exec(row)?.[1]?.split('.').at(-1) ?? []))
  expect([...keys].filter((key) => !shownFields.has(key))).toEqual([])
  expect(keys.size).toBeGreaterThan(150)
})

test('every link inside the page leads to a heading', () => {
  const headings = [...page.matchAll(/^#+ (.+)$/gm)].map(([, text = '']) => text.toLowerCase())
  const links = [...page.matchAll(/\]\(#([^)]+)\)/g)].map(([, to = '']) => to)
  expect(links.length).toBeGreaterThan(100)
  expect(links.filter((to) => !headings.includes(to))).toEqual([])
  expect(new Set(headings).size).toBe(headings.length)
})
