import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

const LOG = `kind: machine-log
version: "1.0"
id: station-2
name: Station 2
sheet: hallbrekka-tind-4, revision 2023-03
identity: { modelYear: 2021, serial: TL00418 }
meters: ["512.6 h on 2023-10-04"]
records:
  - id: spring
    date: 2023-03-01
    readings: 310 h
    entries:
      - gear-oil-change of front, 440 mL drained, 450 mL refilled, sample B-12, level at the mark
      - { service: gear-oil-change, gearcase: rear, refilled: 960 mL, sample: { bottle: B-13, laboratory: Nordfoss Laboratory } }
`
const RESULT = `  - id: result
    date: 2023-03-20
    readings: {}
    corrects: spring
    entries: [{ service: gear-oil-change, gearcase: front, sample: { bottle: B-12, result: "iron 40 mg/kg, normal" } }]
`
const SHEET = 'examples/tind-4/sheet.yaml'

async function run(log: string, ...words: readonly string[]) {
  const io = memoryIo({ 'log.yaml': log })
  const code = await runCommand([...words, '--today', '2023-10-06'], io)
  return { code, out: io.out.join('\n'), err: io.err.join('\n') }
}

describe('oil samples', () => {
  it('without a result are open in history and due, until a correction gives it', async () => {
    const openRun = [
      'Oil sample B-12 of front, 2023-03-01 (spring): no result yet.',
      'Oil sample B-13 of rear, 2023-03-01 (spring) at Nordfoss Laboratory: no result yet.',
    ]
    for (const command of ['history', 'due']) {
      const { out } = await run(LOG, command, 'log.yaml', SHEET)
      for (const line of openRun) expect(out).toContain(line)
      const later = (await run(LOG + RESULT, command, 'log.yaml', SHEET)).out
      expect(later).not.toContain(openRun[0])
      expect(later).toContain(openRun[1])
    }
    expect((await run(LOG + RESULT, 'history', 'log.yaml', SHEET)).out).toContain(
      'sample B-12: iron 40 mg/kg, normal',
    )
    const json = JSON.parse((await run(LOG, 'due', 'log.yaml', SHEET, '--format', 'json')).out)
    expect(json.machines[0].samples).toMatchObject([
      { bottle: 'B-12', gearcase: 'front' },
      { bottle: 'B-13' },
    ])
  })

  it('are taken at this visit with --sample, if the gearcase is there', async () => {
    const words = ['plan', '--full', 'log.yaml', SHEET, '--service', 'gear-oil-change']
    expect((await run(LOG, ...words, '--sample', 'rear')).out).toContain(
      'Label of the sample: Station 2, rear',
    )
    expect((await run(LOG, ...words)).out).not.toContain('Label of the sample')
    for (const id of ['nowhere', 'constructor', '__proto__'])
      expect(await run(LOG, ...words, '--sample', id)).toMatchObject({
        code: 2,
        err: expect.stringMatching(/expected one of front, rear/),
      })
  })

  it('are refused where the sheet never changes the oil of the gearcase', async () => {
    const sheet = readFileSync(SHEET, 'utf8').replace('  gear-oil-change:\n', '$&    task: check\n')
    const io = memoryIo({ 'log.yaml': LOG, 'sheet.yaml': sheet })
    const words = ['plan', 'log.yaml', 'sheet.yaml', '--today', '2023-10-06', '--sample', 'rear']
    expect(await runCommand(words, io)).toBe(2)
    expect(io.err.join()).toContain('--sample rear: the sheet has no oil change of this gearcase')
  })
})
