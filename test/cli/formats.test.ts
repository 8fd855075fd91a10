import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { dayWords } from '../support/dayWords.js'
import { memoryIo } from '../support/memoryIo.js'
import { TODAY } from '../support/planExample.js'
import { exampleText, mistakeFolder } from '../support/writeMistakes.js'

const TIND = 'examples/tind-4'
const VISIT = ['--today', TODAY, '--ambient', '6degC']
const example = (folder: string, file: string) => exampleText(folder, `${file}.json`)

async function run(words: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const io = memoryIo(files)
  const code = await runCommand(words, io)
  return { code, out: io.out.join('\n'), err: io.err.join('\n'), written: io.written }
}

/** A set with a stale reading: `plan` warns, `check` does not. */
const STALE = mistakeFolder('stale-reading')

describe('--format: each command prints what it can, and refuses the rest', () => {
  const COMMANDS: Readonly<Record<string, readonly [words: readonly string[], formats: readonly string[]]>> =
    {
      check: [[TIND], ['text', 'json', 'sarif']],
      due: [[TIND], ['text', 'json']],
      plan: [[TIND], ['text', 'json', 'sarif']],
      card: [
        [TIND, '--out', 'cards'],
        ['text', 'json', 'sarif'],
      ],
      cues: [
        [TIND, '--out', 'film'],
        ['text', 'json', 'vtt'],
      ],
      kits: [[TIND], ['text', 'json']],
      repair: [[TIND], ['text', 'json']],
      compare: [[`${TIND}/sheet.yaml`], ['text', 'json']],
      record: [[TIND], ['text', 'json', 'sarif']],
      convert: [
        ['8.9 lbf.ft', '--to', 'N.m'],
        ['text', 'json'],
      ],
      schema: [['stock'], ['text', 'json']],
    }
  const rows = Object.entries(COMMANDS).flatMap(([name, [words, formats]]) =>
    ['text', 'json', 'sarif', 'vtt'].map(
      (format) => [name, format, words, formats.includes(format)] as const,
    ),
  )

  it.each(rows)('%s --format %s', async (name, format, words, can) => {
    const { code, out, err } = await run([name, ...words, ...dayWords(name), '--format', format])
    if (!can) {
      expect(code).toBe(2)
      expect(err).toMatch(new RegExp(`${name} --format ${format}: expected one of text, `))
      expect(out).toBe('')
      return
    }
    expect(code).toBe(name === 'compare' ? 1 : 0)
    if (name === 'card') expect(out).toMatch(/^Card written/)
    else if (name === 'cues') expect(out).toMatch(/^Cue sheet and captions written/)
    else if (format === 'json' || format === 'sarif') expect(() => JSON.parse(out)).not.toThrow()
  })

  it('an unknown format is refused by all', async () => {
    expect(await run(['check', TIND, '--format', 'xml'])).toMatchObject({ code: 2 })
  })
})

describe('--level: from which findings on the exit code is 1', () => {
  it.each([
    ['error', 0],
    ['warning', 1],
    ['info', 1],
  ])('plan of a stale reading at %s: %s', async (level, code) => {
    for (const format of ['text', 'json', 'sarif'])
      expect((await run(['plan', STALE, ...VISIT, '--level', level, '--format', format])).code).toBe(code)
    expect((await run(['card', STALE, ...VISIT, '--level', level, '--out', 'cards'])).code).toBe(code)
    expect((await run(['cues', STALE, ...VISIT, '--level', level])).code).toBe(code)
  })

  it('the findings of a plan are printed in each format, with their sentence', async () => {
    const code = 'service/reading-stale'
    expect((await run(['plan', STALE, ...VISIT])).out).toMatch(new RegExp(`Findings\\n\\n[\\s\\S]*${code}`))
    const json = JSON.parse((await run(['plan', STALE, ...VISIT, '--format', 'json'])).out)
    expect(json.findings.map((found: { code: string }) => found.code)).toContain(code)
    const sarif = JSON.parse((await run(['plan', STALE, ...VISIT, '--format', 'sarif'])).out)
    expect(sarif.runs[0].results.map((found: { ruleId: string }) => found.ruleId)).toContain(code)
    expect((await run(['card', STALE, ...VISIT, '--out', 'cards', '--format', 'json'])).err).toContain(code)
  })

  it('waived findings never count, and are suppressed in SARIF', async () => {
    const sheet = JSON.parse(readFileSync(`${mistakeFolder('misprinted-second-unit')}/sheet.json`, 'utf8'))
    const wrongRun = await run(['check', 'set', '--today', TODAY, '--format', 'json'], {
      'set/sheet.json': JSON.stringify(sheet),
    })
    expect(wrongRun.code).toBe(1)
    const [{ code, path }] = JSON.parse(wrongRun.out).findings
    const waivedSheet = { ...sheet, waivers: [{ code, path, reason: 'the bulletin says so' }] }
    const files = { 'set/sheet.json': JSON.stringify(waivedSheet) }
    const after = await run(['check', 'set', '--today', TODAY, '--format', 'sarif'], files)
    expect(after.code).toBe(0)
    const [result] = JSON.parse(after.out).runs[0].results
    expect(result).toMatchObject({
      ruleId: code,
      level: 'note',
      suppressions: [{ kind: 'inSource', justification: 'the bulletin says so' }],
    })
    expect((await run(['check', 'set', '--today', TODAY], files)).out).toContain(
      '(waived: the bulletin says so)',
    )
  })
})

