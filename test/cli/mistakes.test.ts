import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { dayWords } from '../support/dayWords.js'
import { exampleMachines } from '../support/exampleMachines.js'
import { memoryIo } from '../support/memoryIo.js'
import { MISTAKES, type Mistake } from '../support/mistakes.js'
import { mistakeFolder, mistakesText } from '../support/writeMistakes.js'

async function findingsOf(command: string, folder: string) {
  const io = memoryIo()
  const code = await runCommand([command, folder, ...dayWords(command), '--format', 'json'], io)
  const { findings } = JSON.parse(io.out.join('')) as Pick<Mistake, 'findings'>
  return { code, findings }
}

const sorted = (findings: Mistake['findings']) =>
  findings
    .map(({ code, severity, path }) => ({ code, severity, path }))
    .sort((first, second) => (JSON.stringify(first) < JSON.stringify(second) ? -1 : 1))

describe('the mistakes that people make', () => {
  it('are at least 28, each with its own name, and in the file for other languages', () => {
    expect(MISTAKES.length).toBeGreaterThanOrEqual(28)
    expect(new Set(MISTAKES.map(({ name }) => name)).size).toBe(MISTAKES.length)
    expect(readFileSync('examples/mistakes.json', 'utf8')).toBe(mistakesText())
  })

  it.each(MISTAKES)('$command $name', async ({ name, command, findings }) => {
    const found = await findingsOf(command, mistakeFolder(name))
    expect(sorted(found.findings)).toEqual(sorted(findings))
    expect(found.code).toBe(1)
  })
})

describe('the good examples', () => {
  const folders = exampleMachines()

  it('are five, each sheet of at most 120 lines', () => {
    const lines = folders.map((name) => {
      return readFileSync(`examples/${name}/sheet.yaml`, 'utf8').trimEnd().split('\n').length
    })
    console.log(folders.map((name, at) => `${name}/sheet.yaml: ${lines[at]} lines`).join('\n'))
    expect(lines).toHaveLength(5)
    expect(Math.max(...lines)).toBeLessThanOrEqual(120)
  })

  it.each(folders)('%s: nothing to find', async (name) => {
    const found = await findingsOf('check', `examples/${name}`)
    expect(found.findings).toEqual([])
    expect(found.code).toBe(0)
  })
})
