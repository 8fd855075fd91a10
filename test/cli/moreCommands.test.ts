import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'
import { TODAY } from '../support/planExample.js'
import { exampleText, mistakeFolder } from '../support/writeMistakes.js'

const TIND = 'examples/tind-4'
const DAY = ['--today', TODAY]
const VISIT = [...DAY, '--ambient', '6degC']
const text = (path: string) => {
  const [machine = '', file] = path.split('/')
  return exampleText(machine, `${file}.json`)
}

async function run(words: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const io = memoryIo(files)
  const code = await runCommand(words, io)
  return { code, out: io.out.join('\n'), err: io.err.join('\n'), written: io.written }
}

describe('kits', () => {
  it('a service that one machine does not have is reported, also by the exit code', async () => {
    const { code, err, out } = await run([
      'kits',
      TIND,
      'examples/kvist-2',
      ...VISIT,
      '--service',
      'gear-oil-change',
    ])
    expect(code).toBe(1)
    expect(err).toMatch(/service\/service-not-on-sheet/)
    expect(out).toMatch(/Kit for Station 2/)
    expect((await run(['kits', TIND, ...VISIT, '--service', 'nothing', '--format', 'json'])).code).toBe(1)
  })

  it('two toolboxes or stocks are an error: none is chosen by guess', async () => {
    for (const kind of ['toolbox', 'stock']) {
      const files = [
        `${TIND}/sheet.yaml`,
        `${TIND}/log.yaml`,
        `${TIND}/${kind}.yaml`,
        `examples/kvist-2/${kind}.yaml`,
      ]
      for (const command of ['kits', 'plan']) {
        const { code, err } = await run([command, ...files, ...VISIT])
        expect(code).toBe(2)
        expect(err).toMatch(new RegExp(`more than one ${kind} among the files`))
      }
    }
  })

  it('without toolbox and stock everything is ordered; reports when nothing is due', async () => {
    const files = [`${TIND}/sheet.yaml`, `${TIND}/log.yaml`]
    expect((await run(['kits', ...files, ...VISIT])).out).toMatch(/To order, for all kits\n {2}1400.mL/)
    expect(await run(['kits', ...files, '--today', '2022-11-21'])).toMatchObject({
      code: 0,
      out: 'Nothing is due.',
    })
    const words = ['kits', 'examples/acre-26', '--machine', 'station-6', '--today', '2023-10-06']
    const staleRun = await run(words)
    expect(staleRun.code).toBe(0)
    expect(staleRun.out).toMatch(
      /^Not known for Station 6\n {2}Unknown whether the front axle oil change is due/,
    )
    expect(staleRun.out).not.toContain('Nothing is due')
    expect(JSON.parse((await run([...words, '--format', 'json'])).out)).toMatchObject({
      kits: [],
      open: [
        {
          machine: { id: 'station-6' },
          reasons: [{ code: 'service/due-not-known' }, { code: 'service/due-not-known' }],
        },
      ],
    })
    expect((await run(['kits'])).err).toMatch(/kits: name logs/)
    expect((await run(['kits', 'a.json'], { 'a.json': '{' })).code).toBe(1)
  })
})

