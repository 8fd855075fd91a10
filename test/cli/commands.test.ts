import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import type { Comparison } from '../../src/v1/procedure.js'
import { parseDocumentText } from '../../src/v1/spec.js'
import { CORRECTED } from '../record/support/corrections.js'
import { memoryIo } from '../support/memoryIo.js'
import { mistakeFolder } from '../support/writeMistakes.js'

const DAY = ['--today', '2023-10-06']
const VISIT = [...DAY, '--ambient', '6degC']
const TIND = 'examples/tind-4'

async function run(words: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const io = memoryIo(files)
  const code = await runCommand(words, io)
  return {
    code,
    out: io.out.join('\n').replaceAll('\u00a0', ' '),
    err: io.err.join('\n').replaceAll('\u00a0', ' '),
    written: io.written,
  }
}

describe('due', () => {
  it('says of each service whether it is due, by what, and why', async () => {
    const { code, out } = await run(['due', TIND, ...DAY])
    expect(code).toBe(0)
    expect(out).toMatch(/^Station 2$/m)
    expect(out).toMatch(/DUE {2}gear oil change, front differential/)
    expect(out).toMatch(/200 h since the last service on 2022-11-20 at 301\.4 h, due at 501\.4 h/)
    expect(out).toMatch(/OVERDUE {2}gear oil level check, rear gearcase/)
  })

  it('gives the verdicts as JSON, for each log of a folder', async () => {
    const { out } = await run(['due', 'examples/acre-26', ...DAY, '--format', 'json'])
    const { machines } = JSON.parse(out) as { machines: { machine: string; due: { verdict: string }[] }[] }
    expect(machines.map(({ machine }) => machine)).toEqual(['station-12', 'station-6', 'station-5'])
    expect(
      machines.find(({ machine }) => machine === 'station-6')?.due.map(({ verdict }) => verdict),
    ).toEqual(Array(6).fill('cannot tell'))
  })

  it('takes the kind of use from the log, unless an option gives it', async () => {
    const severeLog = readFileSync('schemas/v1/vectors/bases/tind-4/log.json', 'utf8').replace(
      '"use": "normal"',
      '"use": "severe"',
    )
    const files = {
      'set/log.json': severeLog,
      'set/sheet.json': readFileSync('schemas/v1/vectors/bases/tind-4/sheet.json', 'utf8'),
    }
    const first = async (words: readonly string[]) => {
      const { out } = await run(['due', 'set', ...DAY, '--format', 'json', ...words], files)
      const { machines } = JSON.parse(out) as { machines: { due: { verdict: string }[] }[] }
      return machines[0]?.due[0]?.verdict
    }
    expect(await first([])).toBe('overdue')
    expect(await first(['--severity', 'normal'])).toBe('due')
  })
})

