import { mkdir, mkdtemp, readdir, rm, symlink, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import { makeNodeIo } from '../../src/cli/makeNodeIo.js'
import { runCommand } from '../../src/cli/runCommand.js'

let folder = ''
const io = makeNodeIo()
const at = (...parts: readonly string[]) => join(folder, ...parts)

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'skarnfell-'))
})
afterAll(() => rm(folder, { recursive: true, force: true }))

describe('files', () => {
  it('folders differ from files, and are listed in order', async () => {
    await mkdir(at('set'))
    for (const name of ['b.json', 'a.yaml', 'C.json']) await writeFile(at('set', name), '{}')
    expect(await io.kindOf(at('set'))).toBe('folder')
    expect(await io.kindOf(at('set', 'a.yaml'))).toBe('file')
    expect(await io.listFolder(at('set'))).toEqual(
      ['C.json', 'a.yaml', 'b.json'].map((name) => ({ name, kind: 'file' })),
    )
    await symlink(at('set'), at('link'))
    expect(await io.kindOf(at('link'))).toBe('folder')
    await expect(io.kindOf(at('nowhere'))).rejects.toMatchObject({ code: 'ENOENT' })
  })

  it('are opened as streams', async () => {
    await writeFile(at('lines.jsonl'), 'one\ntwo\n')
    const chunks: string[] = []
    for await (const chunk of await io.openInput(at('lines.jsonl'))) chunks.push(String(chunk))
    expect(chunks.join('')).toBe('one\ntwo\n')
    await expect(io.openInput(at('nowhere'))).rejects.toMatchObject({ code: 'ENOENT' })
    expect(await io.openInput()).toBe(process.stdin)
    expect(io.openOutput()).toBe(process.stdout)
  })
})

describe('streams and clock', () => {
  it('ends each text with one line end', () => {
    const out = vi.spyOn(process.stdout, 'write').mockReturnValue(true)
    const err = vi.spyOn(process.stderr, 'write').mockReturnValue(true)
    io.print('a')
    io.print('b\n')
    io.printError('c')
    io.printError('d\n')
    const outputs = [out, err].map((stream) => stream.mock.calls.map(([text]) => text))
    out.mockRestore()
    err.mockRestore()
    expect(outputs).toEqual([
      ['a\n', 'b\n'],
      ['c\n', 'd\n'],
    ])
  })

  it('reads the local day, in two digits', () => {
    vi.useFakeTimers()
    vi.setSystemTime(new Date(2023, 2, 4, 23, 59))
    expect(io.today()).toBe('2023-03-04')
    vi.setSystemTime(new Date(2023, 10, 14, 0, 0))
    expect(io.today()).toBe('2023-11-14')
    vi.useRealTimers()
  })
})

describe('commands over real files', () => {
  const run = async (...words: readonly string[]) => {
    const err: string[] = []
    const quietIo = { ...io, print: () => undefined, printError: (text: string) => void err.push(text) }
    return { code: await runCommand(words, quietIo), err: err.join('\n') }
  }
  const visit = ['--today', '2023-10-06', '--ambient', '6degC']

  it('writes the cards into the folder that is named', async () => {
    expect(await run('card', 'examples/tind-4', ...visit, '--out', at('cards'))).toMatchObject({ code: 0 })
    expect(await readdir(at('cards'))).toHaveLength(4)
  })

  it('reports a target that cannot be a file as an error of the caller', async () => {
    await writeFile(at('a-file'), '')
    const { code, err } = await run('card', 'examples/tind-4', ...visit, '--out', at('a-file'))
    expect(code).toBe(2)
    expect(err).toMatch(/a-file.*cannot be written \(expected a folder, found a file\)/)
    expect(err).not.toMatch(/error in this program/)
  })

  it('expects a file where a folder is given', async () => {
    const { code, err } = await run('import', 'examples', 'examples/tind-4/log.yaml')
    expect(code).toBe(2)
    expect(err).toMatch(/examples: expected a file, found a folder/)
  })

  it.each([
    ['EACCES', /no permission to read/],
    ['EISDIR', /expected a file, found a folder/],
    ['EMFILE', /cannot be read \(.*EMFILE/],
  ])('gives the reason for a file that the system refuses with %s', async (code, message) => {
    const refusing = {
      ...io,
      kindOf: async () => 'file' as const,
      readText: () => Promise.reject(Object.assign(new Error(`${code}: refused`), { code })),
      print: () => undefined,
      printError: (text: string) => expect(text).toMatch(message),
    }
    expect(await runCommand(['check', at('secret.json')], refusing)).toBe(2)
    expect(await runCommand(['import', at('secret.json'), 'examples/tind-4/log.yaml'], refusing)).toBe(2)
  })
})
