import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { dayWords } from '../support/dayWords.js'
import { memoryIo } from '../support/memoryIo.js'
import { MISTAKES } from '../support/mistakes.js'
import { expectedText, mistakeFiles } from '../support/writeMistakes.js'

interface Row {
  readonly folder: string
  readonly command: 'check' | 'plan'
  readonly findings: readonly { readonly code: string; readonly severity: string; readonly path: string }[]
}

const rows = JSON.parse(readFileSync('examples/mistakes.expected.json', 'utf8')) as readonly Row[]

async function findingsOf(command: string, folder: string) {
  const io = memoryIo()
  const code = await runCommand([command, folder, ...dayWords(command), '--format', 'json'], io)
  const { findings } = JSON.parse(io.out.join('')) as Pick<Row, 'findings'>
  return { code, findings }
}

const sorted = (findings: Row['findings']) =>
  findings
    .map(({ code, severity, path }) => ({ code, severity, path }))
    .sort((first, second) => (JSON.stringify(first) < JSON.stringify(second) ? -1 : 1))

describe('the mistakes that people make', () => {
  it('are at least 28, each a whole closed set', () => {
    expect(rows.length).toBeGreaterThanOrEqual(28)
    expect(new Set(rows.map(({ folder }) => folder)).size).toBe(rows.length)
    expect(readdirSync('examples/mistakes').sort()).toEqual(
      rows.map(({ folder }) => folder.replace('mistakes/', '')).sort(),
    )
  })

  it('stand in the repository as they are written down', () => {
    expect(readFileSync('examples/mistakes.expected.json', 'utf8')).toBe(expectedText())
    for (const mistake of MISTAKES)
      for (const [file, text] of mistakeFiles(mistake))
        expect(
          readFileSync(`examples/mistakes/${mistake.folder}/${file}`, 'utf8'),
          `${mistake.folder}/${file}`,
        ).toBe(text)
  })

  it.each(rows)('$command $folder', async ({ folder, command, findings }) => {
    const found = await findingsOf(command, `examples/${folder}`)
    expect(sorted(found.findings)).toEqual(sorted(findings))
    expect(found.code).toBe(1)
  })
})

describe('the good examples', () => {
  const folders = readdirSync('examples', { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && entry.name !== 'mistakes')
    .map(({ name }) => name)

  it('are five', () => {
    expect(folders).toHaveLength(5)
  })

  it.each(folders)('%s: nothing to find', async (folder) => {
    const found = await findingsOf('check', `examples/${folder}`)
    expect(found.findings).toEqual([])
    expect(found.code).toBe(0)
  })
})
