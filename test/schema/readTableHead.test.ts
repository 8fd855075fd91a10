import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { parseDocumentText } from '../../src/v1/spec.js'
import { memoryIo, PIPED } from '../support/memoryIo.js'

const TABLE = 'machine,date,hours\nm-1,2023-10-01,402\nm-2,2023-10-02,77\n'

describe('a table in place of a document', () => {
  it.each([
    [TABLE, ['machine', 'date', 'hours']],
    ['\uFEFFmachine;date;hours (h)\r\nm-1;2023-10-01;402,5\r\n', ['machine', 'date', 'hours (h)']],
    ['"date"\t"Größe"\n1\t2', ['date', 'Größe']],
  ])('%j is recognised by its columns', (text, columns) => {
    const { ok, findings } = parseDocumentText('any', text)
    expect(ok).toBe(false)
    expect(findings).toMatchObject([
      { code: 'spec/table-instead-of-document', severity: 'error', path: '', params: { columns } },
    ])
  })

  it.each([
    ['', 'spec/not-json'],
    ['kind: spec-sheet, version: x\na, b', 'spec/not-json'],
    ['one line, no table', 'spec/not-json'],
    ['a,b\n1,2,3', 'spec/not-json'],
    ['"a,b"', 'spec/wrong-type'],
    ['[1,2\n3,4', 'spec/not-json'],
  ])('%j is not one', (text, code) => {
    expect(parseDocumentText('any', text).findings.map((finding) => finding.code)).toEqual([code])
  })

  it.each([
    [['check', 'set/hours.csv'], { 'set/hours.csv': TABLE }],
    [['plan', '-'], { [PIPED]: TABLE }],
    [['due', 'set/hours.csv'], { 'set/hours.csv': TABLE }],
  ])('%j says what it is and what to do', async (words, files) => {
    const io = memoryIo(files)
    expect(await runCommand(words, io)).not.toBe(0)
    const output = [...io.out, ...io.err].join('\n')
    expect(output).toContain('This is a table (CSV) with the columns')
    expect(output).toContain('spec/table-instead-of-document')
  })
})
