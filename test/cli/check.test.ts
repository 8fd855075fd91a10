import { readFileSync } from 'node:fs'
import { parsePatch, applyPatch as patchText } from 'diff'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { patchedDocuments, readVectors } from '../rules/support/vectors.js'
import { type MemoryIo, memoryIo } from '../support/memoryIo.js'
import { MISTAKES } from '../support/mistakes.js'
import { mistakeFiles } from '../support/writeMistakes.js'

const STOCK = `# shelf of the van
kind: stock
version: '1.0'
id: shelf
nmae: Shelf   # as on the door
containers: {}
seals: {}
`

async function check(words: readonly string[], files: Readonly<Record<string, string>>, io?: MemoryIo) {
  const used = io ?? memoryIo(files)
  const code = await runCommand(['check', ...words, '--today', '2023-10-06'], used)
  return { code, out: used.out.join('\n'), err: used.err.join('\n'), written: used.written }
}

describe('check --fix', () => {
  it('corrects a key, keeps comments and layout, and prints the change', async () => {
    const { code, out, written } = await check(['--fix', 'set'], { 'set/stock.yaml': STOCK })
    expect(written.get('set/stock.yaml')).toBe(STOCK.replace('nmae', 'name'))
    expect(out).toContain('-nmae: Shelf   # as on the door\n+name: Shelf   # as on the door\n')
    expect(out).toContain("Fixed 1 finding in 1 file. Compare each change with the machine's manual.")
    expect(out).toContain('1 document read from 1 folder, 0 findings')
    expect(code).toBe(0)
  })

  it('prints a patch that a patch tool applies', async () => {
    const { out, written } = await check(['--fix', 'a.yaml'], { 'a.yaml': STOCK })
    const [patch] = parsePatch(out.slice(0, out.indexOf('Fixed')))
    expect(patch && patchText(STOCK, patch)).toBe(written.get('a.yaml'))
  })

  it('with --dry-run prints the change and the finding, and writes nothing', async () => {
    const { code, out, written } = await check(['--fix', '--dry-run', 'a.yaml'], { 'a.yaml': STOCK })
    expect(out).toContain('+name: Shelf')
    expect(out).toContain('Can fix 1 finding in 1 file; nothing was written.')
    expect(out).toMatch(/a\.yaml:5:1: error: .*nmae/)
    expect({ code, written: written.size }).toEqual({ code: 1, written: 0 })
    expect((await check(['--dry-run', 'a.yaml'], { 'a.yaml': STOCK })).err).toContain('--dry-run needs --fix')
  })

  it('corrects JSON, and numbers and texts with their quotes', async () => {
    const json = `{
\t"kind": "toolbox", "version": "1.0", "id": "van",
\t"wrenches": { "w": { "name": "w", "type": "click", "drive": "1/2in", "scales": ["5–25 N·m by 0.5"] } },
\t"sockets": {}, "vessels": {}, "pans": {}, "fillers": {}, "stands": {}
}
`
    const { written, code } = await check(['--fix', 'a.json'], { 'a.json': json })
    expect(written.get('a.json')).toBe(json.replace('1/2in', '1/2 in'))
    expect(code).toBe(0)
  })

  it('corrects a hidden mistake after the one that hid it', async () => {
    const swappedStock = STOCK.replace(
      'containers: {}',
      `containers:
  quart:
    oil: { name: 80W-90 GL-4, kv40: { value: 14.5, unit: mm2/s }, kv100: { value: 135, unit: mm2/s } }
    size: 1 qt_us
    count: 1`,
    )
    const first = await check(['a.yaml'], { 'a.yaml': swappedStock.replace('nmae', 'name') })
    expect(first.out).toContain('stock/viscosities-swapped')
    const { written, out } = await check(['--fix', 'a.yaml'], { 'a.yaml': swappedStock })
    expect(out).toContain('Fixed 2 findings in 1 file')
    expect(written.get('a.yaml')).toContain(
      'kv40: { value: 135, unit: mm2/s }, kv100: { value: 14.5, unit: mm2/s }',
    )
  })

  it('leaves alone what a person must look up, and logs', async () => {
    const reused = readVectors().find(({ vector }) => vector.code === 'seal/crush-washer-reused')
    if (reused === undefined) throw new Error('no vector')
    const [sheet] = patchedDocuments(reused.vector)
    const log = readFileSync('examples/tind-4/log.yaml', 'utf8').replace('\nname:', '\nnaem:')
    const files = { 'set/sheet.json': JSON.stringify(sheet?.document), 'set/log.yaml': log }
    const { code, out, written } = await check(['--fix', 'set'], files)
    expect(out).toContain('No finding with a safe fix.')
    expect(out).toContain('seal/crush-washer-reused')
    expect(out).toMatch(/set\/log\.yaml:\d+:1: error: .*naem/)
    expect({ code, written: written.size }).toEqual({ code: 1, written: 0 })
  })

  const checked = MISTAKES.filter(({ command }) => command === 'check')
  it.each(checked)('brings no new finding: $name', async (mistake) => {
    const folder = [...mistakeFiles(mistake)].map(([name, text]) => [`set/${name}`, text] as const)
    const files = Object.fromEntries(folder)
    const before = JSON.parse((await check(['set', '--format', 'json'], files)).out).findings
    const after = JSON.parse((await check(['--fix', 'set', '--format', 'json'], files)).out).findings
    const keys = (findings: readonly { code: string; path: string }[]) =>
      findings.map(({ code, path }) => `${code} ${path}`)
    expect(keys(before)).toEqual(expect.arrayContaining(keys(after)))
  })

  it('corrects at least four of the mistakes in the examples', async () => {
    const fixed = await Promise.all(
      checked.map(async (mistake) => {
        const folder = [...mistakeFiles(mistake)].map(([name, text]) => [`set/${name}`, text] as const)
        return (await check(['--fix', 'set'], Object.fromEntries(folder))).written.size
      }),
    )
    expect(fixed.filter((count) => count > 0).length).toBeGreaterThanOrEqual(4)
  })

  it('does not overwrite a file that another program changed meanwhile', async () => {
    const io = memoryIo({ 'a.yaml': STOCK })
    const saveText: MemoryIo['saveText'] = async (_path, makeText) =>
      void (await makeText(`${STOCK}# more\n`))
    const { code, err } = await check(['--fix', 'a.yaml'], {}, Object.assign(io, { saveText }))
    expect(code).toBe(2)
    expect(err).toContain('a.yaml was changed by another program meanwhile')
  })

  it('prints changes beside a report for machines on standard error', async () => {
    const { out, err } = await check(['--fix', 'a.yaml', '--format', 'json'], { 'a.yaml': STOCK })
    expect(JSON.parse(out).findings).toEqual([])
    expect(err).toContain('+name: Shelf')
  })
})

