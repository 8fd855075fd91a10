import { COMMAND_TABLE, isCommand } from '../../src/cli/commandTable.js'
import { TODAY } from './planExample.js'

/**
 * The day and the temperature of the examples, as options for the commands that have them; `record` has them only with
 * --from-plan.
 */
export function dayWords(command: string): readonly string[] {
  const options: readonly string[] = isCommand(command) ? COMMAND_TABLE[command].options : []
  return [
    ...(options.includes('today') ? ['--today', TODAY] : []),
    ...(options.includes('ambient') && command !== 'record' ? ['--ambient', '6degC'] : []),
  ]
}
