import type { Text } from './text.js'

/**
 * The errors of the command line. `given` is what the user wrote, such as `--level fatal`; an empty text is a value that is
 * not known. Lists are joined with commas.
 */
export interface ErrorTexts {
  /** A text that is already in the language. */
  readonly asWritten: Text<'text'>
  readonly programError: Text<'problem'>

  // Words of the command line.
  readonly unknownCommand: Text<'name' | 'suggestion'>
  readonly unknownOption: Text<'option' | 'suggestion' | 'options'>
  readonly otherCommandsOption: Text<'option' | 'suggestion' | 'options'>
  readonly optionNeedsValue: Text<'option'>
  readonly optionTakesNoValue: Text<'option'>
  readonly notOneOf: Text<'given' | 'expected'>
  readonly notADate: Text<'given'>
  readonly notANumber: Text<'given'>
  readonly untilBeforeSince: Text<'given' | 'since'>
  readonly badTime: Text<'given'>
  readonly badPercentage: Text<'given'>
  readonly badRate: Text<'given'>
  readonly badTemperature: Text<'given'>
  readonly temperatureOutOfRange: Text<'given'>
  readonly badEnding: Text<'given' | 'endings'>
  readonly otherFormat: Text<'given' | 'format'>
  readonly missingOption: Text<'command' | 'option' | 'example'>
  readonly missingValue: Text<'command' | 'example'>

  // Files.
  readonly noSuchFile: Text<'path'>
  readonly folderNotFile: Text<'path'>
  readonly mayNotRead: Text<'path'>
  readonly cannotRead: Text<'path' | 'problem'>
  readonly noDocumentFile: () => string
  readonly pipe: Text<'path'>
  readonly noMatch: Text<'pattern'>
  readonly notJson: Text<'path'>
  readonly notABaseline: Text<'path'>
  readonly fileExists: Text<'path'>
  /** `code`: the code of the system, such as ENOSPC. */
  readonly cannotWrite: Text<'path' | 'code'>
  /** `found` and `expected`: kind and id of a document. */
  readonly otherDocument: Text<'path' | 'found' | 'expected'>
  /** `holder`: `4711 on host`. */
  readonly beingWritten: Text<'path' | 'holder'>
  readonly diskTooSlow: Text<'path'>
  readonly notAFile: (values: {
    readonly path: string
    readonly kind: 'folder' | 'pipe' | 'socket' | 'device'
  }) => string
  readonly notConfirmed: Text<'path' | 'code'>
  readonly changedMeanwhile: Text<'path'>
  readonly notThisLog: Text<'path' | 'id'>
  readonly copyWithoutRecord: Text<'path' | 'id'>
  readonly copyWithoutTopUp: Text<'path' | 'date'>
  readonly copyWithoutReading: Text<'path' | 'date'>

  // Documents among the files.
  readonly noLog: () => string
  readonly noLogWithId: Text<'id'>
  readonly severalLogs: Text<'ids', 'count'>
  readonly sheetNotFound: Text<'name' | 'id' | 'revision' | 'found'>
  readonly severalToolboxes: () => string
  readonly severalStocks: () => string
  readonly oneProcedure: Text<'given', 'count'>
  readonly oneSheet: Text<'given', 'count'>
  readonly oneLog: Text<'given', 'count'>
  readonly oneRecord: Text<'given', 'count'>
  readonly noOilChange: Text<'given'>

  // Commands.
  readonly nameMachine: Text<'command'>
  readonly nameLogAndSheet: Text<'command'>
  readonly nameLogsAndSheets: Text<'command'>
  readonly nameFilesToCheck: () => string
  readonly dryRunNeedsFix: () => string
  readonly nameLogsOrRows: () => string
  readonly oneLinesFile: Text<never, 'count'>
  readonly inputTwice: () => string
  readonly noSheet: Text<'command'>
  readonly rowsAreShort: () => string
  readonly nameLogs: () => string
  readonly nameCardFolder: () => string
  readonly namePaperFolder: () => string
  readonly nameSheets: () => string
  readonly paperNeedsFiles: Text<'paper'>
  readonly differencesNeedSheet: () => string
  readonly twoSheetsOneFile: Text<'name'>
  readonly notARecord: Text<'name' | 'id'>
  readonly noVisit: Text<'id'>
  readonly noSuchRecord: Text<'record' | 'id' | 'latest'>
  readonly noServiceDue: () => string
  readonly logOrSheet: () => string
  readonly noNewRevision: Text<'id'>
  readonly captionsNeedTimes: () => string
  readonly startsCount: Text<never, 'scenes' | 'starts'>
  readonly startsTooEarly: Text<'start'>
  readonly noSharedSheet: () => string
  readonly nothingToCompare: () => string
  readonly onlyWithFromPlan: () => string
  readonly nameRecord: () => string
  readonly logOfRecordMissing: Text<'id'>
  readonly fromPlanFormat: Text<'format'>
  readonly onlyWithTopUp: () => string
  readonly notWithTopUp: () => string
  readonly noMeter: (values: { readonly given: string; readonly meter: 'hours' | 'distance' }) => string
  readonly badTopUp: Text<'given'>
  readonly zeroTopUp: Text<'given'>
  readonly sheetOfProcedureMissing: Text<'id' | 'revision'>
  readonly onlySheetIsTable: () => string
  readonly onlyForSheet: () => string
  readonly onlyForLog: () => string
  readonly notWithFrom: () => string
  readonly badIds: Text<'given'>
  readonly badExampleUnit: Text<'given'>
  readonly nameTelematics: () => string
  readonly notALog: Text<'path'>
  readonly severalMachines: Text<'number', 'count'>
  readonly noMachine: Text<'number' | 'known'>
  readonly noSerial: Text<'known'>

  // Questions.
  /** `message`: what is wrong with a quantity or a text in short notation. */
  readonly unreadable: Text<'given' | 'message'>
  readonly oneFigure: Text<'given'>
  readonly marksAndStep: Text<'given'>
  readonly stepNotAboveZero: Text<'given'>
  readonly otherUnit: Text<'given' | 'measure' | 'units'>
  readonly everyNeedsNoDocument: Text<'found'>
  readonly everyGivesOneAnswer: () => string
  readonly lastOrFirstUse: () => string
  readonly lastAfterNow: Text<'given' | 'last' | 'now'>
  readonly badDay: Text<'given'>
  readonly oneVolume: Text<'given'>
  readonly highestMarkAndStep: Text<'given'>
  readonly twoLengths: Text<'given'>
  readonly crowfootNeedsLever: () => string
  readonly wrenchRange: Text<'given'>
  readonly badAccuracy: Text<'given'>
  readonly oneOil: Text<'given'>
}
