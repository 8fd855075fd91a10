import type { ErrorTexts } from '../errorTexts.js'
import { joinOr } from './count.js'

const TABLE_AND_LOG =
  'import: name the telematics file and the log, in this order; or pages and tables, and a folder of logs'

const WRITE_ERRORS: Readonly<Record<string, string>> = {
  EACCES: 'no permission',
  EPERM: 'no permission',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'your disk quota is used up',
  EFBIG: 'the file would be too large',
  EIO: 'disk error',
  EISDIR: 'it is a folder',
  ENOTDIR: 'expected a folder, found a file',
  EEXIST: 'expected a folder, found a file',
  ELOOP: 'its links form a cycle',
  ENAMETOOLONG: 'the name is too long',
}

const didYouMean = (suggestion: string): string => (suggestion === '' ? '' : `; did you mean ${suggestion}?`)

/** The errors of the command line in English. */
export const errors: ErrorTexts = {
  asWritten: ({ text }) => text,
  programError: ({ problem }) =>
    `error in the program, not in your files: ${problem}\nPlease report it with the command and the files.`,

  unknownCommand: ({ name, suggestion }) =>
    `unknown command ${name}${suggestion === '' ? '; see drivetrain-service help' : didYouMean(suggestion)}`,
  unknownOption: ({ option, suggestion, options }) =>
    `${option} is unknown${didYouMean(suggestion)} (options: ${options})`,
  otherCommandsOption: ({ option, suggestion, options }) =>
    `${option} is not an option of this command${didYouMean(suggestion)} (options: ${options})`,
  optionNeedsValue: ({ option }) => `${option}: expected a value`,
  optionTakesNoValue: ({ option }) => `${option}: expected no value`,
  notOneOf: ({ given, expected }) => `${given}: expected one of ${expected}`,
  notADate: ({ given }) => `${given}: expected a date such as 2023-10-06`,
  notANumber: ({ given }) => `${given}: expected a number`,
  untilBeforeSince: ({ given, since }) => `${given}: expected ${since} or later`,
  badTime: ({ given }) => `${given}: expected a time such as 0:14 or 1:02:03.5`,
  badPercentage: ({ given }) => `${given}: expected a percentage above 0 and below 100`,
  badRate: ({ given }) => `${given}: expected an amount and a currency, such as "65.50 EUR"`,
  badTemperature: ({ given }) => `${given}: expected a temperature such as 6degC or 43degF`,
  temperatureOutOfRange: ({ given }) => `${given}: expected -100 degC to 100 degC`,
  badEnding: ({ given, endings }) => `${given}: expected a name that ends in ${joinOr(endings)}`,
  otherFormat: ({ given, format }) => `${given}: cannot be used with --format ${format}`,
  missingOption: ({ command, option, example }) =>
    `${command}: write ${option}, such as ${option} ${example}`,
  missingValue: ({ command, example }) => `${command}: expected a value, such as ${command} ${example}`,

  noSuchFile: ({ path }) => `${path}: no such file or folder`,
  folderNotFile: ({ path }) => `${path}: expected a file, found a folder`,
  mayNotRead: ({ path }) => `${path}: no permission to read`,
  cannotRead: ({ path, problem }) => `${path}: cannot be read (${problem})`,
  noDocumentFile: () => 'no .json or .yaml file found',
  pipe: ({ path }) => `${path} is a pipe or device; to read it, use - < ${path}`,
  noMatch: ({ pattern }) => `${pattern}: no file or folder matches`,
  notJson: ({ path }) => `${path}: not JSON`,
  notABaseline: ({ path }) => `${path} is not a baseline: write one with check --write-baseline`,
  fileExists: ({ path }) => `${path} exists; choose another name, or delete it first`,
  cannotWrite: ({ path, code }) => `${path}: cannot be written (${WRITE_ERRORS[code] ?? code})`,
  otherDocument: ({ path, found, expected }) =>
    `${path} is ${found === '' ? 'another file' : `the ${found}`}, not ${expected === '' ? 'an earlier output' : `the ${expected}`}: choose another name; nothing was written`,
  beingWritten: ({ path, holder }) =>
    `${path}: ${holder === '' ? 'another process' : `process ${holder}`} is writing it; try again`,
  diskTooSlow: ({ path }) => `${path}: the disk is too slow; nothing was written`,
  notAFile: ({ path, kind }) => `${path}: is a ${kind}, not a file; nothing was written`,
  notConfirmed: ({ path, code }) => `${path}: written, but the disk did not confirm it (${code})`,
  changedMeanwhile: ({ path }) => `${path} was changed by another program meanwhile; try again`,
  notThisLog: ({ path, id }) =>
    `${path} is not the log ${id}, or cannot be read: choose another name; nothing was written`,
  copyWithoutRecord: ({ path, id }) =>
    `${path} is another copy of the log, without the record ${id}; nothing was written`,
  copyWithoutTopUp: ({ path, date }) =>
    `${path} is another copy of the log, without the top-up of ${date}; nothing was written`,
  copyWithoutReading: ({ path, date }) =>
    `${path} is another copy of the log, without the reading of ${date}; nothing was written`,

  noLog: () => 'no machine log among the files',
  noLogWithId: ({ id }) => `no log with the id ${id} among the files`,
  severalLogs: ({ ids, count: logs }) =>
    `found ${logs} logs: choose one with --machine ${ids.replaceAll(', ', ' or ')}`,
  sheetNotFound: ({ name, id, revision, found }) =>
    `${name}: sheet ${id} revision ${revision} is not among the files (${found === '' ? 'no sheet' : found})`,
  severalToolboxes: () => 'more than one toolbox among the files',
  severalStocks: () => 'more than one stock among the files',
  oneProcedure: ({ given, count: found }) => `${given}: expected one procedure, found ${found}`,
  oneSheet: ({ given, count: found }) => `${given}: expected one sheet, found ${found}`,
  oneLog: ({ given, count: found }) => `${given}: expected one log, found ${found}`,
  oneRecord: ({ given, count: found }) => `${given}: expected one record, found ${found}`,
  noOilChange: ({ given }) => `${given}: the sheet has no oil change of this gearcase`,

  nameMachine: ({ command }) => `${command}: name the files or the folder of one machine`,
  nameLogAndSheet: ({ command }) => `${command}: name the log and its sheet, or their folder`,
  nameLogsAndSheets: ({ command }) => `${command}: name logs and their sheets, or folders of them`,
  nameFilesToCheck: () => 'check: name the files or folders to check',
  dryRunNeedsFix: () => 'check: --dry-run needs --fix',
  nameLogsOrRows: () => 'due: name logs and their sheets, a folder of them, or - for rows on standard input',
  oneLinesFile: ({ count: files }) => `due: expected one .jsonl file or -, found ${files}`,
  inputTwice: () => 'due: the lines and a sheet cannot both come from standard input',
  noSheet: ({ command }) => `${command}: no sheet among the files`,
  rowsAreShort: () =>
    'due: --brief, --format csv and --format summary need logs and a sheet; rows have short answers already',
  nameLogs: () => 'used-oil: name logs, or folders of them',
  nameCardFolder: () => 'card: name the folder for the cards with --out FOLDER',
  namePaperFolder: () => 'card: name the folder for the papers with --out FOLDER',
  nameSheets: () => 'card: name sheets, or folders of them',
  paperNeedsFiles: ({ paper }) => `card: --paper ${paper} needs files or folders`,
  differencesNeedSheet: () => 'card: --paper differences needs a sheet',
  twoSheetsOneFile: ({ name }) => `card: two sheets would be written to ${name}`,
  notARecord: ({ name, id }) => `${name} is not a record of ${id}`,
  noVisit: ({ id }) => `the log of ${id} has no record of a visit`,
  noSuchRecord: ({ record, id, latest }) =>
    `--record ${record}: the log of ${id} has no such record; its latest records are ${latest}`,
  noServiceDue: () => 'procedure: no service is due; choose one with --service',
  logOrSheet: () => 'procedure: expected a log and its sheet, or one sheet and --service',
  noNewRevision: ({ id }) => `procedure: expected the new revision of sheet ${id} among the files`,
  captionsNeedTimes: () =>
    'cues: captions need --starts TIMES for one file, or --out FOLDER for one file per scene',
  startsCount: ({ scenes, starts }) =>
    `--starts: expected a time for each of the ${scenes} scenes, found ${starts}`,
  startsTooEarly: ({ start }) =>
    `--starts ${start}: too early; the captions of the scene before it need more time`,
  noSharedSheet: () => 'compare: expected the sheet of both procedures among the files',
  nothingToCompare: () => 'compare: expected two sheets, two procedures with their sheet, or one sheet',
  onlyWithFromPlan: () => 'record: --service and --ambient can only be used with --from-plan',
  nameRecord: () => 'record: name the record, its log, its sheet and the toolbox, or their folder',
  logOfRecordMissing: ({ id }) => `record: the log of machine ${id} is not among the files`,
  fromPlanFormat: ({ format }) => `record --from-plan --format ${format}: the record is YAML to fill in`,
  onlyWithTopUp: () => 'record: --at and --on can only be used with --top-up',
  notWithTopUp: () => 'record: --from-plan, --service and --ambient cannot be used with --top-up',
  noMeter: ({ given, meter }) => `${given}: the log has no meter for ${meter}`,
  badTopUp: ({ given }) => `${given}: expected a volume and an oil, such as "50 mL of gear oil 80W-90"`,
  zeroTopUp: ({ given }) => `${given}: expected a volume above zero`,
  sheetOfProcedureMissing: ({ id, revision }) =>
    `repair: the sheet ${id} revision ${revision} is not among the files`,
  onlySheetIsTable: () => 'new: only a sheet can be a table',
  onlyForSheet: () => 'new: --gearcases, --variants and --from can only be used for a sheet',
  onlyForLog: () => 'new: --sheet can only be used for a log',
  notWithFrom: () =>
    'new: --gearcases, --variants and --unit cannot be used with --from: they are copied from the sheet',
  badIds: ({ given }) =>
    `${given}: expected different ids of lower-case letters, digits and hyphens, such as front,rear`,
  badExampleUnit: ({ given }) =>
    `${given}: expected a unit of torque, volume, distance or temperature, such as lbf.ft or qt_us`,
  nameTelematics: () => TABLE_AND_LOG,
  notALog: ({ path }) => `import: expected a machine log, found ${path}`,
  severalMachines: ({ number, count: machines }) => `import: ${machines} machines have the number ${number}`,
  noMachine: ({ number, known }) =>
    `import: no machine has the number ${number} (${known}); choose one with --equipment`,
  noSerial: ({ known }) => `import: the log has no serial number (${known}); choose one with --equipment`,

  unreadable: ({ given, message }) => `${given}: ${message}`,
  oneFigure: ({ given }) => `${given}: expected one figure with its unit`,
  marksAndStep: ({ given }) => `${given}: expected marks and a step, such as "700 mL by 10"`,
  stepNotAboveZero: ({ given }) => `${given}: the step must be above 0`,
  otherUnit: ({ given, measure, units }) => `${given}: expected a unit of ${measure}, such as ${units}`,
  everyNeedsNoDocument: ({ found }) => `due: --every needs no document; found ${found}`,
  everyGivesOneAnswer: () => 'due: --every gives one answer, without --brief or --format csv',
  lastOrFirstUse: () =>
    'due: write --last "2022-11-20 at 301.4 h", or --from-new with the date of first use if it was never serviced',
  lastAfterNow: ({ given, last, now }) => `${given}: ${last} is after ${now}, the date of --now`,
  badDay: ({ given }) => `${given}: expected a date and meters, such as "2022-11-20 at 301.4 h, 1200 mi"`,
  oneVolume: ({ given }) => `${given}: expected one volume, not a range`,
  highestMarkAndStep: ({ given }) =>
    `${given}: expected the highest mark and the step, such as "700 mL by 10"`,
  twoLengths: ({ given }) => `${given}: expected two lengths, such as "6 mm x 1 m"`,
  crowfootNeedsLever: () => '--crowfoot: write the length of the wrench too, such as --lever "250 mm"',
  wrenchRange: ({ given }) => `${given}: expected a range, such as "40–200 lbf·in by 1"`,
  badAccuracy: ({ given }) => `${given}: expected a percentage, such as 4% or "2% of full scale"`,
  oneOil: ({ given }) => `${given}: expected one oil, such as "80W-90 GL-4"`,
}
