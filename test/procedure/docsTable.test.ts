import { readFileSync, writeFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { writeActionsTable } from './actionsTable.js'

const page = new URL('../../docs/procedure.md', import.meta.url)
const [from, to] = ['<!-- table of actions: generated -->', '<!-- end of the table of actions -->']

// `WRITE_DOCS=1` writes the table; without it the page must already have the same table.
test('the table of actions in docs/procedure.md is the one that drives the code', () => {
  const text = readFileSync(page, 'utf8')
  const [before, rest] = text.split(from)
  const after = rest?.split(to)[1]
  if (before === undefined || after === undefined) throw new Error('the marks of the table are missing')
  const expected = `${before}${from}\n${writeActionsTable()}\n${to}${after}`
  if (process.env['WRITE_DOCS'] === '1') writeFileSync(page, expected)
  expect(readFileSync(page, 'utf8')).toBe(expected)
})
