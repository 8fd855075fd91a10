import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

const base = (name: string) => readFileSync(`schemas/v1/vectors/bases/tind-4/${name}.json`, 'utf8')
/** The log of a machine whose first service is on record with these times. */
function logOf(id: string, ...times: readonly string[]): string {
  const log = JSON.parse(base('log'))
  const more = times.map((workingTime, place) => ({
    ...log.records[0],
    id: `${id}-${place}`,
    machine: id,
    workingTime,
  }))
  return JSON.stringify({ ...log, id, records: [...log.records, ...more] })
}
const FILES = {
  'set/log.json': logOf('station-2', '70 min', '95 min'),
  'set/sheet.json': base('sheet'),
  'other/log.json': logOf('station-9', '1.5 h'),
}

async function run(...words: readonly string[]) {
  const io = memoryIo(FILES)
  const day = ['--today', '2023-10-06', '--service', 'gear-oil-change']
  const code = await runCommand([...words, ...day], io)
  const joinLines = (lines: readonly string[]) => lines.join('\n').replaceAll(/[\u00a0\s]+/g, ' ')
  return { code, out: joinLines(io.out), err: joinLines(io.err), written: io.written }
}

describe('own times', () => {
  it('with few visits the plan keeps the estimate and says so', async () => {
    const { out } = await run('plan', 'set', '--full', '--level', 'error')
    expect(out).toMatch(
      /Working time: .*our estimate.* 2 visits with the same work on record; from 3 visits on/,
    )
  })

  it('with the log of another machine and a rate: median and cost, on the plan, the card and in JSON', async () => {
    const options = ['--times-from', 'other', '--labour-rate', '65 EUR', '--level', 'error']
    const expected =
      /Working time: 1 h 30 min \(from your records.*Median of 3 visits with the same work, 70 to 95 min.*Labour: 97\.5 EUR at 65 EUR an hour/
    expect((await run('plan', 'set', '--full', ...options)).out).toMatch(expected)
    const { written } = await run('card', 'set', '--out', 'cards', ...options)
    const text = [...written].find(([path]) => path.endsWith('.txt'))?.[1] ?? ''
    expect(text.replaceAll(/[\u00a0\s]+/g, ' ')).toMatch(expected)
    const { time } = JSON.parse((await run('plan', 'set', '--format', 'json', ...options)).out).plan
    expect(time).toMatchObject({
      minutes: 90,
      basis: 'own records',
      visits: { count: 3, min: 70, max: 95 },
      labour: { cost: { amount: 97.5, currency: 'EUR' } },
    })
  })

  it.each([
    [['--labour-rate', '65'], /"65.50 EUR"/],
    [['--labour-rate', '65 euro'], /"65.50 EUR"/],
    [['--labour-rate', '1e9 EUR'], /"65.50 EUR"/],
    [['--times-from', 'nowhere'], /nowhere/],
  ])('%j is refused', async (options, message) => {
    const { code, err } = await run('plan', 'set', ...options)
    expect(code).toBe(2)
    expect(err).toMatch(message)
  })
})
