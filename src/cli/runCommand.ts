import { suggestName } from '../base/index.js'
import { type CliIo, type ExitCode, UsageError } from './cliIo.js'
import { COMMAND_NAMES, COMMAND_TABLE, type CommandName, type CommandRow, isCommand } from './commandTable.js'
import { findOption } from './findOption.js'
import { COMMANDS } from './loadCommand.js'
import { parseWords } from './parseWords.js'
import { VERSION } from './version.js'

/** Runs one command line. Errors become a message and an exit code, never a stack trace. */
export async function runCommand(words: readonly string[], io: CliIo): Promise<ExitCode> {
  const [name, ...others] = words
  try {
    if (name === '--version' || name === '-v' || name === 'version') {
      io.print(VERSION)
      return 0
    }
    if (name === undefined || name === 'help' || name === '--help' || name === '-h') {
      const [topic] = others
      io.print(topic === undefined ? renderOverview() : renderHelp(requireCommand(topic)))
      return name === undefined ? 2 : 0
    }
    const command = requireCommand(name)
    const { options, formats } = COMMAND_TABLE[command]
    const parsed = parseWords(others, options)
    if (parsed.values.help) {
      io.print(renderHelp(command))
      return 0
    }
    const { format = 'text' } = parsed.values
    const allowedFormats: readonly string[] = ['text', ...formats]
    if (!allowedFormats.includes(format))
      throw new UsageError(`${name} --format ${format}: expected one of ${allowedFormats.join(', ')}`)
    return await COMMANDS[command](parsed, io)
  } catch (error) {
    const { cleanLine } = await import('./cleanLine.js')
    const message = cleanLine(error instanceof Error ? error.message : String(error))
    // Compare names: a command in a separate bundle has its own copy of the class.
    if (error instanceof Error && error.name === 'UsageError') {
      io.printError(`drivetrain-service: ${message}`)
      return 2
    }
    io.printError(
      `drivetrain-service: error in the program, not in your files: ${message}\nPlease report it with the command and the files.`,
    )
    return 2
  }
}

function requireCommand(name: string): CommandName {
  if (isCommand(name)) return name
  const suggestion = suggestName(name, COMMAND_NAMES)
  const hint = suggestion === undefined ? 'see drivetrain-service help' : `did you mean ${suggestion}?`
  throw new UsageError(`unknown command ${JSON.stringify(name)}; ${hint}`)
}

/** The list of all commands. */
function renderOverview(): string {
  const lines = COMMAND_NAMES.map((name) => `  ${name.padEnd(11)} ${COMMAND_TABLE[name].summary}`)
  return `drivetrain-service: plans gear oil services from a spec sheet

Usage: drivetrain-service <command> [options] <file or folder> ...

${lines.join('\n')}

Files are JSON or YAML; - is standard input. Several files are one set: a log finds its sheet among them by id and revision.
Each folder is a separate set. Patterns (*, ? and **) also work in quotes; with ** the files of each folder form a set.
For details: drivetrain-service help <command>. The machine's own manual always comes first.
`
}

/** The help of one command: usage, what it does, its options, an example and its exit codes. */
export function renderHelp(command: CommandName): string {
  const { usage, help, example, options, exitCodes: exit }: CommandRow = COMMAND_TABLE[command]
  const usageLines = usage.map(
    (way, place) => `${place === 0 ? 'Usage:' : '      '} drivetrain-service ${command} ${way}`,
  )
  const rows = options.map((name) => {
    const { value, help: meaning } = findOption(command, name)
    return `  --${[name, value].filter(Boolean).join(' ').padEnd(20)} ${meaning}`
  })
  const parts = [
    usageLines.join('\n'),
    help,
    ...(rows.length === 0 ? [] : [`Options\n${rows.join('\n')}`]),
    `Example: drivetrain-service ${example}`,
    ...(exit === undefined ? [] : [`Exit code: ${exit}`]),
  ]
  return `${parts.join('\n\n')}\n`
}
