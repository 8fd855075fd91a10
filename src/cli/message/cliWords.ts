import type { Severity } from '../../base/index.js'
import type { DueState } from '../../interval/index.js'
import type { OilVerdict } from '../../oil/index.js'
import type { Repair } from '../../procedure/index.js'
import type { Measure } from '../../quantity/index.js'
import type { WasherFit } from '../../seal/index.js'
import type { OilLoss } from '../../service/index.js'
import type { CommandName } from '../commandTable.js'
import type { KeyMeaning } from '../keyExamples.js'
import type { OptionName } from '../optionTable.js'
import type { BlankWords } from './blankWords.js'
import type { ErrorTexts } from './errorTexts.js'
import type { ReportTexts } from './reportTexts.js'
import type { Text } from './text.js'
import type { YamlProblem } from './yamlProblem.js'

/** Words in help that stand for a value that the user writes. */
export type Placeholder =
  | 'options'
  | 'command'
  | 'file or folder'
  | 'file, folder, pattern or -'
  | 'file.jsonl or -'
  | 'telematics.json or table.csv'
  | 'log or folder'
  | 'file'
  | 'folder'
  | 'sheet'
  | 'log'
  | 'record'
  | 'toolbox'
  | 'stock'
  | 'kind'
  | 'FILE'
  | 'FOLDER'
  | 'SHEET'
  | 'LOG'
  | 'RECORD'
  | 'GEARCASE'
  | 'NAME'
  | 'DATE'
  | 'LEVEL'
  | 'FORMAT'
  | 'ID'
  | 'USE'
  | 'YEAR'
  | 'PERCENT'
  | 'WHAT'
  | 'PAPER'
  | 'SYSTEM'
  | 'NUMBER'
  | 'MARK'
  | 'OLD'

/** The help of one command, besides its usage and example. */
export interface CommandHelp {
  /** Its line in the list of commands. */
  readonly summary: string
  readonly help: string
  /** The meaning of its options where they differ from those of other commands. */
  readonly options?: { readonly [Name in OptionName]?: string }
  /** The meaning of its exit codes. */
  readonly exitCodes?: string
}

export interface HelpWords {
  readonly title: string
  readonly usage: string
  readonly options: string
  readonly example: string
  readonly exitCode: string
  /** Below the list of commands. */
  readonly footer: string
  /** The meaning of `--help`, and of the command `help` in completions. */
  readonly printHelp: string
  /** `text, json or csv (default text)` */
  readonly formats: Text<'names'>
}

/** The words of the answers to one-line questions. */
export interface AnswerTexts {
  readonly cannotTell: string
  readonly doesNotFit: string
  readonly about: Text<'time'>
  /** The figure to print beside the original, after the exact one. */
  readonly print: Text<'figure'>
  readonly finding: Text<'severity' | 'message' | 'code'>
  /** `Overdue: 5 h over, due at 500 h.` */
  readonly due: Text<'state' | 'amount' | 'point'>
  readonly over: Text<'amount'>
  readonly left: Text<'amount'>
  readonly dueAt: Text<'meter'>
  readonly dueOn: Text<'date'>
  readonly days: Text<never, 'count'>
  readonly setTo: Text<'setting' | 'min' | 'max'>
  readonly setWithCare: Text<'setting' | 'min' | 'max'>
  /** `2 pours: to the 700 mL mark, then to the 340 mL mark. Error at most 5 mL.` */
  readonly pours: Text<'marks' | 'error', 'count'>
  /** The marks of {@link AnswerTexts.pours}, each with its number of pours. */
  readonly marks: (groups: readonly { readonly mark: string; readonly count: number }[]) => string
  /** Reasons to give another unit to `--severe` and the names of what a question is about. */
  readonly asGiven: string
  readonly thisWrench: string
  readonly thisJug: string
  /** Before the text of the right spelling. */
  readonly write: Text<'text'>
}

/** Every word that the command line prints itself, in one language. Names of commands, options and keys stay English. */
export interface CliWords {
  readonly language: string
  readonly help: HelpWords
  readonly placeholders: Readonly<Record<Placeholder, string>>
  readonly commands: Readonly<Record<CommandName, CommandHelp>>
  readonly options: Readonly<Record<Exclude<OptionName, 'format'>, string>>
  readonly errors: ErrorTexts
  readonly reports: ReportTexts
  readonly answers: AnswerTexts
  /** The texts of the YAML reader are English. */
  readonly yamlProblems: Readonly<Record<YamlProblem, string>> | 'as written'
  readonly standardInput: string
  readonly severities: Readonly<Record<Severity, string>>
  readonly dueStates: Readonly<Record<DueState, string>>
  readonly oilLosses: Readonly<Record<OilLoss['verdict'], string>>
  /** Whole sentences, as are those of washers. */
  readonly oilVerdicts: Readonly<Record<OilVerdict['verdict'], string>>
  readonly washerVerdicts: Readonly<Record<WasherFit['verdict'], string>>
  readonly changes: Readonly<Record<'added' | 'removed' | 'changed' | 'source only', string>>
  readonly repairEnds: Readonly<Record<Repair['stopped'], string>>
  readonly measures: Readonly<Record<Measure, string>>
}

/** The words of another language. What only some commands need is in English bundled with these commands. */
export interface TranslatedWords extends CliWords {
  /** What an example of a key shows. */
  readonly keys: Readonly<Record<KeyMeaning, string>>
  /** Comments of documents to fill in. */
  readonly blanks: BlankWords
}