describe('compare', () => {
  const sheet = text('tind-4/sheet')
  const procedure = text('tind-4/procedure')
  const makeTwoFiles = (first: string, second: string) => ({ 'first.json': first, 'second.json': second })
  const comparing = (files: Readonly<Record<string, string>>, ...words: readonly string[]) =>
    run(['compare', ...Object.keys(files), ...words], files)

  it('names what only one sheet has', async () => {
    const otherSheet = JSON.parse(sheet)
    delete otherSheet.gearcases.front.drainTemperature
    const shortDifference = await comparing(
      makeTwoFiles(sheet, JSON.stringify({ ...otherSheet, revision: '\u001b[2J' })),
    )
    expect(shortDifference.code).toBe(1)
    expect(shortDifference.out).toMatch(/drainTemperature: .* -> nothing/)
    expect(shortDifference.out.replaceAll('\n', '')).not.toMatch(/\p{Cc}/u)
    const json = await comparing(makeTwoFiles(sheet, JSON.stringify(otherSheet)), '--format', 'json')
    expect(JSON.parse(json.out).leaves).toHaveLength(1)
  })

  it('names changed facts', async () => {
    const { header: _header, ...withoutHeader } = JSON.parse(sheet)
    const { code, out } = await comparing(
      makeTwoFiles(
        sheet,
        JSON.stringify({ ...withoutHeader, machine: { ...withoutHeader.machine, type: 'carrier' } }),
      ),
    )
    expect(code).toBe(1)
    expect(out).toMatch(/changed \/machine\/type: ".*" -> "carrier"/)
    expect(out).toMatch(/removed \/header: ".*" -> nothing/)
  })

  it('variants in words; a sheet with one variant has no difference', async () => {
    expect((await comparing({ 'sheet.json': sheet })).out).toMatch(
      /drainAndRefill\n {2}short: .*"700".*\n {2}long: .*"950"/,
    )
    expect(await comparing({ 'sheet.json': text('kvist-2/sheet') })).toMatchObject({
      code: 0,
      out: 'The variants have the same figures.',
    })
    expect((await comparing({ 'sheet.json': text('kvist-2/sheet') }, '--format', 'json')).out).toBe('[]')
  })

  it('two procedures of two sheets, or of another revision, are not compared', async () => {
    const otherSheet = JSON.stringify({
      ...JSON.parse(procedure),
      sheet: { id: 'hallbrekka-tind-4', revision: '1' },
    })
    const files = { 'sheet.json': sheet, ...makeTwoFiles(procedure, otherSheet) }
    expect(await comparing(files)).toMatchObject({
      code: 2,
      err: expect.stringMatching(/expected the sheet of both/),
    })
    expect(await comparing(makeTwoFiles(procedure, procedure))).toMatchObject({ code: 2 })
  })

  it('what cannot be read, and what is too much', async () => {
    expect((await comparing({ 'sheet.json': '{' })).code).toBe(1)
    expect((await comparing({ 'sheet.json': sheet, ...makeTwoFiles(sheet, sheet) })).err).toMatch(
      /two sheets, two procedures/,
    )
  })
})

describe('record', () => {
  it.each([
    [['record'], {}, /name the record, its log/],
    [['record', TIND, 'examples/kvist-2'], {}, /or their folder/],
    [['record', `${TIND}/log.yaml`], {}, /expected one record, found 0/],
    [['record', `${TIND}/record.yaml`, `${TIND}/record.yaml`], {}, /expected one record, found 2/],
    [
      ['record', `${TIND}/record.yaml`, `${TIND}/sheet.yaml`],
      {},
      /the log of machine station-2 is not among/,
    ],
  ])('%j', async (words, files, message) => {
    expect(await run([...words, ...DAY], files)).toMatchObject({
      code: 2,
      err: expect.stringMatching(message),
    })
  })

  it('without --out only checks; a file that cannot be read stops it', async () => {
    expect(await run(['record', TIND, ...DAY])).toMatchObject({ code: 0, out: '' })
    const found = await run(['record', 'a.json', ...DAY], { 'a.json': '{' })
    expect(found).toMatchObject({ code: 1, out: expect.stringMatching(/spec\/not-json/) })
  })

  it('as JSON prints nothing but JSON, and its words on the other stream', async () => {
    const badFolder = mistakeFolder('record-with-a-forgotten-plug')
    const found = await run(['record', badFolder, ...DAY, '--format', 'json', '--out', 'log.json'])
    expect(JSON.parse(found.out).findings.length).toBeGreaterThan(0)
    expect(found.err).toMatch(/NOT TO BE USED: fault open since 2023-10-06 .*Appended to log\.json/s)
    expect(found.code).toBe(1)
    expect(JSON.parse(found.written.get('log.json') ?? '').records).toHaveLength(4)
    const goodRun = await run(['record', TIND, ...DAY, '--format', 'json', '--out', 'log.json'])
    expect(JSON.parse(goodRun.out).findings).toEqual([])
    expect(goodRun.err).toMatch(/Appended to log\.json: .*4 records/)
    const secondRun = await run(['record', 'set', ...DAY, '--format', 'json', '--out', 'log.json'], {
      'set/log.json': goodRun.written.get('log.json') ?? '',
      'set/sheet.json': text('tind-4/sheet'),
      'set/record.json': text('tind-4/record'),
    })
    expect(secondRun).toMatchObject({ code: 1, err: expect.stringMatching(/the log already has a record/) })
  })

  it('of another sheet is not appended, and says so', async () => {
    const record = JSON.parse(text('tind-4/record'))
    const found = await run(['record', 'set', ...DAY, '--out', 'log.json'], {
      'set/log.json': text('tind-4/log'),
      'set/sheet.json': text('tind-4/sheet'),
      'set/record.json': JSON.stringify({ ...record, sheet: { ...record.sheet, id: 'kvernmo-hale-van' } }),
    })
    expect(found.code).toBe(1)
    expect(found.out).toMatch(/Not appended: the record is for another sheet\.$/)
    expect(found.written.size).toBe(0)
  })
})