describe('check --baseline', () => {
  const files = { 'set/a.yaml': STOCK, 'set/known.json': '' }

  it('accepts the findings of the day it was written, and reports new ones', async () => {
    const first = await check(['set', '--write-baseline', 'set/known.json'], files)
    expect(first.code).toBe(0)
    const known = first.written.get('set/known.json') ?? ''
    expect(JSON.parse(known)).toMatchObject({
      kind: 'baseline',
      version: '1.0',
      findings: [{ code: 'spec/unknown-key', path: '/nmae' }],
    })
    const words = ['set', '--baseline', 'set/known.json']
    const sameFindings = await check(words, { ...files, 'set/known.json': known })
    expect(sameFindings.code).toBe(0)
    expect(sameFindings.out).not.toContain('nmae')
    expect(sameFindings.out).toContain('Baseline: 1 finding accepted, 0 no longer found.')

    const filesWithError = { 'set/a.yaml': `# moved down\n${STOCK}colour: red\n`, 'set/known.json': known }
    const next = await check(words, filesWithError)
    expect(next.code).toBe(1)
    expect(next.out).toContain('colour')
    expect(next.out).not.toContain('nmae')

    const fixed = { 'set/a.yaml': STOCK.replace('nmae', 'name'), 'set/known.json': known }
    expect((await check(words, fixed)).out).toContain('Baseline: 0 findings accepted, 1 no longer found.')
    const sarif = JSON.parse(
      (await check([...words, '--format', 'sarif'], { ...files, 'set/known.json': known })).out,
    )
    expect(sarif.runs[0].results[0].suppressions).toEqual([
      { kind: 'external', justification: 'In the baseline.' },
    ])
  })

  it('accepts each entry once: the same mistake in another file is new', async () => {
    const { written } = await check(['set/a.yaml', '--write-baseline', 'known'], files)
    const twoFiles = { 'set/a.yaml': STOCK, 'set/b.yaml': STOCK, known: written.get('known') ?? '' }
    const { out, code } = await check(['set', '--baseline', 'known'], twoFiles)
    expect(code).toBe(1)
    expect(out).toContain('1 finding of level warning')
  })

  it('replaces no file that is not a baseline, and reads none', async () => {
    for (const text of ['hello', '{}', '{"kind":"baseline","version":"1.0","findings":[1]}']) {
      const notes = { 'a.yaml': STOCK, notes: text }
      const wrongBaseline = await check(['a.yaml', '--write-baseline', 'notes'], notes)
      expect(wrongBaseline).toMatchObject({
        code: 2,
        err: expect.stringContaining('notes is not a baseline'),
      })
      expect((await check(['a.yaml', '--baseline', 'notes'], notes)).code).toBe(2)
    }
    expect((await check(['a.yaml', '--baseline', 'none'], { 'a.yaml': STOCK })).code).toBe(2)
  })
})