describe('plan', () => {
  it('prints everything that the visit needs', async () => {
    const { code, out } = await run(['plan', TIND, ...VISIT, '--full'])
    expect(code).toBe(0)
    for (const message of [
      /Tind 4 L, long bed/,
      /11\.2 h over/,
      /950 mL/,
      /1\.0 US qt/,
      /Setting: 31 N·m/,
      /29\.81–32\.29 N·m/,
      /HB-1620/,
      /buy: 1/,
      /about 6 min from the start of\s+the pour/,
      /Clean around the fill plug,\s+crack it loose/,
      /Every figure of this visit is stated/,
      /Service bulletin 31-04/,
    ])
      expect(out).toMatch(message)
    const oneLine = out.replaceAll(/\s+/g, ' ')
    const order = [
      'Clean around the fill plug, crack it loose',
      'Clean around the drain plug, crack it loose',
      'Take out the fill plug to let air in',
    ].map((step) => oneLine.indexOf(step))
    expect(order).not.toContain(-1)
    expect(order).toEqual([...order].sort((first, second) => first - second))
  })

  it('is one JSON document with --format json, and the same in a second run', async () => {
    const firstRun = await run(['plan', TIND, ...VISIT, '--format', 'json'])
    const secondRun = await run(['plan', TIND, ...VISIT, '--format', 'json'])
    expect(firstRun.out).toBe(secondRun.out)
    expect(JSON.parse(firstRun.out)).toMatchObject({
      plan: { kind: 'visit-plan', version: '1.0' },
      findings: [],
    })
  })

  it('reads the clock only where no day is given', async () => {
    const { out } = await run(['plan', TIND, '--ambient', '6degC', '--format', 'json'])
    expect(JSON.parse(out)).toMatchObject({ plan: { today: '2023-10-06' } })
  })

  it('takes up a service that is not due when it is named', async () => {
    const { out } = await run([
      'plan',
      'examples/acre-26',
      '--machine',
      'station-6',
      ...VISIT,
      '--service',
      'front-axle-oil-check',
      '--format',
      'json',
    ])
    const { plan } = JSON.parse(out) as { plan: { work: { service: string }[]; steps: unknown[] } }
    expect(plan.work.map(({ service }) => service)).toEqual(Array(3).fill('front-axle-oil-check'))
    expect(plan.steps.length).toBeGreaterThan(10)
  })

  it('reads temperatures in °F', async () => {
    const { out } = await run([
      'plan',
      TIND,
      '--today',
      '2023-10-06',
      '--ambient',
      '43 degF',
      '--format',
      'json',
    ])
    expect(JSON.parse(out)).toMatchObject({ plan: { ambient: { value: 43, unit: 'degF' } } })
  })

  it('asks which machine if there are several', async () => {
    const { code, err } = await run(['plan', 'examples/acre-26', ...VISIT])
    expect(code).toBe(2)
    expect(err).toMatch(/--machine station-12 or station-6 or station-5/)
  })
})

describe('card and cues', () => {
  it('writes four cards, the same bytes each time', async () => {
    const first = await run(['card', TIND, ...VISIT, '--out', 'cards'])
    const second = await run(['card', TIND, ...VISIT, '--out', 'cards'])
    expect(first.code).toBe(0)
    expect([...first.written.keys()]).toEqual([
      'cards/station-2.html',
      'cards/station-2.md',
      'cards/station-2.txt',
      'cards/station-2-short.html',
    ])
    expect([...second.written]).toEqual([...first.written])
    expect(first.written.get('cards/station-2.html')).toMatch(/^<!doctype html>/i)
    expect(first.written.get('cards/station-2.html')).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org)/)
  })

  it('prints the cue sheet, and writes it with captions: one file a scene, or one by the starts of the scenes', async () => {
    const { out } = await run(['cues', TIND, ...VISIT])
    expect(out).toMatch(/^14\. Closing/m)
    expect((await run(['cues', TIND, ...VISIT, '--format', 'markdown'])).out).toMatch(/^### 14. Closing/m)
    expect((await run(['cues', TIND, ...VISIT, '--format', 'html'])).out).toMatch(/^<!doctype html>/)
    const { written } = await run(['cues', TIND, ...VISIT, '--out', 'film'])
    expect([...written.keys()].slice(0, 4)).toEqual([
      ...['film/station-2-cues.html', 'film/station-2-cues.md', 'film/station-2-cues.txt'],
      'film/station-2-scene-01.vtt',
    ])
    expect(written.size).toBe(17)
    expect(written.get('film/station-2-scene-14.vtt')).toMatch(/^WEBVTT\n/)
    const starts = Array.from(
      { length: 14 },
      (_, index) => `0:${String(index * 2).padStart(2, '0')}:00`,
    ).join(', ')
    const vtt = await run(['cues', TIND, ...VISIT, '--format', 'vtt', '--starts', starts])
    expect(vtt.out).toMatch(/^WEBVTT\n[\s\S]*\n00:26:00\.000 --> /)
    const film = await run(['cues', TIND, ...VISIT, '--out', 'film', '--starts', starts])
    expect(film.written.get('film/station-2.vtt')).toBe(`${vtt.out.trimEnd()}\n`)
  })

  it('says what is wrong with the starts of scenes', async () => {
    const refuse = async (...words: readonly string[]) => {
      const { code, err } = await run(['cues', TIND, ...VISIT, '--format', 'vtt', ...words])
      expect(code).toBe(2)
      return err
    }
    expect(await refuse()).toMatch(/captions need --starts TIMES for one file, or --out FOLDER/)
    expect(await refuse('--starts', '0:00, soon')).toMatch(/--starts soon: expected a time such as 0:14/)
    expect(await refuse('--starts', '0:00')).toMatch(/a time for each of the 14 scenes, found 1/)
  })
})

