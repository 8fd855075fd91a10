import { HELP } from '../../src/cli/help.js'
import { TODAY } from './planExample.js'

/** The day and the temperature of the example world, as far as a command asks for them. */
export function dayWords(command: string): readonly string[] {
  const help = HELP.commands[command as keyof typeof HELP.commands]
  return [
    ...(help.includes('--today') ? ['--today', TODAY] : []),
    ...(help.includes('--ambient') ? ['--ambient', '6degC'] : []),
  ]
}
