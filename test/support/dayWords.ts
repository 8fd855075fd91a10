import { COMMAND_TABLE, isCommand } from '../../src/cli/commandTable.js'
import { TODAY } from './planExample.js'

/** The day and the temperature of the example world, as far as a command asks for them: `record` does with --from-plan alone. */
export function dayWords(command: string): readonly string[] {
  const options: readonly string[] = isCommand(command) ? COMMAND_TABLE[command].options : []
  return [
    ...(options.includes('today') ? ['--today', TODAY] : []),
    ...(options.includes('ambient') && command !== 'record' ? ['--ambient', '6degC'] : []),
  ]
}
