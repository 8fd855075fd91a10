import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

const read = (name: string) => readFileSync(`test/fixtures/short/${name}.yaml`, 'utf8')
const linesOf = (text: string) => text.trimEnd().split('\n').length

async function run(words: readonly string[], files: Readonly<Record<string, string>>) {
  const io = memoryIo(files)
  const code = await runCommand(words, io)
  return { code, out: io.out.join('\n').replaceAll('\u00a0', ' '), written: io.written }
}

it('three figures in at most 12 lines give due, settings and a card with its gaps', async () => {
  const sheet = read('three-figures')
  console.log(`three figures: ${linesOf(sheet)} lines`)
  expect(linesOf(sheet)).toBeLessThanOrEqual(12)
  const log = await run(['new', 'log', '--sheet', 'sheet.yaml'], { 'sheet.yaml': sheet })
  const tools = await run(['new', 'toolbox'], {})
  const filledIn = (text: string) =>
    text.replaceAll(/: (?:\{\}|\[\])$/gm, ':').replaceAll(/^#(?=[a-z]| {2})/gm, '')
  const files = {
    'sheet.yaml': sheet,
    'log.yaml': filledIn(log.out),
    'toolbox.yaml': filledIn(tools.out),
  }
  const due = await run(['due', ...Object.keys(files)], files)
  expect(due).toMatchObject({ code: 0, out: expect.stringContaining('OVERDUE  rear oil change') })
  const card = await run(['card', ...Object.keys(files), '--out', 'cards'], files)
  const text = (card.written.get('cards/machine-1.txt') ?? '').replaceAll('\u00a0', ' ')
  for (const part of [
    'Refill: 300 mL',
    'Setting: 25 N·m',
    'oil not stated. See the',
    'how to fill not stated',
  ])
    expect(text).toContain(part)
})

it('two variants from one page are at most 40 lines', async () => {
  const sheet = read('two-variants')
  console.log(`two variants: ${linesOf(sheet)} lines`)
  expect(linesOf(sheet)).toBeLessThanOrEqual(40)
  const { code, out } = await run(['compare', 'sheet.yaml'], { 'sheet.yaml': sheet })
  expect({ code, out }).toMatchObject({ code: 1, out: expect.stringContaining('950') })
})