describe('kits', () => {
  it('lists what to take for each machine, and what to order', async () => {
    const { code, out } = await run(['kits', TIND, 'examples/kvist-2', ...VISIT])
    expect(code).toBe(0)
    expect(out).toMatch(/Kit for Station 2\n {2}1400 mL {2}SAE 80W-90, API GL-5/)
    expect(out).toMatch(/Kit for Station 14/)
    expect(out).toMatch(/To order, for all kits\n {2}154 mL {2}SAE 80W-90, API GL-5/)
  })

  it('machines of one folder take from one shelf in turn', async () => {
    const { out } = await run(['kits', 'examples/bud-3', ...VISIT, '--format', 'json'])
    const { kits, order } = JSON.parse(out) as {
      kits: { machine: { id: string } }[]
      order: { oil: { oil: string; volume: { value: number } }[] }
    }
    expect(kits.map(({ machine }) => machine.id)).toEqual(['station-9', 'station-8'])
    // Two litres of SAE 75W-90, API GL-4 in stock, and 1.2 L for each transfer case: the second machine is 0.4 L short.
    expect(order.oil.find(({ oil }) => oil === 'SAE 75W-90, API GL-4')?.volume.value).toBeCloseTo(400, 6)
  })
})

describe('record', () => {
  it('appends a good record to its log', async () => {
    const { code, written } = await run(['record', TIND, ...DAY, '--out', 'log.json'])
    expect(code).toBe(0)
    const read = parseDocumentText('any', written.get('log.json') ?? '')
    expect(read).toMatchObject({ ok: true, findings: [] })
    if (!read.ok || read.value.kind !== 'machine-log') throw new Error('no log')
    expect(read.value.records.map(({ id }) => id)).toEqual([
      'station-2-first',
      'station-2-2022',
      'station-2-check-2023',
      'station-2-2023-10-06',
    ])
  })

  it('afterwards nothing is due', async () => {
    const { written } = await run(['record', TIND, ...DAY, '--out', 'log.json'])
    const files = {
      'set/log.json': written.get('log.json') ?? '',
      'set/sheet.json': readFileSync('schemas/v1/vectors/bases/tind-4/sheet.json', 'utf8'),
    }
    const { out } = await run(['due', 'set', ...DAY, '--format', 'json'], files)
    const { machines } = JSON.parse(out) as { machines: { due: { verdict: string }[] }[] }
    expect(machines[0]?.due.map(({ verdict }) => verdict)).toEqual(Array(4).fill('not due'))
  })

  it.each(CORRECTED)(
    '$name: what record, due and plan say, until a correction closes it',
    async (candidate) => {
      const base = (name: string) => readFileSync(`schemas/v1/vectors/bases/tind-4/${name}.json`, 'utf8')
      const setWith = (log: string, record?: object) => ({
        'set/log.json': log,
        'set/sheet.json': base('sheet'),
        'set/toolbox.json': base('toolbox'),
        ...(record && { 'set/record.json': JSON.stringify(record) }),
      })
      const say = async (words: readonly string[], files: Readonly<Record<string, string>>) => {
        const { out, written, code } = await run([...words, '--today', '2023-10-09'], files)
        return {
          text: out.replaceAll('\u00a0', ' ').replace(/\s+/g, ' '),
          code,
          log: written.get('log.json') ?? '',
        }
      }
      const first = await say(['record', 'set', '--out', 'log.json'], setWith(base('log'), candidate.record))
      expect(first).toMatchObject({
        code: 1,
        text: expect.stringContaining(`NOT TO BE USED: fault open since 2023-10-06`),
      })
      expect(first.text).toContain(candidate.says)
      expect(first.text.includes('Does not count.')).toBe(!candidate.counts)
      expect((await say(['due', 'set'], setWith(first.log))).text).toContain('NOT TO BE USED')
      const plan = await say(['plan', 'set', '--service', 'gear-oil-check'], setWith(first.log))
      expect(plan.text).toContain('A fault has been open since 2023-10-06')
      expect((await say(['due', 'set', '--exit-code'], setWith(first.log))).code).toBe(3)
      const second = await say(
        ['record', 'set', '--out', 'log.json'],
        setWith(first.log, candidate.correction),
      )
      expect(second).toMatchObject({ code: 0, text: expect.stringContaining('Appended') })
      const due = await say(['due', 'set'], setWith(second.log))
      expect(due.text).not.toContain('NOT TO BE USED')
      expect(due.text).toMatch(/NOT DUE gear oil change, front differential/)
      const history = await say(['history', 'set'], setWith(second.log))
      expect(history.text).toMatch(
        new RegExp(
          `${candidate.record.id} .*corrected by ${candidate.correction.id} .*${candidate.correction.id} .*corrects ${candidate.record.id}`,
        ),
      )
      expect((await say(['history', 'set'], setWith(first.log))).text.includes('does not count')).toBe(
        !candidate.counts,
      )
      const after = await say(['plan', 'set', '--service', 'gear-oil-check'], setWith(second.log))
      expect(after.text).not.toContain('A fault has been open since')
    },
  )

  it('says once that a correction of no record does not count', async () => {
    const record = readFileSync(`${TIND}/record.yaml`, 'utf8')
    const { out } = await run(['record', 'set', ...DAY], {
      'set/log.json': readFileSync('schemas/v1/vectors/bases/tind-4/log.json', 'utf8'),
      'set/sheet.json': readFileSync('schemas/v1/vectors/bases/tind-4/sheet.json', 'utf8'),
      'set/record.yaml': `${record}corrects: lost\n`,
    })
    expect(out.split('\n').filter((line) => /not count/i.test(line))).toEqual([
      'Does not count. The log of this machine has no record “lost” to correct.',
      'Does not count. The log of this machine has no record “lost” to correct.',
    ])
  })

  it('appends nothing twice', async () => {
    const { written } = await run(['record', TIND, ...DAY, '--out', 'log.json'])
    const files = {
      'set/log.json': written.get('log.json') ?? '',
      'set/sheet.json': readFileSync('schemas/v1/vectors/bases/tind-4/sheet.json', 'utf8'),
      'set/record.yaml': readFileSync(`${TIND}/record.yaml`, 'utf8'),
    }
    const secondRun = await run(['record', 'set', ...DAY, '--out', 'log.json'], files)
    expect(secondRun.code).toBe(1)
    expect(secondRun.written.size).toBe(0)
  })
})

