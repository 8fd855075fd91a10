import { execFileSync } from 'node:child_process'
import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { findFiles } from '../../src/cli/findFiles.js'
import { makeNodeIo } from '../../src/cli/makeNodeIo.js'
import { en } from '../../src/cli/message/en/index.js'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo, PIPED } from '../support/memoryIo.js'
import { readExample } from '../support/readExample.js'

const STOCK = "kind: stock\nversion: '1.0'\nid: shelf\nname: Shelf\ncontainers: {}\nseals: {}\n"
const SHEET = JSON.stringify(readExample('tind-4', 'sheet'))
const LOG = JSON.stringify(readExample('tind-4', 'log'))

let root = ''
const at = (...parts: readonly string[]) => join(root, ...parts)

beforeAll(async () => {
  root = await mkdtemp(join(tmpdir(), 'skarnfell-find-'))
  for (const [path, text] of [
    ['tind/sheet.json', SHEET],
    ['tind/log.json', LOG],
    ['tind/photo.txt', ''],
    ['tind/old/stock.yaml', STOCK],
    ['shelves/north/stock.yml', STOCK],
    ['shelves/south/stock.yml', STOCK],
    ['shelves/.cache/broken.json', '{'],
    ['shelves/node_modules/x/package.json', '{}'],
    ['empty/notes.md', ''],
  ] as const) {
    await mkdir(dirname(at(path)), { recursive: true })
    await writeFile(at(path), text)
  }
  execFileSync('mkfifo', [at('shelves', 'waiting.json')])
  await symlink(at('tind'), at('shelves', 'round'))
})
afterAll(() => rm(root, { recursive: true, force: true }))

async function run(...words: readonly string[]) {
  const io = memoryIo()
  const code = await runCommand(words, io)
  return { code, out: io.out.join('\n'), err: io.err.join('\n').replaceAll(root, '') }
}

async function find(paths: readonly string[], below = false) {
  const err: string[] = []
  const found = await findFiles(
    paths,
    { ...makeNodeIo(), words: en, printError: (text) => void err.push(text) },
    below,
  )
  const relativePath = (path: string) => path.replace(`${root}/`, '')
  return {
    files: found.files.map(relativePath),
    folders: [...found.folders].map(([folder, entries]) => [relativePath(folder), entries.map(relativePath)]),
    skipped: found.skipped,
    err: err.map(relativePath),
  }
}

describe('check of a folder', () => {
  it('searches below, each folder a set of its own, and counts what it read and skipped', async () => {
    const { code, out, err } = await run('check', root, '--today', '2023-10-06')
    expect(out).toBe(
      '5 documents read from 4 folders, 0 findings of level warning or above.\nSkipped: 2 files neither .json nor .yaml, 1 pipe, 3 folders without documents, 3 folders hidden, linked or named node_modules.',
    )
    expect(err).toBe('/shelves/waiting.json is a pipe or device: skipped')
    expect(code).toBe(0)
  })

  it('a folder without documents is named, and the others are checked', async () => {
    const { code, out, err } = await run('check', at('empty'), at('shelves', 'north'))
    expect(err).toBe('/empty: no .json or .yaml file in this folder or below; skipped')
    expect(out).toMatch(/^1 document read from 1 folder, 0 findings.*\nSkipped: 1 file neither/)
    expect(code).toBe(0)
    expect(await run('check', at('empty'))).toMatchObject({
      code: 2,
      err: 'drivetrain-service: /empty: no .json or .yaml file in this folder or below',
    })
  })

  it('mistakes in subfolders are found, and the counts do not mix with output for programs', async () => {
    await mkdir(at('bad', 'deep', 'er'), { recursive: true })
    await writeFile(at('bad', 'deep', 'er', 'sheet.json'), '{}')
    const { code, out, err } = await run('check', at('bad'), '--format', 'json')
    await rm(at('bad'), { recursive: true })
    expect(code).toBe(1)
    expect(JSON.parse(out)).toMatchObject({ kind: 'findings' })
    expect(err).toMatch(
      /^1 document read from 1 folder, \d+ findings? .*\nSkipped: 2 folders without documents\.$/,
    )
  })

  it('a folder named twice, or inside another, is one set', async () => {
    expect(
      (await find([root, at('tind'), `${at('tind')}/`], true)).folders.map(([folder]) => folder),
    ).toEqual(['shelves/north', 'shelves/south', 'tind', 'tind/old'])
  })

  it('a link to a folder is read where it is named, but not followed below', async () => {
    expect((await find([at('shelves', 'round')])).folders).toEqual([
      ['shelves/round', ['shelves/round/log.json', 'shelves/round/sheet.json']],
    ])
  })
})

