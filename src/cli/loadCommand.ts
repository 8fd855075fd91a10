import type { Catalogue } from '../message/index.js'
import type { CommandIo, ExitCode, WordIo } from './cliIo.js'
import type { CommandName } from './commandTable.js'
import type { ParsedWords } from './parseWords.js'
import type { Options } from './readOptions.js'
import { runCompletion } from './runCompletion.js'

/** Runs a command with its parsed words. */
export type CommandRunner = (words: ParsedWords, io: WordIo) => Promise<ExitCode>

/** A command that works on documents, loaded when called. */
const makeDocumentCommand =
  (load: () => Promise<(options: Options, io: CommandIo) => Promise<ExitCode>>): CommandRunner =>
  async (words, io) => {
    const [{ readOptions }, run, catalogue] = await Promise.all([
      import('./readOptions.js'),
      load(),
      loadCatalogue(words),
    ])
    return run(readOptions(words, io), { ...io, catalogue })
  }

/** The texts of the chosen language. */
const loadCatalogue = async ({ values }: ParsedWords): Promise<Catalogue> =>
  (await import('./loadCatalogue.js')).loadCatalogue(values.language)

/** A command that answers one question without a document; English comes with it, in the same file. */
const makeQuestionCommand =
  (name: Exclude<keyof typeof import('./questions/index.js'), 'enCalculations'>): CommandRunner =>
  async (words, io) => {
    const questions = await import('./questions/index.js')
    const catalogue = io.words.language === 'en' ? questions.enCalculations : await loadCatalogue(words)
    return questions[name](words, { ...io, catalogue })
  }

const runDueOnDocuments = makeDocumentCommand(async () => (await import('./commands/due.js')).runDue)
const runDueOnReadings = makeQuestionCommand('runDueQuestion')

const runRecordOnDocuments = makeDocumentCommand(async () => (await import('./commands/record.js')).runRecord)

/** Every command with the file that it loads, so that a command starts without the code of the others. */
export const COMMANDS: Readonly<Record<CommandName, CommandRunner>> = {
  new: async (words, io) =>
    (await import('./commands/new.js')).runNew(words, { ...io, catalogue: await loadCatalogue(words) }),
  check: makeDocumentCommand(async () => (await import('./commands/check.js')).runCheck),
  due: (words, io) => (words.values.every === undefined ? runDueOnDocuments : runDueOnReadings)(words, io),
  plan: makeDocumentCommand(async () => (await import('./commands/visit.js')).runPlan),
  card: makeDocumentCommand(async () => (await import('./commands/visit.js')).runCard),
  cues: makeDocumentCommand(async () => (await import('./commands/cues.js')).runCues),
  kits: makeDocumentCommand(async () => (await import('./commands/kits.js')).runKits),
  procedure: makeDocumentCommand(async () => (await import('./commands/procedure.js')).runProcedure),
  repair: makeDocumentCommand(async () => (await import('./commands/repair.js')).runRepair),
  compare: makeDocumentCommand(async () => (await import('./commands/compare.js')).runCompare),
  record: async (words, io) =>
    (['top-up', 'at', 'on'] as const).every((name) => words.values[name] === undefined)
      ? runRecordOnDocuments(words, io)
      : (await import('./commands/topUp.js')).runTopUp(words, {
          ...io,
          catalogue: await loadCatalogue(words),
        }),
  history: makeDocumentCommand(async () => (await import('./commands/history.js')).runHistory),
  slip: makeDocumentCommand(async () => (await import('./commands/slip.js')).runSlip),
  'used-oil': makeDocumentCommand(async () => (await import('./commands/usedOil.js')).runUsedOil),
  import: makeDocumentCommand(async () => (await import('./commands/import.js')).runImport),
  convert: makeQuestionCommand('runConvert'),
  torque: makeQuestionCommand('runTorque'),
  fill: makeQuestionCommand('runFill'),
  pour: makeQuestionCommand('runPour'),
  meets: makeQuestionCommand('runMeets'),
  washer: makeQuestionCommand('runWasher'),
  schema: makeDocumentCommand(async () => (await import('./commands/schema.js')).runSchema),
  // Its tables are those of the help, which are always loaded.
  completion: runCompletion,
}