describe('check --quiet', () => {
  it('prints what counts, and nothing else', async () => {
    expect(await check(['examples/tind-4', '--quiet'], {})).toMatchObject({ code: 0, out: '', err: '' })
    const files = { 'a.yaml': STOCK }
    const { code, out } = await check(['a.yaml', '--quiet'], files)
    expect(code).toBe(1)
    expect(out.split('\n')).toHaveLength(3)
    expect((await check(['--fix', 'a.yaml', '--quiet'], files)).out).toMatch(
      /^--- a\.yaml\n[\s\S]*name: Shelf/,
    )
  })
})

describe('the same mistake in many files', () => {
  const sets = (count: number) =>
    Object.fromEntries(
      Array.from({ length: count }, (_nothing, index) => [`all/${index + 10}/a.yaml`, STOCK] as const),
    )

  it('is printed once from three files, with the places', async () => {
    const { out } = await check(['all'], sets(8))
    expect(out.match(/error/g)).toHaveLength(1)
    expect(out).toMatch(/^all\/10\/a\.yaml:5:1: error: .* \(8 files\)$/m)
    expect(out).toContain(
      '/nmae; also in all/11/a.yaml:5:1, all/12/a.yaml:5:1, all/13/a.yaml:5:1, all/14/a.yaml:5:1, all/15/a.yaml:5:1 and 2 more files',
    )
    expect(out).toContain('8 documents read from 8 folders, 8 findings')
    expect((await check(['all'], sets(2))).out.match(/error/g)).toHaveLength(2)
  })

  it('another mistake in one of them is listed separately', async () => {
    const files = { ...sets(3), 'all/10/a.yaml': `${STOCK}colour: red\n` }
    const { out } = await check(['all'], files)
    expect(out.match(/error/g)).toHaveLength(2)
    expect(out).toMatch(/all\/10\/a\.yaml:8:1: error: .*colour/)
  })

  it('files that lack different keys are not one mistake', async () => {
    const emptySheet = "kind: spec-sheet\nversion: '1.0'\n"
    const files = {
      'all/1/a.yaml': `${emptySheet}id: x\nrevision: '1'\n`,
      'all/2/a.yaml': `${emptySheet}id: x\n`,
      'all/3/a.yaml': `${emptySheet}id: x\nrevision: '1'\n`,
    }
    const { out } = await check(['all'], files)
    const sharedLines = out.split('\n').filter((line) => line.includes('(3 files)'))
    expect(sharedLines.length).toBeGreaterThan(0)
    expect(sharedLines.join()).not.toContain('"revision"')
    expect(out).toMatch(/all\/2\/a\.yaml.*"revision"/)
  })
})
