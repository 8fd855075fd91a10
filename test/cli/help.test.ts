import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { build } from 'esbuild'
import { describe, expect, it } from 'vitest'
import { COMMAND_NAMES, COMMAND_TABLE } from '../../src/cli/commandTable.js'
import { findOption } from '../../src/cli/findOption.js'
import { en } from '../../src/cli/message/en/index.js'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

async function run(...words: readonly string[]) {
  const io = memoryIo()
  const code = await runCommand(words, io)
  return { code, out: io.out.join('\n'), err: io.err.join('\n') }
}

describe('help', () => {
  it('lists every command', async () => {
    const { code, out } = await run('help')
    expect(code).toBe(0)
    for (const name of COMMAND_NAMES)
      expect(out).toContain(`\n  ${name.padEnd(11)} ${en.commands[name].summary}\n`)
  })

  it.each(COMMAND_NAMES)('for %s has usage, options and an example of this command', async (name) => {
    const { code, out } = await run('help', name)
    expect(code).toBe(0)
    expect(out).toMatch(new RegExp(`^Usage: drivetrain-service ${name} `))
    expect(out).toContain(`\nExample: drivetrain-service ${name} `)
    for (const option of COMMAND_TABLE[name].options) expect(out).toContain(`\n  --${option} `)
    expect(await run(name, '--help')).toEqual({ code, out, err: '' })
  })

  it('for an unknown command suggests the most similar one', async () => {
    expect(await run('help', 'plam')).toMatchObject({
      code: 2,
      err: expect.stringContaining('did you mean plan?'),
    })
  })

  it.each(['--version', 'version'])('%s prints the version of the package', async (word) => {
    const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string }
    expect(await run(word)).toEqual({ code: 0, out: version, err: '' })
  })
})

describe('completion', () => {
  const scripts = async () =>
    Object.fromEntries(
      await Promise.all(
        ['bash', 'zsh', 'fish'].map(async (shell) => [shell, (await run('completion', shell)).out] as const),
      ),
    )

  it('names every command and every option of it, in each shell', async () => {
    const { bash = '', zsh = '', fish = '' } = await scripts()
    for (const name of COMMAND_NAMES) {
      const inBash = bash.split('\n').find((line) => line.startsWith(`    ${name}) `)) ?? ''
      const inZsh = zsh.split('\n').find((line) => line.startsWith(`    ${name}) `)) ?? ''
      const inFish = fish.split('\n').filter((line) => line.includes(`'__fish_seen_subcommand_from ${name}'`))
      expect(fish).toContain(`-f -a ${name} -d `)
      for (const option of COMMAND_TABLE[name].options) {
        expect(inBash).toMatch(new RegExp(`--${option}['\\s]`))
        expect(inZsh).toContain(`--${option}[`)
        expect(inFish.filter((line) => line.includes(` -l ${option} `))).toHaveLength(1)
        for (const word of findOption(name, option, en).words ?? []) expect(bash).toContain(word)
      }
    }
  })

  it('for bash is a script of bash that completes', async () => {
    const { bash = '' } = await scripts()
    execFileSync('bash', ['-n'], { input: bash })
    const complete = (...words: readonly string[]) =>
      execFileSync('bash', ['--norc'], {
        input: `${bash}
COMP_WORDS=(drivetrain-service ${words.map((word) => `'${word}'`).join(' ')})
COMP_CWORD=${words.length}
_drivetrain_service
printf '%s\\n' "\${COMPREPLY[@]}"`,
        encoding: 'utf8',
      })
        .trim()
        .split('\n')
    expect(complete('com')).toEqual(['compare', 'completion'])
    expect(complete('help', 'conv')).toEqual(['convert'])
    expect(complete('due', '--sta')).toEqual(['--stale-days'])
    expect(complete('due', '--severity', '')).toEqual(expect.arrayContaining(['normal', 'severe']))
    expect(complete('check', 'READ')).toEqual(['README.md'])
  })

  it('for zsh and fish has balanced quotes and brackets in every line', async () => {
    const { zsh = '', fish = '' } = await scripts()
    for (const line of `${zsh}\n${fish}`.split('\n')) {
      expect(line.split("'").length % 2, line).toBe(1)
      const unquotedLine = line.replaceAll(/'[^']*'/g, '')
      if (line.startsWith('complete')) expect(unquotedLine, line).not.toMatch(/[()[\]`$;|&<>]/)
    }
    for (const spec of zsh.match(/'\*?--[^']*'/g) ?? [])
      expect(spec).toMatch(/^'\*?--[a-z0-9-]+\[[^[\]]+\](:[a-z0-9-]+:(\([^()]+\)|_files)?)?'$/)
  })

  it('of another shell is refused', async () => {
    expect(await run('completion', 'csh')).toMatchObject({
      code: 2,
      err: expect.stringContaining('bash, zsh, fish'),
    })
    expect((await run('completion')).code).toBe(2)
  })
})

describe('what loads', () => {
  async function inputsOf(entry: string, external: readonly string[] = []): Promise<readonly string[]> {
    const { metafile } = await build({
      entryPoints: [entry],
      bundle: true,
      write: false,
      metafile: true,
      platform: 'node',
      format: 'esm',
      external: [...external],
      logLevel: 'error',
    })
    return Object.values(metafile.outputs).flatMap(({ inputs }) =>
      Object.entries(inputs).flatMap(([file, { bytesInOutput }]) => (bytesInOutput > 0 ? [file] : [])),
    )
  }
  const heavyModules = /node_modules\/(zod|yaml)\/|src\/(rules|service|procedure|card)\//

  it('for one question has no zod, no yaml, and nothing of documents', async () => {
    const inputs = await inputsOf('src/cli/questions/index.ts')
    expect(inputs.length).toBeGreaterThan(20)
    expect(inputs.filter((file) => heavyModules.test(file))).toEqual([])
  })

  it('before the command is known is the command line alone', async () => {
    const loadedLater = [
      './commands/*',
      './questions/*',
      './readOptions.js',
      './loadCatalogue.js',
      './loadWords.js',
      './cleanLine.js',
      './saveFile.js',
    ]
    const inputs = await inputsOf('src/cli/main.ts', loadedLater)
    expect(inputs.length).toBeGreaterThan(5)
    expect(inputs.filter((file) => !/^src\/(cli|base)\//.test(file))).toEqual([])
  })
})
