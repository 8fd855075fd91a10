import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

const LOG = `kind: machine-log
version: "1.0"
id: station-2
sheet: hallbrekka-tind-4, revision 2023-03
records:
  - { date: 2023-03-01, readings: 310 h, entries: [], usedOilLog: ["1.2 L to Nordfoss Collection, receipt K-1043", "700 mL to the solvent store, kept apart: coolant"] }
  - { id: evil, date: 2023-04-01, readings: 320 h, entries: [], usedOil: "=HYPERLINK(1)" }
`

async function run(...words: readonly string[]) {
  const io = memoryIo({ 'log.yaml': LOG })
  const code = await runCommand(['used-oil', ...words], io)
  return { code, out: io.out.join('\n'), err: io.err.join('\n') }
}

describe('used-oil', () => {
  it('prints sums, carriers and lines', async () => {
    const { code, out } = await run('log.yaml')
    expect(code).toBe(0)
    expect(out.replaceAll('\u00a0', ' ').split('\n')).toEqual([
      'Used oil: 1.9 L; 0.7 L kept apart; 0.7 L without a receipt; 1 line without a volume',
      '  Nordfoss Collection: 1.2 L',
      '  the solvent store: 0.7 L; 0.7 L kept apart; 0.7 L without a receipt',
      '  =HYPERLINK(1): 0 L; 1 line without a volume',
      '  Never put oil kept apart into the used-oil tank. Ask the collection point and follow the local rules.',
      '  2023-03-01  station-2  1.2 L, to Nordfoss Collection, receipt K-1043',
      '  2023-03-01  station-2  700 mL, to the solvent store, KEPT APART: coolant',
      '  2023-04-01  station-2  volume not recorded, to =HYPERLINK(1)',
    ])
  })

  it('prints JSON and CSV, in CSV without formulas', async () => {
    const json = JSON.parse((await run('log.yaml', '--since', '2023-04-01', '--format', 'json')).out)
    expect(json).toMatchObject({
      period: { from: '2023-04-01' },
      withoutVolume: 1,
      lines: [{ record: 'evil' }],
    })
    expect((await run('log.yaml', '--format', 'csv')).out.split('\r\n')).toEqual([
      'date,machine,record,volume,unit,to,receipt,kept apart,drained (L)',
      '2023-03-01,station-2,service-2023-03-01,1.2,L,Nordfoss Collection,K-1043,,',
      '2023-03-01,station-2,service-2023-03-01,700,mL,the solvent store,,coolant,',
      "2023-04-01,station-2,evil,,,'=HYPERLINK(1),,,",
    ])
  })

  it('a period without used oil, and bad words', async () => {
    expect(await run('log.yaml', '--until', '2022-12-31')).toMatchObject({
      code: 0,
      out: 'No used oil is recorded.',
    })
    expect(await run()).toMatchObject({ code: 2, err: expect.stringMatching(/name logs/) })
    expect(await run('log.yaml', '--since', '2023-02-30')).toMatchObject({ code: 2 })
    expect(await run('log.yaml', '--since', '2023-02-02', '--until', '2023-02-01')).toMatchObject({
      code: 2,
      err: expect.stringMatching(/expected 2023-02-02 or later/),
    })
    expect(await run('log.yaml', '--machine', 'other')).toMatchObject({ code: 2 })
    expect(await run('log.yaml', '--format', 'vtt')).toMatchObject({ code: 2 })
  })
})
