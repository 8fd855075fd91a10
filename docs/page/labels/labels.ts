import type { DueAnswer } from '../answer.js'
import type { TextName } from '../readTexts.js'

type Words<Names extends string> = Readonly<Record<Names, string>>

/** The words of the page that are not the library's. `texts` are those of `index.html`, by `data-text` and `data-label`. */
export interface PageLabels {
  readonly texts: Words<
    | ('title' | 'heading' | 'lead' | 'onlyQuestion' | 'safety' | 'more' | 'choices')
    | ('startFrom' | 'ownText' | 'date' | 'air' | 'units' | 'printed' | 'metric' | 'US' | 'language')
    | ('open' | 'share' | 'print' | 'stale' | 'views' | 'viewText' | 'viewAnswer' | 'viewCard')
    | ('documents' | 'sheet' | 'log' | 'toolbox' | 'hint' | 'findings')
    | ('due' | 'visit' | 'figures' | 'card' | 'madeWith' | 'offline')
  >
  /** What each machine to start from is, by its folder in `examples/`. */
  readonly examples: Words<'tind-4' | 'bud-3' | 'kvist-2'>
  /** The names of the text fields. */
  readonly fields: Words<TextName>
  /** Where a finding is. */
  readonly places: Words<TextName>
  readonly severities: Words<'error' | 'warning' | 'info'>
  readonly findingAt: (place: string, line: number, severity: string) => string
  readonly advice: (fixes: readonly string[]) => string
  readonly moreFindings: (count: number) => string
  readonly noFindings: string
  readonly tooLong: (length: number, most: number) => string
  readonly example: (text: string) => string
  readonly part: string
  readonly manual: string
  readonly converted: string
  readonly otherUnits: string
  readonly noFigures: string
  readonly noCard: string
  readonly noVisit: string
  readonly noService: string
  readonly noLog: string
  readonly unreadableLog: string
  readonly otherLog: (log: Document, sheet: Document) => string
  readonly noSheet: string
  readonly unreadableSheet: string
  readonly noDate: string
  readonly noAnswer: (reason: string) => string
  readonly noEditor: string
  readonly noLanguage: string
  readonly tooLarge: (file: string) => string
  readonly notText: (file: string) => string
  readonly otherKind: (file: string, kind: string) => string
  readonly otherFormat: (file: string) => string
  readonly brokenLink: string
  readonly linkCopied: string
  readonly linkInBar: string
  readonly longLink: (length: number) => string
  /** Words of the editor itself, by the English text that it asks for. */
  readonly phrases: Words<'Completions'>
}

interface Document {
  readonly id: string
  readonly revision: string
}

/** The words of the page of one question. `texts` are those of `question.html`. */
export interface QuestionLabels {
  readonly texts: Words<
    | ('title' | 'heading' | 'lead' | 'wholeSheet' | 'safety' | 'language')
    | ('torqueTitle' | 'torque' | 'tolerance' | 'unit' | 'lowest' | 'highest' | 'step' | 'scale' | 'error')
    | ('dueTitle' | 'hours' | 'km' | 'months' | 'lastDate' | 'lastHours' | 'lastKm')
    | ('nowDate' | 'nowHours' | 'nowKm')
  >
  readonly wrench: string
  readonly ask: Words<'torque' | 'tolerance' | 'lowest' | 'highest' | 'step' | 'error'>
  readonly wrenchVerdicts: Words<'does not fit' | 'cannot tell'>
  readonly setting: (setting: string, isWithCare: boolean) => string
  readonly actual: (from: string, to: string) => string
  readonly askDue: Words<'limit' | 'wholeLimit' | 'day' | 'order' | 'reading'>
  readonly dueVerdicts: Words<DueAnswer['verdict']>
  readonly days: (count: number) => string
  readonly left: (verdict: string, amount: string, isOver: boolean, point: DuePoint) => string
  readonly unusable: (reason: string) => string
}

/** Where a service is due: at a reading or on a date, as printed. */
export type DuePoint = { readonly at: string } | { readonly on: string } | undefined
