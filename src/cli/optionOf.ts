import { COMMAND_TABLE, type CommandName, type CommandRow } from './commandTable.js'
import { OPTION_TABLE, type OptionName, type OptionRow } from './optionTable.js'

/** An option as one command has it. */
export function optionOf(command: CommandName, name: OptionName): OptionRow {
  const { own, formats }: CommandRow = COMMAND_TABLE[command]
  const row: OptionRow = { ...OPTION_TABLE[name], ...own?.[name] }
  if (name !== 'format') return row
  const words = ['text', ...formats]
  return { ...row, help: `${words.join(', ').replace(/, ([a-z]+)$/, ' or $1')} (default text)`, words }
}
