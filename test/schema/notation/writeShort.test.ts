import { expect, test } from 'vitest'
import { parseSpecSheet, writeShort } from '../../../src/schema/index.js'
import type { SpecSheet } from '../../../src/spec/specSheet.js'
import { readGoodDocuments } from '../../support/fixtures.js'

const sheets = readGoodDocuments()
  .filter(({ value }) => value['kind'] === 'spec-sheet')
  .map(({ file, value }) => [file, value as unknown as SpecSheet] as const)

test.each(sheets)('%s is the same after short notation', (_file, sheet) => {
  const short = writeShort(sheet)
  const read = parseSpecSheet(short)
  expect(read.findings).toEqual([])
  expect(read.ok && read.value).toEqual(sheet)
})
