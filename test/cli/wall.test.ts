import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

async function run(words: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const io = memoryIo(files)
  const code = await runCommand(['card', '--paper', 'wall', ...words], io)
  return { code, out: io.out.join('\n'), err: io.err.join('\n'), written: io.written }
}

describe('card --paper wall', () => {
  it('writes a card for each variant of each sheet, the same on any day', async () => {
    const oneRun = await run(['examples/tind-4', '--out', 'out', '--today', '2023-10-06'])
    expect(oneRun.out).toBe('2 of 2 wall cards written to out')
    const names = Object.keys(Object.fromEntries(oneRun.written))
    expect(names).toEqual([
      'out/hallbrekka-tind-4-short-wall.html',
      'out/hallbrekka-tind-4-short-wall.md',
      'out/hallbrekka-tind-4-long-wall.html',
      'out/hallbrekka-tind-4-long-wall.md',
    ])
    const laterRun = await run(['examples/tind-4', '--out', 'out', '--today', '2031-01-01'])
    expect(laterRun.written).toEqual(oneRun.written)
    const texts = Object.fromEntries(oneRun.written)
    expect(texts['out/hallbrekka-tind-4-long-wall.md']).toContain('**950\u00a0mL')
    expect(texts['out/hallbrekka-tind-4-short-wall.md']).toContain('**700\u00a0mL')
  })

  it('writes the card of one machine with --machine', async () => {
    const { code, written } = await run(['examples/tind-4', '--machine', 'station-2', '--out', 'out'])
    expect(code).toBe(0)
    const texts = Object.fromEntries(written)
    expect(Object.keys(texts)).toEqual(['out/station-2-wall.html', 'out/station-2-wall.md'])
    expect(texts['out/station-2-wall.md']).toContain('TL00418')
  })

  it('prints progress for many sheets', async () => {
    const sheet = readFileSync('examples/kvist-2/sheet.yaml', 'utf8')
    const files = Object.fromEntries(
      Array.from({ length: 60 }, (_sheet, place) => [
        `many/sheet-${place}.yaml`,
        sheet.replace('torvdal-kvist-2', `torvdal-kvist-${place}`),
      ]),
    )
    const { out, err, written } = await run([...Object.keys(files), '--out', 'out'], files)
    expect(out).toBe('60 of 60 wall cards written to out')
    expect(err).toContain('50 of 60 wall cards')
    expect(written).toHaveLength(120)
  })

  it('refuses a folder without a sheet, a missing folder, and an unknown paper', async () => {
    expect((await run(['examples/tind-4'])).code).toBe(2)
    const toolbox = readFileSync('examples/tind-4/toolbox.yaml', 'utf8')
    expect((await run(['box.yaml', '--out', 'out'], { 'box.yaml': toolbox })).err).toContain('no sheet among')
    const io = memoryIo({})
    expect(await runCommand(['card', '--paper', 'floor', 'examples/tind-4', '--out', 'out'], io)).toBe(2)
  })
})