describe('files and folders', () => {
  it('a folder without a document, and one with other files alone', async () => {
    expect(await run(['check', 'set'], { 'set/readme.txt': 'x' })).toMatchObject({
      code: 2,
      err: expect.stringMatching(/set: no \.json or \.yaml file in this folder/),
    })
  })

  it('endings in capitals are read by what they are; two folders are two sets', async () => {
    const yaml = "kind: stock\nversion: '1.0'\nid: shelf\nname: Shelf\ncontainers: {}\nseals: {}\n"
    const files = {
      'one/A.YAML': yaml,
      'one/b.txt': '',
      'two/C.YML': yaml,
      'two/D.JSON': example('kvist-2', 'toolbox'),
    }
    const { code, out } = await run(['check', 'one', 'two'], files)
    expect(code).toBe(0)
    expect(out).toMatch(/3 documents read from 2 folders, 0 findings/)
    expect((await run(['check', 'one/A.YAML'], files)).out).toMatch(/1 document read, 0 findings/)
  })

  it('YAML and JSON of one machine are one set', async () => {
    const files = {
      'set/log.yaml': example('tind-4', 'log'),
      'set/sheet.json': example('tind-4', 'sheet'),
    }
    expect(await run(['due', 'set', '--today', TODAY], files)).toMatchObject({ code: 0 })
  })

  it('a file of the wrong shape names its line in YAML too', async () => {
    const yaml =
      "kind: stock\nversion: '1.0'\nid: shelf\nname: Shelf\ncontainers: {}\nseals: {}\ncolour: red\n"
    const { code, out } = await run(['check', 'a.yaml'], { 'a.yaml': yaml })
    expect(code).toBe(1)
    expect(out).toMatch(/^a\.yaml:7:1: error: .*\n {4}spec\/unknown-key at \/colour$/m)
  })
})

describe('words from documents', () => {
  it('cannot move the cursor of a terminal', async () => {
    const name = 'Station \u001b[2J\u009b31m\u202e2'
    const log = JSON.stringify({ ...JSON.parse(example('tind-4', 'log')), name })
    const files = { 'set/log.json': log, 'set/sheet.json': example('tind-4', 'sheet') }
    const printed: string[] = []
    for (const command of ['due', 'kits', 'plan', 'cues']) {
      const { out, err } = await run([command, 'set', ...dayWords(command)], files)
      printed.push(out, err)
    }
    const lostFile = await run(['due', 'set/log.json'], {
      'set/log.json': JSON.stringify({ ...JSON.parse(log), sheet: { id: 'x', revision: '\u001b[2J' } }),
    })
    printed.push(lostFile.err)
    for (const text of printed) expect(text.replaceAll('\n', '')).not.toMatch(/\p{Cc}|[\u202a-\u202e]/u)
  })
})

describe('faults', () => {
  it('of this program are reported as such, without a stack trace', async () => {
    for (const thrownValue of [new Error('a bug\u001b[2J'), 'no error at all']) {
      const io = memoryIo()
      const kindOf = async () => 'file' as const
      const readText = async () => JSON.stringify({})
      const print = () => {
        throw thrownValue
      }
      expect(await runCommand(['check', 'a.json'], { ...io, kindOf, readText, print })).toBe(2)
      expect(io.err.join('')).toMatch(/error in the program, not in your files: (a bug|no error)/)
      expect(io.err.join('').replaceAll('\n', ' ')).not.toMatch(/ {2,}at |\p{Cc}/u)
    }
  })

  it('in writing that the system does not name are no usage error', async () => {
    const saveText = () => Promise.reject(new Error('odd'))
    const io = memoryIo()
    expect(await runCommand(['card', TIND, ...VISIT, '--out', 'x'], { ...io, saveText })).toBe(2)
    expect(io.err.join('')).toMatch(/error in the program/)
    const diskFull = Object.assign(new Error('x'), { code: 'ENOSPC' })
    const oddError = Object.assign(new Error('x'), { code: 'EODD' })
    for (const [error, message] of [
      [diskFull, /the disk is full/],
      [oddError, /cannot be written \(EODD\)/],
    ] as const) {
      const secondIo = memoryIo()
      const failing = { ...secondIo, saveText: () => Promise.reject(error) }
      expect(await runCommand(['card', TIND, ...VISIT, '--out', 'x'], failing)).toBe(2)
      expect(secondIo.err.join('')).toMatch(message)
    }
  })
})
