import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

const FOLDER = 'examples/acre-26'

async function dueOn(today: string, paths: readonly string[] = [FOLDER], files = {}) {
  const io = memoryIo(files)
  await runCommand(['due', ...paths, '--machine', 'station-12', '--today', today], io)
  return io.out.join('\n').replaceAll('\u00a0', ' ')
}

describe('the first service after a rebuild', () => {
  it('only for the rebuilt hubs, the first interval applies again from the rebuild', async () => {
    const lines = (await dueOn('2023-10-06')).split('\n  DUE').map((service) => service.split('\n'))
    const of = (name: string) => lines.find(([head]) => head?.includes(`oil change, ${name}`)) ?? []
    for (const side of ['left', 'right'])
      expect(of(`hub reduction, ${side}`)[2]).toBe(
        '    due soon: 50 h since the rebuild on 2023-06-18 at 402.5 h, due at 452.5 h; 446.3 h on 2023-10-05, 6.2 h left.',
      )
    expect(of('front axle housing')[1]).toMatch(/400 h since the last service on 2022-05-30/)
  })

  it('without the event the usual interval counts on from the last service', async () => {
    const text = readFileSync(`${FOLDER}/log-rebuilt.yaml`, 'utf8')
    const withoutEvents = text.replace(/events:\n.*\n/, '')
    expect(withoutEvents).not.toBe(text)
    const due = await dueOn('2023-10-06', [`${FOLDER}/sheet.yaml`, 'log.yaml'], { 'log.yaml': withoutEvents })
    expect(due).not.toContain('rebuild')
    expect(due).toContain('400 h since the last service on 2022-05-30 at 51 h, due at 450 h')
  })

  it('oil added since the rebuild counts from it', async () => {
    expect(await dueOn('2023-10-06')).toContain(
      'LOSES OIL  Hub reduction, left: 60 mL added since 2023-06-18, 29.3 h, about 200 mL per 100 h, 13 % of the fill.',
    )
  })
})