describe('repair', () => {
  it.each(['forgotten-tightening', 'jack-as-support', 'hose-pulled-out-too-soon'])(
    'repairs %s',
    async (name) => {
      const { code, out, written } = await run(['repair', mistakeFolder(name), '--out', 'repaired.json'])
      expect(code).toBe(0)
      expect(out).toMatch(/^Dangerous, corrected:\n(.*\n)+Changes:\n(.*\n)* {2}\+ /)
      const files = {
        'set/procedure.json': written.get('repaired.json') ?? '',
        'set/sheet.json': readFileSync(`${mistakeFolder(name)}/sheet.json`, 'utf8'),
      }
      expect(await run(['check', 'set', ...DAY], files)).toMatchObject({ code: 0 })
    },
  )

  it('has nothing to fix in a valid procedure', async () => {
    expect(await run(['repair', TIND])).toMatchObject({
      code: 0,
      out: expect.stringContaining('Nothing to fix'),
    })
  })
})

describe('compare', () => {
  it('two sheets, leaf by leaf', async () => {
    const sameRun = await run([
      'compare',
      `${TIND}/sheet.yaml`,
      `${mistakeFolder('pan-too-small')}/sheet.json`,
    ])
    expect(sameRun).toMatchObject({ code: 0, out: expect.stringContaining('No difference') })
    const otherRun = await run([
      'compare',
      `${TIND}/sheet.yaml`,
      `${mistakeFolder('misprinted-second-unit')}/sheet.json`,
    ])
    expect(otherRun.code).toBe(1)
    expect(otherRun.out).toMatch(/changed \/gearcases\/front\/openings\/fill\/tightening/)
  })

  it('the variants of one sheet', async () => {
    const { code, out } = await run(['compare', `${TIND}/sheet.yaml`, '--format', 'json'])
    expect(code).toBe(1)
    expect((JSON.parse(out) as { path: string }[]).map(({ path }) => path)).toEqual([
      '/gearcases/rear/oilSpace/fill/drainAndRefill',
      '/gearcases/rear/openings/drain/place',
      '/gearcases/rear/openings/drain/position',
    ])
  })

  it('two procedures, by what they bring about', async () => {
    const files = [`${TIND}/sheet.yaml`, `${TIND}/procedure.json`]
    expect(await run(['compare', ...files, `${TIND}/procedure.json`])).toMatchObject({
      code: 0,
      out: expect.stringContaining('Both procedures have the same effect.'),
    })
    const words = ['compare', ...files, `${mistakeFolder('forgotten-tightening')}/procedure.json`]
    const otherRun = await run(words)
    expect(otherRun.code).toBe(1)
    const json = JSON.parse((await run([...words, '--format', 'json'])).out) as Comparison
    const { onlyFirst, onlySecond, state, findings } = json
    expect(onlyFirst.length).toBeGreaterThan(0)
    expect(otherRun.out.trim().split('\n').slice(1)).toEqual([
      ...onlyFirst.map((id) => `removed step ${id}`),
      ...onlySecond.map((id) => `added step ${id}`),
      ...state.map(({ path, first, second }) => `changed final state ${path}: ${first} -> ${second}`),
      ...findings.onlyFirst.map((code) => `removed finding ${code}`),
      ...findings.onlySecond.map((code) => `added finding ${code}`),
    ])
  })
})

