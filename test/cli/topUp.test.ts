import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { parseHistory, parseMachineLog, writeHistory } from '../../src/v1/spec.js'
import { memoryIo } from '../support/memoryIo.js'

const base = (name: string) => readFileSync(`schemas/v1/vectors/bases/tind-4/${name}.json`, 'utf8')
const FILES = Object.fromEntries(['log', 'sheet', 'stock'].map((name) => [`set/${name}.json`, base(name)]))
const SHORT = readFileSync('examples/tind-4/log.yaml', 'utf8')

async function run(words: readonly string[], files: Readonly<Record<string, string>> = FILES) {
  const io = memoryIo(files)
  const code = await runCommand([...words, '--today', '2023-10-09'], io)
  const joinLines = (lines: readonly string[]) => lines.join('\n').replaceAll('\u00a0', ' ')
  return { code, out: joinLines(io.out), err: joinLines(io.err), written: io.written }
}

const OIL = '50 mL of station gear oil 80W-90'
const ADD = ['record', '--top-up', OIL, '--at', 'front', '--on', '2023-09-01 at 490.5 h, 4200 km']
const EXPECTED = {
  date: '2023-09-01',
  gearcase: 'front',
  volume: { value: 50, unit: 'mL' },
  oil: 'station gear oil 80W-90',
}

describe('record --top-up', () => {
  it('appends it and the readings of the day, and says what the gearcase loses', async () => {
    const { code, out, written } = await run([...ADD, 'set', '--out', 'new.json'])
    expect(out).toBe(
      'LOSES OIL  Front differential: 50 mL added since 2022-11-20, 189.1 h, about 26 mL per 100 h, 11 % of the fill. Find the leak before you top up the oil.\n' +
        'Appended to new.json: 50 mL on 2023-09-01, 1 top-up.',
    )
    expect(code).toBe(0)
    const log = JSON.parse(written.get('new.json') ?? '')
    expect(log.topUps).toEqual([EXPECTED])
    expect(log.meters.hours.readings).toContainEqual({ date: '2023-09-01', value: 490.5 })
    expect(log.meters.distance.readings).toContainEqual({ date: '2023-09-01', value: 4200 })
  })

  it('into a history it is a line, and the next one too', async () => {
    const read = parseMachineLog(JSON.parse(base('log')))
    const lines = read.ok ? writeHistory(read.value) : []
    const path = 'set/log.history.jsonl'
    const { 'set/log.json': _none, ...others } = FILES
    const history = { ...others, [path]: `${lines.join('\n')}\n` }
    const first = (
      await run(['record', '--top-up', OIL, '--at', 'front', 'set', '--out', path], history)
    ).written.get(path)
    const second = await run(['record', '--top-up', OIL, '--at', 'rear', 'set', '--out', path], {
      ...history,
      [path]: first ?? '',
    })
    const text = second.written.get(path) ?? ''
    expect(text.startsWith(`${lines.join('\n')}\n`)).toBe(true)
    const added = text
      .trimEnd()
      .split('\n')
      .slice(lines.length)
      .map((line) => JSON.parse(line))
    expect(added.map(({ path: at }) => at)).toEqual(['/topUps/-', '/topUps/-'])
    const parsedAgain = parseHistory(text.split('\n'))
    expect(parsedAgain.ok && parsedAgain.value.topUps?.map(({ gearcase }) => gearcase)).toEqual([
      'front',
      'rear',
    ])
  })

  it('into a log in short notation: what was there stays as it was written', async () => {
    const { 'set/log.json': _none, ...others } = FILES
    const files = { ...others, 'set/log.yaml': SHORT }
    const { code, written } = await run(
      ['record', '--top-up', OIL, '--at', 'front', 'set', '--out', 'set/log.yaml'],
      files,
    )
    expect(code).toBe(0)
    const text = written.get('set/log.yaml') ?? ''
    expect(text).toContain('sheet: hallbrekka-tind-4, revision 2023-03')
    expect(text).toContain('- 48.2 h, 412 km on 2021-07-10')
    const due = await run(['due', 'set'], { ...files, 'set/log.yaml': text })
    expect(due.out).toContain('LOSES OIL  Front differential: 50 mL added')
  })

  it('keeps oil that is not permitted, with its finding', async () => {
    const words = [
      'record',
      '--top-up',
      '0.1 L of gear oil 80W-90 GL-4',
      '--at',
      'rear',
      'set',
      '--out',
      'new.json',
    ]
    const { code, out, written } = await run(words)
    expect(code).toBe(1)
    expect(out).toMatch(/log\/oil-not-permitted.*[\s\S]*Appended to new.json/)
    expect(JSON.parse(written.get('new.json') ?? '').topUps).toHaveLength(1)
  })

  it('writes nothing without --out, twice, in the future, or against the readings', async () => {
    expect(await run([...ADD, 'set'])).toMatchObject({
      code: 0,
      out: expect.stringMatching(/Nothing is written/),
    })
    const logText = JSON.stringify({ ...JSON.parse(base('log')), topUps: [EXPECTED] })
    const secondRun = await run([...ADD, 'set', '--out', 'set/log.json'], {
      ...FILES,
      'set/log.json': logText,
    })
    expect(secondRun).toMatchObject({ code: 1, out: 'Not appended: the log already has this top-up.' })
    for (const on of ['2024-01-01', '2023-09-01 at 9000 h']) {
      const refusedRun = await run([
        'record',
        '--top-up',
        OIL,
        '--at',
        'front',
        '--on',
        on,
        'set',
        '--out',
        'new.json',
      ])
      expect(refusedRun).toMatchObject({ code: 1, out: expect.stringMatching(/Nothing is written/) })
      expect(refusedRun.written.size).toBe(0)
    }
  })

  it.each([
    [['--top-up', OIL], /write --at/],
    [['--top-up', OIL, '--at', 'middle'], /--at "middle": expected one of front, rear/],
    [['--top-up', OIL, '--at', 'front left'], /expected one of front, rear/],
    [['--top-up', OIL, '--at', '__proto__'], /expected one of front, rear/],
    [['--top-up', '50 mL', '--at', 'front'], /expected a volume and an oil/],
    [['--top-up', `50 mL of ${'x'.repeat(300)}`, '--at', 'front'], /expected a volume and an oil/],
    [['--top-up', '50 N·m of oil', '--at', 'front'], /--top-up/],
    [['--top-up', '0 mL of oil', '--at', 'front'], /a volume above zero/],
    [['--top-up', '1 qt of oil', '--at', 'front'], /--top-up "1 qt"/],
    [['--top-up', OIL, '--at', 'front', '--on', 'yesterday'], /expected a date/],
    [['--top-up', OIL, '--at', 'front', '--from-plan'], /cannot be used with --top-up/],
    [['--at', 'front'], /can only be used with --top-up/],
  ])('%j is refused', async (words, message) => {
    const { code, err, written } = await run(['record', ...words, 'set', '--out', 'new.json'])
    expect(code).toBe(2)
    expect(err).toMatch(message)
    expect(written.size).toBe(0)
  })

  it('asks which of the two hubs', async () => {
    const { code, err } = await run(
      ['record', '--top-up', OIL, '--at', 'hub', 'examples/acre-26/log.yaml', 'examples/acre-26/sheet.yaml'],
      {},
    )
    expect(code).toBe(2)
    expect(err).toContain('--at "hub": expected one of axle, hub left, hub right')
  })
})

