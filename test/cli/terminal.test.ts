import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

const DAY = ['--today', '2023-10-06']
const MACHINES: readonly (readonly [string, readonly string[]])[] = [
  ['tind-4', []],
  ['acre-26', ['--machine', 'station-5']],
  ['bud-3', ['--machine', 'station-8']],
  ['reach-55', []],
  ['kvist-2', []],
]

/** The output of a command in a terminal of that width. */
async function print(words: readonly string[], columns: number, files: Record<string, string> = {}) {
  const io = { ...memoryIo(files), columns }
  const code = await runCommand(words, io)
  return { code, text: io.out.join('\n'), err: io.err.join('\n') }
}

/** Lines that are too long although a space could break them. */
const tooLong = (text: string, columns: number) =>
  text.split('\n').filter((line) => Array.from(line).length > columns && line.trim().includes(' '))

describe('the terminal', () => {
  it.each(MACHINES)(
    '%s: plan answers in about ten lines and says how to see the rest',
    async (folder, words) => {
      const { text, err } = await print(['plan', `examples/${folder}`, ...DAY, ...words], 400)
      const answer = text.split('Findings\n')[0]?.trimEnd().split('\n') ?? []
      expect(err).toBe('')
      expect(answer.length).toBeGreaterThan(3)
      expect(answer.length).toBeLessThanOrEqual(16)
      expect(answer.at(-1)).toContain('--full')
    },
  )

  it.each([80, 60, 40])('the cue sheet fits a terminal of %d columns', async (columns) => {
    const { text } = await print(['cues', 'examples/tind-4', ...DAY, '--ambient', '6degC'], columns)
    expect(text.length).toBeGreaterThan(1000)
    expect(tooLong(text, columns)).toEqual([])
  })

  it('answers what is due, how much of which oil, what to buy and the settings', async () => {
    const { text } = await print(['plan', 'examples/tind-4', ...DAY, '--ambient', '6degC'], 400)
    for (const message of [
      'due: 11.2\u00a0h over',
      'Oil: Rear gearcase: 950\u00a0mL SAE 80W-90, API GL-5',
      'Buy: 153.6\u00a0mL SAE 80W-90, API GL-5; 1 × crush washer',
      'Rear gearcase, drain plug: 28–34\u00a0N·m, set 31\u00a0N·m, half-inch click wrench',
      'Every figure of this visit is stated.',
    ])
      expect(text).toContain(message)
  })

  it('lists a missing quantity separately from its oil, and counts the facts that are not listed', async () => {
    const sheet = readFileSync('examples/kvist-2/sheet.yaml', 'utf8').replace(/^ *fill: 300 mL.*\n/m, '')
    const files = {
      'set/sheet.yaml': sheet,
      'set/log.yaml': readFileSync('examples/kvist-2/log.yaml', 'utf8'),
    }
    const { text } = await print(['plan', 'set', ...DAY], 400, files)
    expect(text).toContain('Oil: Bevel box: not stated: see the manual, SAE 90, API GL-4')
    expect(text).toMatch(/\nand [2-9] more that are not stated or not known\n/)
  })

  it.each([80, 60, 40])('plan, whole or not, and due fit %i columns for every example', async (columns) => {
    for (const [folder, words] of MACHINES)
      for (const more of [[], ['--full']])
        for (const command of ['plan', 'due']) {
          const { text } = await print([command, `examples/${folder}`, ...DAY, ...words, ...more], columns)
          const answer = text.split('Findings\n')[0] ?? ''
          expect(answer.length).toBeGreaterThan(100)
          expect(tooLong(answer, columns), `${command} ${folder} ${more.join()}`).toEqual([])
        }
  })

  it('due lists one line a machine, most urgent first', async () => {
    const { text } = await print(
      ['due', 'examples/acre-26', 'examples/tind-4', 'examples/bud-3', ...DAY],
      400,
    )
    const lines = text.trim().split('\n')
    const states = lines.map((line) => line.split(' · ')[0])
    expect(lines).toHaveLength(6)
    const order = ['NOT TO BE USED', 'OVERDUE', 'DUE', 'CANNOT TELL', 'DUE SOON', 'NOT DUE']
    const ranks = states.map((state) => order.indexOf(state ?? ''))
    expect(ranks).toEqual([...ranks].sort((rank, other) => rank - other))
    expect(ranks).not.toContain(-1)
    expect(new Set(ranks).size).toBeGreaterThan(1)
  })
})
