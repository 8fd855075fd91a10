import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { runCommand } from '../../src/cli/runCommand.js'
import { type ProcedureDocument, parseDocument } from '../../src/v1/spec.js'
import { memoryIo } from '../support/memoryIo.js'

const TIND = 'examples/tind-4'
const VISIT = ['--today', '2023-10-06', '--ambient', '6degC']
const SHEET = 'schemas/v1/vectors/bases/tind-4/sheet.json'

async function run(words: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const io = memoryIo(files)
  const code = await runCommand(words, io)
  const text = (lines: readonly string[]) => lines.join('\n').replaceAll('\u00a0', ' ')
  return { code, out: text(io.out), err: text(io.err), written: io.written }
}

function read(text: string): ProcedureDocument {
  const found = parseDocument('procedure', parse(text))
  if (!found.ok) throw new Error(JSON.stringify(found.findings))
  return found.value
}

describe('procedure', () => {
  it('writes the built steps in YAML, each line of the card above its steps', async () => {
    const { code, out } = await run(['procedure', TIND, ...VISIT])
    expect(code).toBe(0)
    expect(read(out).steps).toHaveLength(89)
    expect(out.match(/^ {2}# [0-9]+\. /gm)).toHaveLength(24)
    const [, drain = ''] = out.split(/^ {2}# 4\. /m)
    expect(drain.slice(0, drain.indexOf('# 5. '))).toMatch(
      /^Put the drain pan in place\.[^-]*- id: rear-pan-drain\n {4}do: place the pan\n/,
    )
  })

  it('writes JSON to a new file, and keeps a file that exists', async () => {
    const { written } = await run(['procedure', TIND, ...VISIT, '--out', 'own.json'])
    expect(JSON.parse(written.get('own.json') ?? '')).toMatchObject({
      kind: 'procedure',
      services: ['gear-oil-change'],
    })
    const secondRun = await run(['procedure', TIND, ...VISIT, '--out', 'own.yaml'], { 'own.yaml': 'mine' })
    expect(secondRun.code).toBe(2)
    expect(secondRun.err).toContain('own.yaml exists')
  })

  it('is for a service of a sheet alone too, and asks for one if nothing is due', async () => {
    const { out } = await run(['procedure', `${TIND}/sheet.yaml`, '--service', 'gear-oil-check'])
    expect(read(out)).toMatchObject({ services: ['gear-oil-check'], identity: {} })
    const { code, err } = await run(['procedure', `${TIND}/sheet.yaml`])
    expect([code, err]).toEqual([
      2,
      expect.stringContaining('expected a log and its sheet, or one sheet and --service'),
    ])
  })

  it('keeps the order and the notes of an older procedure for a new revision of the sheet, and says what changed', async () => {
    const built = read((await run(['procedure', TIND, ...VISIT])).out)
    const ownProcedure = {
      ...built,
      steps: [
        ...built.steps.map((step) =>
          step.id === 'front-tighten-fill' ? { ...step, note: 'Use the long bar.' } : step,
        ),
        { id: 'extra', do: 'secure the machine', on: '/machine/secure/0', note: 'Pin the bed.' },
      ],
    }
    // At the station, gloves are put on first.
    ownProcedure.steps.unshift(...ownProcedure.steps.splice(1, 1))
    const text = readFileSync(SHEET, 'utf8')
    const sheet = JSON.parse(text)
    const { tightening } = sheet.gearcases.front.openings.fill
    tightening.torque = { kind: 'nominal', value: '33', unit: 'N.m' }
    const files = {
      'old.json': JSON.stringify(ownProcedure),
      'new.json': JSON.stringify({ ...sheet, revision: '2024-01' }),
      'sheet.json': text,
    }
    const { out, err } = await run(['procedure', '--from', 'old.json', 'new.json', 'sheet.json'], files)
    const freshProcedure = read(out)
    expect(freshProcedure.sheet).toEqual({ id: sheet.id, revision: '2024-01' })
    expect(freshProcedure.steps.find(({ id }) => id === 'front-tighten-fill')?.note).toBe('Use the long bar.')
    expect(freshProcedure.steps.map(({ id }) => id)).toEqual(
      ownProcedure.steps.map(({ id }) => id).slice(0, -1),
    )
    expect(err).toContain('Step removed: extra: this machine has no /machine/secure/0')
    expect(err).toContain('Note without a step: extra: Pin the bed.')
    expect(out).toContain('\n# Note without a step: extra: Pin the bed.\n')
    expect(err).toMatch(
      /^Changed at front-tighten-fill: gearcases front openings fill tightening: .*"30".* -> .*"33"/m,
    )
    expect(out).toContain('Tighten it to 33 N·m')
  })
})

describe('--procedure', () => {
  const runOwn = async (change: (steps: ProcedureDocument['steps']) => ProcedureDocument['steps']) => {
    const built = read((await run(['procedure', TIND, ...VISIT])).out)
    return JSON.stringify({ ...built, name: 'Our own order', steps: change(built.steps) })
  }

  it('drives plan, card and cues, and names the procedure and its file', async () => {
    const file = await runOwn((steps) =>
      steps.map((step) => (step.id === 'read' ? { ...step, note: 'In the cab.' } : step)),
    )
    for (const words of [['plan'], ['plan', '--full'], ['card', '--out', 'out'], ['cues']]) {
      const { code, out, err, written } = await run([...words, TIND, ...VISIT, '--procedure', 'own.json'], {
        'own.json': file,
      })
      expect(code).toBe(0)
      expect(err).toContain('Steps: Our own order, from own.json')
      const text = words[0] === 'card' ? (written.get('out/station-2.txt') ?? '') : out
      if (words[0] !== 'cues') expect(text).toContain('Steps: Our own order')
      if (words[0] === 'card' || words.includes('--full')) expect(text).toContain('In the cab.')
    }
  })

  it('that is not safe has a warning at the top of the card, with the place', async () => {
    const file = await runOwn((steps) => steps.filter(({ do: action }) => action !== 'chock the wheels'))
    const { code, out } = await run(['plan', TIND, ...VISIT, '--procedure', 'own.json'], { 'own.json': file })
    expect(code).toBe(1)
    expect(out.indexOf('Do not follow them until they')).toBeGreaterThan(0)
    expect(out.indexOf('Do not follow them until they')).toBeLessThan(out.indexOf('gear oil change'))
    expect(out).toMatch(/^own\.json:[0-9]+:[0-9]+: error: /m)
    expect(out).toContain('procedure/wheels-not-chocked')
  })

  it('must be one procedure', async () => {
    const { code, err } = await run(['plan', TIND, ...VISIT, '--procedure', `${TIND}/log.yaml`])
    expect([code, err]).toEqual([2, expect.stringContaining('expected one procedure, found 0')])
  })
})
