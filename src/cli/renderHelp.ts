import { COMMAND_NAMES, COMMAND_TABLE, type CommandName, type CommandRow } from './commandTable.js'
import { findOption } from './findOption.js'

/** The list of all commands. */
export function renderOverview(): string {
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
