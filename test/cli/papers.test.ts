import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

const VISIT = ['--today', '2023-10-06', '--ambient', '6degC', '--out', 'out'] as const

async function run(paper: string, ...words: readonly string[]) {
  const io = memoryIo()
  const code = await runCommand(['card', '--paper', paper, ...words, ...VISIT], io)
  return { code, err: io.err.join('\n'), names: [...io.written.keys()], written: io.written }
}

describe('card --paper', () => {
  it.each([
    ['label', ['out/station-2-label', 'out/station-2-label-upright']],
    ['chart', ['out/station-2-chart']],
    ['record', ['out/station-2-record']],
    ['differences', ['out/hallbrekka-tind-4-differences']],
    ['picks', ['out/picks-2023-10-06']],
  ])('%s writes HTML, Markdown and text', async (paper, names) => {
    const { code, err, names: written } = await run(paper, 'examples/tind-4')
    expect([code, err]).toEqual([0, ''])
    expect(written).toEqual(names.flatMap((name) => [`${name}.html`, `${name}.md`, `${name}.txt`]))
  })

  it('a machine without a plan is reported, also by the exit code; the others have their paper', async () => {
    const sets = ['examples/tind-4', 'examples/kvist-2', '--service', 'gear-oil-change']
    for (const paper of ['picks', 'record']) {
      const { code, err, names } = await run(paper, ...sets)
      expect(code).toBe(1)
      expect(err).toContain('service/service-not-on-sheet')
      expect(names).toHaveLength(3)
    }
  })

  it('a pick list names the machines for which it is not known whether a service is due', async () => {
    const { code, err } = await run('picks', 'examples/acre-26', '--machine', 'station-6')
    expect(code).toBe(0)
    expect(err).toMatch(/^Not known for Station 6\n {2}Unknown whether the front axle oil change is due/)
  })

  it('needs the files that it is made from, and a folder', async () => {
    expect((await run('differences', 'examples/tind-4/log.yaml')).code).toBe(2)
    expect((await run('chart')).err).toContain('--paper chart needs files or folders')
    const io = memoryIo()
    expect(await runCommand(['card', '--paper', 'label', 'examples/tind-4'], io)).toBe(2)
    expect(io.err.join()).toContain('--out FOLDER')
  })
})
