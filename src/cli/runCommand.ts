import { suggestName } from '../base/index.js'
import { type CliIo, type ExitCode, UsageError } from './cliIo.js'
import { runCheck } from './commands/check.js'
import { runCompare } from './commands/compare.js'
import { runConvert } from './commands/convert.js'
import { runDue } from './commands/due.js'
import { runImport } from './commands/import.js'
import { runKits } from './commands/kits.js'
import { runRecord } from './commands/record.js'
import { runRepair } from './commands/repair.js'
import { runSchema } from './commands/schema.js'
import { printCueList, runCard, runPlan } from './commands/visit.js'
import { HELP } from './help.js'
import { type OptionName, type Options, readOptions } from './readOptions.js'
import { safeLine } from './safeLine.js'

interface Command {
  readonly run: (options: Options, io: CliIo) => Promise<ExitCode>
  /** Formats besides text. */
  readonly formats: readonly Options['format'][]
  readonly takes: readonly OptionName[]
}

const SOON: readonly OptionName[] = ['soon-hours', 'soon-km', 'soon-days']
const DUE: readonly OptionName[] = ['today', 'machine', 'severity', ...SOON, 'stale-days']
const VISIT: readonly OptionName[] = [...DUE, 'ambient', 'service', 'edition', 'tolerance']

const COMMANDS: Readonly<Record<keyof typeof HELP.commands, Command>> = {
  check: { run: runCheck, formats: ['json', 'sarif'], takes: ['today', 'level', 'format'] },
  due: { run: runDue, formats: ['json'], takes: ['sheet', ...DUE, 'exit-code', 'format'] },
  plan: { run: runPlan, formats: ['json', 'sarif'], takes: [...VISIT, 'level', 'format'] },
  card: { run: runCard, formats: ['json', 'sarif'], takes: ['out', ...VISIT, 'level', 'format'] },
  cues: { run: printCueList, formats: ['json', 'vtt'], takes: [...VISIT, 'level', 'format'] },
  kits: { run: runKits, formats: ['json'], takes: [...VISIT, 'format'] },
  repair: { run: runRepair, formats: ['json'], takes: ['out', 'level', 'format'] },
  compare: { run: runCompare, formats: ['json'], takes: ['format'] },
  record: { run: runRecord, formats: ['json', 'sarif'], takes: ['out', 'today', 'level', 'format'] },
  import: {
    run: runImport,
    formats: ['json', 'sarif'],
    takes: ['out', 'equipment', 'telematics', 'today', 'level', 'format'],
  },
  convert: { run: runConvert, formats: ['json'], takes: ['to', 'assume', 'format'] },
  schema: { run: runSchema, formats: ['json'], takes: ['format'] },
}

/** Runs one command line. Errors give a message and an exit code, never a stack trace. */
export async function runCommand(words: readonly string[], io: CliIo): Promise<ExitCode> {
  const [name, ...optionWords] = words
  try {
    if (name === undefined || name === 'help' || name === '--help' || name === '-h') {
      io.print(HELP.overview)
      return name === undefined ? 2 : 0
    }
    if (!isCommand(name)) {
      const nearName = suggestName(name, Object.keys(COMMANDS))
      const hint = nearName === undefined ? 'see drivetrain-service help' : `did you mean ${nearName}?`
      throw new UsageError(`unknown command ${JSON.stringify(name)}; ${hint}`)
    }
    const { run, formats, takes } = COMMANDS[name]
    const options = readOptions(optionWords, takes, io)
    if (options.help) {
      io.print(HELP.commands[name])
      return 0
    }
    const printed: readonly string[] = ['text', ...formats]
    if (!printed.includes(options.format))
      throw new UsageError(`${name} --format ${options.format}: expected one of ${printed.join(', ')}`)
    return await run(options, io)
  } catch (error) {
    const message = safeLine(error instanceof Error ? error.message : String(error))
    if (error instanceof UsageError) {
      io.printError(`drivetrain-service: ${message}`)
      return 2
    }
    io.printError(
      `drivetrain-service: error in the program, not in your files: ${message}\nPlease report it with the command and the files.`,
    )
    return 2
  }
}

function isCommand(name: string): name is keyof typeof COMMANDS {
  return Object.hasOwn(COMMANDS, name)
}
