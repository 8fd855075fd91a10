import { type ExitCode, UsageError, type WordIo } from './cliIo.js'
import { COMMAND_NAMES, COMMAND_TABLE, type CommandName } from './commandTable.js'
import { findOption } from './findOption.js'
import type { CliWords } from './message/cliWords.js'
import type { OptionName } from './optionTable.js'
import type { ParsedWords } from './parseWords.js'

const SCRIPTS: { readonly [shell: string]: (words: CliWords) => string } = {
  bash: writeBash,
  zsh: writeZsh,
  fish: writeFish,
}

/** `completion`: prints a script for a shell, from the tables of commands and options. */
export async function runCompletion({ positionals }: ParsedWords, io: WordIo): Promise<ExitCode> {
  const [shell = ''] = positionals
  const writeScript = Object.hasOwn(SCRIPTS, shell) ? SCRIPTS[shell] : undefined
  if (writeScript === undefined || positionals.length !== 1)
    throw new UsageError('notOneOf', { given: 'completion', expected: Object.keys(SCRIPTS).join(', ') })
  io.print(writeScript(io.words))
  return 0
}

const SHELLS = Object.keys(SCRIPTS).join(' ')

const listOptions = (command: CommandName): readonly OptionName[] => COMMAND_TABLE[command].options

/** Words that may follow a command, besides options and files. */
function listWords(command: CommandName): string {
  return command === 'completion' ? SHELLS : ''
}

/** Quotes a text for all three shells. */
const quote = (text: string): string => `'${text.replaceAll("'", '\u2019')}'`

function writeBash(words: CliWords): string {
  const cases = COMMAND_NAMES.map((command) => {
    const options = ['help', ...listOptions(command)].map((name) => `--${name}`)
    return `    ${command}) words='${[listWords(command), ...options].filter(Boolean).join(' ')}' ;;`
  })
  const values = COMMAND_NAMES.flatMap((command) =>
    listOptions(command).flatMap((name) => {
      const { words: values } = findOption(command, name, words)
      return values === undefined ? [] : [`    ${command}:--${name}) words='${values.join(' ')}' ;;`]
    }),
  )
  return `# bash completion of drivetrain-service
_drivetrain_service() {
  local current=\${COMP_WORDS[COMP_CWORD]} before=\${COMP_WORDS[COMP_CWORD-1]} command=\${COMP_WORDS[1]} words=''
  if [ "$COMP_CWORD" -eq 1 ] || { [ "$COMP_CWORD" -eq 2 ] && [ "$command" = help ]; }; then
    COMPREPLY=($(compgen -W 'help ${COMMAND_NAMES.join(' ')}' -- "$current"))
    return
  fi
  case "$command:$before" in
${values.join('\n')}
  esac
  [ -n "$words" ] || case "$command" in
${cases.join('\n')}
  esac
  COMPREPLY=($(compgen -W "$words" -- "$current") $(compgen -f -- "$current"))
}
complete -o filenames -F _drivetrain_service drivetrain-service
`
}

function writeZsh(words: CliWords): string {
  const cleanHelp = (text: string) => text.replaceAll(/[[\]:\\]/g, ' ').replaceAll("'", '\u2019')
  const cases = COMMAND_NAMES.map((command) => {
    const optionSpecs = listOptions(command).map((name) => {
      const { value, help, words: values, isRepeatable, isPath } = findOption(command, name, words)
      const action = values ? `(${values.join(' ')})` : isPath ? '_files' : ''
      const argument = value === undefined ? '' : `:${name}:${action}`
      return `'${isRepeatable ? '*' : ''}--${name}[${cleanHelp(help)}]${argument}'`
    })
    const fileSpec = listWords(command) === '' ? "'*:file:_files'" : `'1:word:(${listWords(command)})'`
    return `    ${command}) _arguments ${[...optionSpecs, `'--help[${cleanHelp(words.help.printHelp)}]'`, fileSpec].join(' ')} ;;`
  })
  const names = COMMAND_NAMES.map((name) => `'${name}:${cleanHelp(words.commands[name].summary)}'`)
  return `#compdef drivetrain-service
_drivetrain_service() {
  local -a commands=('help:${cleanHelp(words.help.printHelp)}' ${names.join(' ')})
  if (( CURRENT == 2 )) || [[ CURRENT -eq 3 && $words[2] == help ]]; then
    _describe command commands
    return
  fi
  shift words
  (( CURRENT-- ))
  case $words[1] in
${cases.join('\n')}
  esac
}
compdef _drivetrain_service drivetrain-service
`
}

function writeFish(words: CliWords): string {
  const writeRule = (condition: string, ruleOptions: string) =>
    `complete -c drivetrain-service -n ${quote(condition)} ${ruleOptions}`
  const commands = ['help', ...COMMAND_NAMES].map((name) => {
    const summary = name === 'help' ? words.help.printHelp : words.commands[name as CommandName].summary
    return writeRule('__fish_use_subcommand', `-f -a ${name} -d ${quote(summary)}`)
  })
  const options = COMMAND_NAMES.flatMap((command) => {
    const condition = `__fish_seen_subcommand_from ${command}`
    const wordRules =
      listWords(command) === '' ? [] : [writeRule(condition, `-f -a ${quote(listWords(command))}`)]
    return [
      ...wordRules,
      ...listOptions(command).map((name) => {
        const { value, help, words: values, isPath } = findOption(command, name, words)
        const argument = values ? ` -x -a ${quote(values.join(' '))}` : isPath ? ' -r' : value ? ' -x' : ''
        return writeRule(condition, `-l ${name}${argument} -d ${quote(help)}`)
      }),
    ]
  })
  return `# fish completion of drivetrain-service
${[...commands, ...options].join('\n')}
`
}