describe('convert', () => {
  it.each([
    ['8.9 lbf·ft', 'N.m', /^8\.9 lbf·ft = 12\.066779740149464 N·m; print 12\.1 N·m$/],
    ['30-36 Nm', 'lbf.ft', /print 23–26 lbf·ft/],
    ['30-36 Nm', 'lbf·ft', /print 23–26 lbf·ft/],
    ['8.9 lb-ft', 'Nm', /print 12\.1 N·m/],
    ['6 degC', '°F', /= 42\.8.°F/],
    // A tolerance is a difference of temperatures: 2 °C are 3.6 °F.
    ['20 ± 2 °C', 'degF', /^20 ± 2.°C = 68 ± 3\.6.°F; print 68\.0 ± 3\.6.°F$/],
    ['20 +2/-1 °C', 'K', /= 293\.15 −1 \+2.K; print 293 \+2\/−0.K$/],
    // 2.2 × 9.80665, as a decimal and not as the double 2.2.
    ['2.2 kgf·m', 'N.m', /= 21\.57463.N·m;/],
    ['30-50 °C', 'degF', /= 86 … 122.°F/],
    [
      '20 ± 2 N·m',
      'kgf.m',
      /^20 ± 2 N·m = 2\.039432425955856 ± 0\.203943242595586 kgf·m; print 2\.04 ± 0\.20 kgf·m$/,
    ],
  ])('%s', async (text, unit, message) => {
    const { code, out } = await run(['convert', text, '--to', unit])
    expect(code).toBe(0)
    expect(out).toMatch(message)
  })

  it('refuses an ambiguous unit, and reads it with --assume', async () => {
    const { code, err } = await run(['convert', '1 qt', '--to', 'mL'])
    expect(code).toBe(1)
    expect(err).toMatch(/US qt and imp qt/)
    const assumed = await run(['convert', '1 qt', '--to', 'mL', '--assume', 'us'])
    expect(assumed).toMatchObject({ code: 0, out: expect.stringContaining('946.352946') })
    const imperial = await run(['convert', '1 qt', '--to', 'mL', '--assume', 'imperial', '--format', 'json'])
    expect(JSON.parse(imperial.out)).toMatchObject({ read: { value: '1', unit: 'qt_imp' } })
  })
})

describe('schema', () => {
  it.each(['spec-sheet', 'machine-log', 'toolbox', 'stock', 'procedure', 'service-record'])(
    '%s',
    async (kind) => {
      const { code, out } = await run(['schema', kind])
      expect(code).toBe(0)
      expect(JSON.parse(out)).toEqual(JSON.parse(readFileSync(`schemas/v1/${kind}.json`, 'utf8')))
    },
  )
})
