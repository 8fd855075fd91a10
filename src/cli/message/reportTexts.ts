import type { Text } from './text.js'

/** What commands on documents print: counts, headings, confirmations and progress. */
export interface ReportTexts {
  /** A label, a colon and its value. */
  readonly labelled: Text<'label' | 'value'>

  // Files.
  readonly written: Text<'path'>
  readonly nothingWritten: string
  readonly nameLogFile: string
  readonly nameLogFolder: string
  readonly emptyFolder: Text<'path'>
  readonly emptyFolderBelow: Text<'path'>
  readonly skippedNotice: Text<'notice'>
  readonly skippedPipe: Text<'path'>

  // Findings.
  readonly findings: string
  /** `position`: `sheet.yaml:3:5`. */
  readonly entry: Text<'position' | 'severity' | 'message'>
  readonly inFiles: Text<'message', 'count'>
  readonly alsoIn: Text<'places', 'more'>
  readonly alsoAtLines: Text<'lines'>
  readonly at: Text<'code' | 'path'>
  readonly waived: Text<'reason'>
  readonly more: Text<never, 'count'>
  readonly missingKeys: Text<'keys' | 'last'>
  readonly write: Text<'text'>
  readonly writeMeaning: Text<'meaning'>
  readonly belongsAt: Text<'meaning' | 'place'>
  readonly indentWithSpaces: string
  readonly overrideSetsOne: string

  // Tables.
  readonly column: Text<'column' | 'message'>
  readonly notATable: Text<'problem'>
  readonly repeatedColumn: string
  readonly cellWithoutColumn: Text<'cell'>
  readonly whichMachine: string
  readonly whichGearcase: string
  readonly rowRepeated: string
  readonly cellContradictsRow: string
  readonly unknownColumn: string
  readonly severalUnits: Text<'machine' | 'units'>
  readonly machineColumnMissing: string
  readonly dateColumnMissing: string
  readonly dataColumnMissing: string
  readonly unitMissing: string
  readonly columnIgnored: string
  readonly contradictsEarlier: Text<'cell' | 'earlier'>
  readonly contradictsLine: Text<'cell' | 'earlier', 'line'>
  readonly badDate: Text<'cell'>
  readonly badNumber: (values: { readonly cell: string; readonly mark: 'point' | 'comma' }) => string
  readonly noEntry: string

  // check
  readonly checked: Text<'level', 'documents' | 'folders' | 'findings'>
  readonly skipped: Text<'parts'>
  readonly otherFiles: Text<never, 'count'>
  readonly pipes: Text<never, 'count'>
  readonly emptyFolders: Text<never, 'count'>
  readonly unsearchedFolders: Text<never, 'count'>
  readonly baselineUsed: Text<never, 'accepted' | 'unused'>
  readonly baselineWritten: Text<'path'>
  readonly noSafeFix: string
  readonly fixed: Text<never, 'findings' | 'files'>
  readonly canFix: Text<never, 'findings' | 'files'>

  // due, history
  readonly notToBeUsed: string
  readonly noService: string
  readonly moreDue: Text<never, 'count'>
  readonly faultOpen: Text<'date' | 'record' | 'message'>
  readonly sampleOpen: Text<'bottle' | 'gearcase' | 'date' | 'record' | 'laboratory'>
  readonly linesRead: Text<never, 'lines' | 'errors'>
  readonly progress: Text<'share', 'lines'>
  readonly line: Text<'message', 'line'>
  readonly columnsNotRead: Text<'columns'>
  readonly by: Text<'name'>
  readonly corrects: Text<'record'>
  readonly correctedBy: Text<'record'>
  readonly sample: Text<'bottle' | 'result'>
  readonly doesNotCount: Text<'reason'>
  readonly entryDoesNotCount: Text<'entry' | 'reason'>
  readonly topUp: Text<'date' | 'volume' | 'oil' | 'gearcase'>

  // plan, card, cues, slip
  readonly steps: Text<'name' | 'path'>
  readonly seeFull: string
  readonly cardWritten: Text<'paths'>
  readonly papersWritten: Text<'paths'>
  readonly cuesWritten: Text<'paths'>
  readonly wallProgress: Text<never, 'written' | 'all'>
  readonly wallWritten: Text<'folder', 'written' | 'all'>
  readonly slipWritten: Text<'path'>
  readonly notYetInLog: Text<'record'>

  // kits
  readonly notKnownFor: Text<'machine'>
  readonly load: Text<'day' | 'van' | 'machines'>
  readonly kitFor: Text<'machines'>
  readonly spare: Text<'name'>
  readonly sampleBottle: string
  readonly countFasteners: Text<'part'>
  readonly toOrder: string
  readonly toOrderFor: Text<'day' | 'van'>
  readonly nothing: Text<'heading'>
  readonly leftOver: Text<'volume'>
  readonly noContainer: string
  readonly packages: Text<'oil' | 'packages'>
  readonly nothingDue: string

  // used-oil
  readonly noUsedOil: string
  readonly usedOil: Text<'sum'>
  readonly noRecipient: string
  readonly keptApartCaution: string
  readonly keptApart: Text<'volume'>
  readonly withoutReceipt: Text<'volume'>
  readonly withoutVolume: Text<never, 'count'>
  readonly drainedNotCounted: Text<'volume'>
  readonly noVolume: string
  readonly drained: Text<'volume'>
  readonly to: Text<'name'>
  readonly receipt: Text<'number'>
  readonly keptApartBecause: Text<'reason'>

  // procedure, compare, repair
  readonly stepRemoved: Text<'id' | 'action'>
  readonly stepWithoutPart: Text<'id' | 'part'>
  readonly stepAdded: Text<'id' | 'action'>
  readonly stepMoved: Text<'id'>
  readonly stepsRebuilt: string
  readonly lostNote: Text<'id' | 'note'>
  readonly figureChanged: Text<'steps' | 'figure' | 'from' | 'to'>
  readonly nothingThere: string
  readonly sameEffect: string
  readonly sameFigures: string
  readonly noDifference: string
  readonly step: Text<'change' | 'id'>
  readonly finalState: Text<'path' | 'first' | 'second'>
  readonly finding: Text<'change' | 'code'>
  readonly notStated: string
  readonly cannotTell: string
  readonly nothingToFix: string
  readonly noChangeHelps: string
  readonly dangerousFixed: string
  readonly alsoFixed: string
  readonly filledIn: string
  readonly filledCount: Text<never, 'count'>
  readonly rebuilt: string
  readonly changes: string
  readonly signs: string

  // record, import
  readonly recordExists: Text<'id'>
  readonly otherSheet: string
  readonly otherMachine: string
  readonly recordAppended: Text<'path' | 'id', 'count'>
  readonly fillInRecord: string
  readonly topUpExists: string
  readonly topUpAppended: Text<'path' | 'volume' | 'date', 'count'>
  readonly readingsAdded: Text<never, 'hours' | 'distance' | 'kept'>
  readonly meterAdded: (values: { readonly meter: 'hours' | 'distance' }) => string
  readonly logChanged: string
  readonly logChangedAt: Text<'path'>
  readonly fleetAdded: Text<never, 'logs' | 'hours' | 'distance' | 'kept' | 'records'>
  readonly logsWritten: Text<'folder', 'count'>
  readonly noNumber: string
  readonly numbered: Text<'number' | 'message'>
  readonly noLogHasNumber: Text<never, 'count'>
  readonly severalLogsHaveNumber: Text<'ids'>
  readonly recordOf: Text<'date' | 'message'>
}