describe('other commands', () => {
  it('read the documents right in a folder, and pass by an empty one with a word', async () => {
    const { code, err } = await run(
      'plan',
      at('tind'),
      at('empty'),
      '--level',
      'error',
      '--today',
      '2023-10-06',
    )
    expect(err).toBe('/empty: no .json or .yaml file in this folder; skipped')
    expect(code).toBe(0)
  })

  it('do not wait for a pipe that is named', async () => {
    expect(await run('plan', at('shelves', 'waiting.json'))).toMatchObject({
      code: 2,
      err: expect.stringContaining('/shelves/waiting.json is a pipe or device; to read it, use - < '),
    })
  })
})

describe('patterns', () => {
  it.each([
    ['tind/*.json', { files: ['tind/log.json', 'tind/sheet.json'], folders: [] }],
    ['tind/???.json', { files: ['tind/log.json'], folders: [] }],
    ['*/s*.json', { files: ['tind/sheet.json'], folders: [] }],
    [
      'shelves/*th',
      {
        files: [],
        folders: [
          ['shelves/north', ['shelves/north/stock.yml']],
          ['shelves/south', ['shelves/south/stock.yml']],
        ],
      },
    ],
    [
      '**/stock.y*',
      {
        files: [],
        folders: [
          ['shelves/north', ['shelves/north/stock.yml']],
          ['shelves/south', ['shelves/south/stock.yml']],
          ['tind/old', ['tind/old/stock.yaml']],
        ],
      },
    ],
    [
      'tind/**',
      {
        files: [],
        folders: [
          ['tind', ['tind/log.json', 'tind/sheet.json']],
          ['tind/old', ['tind/old/stock.yaml']],
        ],
      },
    ],
    ['shelves/.c*/*.json', { files: ['shelves/.cache/broken.json'], folders: [] }],
    ['tind/../shelves/north/*', { files: ['shelves/north/stock.yml'], folders: [] }],
    ['./tind//l*', { files: ['tind/log.json'], folders: [] }],
  ])('%s', async (pattern, found) => {
    expect(await find([`${at()}/${pattern}`])).toMatchObject(found)
  })

  it('a pattern without a match is a wrong command line', async () => {
    for (const pattern of ['*.toml', 'tind/log.json/*', '(*', '[a', 'no/**'])
      expect(await run('check', `${root}/${pattern}`)).toMatchObject({
        code: 2,
        err: expect.stringMatching(/no (such )?file or folder/),
      })
    expect((await run('check', at('empty', '*'))).err).toMatch(/no \.json or \.yaml file found/)
  })

  it('a name with a star that there is, is that file', async () => {
    await writeFile(at('odd*.json'), STOCK)
    expect((await find([at('odd*.json')])).files).toEqual(['odd*.json'])
    await rm(at('odd*.json'))
  })
})

describe('standard input', () => {
  const runPiped = async (text: string, ...words: readonly string[]) => {
    const io = memoryIo({ [PIPED]: text })
    const code = await runCommand(words, io)
    return { code, out: io.out.join('\n'), err: io.err.join('\n'), written: io.written }
  }

  it('is checked as JSON or as YAML, by what it begins with', async () => {
    expect((await runPiped(LOG, 'check', '-')).out).toMatch(/1 document read, 0 findings/)
    expect((await runPiped(`\uFEFF\n${SHEET}`, 'check', '-')).out).not.toMatch(/not-yaml/)
    expect((await runPiped(STOCK, 'check', '-')).code).toBe(0)
    const badRun = await runPiped(`${STOCK}nmae: x\n`, 'check', '-')
    expect(badRun.code).toBe(1)
    expect(badRun.out).toMatch(/^standard input:7:1: error: Unknown key "nmae"/)
    expect((await runPiped('', 'check', '-')).out).toMatch(/spec\/not-json/)
  })

  it('is one of the files of a set', async () => {
    const sheet = at('tind', 'sheet.json')
    const visit = ['--today', '2023-10-06', '--ambient', '6degC']
    expect(await runPiped(LOG, 'plan', '-', sheet, 'examples/tind-4/toolbox.yaml', ...visit)).toMatchObject({
      code: 0,
    })
    expect(
      (await runPiped(SHEET, 'card', at('tind', 'log.json'), '-', ...visit, '--out', 'o')).written.size,
    ).toBe(4)
    expect((await runPiped(SHEET, 'compare', sheet, '-')).out).toMatch(/No difference/)
  })
})
