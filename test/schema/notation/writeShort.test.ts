import { expect, test } from 'vitest'
import { parseSpecSheet, writeShort } from '../../../src/schema/index.js'
import type { SpecSheet } from '../../../src/spec/specSheet.js'
import { readGoodDocuments } from '../../support/fixtures.js'
import { cases, law } from '../../support/law.js'
import { anySheet } from './support/anySheet.js'

const sheets = readGoodDocuments()
  .filter(({ value }) => value['kind'] === 'spec-sheet')
  .map(({ file, value }) => [file, value as unknown as SpecSheet] as const)

test.each(sheets)('%s is the same after short notation', (_file, sheet) => {
  const short = writeShort(sheet)
  const read = parseSpecSheet(short)
  expect(read.findings).toEqual([])
  expect(read.ok && read.value).toEqual(sheet)
})

test('generated sheets are the same after short notation', () => {
  let good = 0
  law(500, anySheet(sheets.map(([, sheet]) => sheet)), (generated) => {
    const full = parseSpecSheet(generated)
    if (!full.ok) return
    good += 1
    const read = parseSpecSheet(writeShort(full.value))
    expect(read.findings).toEqual([])
    expect(read.ok && read.value).toEqual(full.value)
  })
  expect(good).toBeGreaterThan(cases(300))
})
