import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { parseSpecSheet, writeShort } from '../../../src/schema/index.js'
import { cases, law } from '../../support/law.js'
import { anySheet } from './support/anySheet.js'

/** Every full sheet of the tests, and of the examples in full form. */
const sheets = ['test', 'schemas/v1/vectors/bases'].flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.json'))
    .map((file) => join(folder, file))
    .flatMap((file) => {
      const read = parseSpecSheet(JSON.parse(readFileSync(file, 'utf8')))
      return read.ok ? [[file, read.value] as const] : []
    }),
)

test.each(sheets)('%s is the same after short notation', (_file, sheet) => {
  const shortSheet = writeShort(sheet)
  const read = parseSpecSheet(shortSheet)
  expect(read.findings).toEqual([])
  expect(read.ok && read.value).toEqual(sheet)
})

test('there are many', () => {
  expect(sheets.length).toBeGreaterThan(15)
})

test('generated sheets are the same after short notation', () => {
  let validCount = 0
  law(500, anySheet(sheets.map(([, sheet]) => sheet)), (generated) => {
    const fullResult = parseSpecSheet(generated)
    if (!fullResult.ok) return
    validCount += 1
    const read = parseSpecSheet(writeShort(fullResult.value))
    expect(read.findings).toEqual([])
    expect(read.ok && read.value).toEqual(fullResult.value)
  })
  expect(validCount).toBeGreaterThan(cases(300))
})
