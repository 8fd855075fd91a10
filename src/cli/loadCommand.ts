import type { CliIo, ExitCode } from './cliIo.js'
import type { CommandName } from './commandTable.js'
import type { Words } from './parseWords.js'
import type { Options } from './readOptions.js'

/** What a command does with its words. */
export type Run = (words: Words, io: CliIo) => Promise<ExitCode>

/** A command that works on documents; it loads when it is called. */
const onDocuments =
  (load: () => Promise<(options: Options, io: CliIo) => Promise<ExitCode>>): Run =>
  async (words, io) => {
    const [{ readOptions }, run] = await Promise.all([import('./readOptions.js'), load()])
    return run(readOptions(words, io), io)
  }

/** A command that answers one question without a document. */
const question =
  (name: keyof typeof import('./questions/index.js')): Run =>
  async (words, io) =>
    (await import('./questions/index.js'))[name](words, io)

const dueOfDocuments = onDocuments(async () => (await import('./commands/due.js')).runDue)
const dueOfReadings = question('runDueQuestion')

const recordOfDocuments = onDocuments(async () => (await import('./commands/record.js')).runRecord)

/** Every command, with the file that it loads. What a command does not need does not slow its start. */
export const COMMANDS: Readonly<Record<CommandName, Run>> = {
  new: async (words, io) => (await import('./commands/new.js')).runNew(words, io),
  check: onDocuments(async () => (await import('./commands/check.js')).runCheck),
  due: (words, io) => (words.values.every === undefined ? dueOfDocuments : dueOfReadings)(words, io),
  plan: onDocuments(async () => (await import('./commands/visit.js')).runPlan),
  card: onDocuments(async () => (await import('./commands/visit.js')).runCard),
  cues: onDocuments(async () => (await import('./commands/visit.js')).printCueList),
  kits: onDocuments(async () => (await import('./commands/kits.js')).runKits),
  procedure: onDocuments(async () => (await import('./commands/procedure.js')).runProcedure),
  repair: onDocuments(async () => (await import('./commands/repair.js')).runRepair),
  compare: onDocuments(async () => (await import('./commands/compare.js')).runCompare),
  record: async (words, io) =>
    (['top-up', 'at', 'on'] as const).every((name) => words.values[name] === undefined)
      ? recordOfDocuments(words, io)
      : (await import('./commands/topUp.js')).runTopUp(words, io),
  history: onDocuments(async () => (await import('./commands/history.js')).runHistory),
  'used-oil': onDocuments(async () => (await import('./commands/usedOil.js')).runUsedOil),
  import: onDocuments(async () => (await import('./commands/import.js')).runImport),
  convert: question('runConvert'),
  torque: question('runTorque'),
  fill: question('runFill'),
  pour: question('runPour'),
  meets: question('runMeets'),
  washer: question('runWasher'),
  schema: onDocuments(async () => (await import('./commands/schema.js')).runSchema),
  completion: async (words, io) => (await import('./commands/completion.js')).runCompletion(words, io),
}
