import { COMMAND_TABLE, type CommandName, type CommandRow } from './commandTable.js'
import { OPTION_TABLE, type OptionName, type OptionRow } from './optionTable.js'

/** An option as one command uses it. */
export function findOption(command: CommandName, name: OptionName): OptionRow {
  const { overrides, formats }: CommandRow = COMMAND_TABLE[command]
  const row: OptionRow = { ...OPTION_TABLE[name], ...overrides?.[name] }
  if (name !== 'format') return row
  const words = ['text', ...formats]
  return { ...row, help: `${words.join(', ').replace(/, ([a-z]+)$/, ' or $1')} (default text)`, words }
}
