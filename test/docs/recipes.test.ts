import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

const ROOT = process.cwd()
const blocksOf = (page: string, language: string): readonly string[] =>
  [...readFileSync(page, 'utf8').matchAll(new RegExp(`\`\`\`${language}\n([\\s\\S]*?)\`\`\``, 'g'))].map(
    ([, block = '']) => block,
  )

describe('the recipes for Python', () => {
  const recipes = blocksOf('docs/python.md', 'python').map((recipe, at) => ({ name: `${at + 1}`, recipe }))
  const hasTools = spawnSync('/usr/bin/python3', ['-c', 'import jsonschema']).status === 0

  it('are four', () => {
    expect(recipes).toHaveLength(4)
  })

  it.for(recipes)('recipe $name runs and prints what it says', ({ recipe }, ctx) => {
    if (!hasTools) {
      if (process.env['DRIVETRAIN_REQUIRE_TOOLS'] === '1') throw new Error('python3-jsonschema is missing')
      console.log('outside tool skipped: python3-jsonschema')
      return ctx.skip()
    }
    // A folder as a reader has it: the schemas, the examples and the installed command.
    const folder = mkdtempSync(join(tmpdir(), 'recipe-'))
    try {
      for (const name of ['schemas', 'examples']) symlinkSync(join(ROOT, name), join(folder, name))
      mkdirSync(join(folder, 'node_modules/.bin'), { recursive: true })
      symlinkSync(join(ROOT, 'dist/cli/main.js'), join(folder, 'node_modules/.bin/drivetrain-service'))
      const run = spawnSync('/usr/bin/python3', ['-'], { cwd: folder, input: recipe, encoding: 'utf8' })
      expect(run.stderr).toBe('')
      const promised = [...recipe.matchAll(/^# prints: (.*)$/gm)].map(([, line = '']) => line)
      expect(promised.length).toBeGreaterThan(0)
      expect(run.stdout.trim().split('\n')).toEqual(promised)
    } finally {
      rmSync(folder, { recursive: true })
    }
  })
})

describe('the page about CI', () => {
  const sheet = readFileSync('examples/tind-4/sheet.yaml', 'utf8')
  const files: Record<string, string> = {
    'sheets/good.yaml': sheet,
    // 30 N·m are 22 lbf·ft.
    'sheets/slip.yaml': sheet.replace('22 lbf·ft', '23 lbf·ft').replace(/^id: .*$/m, 'id: slip'),
  }
  const run = async (line: string) => {
    const io = memoryIo(files)
    const words = line.replace(/ > \S+$/, '').split(' ')
    const code = await runCommand(words.slice(words.indexOf('drivetrain-service') + 1), io)
    Object.assign(files, Object.fromEntries(io.written))
    return { code, out: io.out.join('\n') }
  }

  it('its workflow is YAML; its command writes SARIF and fails on a finding', async () => {
    const [block = ''] = blocksOf('docs/ci.md', 'yaml')
    const { jobs } = parse(block) as { jobs: { sheets: { steps: readonly { run?: string }[] } } }
    const line = jobs.sheets.steps.flatMap(({ run }) => (run?.startsWith('npx') ? [run] : []))
    expect(line).toHaveLength(1)
    const { code, out } = await run(line[0] ?? '')
    expect(code).toBe(1)
    expect(JSON.parse(out).runs[0].results.map(({ ruleId }: { ruleId: string }) => ruleId)).toEqual([
      'quantity/second-unit-disagrees',
    ])
  })

  it('its commands run in their order; with the baseline nothing is left to report', async () => {
    const lines = blocksOf('docs/ci.md', 'sh').flatMap((block) => block.trim().split('\n'))
    expect(lines).toHaveLength(4)
    const codes: number[] = []
    for (const line of lines) codes.push((await run(line)).code)
    expect(codes).toEqual([0, 0, 1, 1])
  })
})
