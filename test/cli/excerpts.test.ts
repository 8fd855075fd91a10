import { expect, test } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

const SHEET = `kind: spec-sheet
version: "1.0"
id: ferd-2
revision: "1"
machine: { make: Nordli, model: Ferd 2, type: utility machine }
sources: { manual: Ferd 2 manual }
gearcases:
  rear:
    type: final drive
    oilSpace: { fill: 700ml }
    openings:
      drain: 30 N·m (3.1 kgf·m, 22 lb), dry
`

async function check(text: string): Promise<readonly string[]> {
  const io = memoryIo({ 'a.yaml': text })
  await runCommand(['check', 'a.yaml'], io)
  return io.out.join('\n').split('\n')
}

test('a text that cannot be read is printed with the place under it, and what to write', async () => {
  const lines = await check(SHEET)
  expect(lines.slice(0, 12)).toEqual([
    'a.yaml:10:17: error: Expected a volume such as "450 mL", found "700ml".',
    '    700ml',
    '    ^^^^^',
    '    write: 700 mL',
    '    spec/bad-notation at /gearcases/rear/oilSpace/fill',
    'a.yaml:12:7: error: Expected a torque such as "30 N·m", found "22 lb". This unit is for another kind of quantity.',
    '    30 N·m (3.1 kgf·m, 22 lb), dry',
    `    ${' '.repeat(19)}^^^^^`,
    '    write a plug and its torque, such as',
    '      drain: 25 N·m',
    '      drain: { tightening: 22 lbf·ft, drive: external hex 19 mm }',
    '    spec/bad-notation at /gearcases/rear/openings/drain',
  ])
})

test('a rule on a good text points into it too', async () => {
  const lines = await check(SHEET.replace('700ml', '700 mL').replace('22 lb', '60 lbf·ft'))
  const at = lines.findIndex((line) => line.includes('30 N·m (3.1 kgf·m, 60 lbf·ft), dry'))
  expect(lines[at - 1]).toMatch(/^a\.yaml:12:7: /)
  expect(lines[at + 1]).toBe(`    ${' '.repeat(19)}${'^'.repeat(9)}`)
})

test('foreign characters in a text do not move the cursor', async () => {
  const lines = await check(SHEET.replace('700ml', '"70\\u001b[2J0ml"'))
  expect(lines.join('')).not.toMatch(/\p{Cc}/u)
})
