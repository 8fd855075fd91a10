import { COMMAND_TABLE, type CommandName, type CommandRow } from './commandTable.js'
import type { CliWords } from './message/cliWords.js'
import { fillPlaceholders } from './message/fillPlaceholders.js'
import { OPTION_TABLE, type OptionName, type OptionRow } from './optionTable.js'

/** An option with its meaning, as one command uses it. */
export function findOption(
  command: CommandName,
  name: OptionName,
  words: CliWords,
): OptionRow & { readonly help: string } {
  const { values, formats }: CommandRow = COMMAND_TABLE[command]
  const row: OptionRow = OPTION_TABLE[name]
  const value = values?.[name] ?? row.value
  const named = { ...row, ...(value !== undefined && { value: fillPlaceholders(value, words) }) }
  if (name !== 'format')
    return { ...named, help: words.commands[command].options?.[name] ?? words.options[name] }
  const names = ['text', ...formats]
  return { ...named, help: words.help.formats({ names: names.join(', ') }), words: names }
}
