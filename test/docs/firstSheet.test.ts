import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

const page = readFileSync('docs/first-sheet.md', 'utf8')

interface Command {
  readonly line: string
  readonly shown: readonly string[]
}

/** The commands of a block, each with the part of its output that the page shows. */
function commandsOf(block: string): readonly Command[] {
  return block
    .split(/^\$ /m)
    .slice(1)
    .map((part) => {
      const [line = '', ...expectedLines] = part.trimEnd().split('\n')
      return { line, shown: expectedLines }
    })
}

/** Whether the output has the lines shown, in order; `...` stands for any lines. */
function isShown(expectedLines: readonly string[], output: readonly string[]): boolean {
  const [line, ...others] = expectedLines
  if (line === undefined) return output.length === 0
  if (line === '...') return output.some((_, at) => isShown(others, output.slice(at))) || others.length === 0
  return line === output[0] && isShown(others, output.slice(1))
}

it('every command of the first sheet prints what the page shows, in this order', async () => {
  const files: Record<string, string> = {}
  let count = 0
  for (const [, language, block = ''] of page.matchAll(/```(yaml|sh)\n([\s\S]*?)```/g)) {
    if (language === 'yaml') {
      const name = /^# (\S+)\n/.exec(block)?.[1] ?? ''
      expect(name).toMatch(/\.yaml$/)
      files[name] = block
      continue
    }
    for (const { line, shown } of commandsOf(block)) {
      const [npx, program, ...words] = line.split(' ')
      expect([npx, program]).toEqual(['npx', 'drivetrain-service'])
      const io = memoryIo(files)
      const code = await runCommand(words, io)
      const output = [...io.err, ...io.out].join('\n').trimEnd().replaceAll('\u00a0', ' ').split(/\n+/)
      expect(
        isShown(
          shown.filter((candidate) => candidate !== ''),
          output,
        ),
        `${line}\n${output.join('\n')}`,
      ).toBe(true)
      expect(code, line).toBe(line.includes('slip.yaml') ? 1 : 0)
      Object.assign(files, Object.fromEntries(io.written))
      count += 1
    }
  }
  expect(count).toBe(9)
})

it('the picture of the page has the words of its text', () => {
  const picture = readFileSync('docs/first-sheet.svg', 'utf8')
  const words = [...picture.matchAll(/>([^<>]+)<\/text>/g)].map(([, text = '']) =>
    text.replaceAll('&#x27;', "'"),
  )
  const [, text = ''] = /```text\n([\s\S]*?)```/.exec(page) ?? []
  for (const part of text
    .trimEnd()
    .split(/\n| {3,}/)
    .filter((candidate) => candidate !== ''))
    expect(words).toContain(part)
})
