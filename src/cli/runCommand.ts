import { runCard } from './commands/card.js'
import { runCheck } from './commands/check.js'
import { runCompare } from './commands/compare.js'
import { runConvert } from './commands/convert.js'
import { runCues } from './commands/cues.js'
import { runDue } from './commands/due.js'
import { runImport } from './commands/import.js'
import { runKits } from './commands/kits.js'
import { runPlan } from './commands/plan.js'
import { runRecord } from './commands/record.js'
import { runRepair } from './commands/repair.js'
import { runSchema } from './commands/schema.js'
import { HELP } from './help.js'
import { type Options, readOptions } from './readOptions.js'
import { safeLine } from './safeLine.js'
import { UsageError } from './usageError.js'
import type { World } from './world.js'

/** Nothing at or above `--level`; findings; usage or an unreadable file. */
export type ExitCode = 0 | 1 | 2

type Command = (options: Options, world: World) => Promise<ExitCode>

const COMMANDS: Readonly<Record<string, Command>> = {
  check: runCheck,
  due: runDue,
  plan: runPlan,
  card: runCard,
  cues: runCues,
  kits: runKits,
  repair: runRepair,
  compare: runCompare,
  record: runRecord,
  import: runImport,
  convert: runConvert,
  schema: runSchema,
}

/** What each command can print beside text; the rest print text alone. */
const FORMATS: Readonly<Record<string, readonly Options['format'][]>> = {
  check: ['json', 'sarif'],
  due: ['json'],
  plan: ['json', 'sarif'],
  card: ['json', 'sarif'],
  cues: ['json', 'vtt'],
  kits: ['json'],
  repair: ['json'],
  compare: ['json'],
  record: ['json', 'sarif'],
  import: ['json', 'sarif'],
  convert: ['json'],
  schema: ['json'],
}

/** Runs one command line; every way out is an exit code and words, never a stack trace. */
export async function runCommand(words: readonly string[], world: World): Promise<ExitCode> {
  const [name, ...rest] = words
  try {
    if (name === undefined || name === 'help' || name === '--help' || name === '-h') {
      world.print(HELP.overview)
      return name === undefined ? 2 : 0
    }
    const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined
    if (command === undefined)
      throw new UsageError(`there is no command ${JSON.stringify(name)}; drivetrain-service help lists them`)
    const options = readOptions(rest, world)
    if (options.help) {
      world.print(HELP.commands[name as keyof typeof HELP.commands])
      return 0
    }
    const formats: readonly string[] = ['text', ...(FORMATS[name] ?? [])]
    if (!formats.includes(options.format))
      throw new UsageError(`${name} --format ${options.format}: ${formats.join(', ')} is what it prints`)
    return await command(options, world)
  } catch (error) {
    const message = safeLine(error instanceof Error ? error.message : String(error))
    if (error instanceof UsageError) {
      world.complain(`drivetrain-service: ${message}`)
      return 2
    }
    world.complain(
      `drivetrain-service: a fault of this program, not of your files: ${message}\nPlease report it with the command and the files.`,
    )
    return 2
  }
}
