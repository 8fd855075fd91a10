import { suggestName } from '../base/index.js'
import { type CliIo, type ExitCode, UsageError, type WordIo } from './cliIo.js'
import { COMMAND_NAMES, COMMAND_TABLE, type CommandName, type CommandRow, isCommand } from './commandTable.js'
import { findOption } from './findOption.js'
import { COMMANDS } from './loadCommand.js'
import type { CliWords } from './message/cliWords.js'
import { en } from './message/en/index.js'
import { fillPlaceholders } from './message/fillPlaceholders.js'
import { renderUsageError } from './message/renderUsageError.js'
import { parseWords } from './parseWords.js'
import { VERSION } from './version.js'

/** Runs one command line. Errors become a message and an exit code, never a stack trace. */
export async function runCommand(args: readonly string[], io: CliIo): Promise<ExitCode> {
  let words = en
  try {
    words = await loadWords(findLanguage(args))
    return await run(args, { ...io, words })
  } catch (error) {
    const { cleanLine } = await import('./cleanLine.js')
    // Compare names: a command in a separate bundle has its own copy of the class.
    const usageError =
      error instanceof Error && error.name === 'UsageError'
        ? (error as UsageError)
        : new UsageError('programError', { problem: error instanceof Error ? error.message : String(error) })
    io.printError(`drivetrain-service: ${renderUsageError(usageError, words, cleanLine)}`)
    return 2
  }
}

/** The language is found before all other words are read, so that every error is in it. */
function findLanguage(args: readonly string[]): string {
  const place = args.findLastIndex((word) => /^--language(=|$)/.test(word))
  const [, name] = /^--language=(.*)$/s.exec(args[place] ?? '') ?? []
  return name ?? (place < 0 ? undefined : args[place + 1]) ?? 'en'
}

async function loadWords(language: string): Promise<CliWords> {
  if (language === 'en') return en
  return (await (await import('./loadWords.js')).loadWords(language)) ?? en
}

async function run([name, ...others]: readonly string[], io: WordIo): Promise<ExitCode> {
  const { words } = io
  if (name === '--version' || name === '-v' || name === 'version') {
    io.print(VERSION)
    return 0
  }
  if (name === undefined || name === 'help' || name === '--help' || name === '-h') {
    const [topic] = parseWords(others, ['language']).positionals
    io.print(topic === undefined ? renderOverview(words) : renderHelp(requireCommand(topic), words))
    return name === undefined ? 2 : 0
  }
  const command = requireCommand(name)
  const { options, formats } = COMMAND_TABLE[command]
  const parsed = parseWords(others, options)
  if (parsed.values.help) {
    io.print(renderHelp(command, words))
    return 0
  }
  const { format = 'text' } = parsed.values
  const allowedFormats: readonly string[] = ['text', ...formats]
  if (!allowedFormats.includes(format))
    throw new UsageError('notOneOf', {
      given: `${name} --format ${format}`,
      expected: allowedFormats.join(', '),
    })
  return await COMMANDS[command](parsed, io)
}

function requireCommand(name: string): CommandName {
  if (isCommand(name)) return name
  const suggestion = suggestName(name, COMMAND_NAMES) ?? ''
  throw new UsageError('unknownCommand', { name: JSON.stringify(name), suggestion })
}

/** The list of all commands. */
function renderOverview(words: CliWords): string {
  const { help, commands } = words
  const lines = COMMAND_NAMES.map((name) => `  ${name.padEnd(11)} ${commands[name].summary}`)
  const usage = fillPlaceholders('<command> [options] <file or folder> ...', words)
  return `${help.title}

${help.usage} drivetrain-service ${usage}

${lines.join('\n')}

${help.footer}
`
}

/** The help of one command: usage, what it does, its options, an example and its exit codes. */
export function renderHelp(command: CommandName, words: CliWords): string {
  const { usage, example, options }: CommandRow = COMMAND_TABLE[command]
  const { help: frame, commands } = words
  const { help, exitCodes } = commands[command]
  const indent = ' '.repeat(frame.usage.length)
  const usageLines = usage.map(
    (way, place) =>
      `${place === 0 ? frame.usage : indent} drivetrain-service ${command} ${fillPlaceholders(way, words)}`,
  )
  const rows = options.map((name) => {
    const { value, help: meaning } = findOption(command, name, words)
    return `  --${[name, value].filter(Boolean).join(' ').padEnd(20)} ${meaning}`
  })
  const parts = [
    usageLines.join('\n'),
    help,
    `${frame.options}\n${rows.join('\n')}`,
    `${frame.example} drivetrain-service ${example}`,
    ...(exitCodes === undefined ? [] : [`${frame.exitCode} ${exitCodes}`]),
  ]
  return `${parts.join('\n\n')}\n`
}
