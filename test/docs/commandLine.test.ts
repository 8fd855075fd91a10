import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

interface Sample {
  readonly page: string
  readonly command: string
  readonly words: readonly string[]
  readonly output: string
}

/** The arguments of a command line, with quotes as a shell reads them. */
function wordsOf(command: string): readonly string[] {
  return [...command.matchAll(/"([^"]*)"|'([^']*)'|([^\s"']+)/g)].map(
    ([, double, single, bare]) => double ?? single ?? bare ?? '',
  )
}

/** Every command of the `console` blocks of a page, with the output printed below it. */
function samplesOf(page: string): readonly Sample[] {
  const blocks = [...readFileSync(page, 'utf8').matchAll(/```console\n([\s\S]*?)```/g)]
  return blocks.flatMap(([, block = '']) =>
    block
      .split(/^\$ /m)
      .filter((part) => part !== '')
      .map((part) => {
        const [command = '', ...output] = part.split('\n')
        return { page, command, words: wordsOf(command), output: output.join('\n').trim() }
      }),
  )
}

const PAGES = [
  'README.md',
  ...readdirSync('docs').flatMap((file) => (file.endsWith('.md') ? [`docs/${file}`] : [])),
]
const samples = PAGES.flatMap(samplesOf)

describe('command lines of the README and the docs', () => {
  it('are there, for each question without a document', () => {
    expect(samplesOf('README.md').length).toBeGreaterThan(0)
    const named = samplesOf('docs/questions.md').map(({ words }) =>
      words.find((word) => !/^(npx|drivetrain-service)$/.test(word)),
    )
    expect(named).toEqual(
      expect.arrayContaining(['due', 'torque', 'fill', 'pour', 'meets', 'washer', 'convert']),
    )
  })

  it('are on every page, or samples in another language; glossaries and pages that only state something have none', () => {
    // The guide of the first sheet has its own test, which follows it step by step.
    const pagesWithoutCode = PAGES.filter(
      (page) => !/glossary-/.test(page) && !/```(console|ts|python)\n/.test(readFileSync(page, 'utf8')),
    )
    expect(pagesWithoutCode).toEqual([
      'docs/checks.md',
      'docs/decisions.md',
      'docs/first-sheet.md',
      'docs/laws.md',
      'docs/limits.md',
      'docs/reliability.md',
      'docs/safety.md',
      'docs/security.md',
    ])
  })

  it("the README's first sample has at most five lines", () => {
    const [build, first = ''] = readFileSync('README.md', 'utf8').match(/```[\s\S]*?```/g) ?? []
    // `npx` in a clone that is not built fails, and npm remembers it.
    expect(build).toBe('```sh\nnpm ci && npm start\n```')
    expect(first.startsWith('```console')).toBe(true)
    expect(first.trim().split('\n').length - 2).toBeLessThanOrEqual(5)
  })

  it.each(samples)('$page: $command', async ({ words, output }) => {
    const [program, ...rest] = words[0] === 'npx' ? words.slice(1) : words
    expect(program).toBe('drivetrain-service')
    const io = memoryIo()
    await runCommand(rest, io)
    const printed = [...io.out, ...io.err]
      .join('\n')
      .replaceAll(/[\u00a0\u202f]/g, ' ')
      .trim()
    expect(printed).toBe(output)
  })
})