describe('lost oil', () => {
  const log = JSON.stringify({ ...JSON.parse(base('log')), topUps: [EXPECTED] })
  const files = { ...FILES, 'set/log.json': log }

  it('is in due, as text, as JSON and for each line of a fleet', async () => {
    expect((await run(['due', 'set'], files)).out).toMatch(
      /^Station 2\n {2}LOSES OIL {2}Front differential: 50 mL/,
    )
    const [machine] = JSON.parse((await run(['due', 'set', '--format', 'json'], files)).out).machines
    expect(machine.oilLoss).toMatchObject([{ gearcase: 'front', verdict: 'loses oil' }])
    const lines = { ...files, 'logs.jsonl': JSON.stringify(JSON.parse(log)) }
    const fleet = await run(['due', 'logs.jsonl', '--sheet', 'set/sheet.json'], lines)
    expect(JSON.parse(fleet.out).oilLoss).toMatchObject([{ gearcase: 'front', verdict: 'loses oil' }])
    expect((await run(['due', 'set', '--format', 'json'])).out).not.toContain('oilLoss')
  })

  it('is in the history with its top-up, and on the plan', async () => {
    const { out } = await run(['history', 'set'], files)
    expect(out).toContain('\nLOSES OIL  Front differential: 50 mL')
    expect(out).toContain('\n  2023-09-01  top-up: 50 mL of station gear oil 80W-90, front differential')
    const plan = (await run(['plan', 'set'], files)).out.replaceAll(/\s+/g, ' ')
    expect(plan).toContain('WARNING: Front differential: 50 mL added since 2022-11-20')
  })
})
