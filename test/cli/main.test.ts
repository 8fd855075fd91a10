import { spawn } from 'node:child_process'
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { TODAY } from '../support/planExample.js'
import { mistakeFolder } from '../support/writeMistakes.js'

let folder = ''
let program = ''

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'skarnfell-main-'))
  program = join(folder, 'main.mjs')
  await build({
    entryPoints: ['src/cli/main.ts'],
    outfile: program,
    bundle: true,
    platform: 'node',
    format: 'esm',
    logLevel: 'error',
    banner: {
      js: "import { createRequire as makeRequire } from 'node:module'; const require = makeRequire(import.meta.url);",
    },
  })
})
afterAll(() => rm(folder, { recursive: true, force: true }))

interface Ended {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

/** Runs the built program; `stopAfter` closes the reader of its output after this number of bytes, as `head` does. */
function run(words: readonly string[], input?: string, stopAfter?: number): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [program, ...words])
    let out = ''
    let err = ''
    child.stdout.on('data', (chunk) => {
      out += chunk
      if (stopAfter !== undefined && out.length >= stopAfter) child.stdout.destroy()
    })
    child.stderr.on('data', (chunk) => {
      err += chunk
    })
    child.on('error', reject)
    child.on('close', (code) => resolve({ code, out, err }))
    // A program that does not read its input closes the pipe.
    child.stdin.on('error', () => undefined)
    child.stdin.end(input ?? '')
  })
}

const TIND = 'examples/tind-4'
const DAY = ['--today', TODAY]

describe('the program as it is installed', () => {
  it.each([
    [['check', TIND], 0],
    [['check', mistakeFolder('key-written-twice')], 1],
    [['check', 'no/such/file.json'], 2],
    [['nonsense'], 2],
    [[], 2],
    [['help'], 0],
  ])('%j ends with %s', async (words, code) => {
    const exit = await run(words)
    expect(exit.code).toBe(code)
    expect(exit.err).not.toMatch(/\n\s+at /)
  })

  it('reads logs from a pipe, one a line, and answers each', async () => {
    const text = JSON.stringify(
      JSON.parse(await readFile('schemas/v1/vectors/bases/tind-4/log.json', 'utf8')),
    )
    const { code, out } = await run(
      ['due', '--sheet', `${TIND}/sheet.yaml`, ...DAY],
      `${text}\nnonsense\n${text}\n`,
    )
    expect(code).toBe(1)
    const answers = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line))
    expect(answers.map(({ line, machine }) => [line, machine])).toEqual([
      [1, 'station-2'],
      [2, undefined],
      [3, 'station-2'],
    ])
  })

  it('judges flat rows of a file', async () => {
    const path = join(folder, 'rows.jsonl')
    await writeFile(path, '{"id":"a","lastDate":"2023-01-06","everyMonths":6}\n')
    const { code, out } = await run(['due', path, ...DAY])
    expect({ code, answer: JSON.parse(out) }).toMatchObject({
      code: 0,
      answer: { id: 'a', dueOn: '2023-07-06' },
    })
  })

  it('ends quietly where its reader stops early', async () => {
    const text = `${JSON.stringify(JSON.parse(await readFile('schemas/v1/vectors/bases/tind-4/log.json', 'utf8')))}\n`
    const words = ['due', '--sheet', `${TIND}/sheet.yaml`, ...DAY]
    const { code, err } = await run(words, text.repeat(500), 10)
    expect(code).toBe(0)
    expect(err.replace(/^\d+ lines.*\n/gm, '')).toBe('')
  })

  it('writes the card, and says where', async () => {
    const cards = join(folder, 'cards')
    const { code, out } = await run(['card', TIND, ...DAY, '--ambient', '6degC', '--out', cards])
    expect(code).toBe(0)
    expect(out).toContain(join(cards, 'station-2.html'))
    expect(await readFile(join(cards, 'station-2.html'), 'utf8')).toMatch(/^<!doctype html>/i)
  })
})