describe('repair', () => {
  const BAD = mistakeFolder('forgotten-tightening')
  it('as JSON gives the changes, what is left and the corrected procedure', async () => {
    const { code, out, err, written } = await run([
      'repair',
      BAD,
      '--format',
      'json',
      '--out',
      'repaired.json',
    ])
    const answer = JSON.parse(out)
    expect(code).toBe(0)
    expect(answer.applied.length).toBeGreaterThan(0)
    expect(answer.left).toEqual([])
    expect(JSON.parse(written.get('repaired.json') ?? '')).toEqual(answer.procedure)
    expect(err).toBe('Written: repaired.json')
  })

  it('without its sheet, or with what cannot be read', async () => {
    expect((await run(['repair', `${BAD}/procedure.json`])).err).toMatch(/revision .* is not among the files/)
    expect((await run(['repair', 'a.json'], { 'a.json': '{' })).code).toBe(1)
  })

  it('reports findings that no change fixes, with the file name', async () => {
    const procedure = JSON.parse(text('tind-4/procedure'))
    const files = {
      'set/procedure.json': JSON.stringify({ ...procedure, services: ['nothing'] }),
      'set/sheet.json': text('tind-4/sheet'),
    }
    const found = await run(['repair', 'set'], files)
    expect(found.code).toBe(1)
    expect(found.out).toMatch(
      /^No change helps\.\nset\/procedure\.json: error: .*\n {4}procedure\/unknown-service at/,
    )
  })
})

describe('--tolerance', () => {
  const KVIST = 'examples/kvist-2'
  const FILES = ['sheet.yaml', 'log.yaml', 'toolbox.yaml', 'stock.yaml'].map((file) => `${KVIST}/${file}`)
  const torque = { kind: 'nominal', value: '9.3', unit: 'lbf.ft' }
  const sheet = JSON.parse(text('kvist-2/sheet'))
  const { tightening } = sheet.gearcases.bevel.openings.fill
  sheet.gearcases.bevel.openings.fill.tightening = {
    kind: 'torque',
    torque,
    threadCondition: 'dry',
    source: tightening.source,
  }
  const toolbox = JSON.parse(text('kvist-2/toolbox'))
  const wrench = Object.values(toolbox.wrenches)[0] as object
  const box = (graduation: number) => {
    const scales = [{ unit: 'lbf.in', lowest: 40, highest: 200, graduation }]
    return JSON.stringify({ ...toolbox, wrenches: { inch: { ...wrench, drive: '1/2 in', scales } } })
  }
  const plan = (graduation: number, ...more: readonly string[]) =>
    run(['plan', '--full', ...FILES, ...VISIT, ...more], {
      [`${KVIST}/sheet.yaml`]: JSON.stringify(sheet),
      [`${KVIST}/toolbox.yaml`]: box(graduation),
    })

  it('a stated torque without a setting is exit code 1; with a mark near enough, or a tolerance, 0', async () => {
    const finePlan = await plan(1)
    expect(finePlan.code).toBe(0)
    expect(finePlan.out.replaceAll(/\s+/g, ' ')).toMatch(/the nearest mark, 0\.4 % above/)
    const coarsePlan = await plan(20)
    expect(coarsePlan.code).toBe(1)
    expect(coarsePlan.out).toMatch(/No wrench setting/)
    expect(coarsePlan.out).toMatch(/40–200.lbf·in/)
    const allowed = await plan(20, '--tolerance', '12')
    expect(allowed.code).toBe(0)
    expect(allowed.out).toMatch(/120.lbf·in/)
  })

  it('without any toolbox too it is exit code 1, and the text says what to give', async () => {
    const { code, out } = await run([
      'plan',
      'examples/tind-4/sheet.yaml',
      'examples/tind-4/log.yaml',
      ...VISIT,
    ])
    expect(code).toBe(1)
    expect(out.replaceAll(/\s+/g, ' ')).toMatch(
      /No wrench setting.{1,9}No toolbox given, so the stated torques have no wrench setting/,
    )
  })

  it('is per cent above 0 and below 100, with or without the sign', async () => {
    expect((await plan(20, '--tolerance', '12%')).code).toBe(0)
    for (const wrongPercent of ['0', '100', 'ten', '-5']) {
      const { code, err } = await plan(1, '--tolerance', wrongPercent)
      expect([wrongPercent, code]).toEqual([wrongPercent, 2])
      expect(err).toMatch(/--tolerance/)
    }
  })
})
